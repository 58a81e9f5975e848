import { expect } from 'vitest';
import type { Catalogue, Finding } from '../../../src/engine/index.ts';

/** What is left of a result once it is written out, as numbers that are not finite are not. */
const written = (result: unknown): unknown => JSON.parse(JSON.stringify(result));

/** A slice of the catalogue as a browser gets it: written out and read in again. */
export const asFetched = (slice: Catalogue): Catalogue => written(slice) as Catalogue;

/** Expects that a slice answers as everything does, and has a title for every source it cites. */
export const expectSame = (
  name: string,
  sliced: unknown,
  full: unknown,
  { findings, sources }: { findings: readonly Finding[]; sources: Catalogue['sources'] },
): void => {
  // The same written out is the same; only what differs is taken apart to show where.
  if (JSON.stringify(sliced) !== JSON.stringify(full))
    expect(written(sliced), name).toEqual(written(full));
  const cited = new Set(findings.flatMap((one) => one.sources));
  const missing = [...cited].filter((source) => !Object.hasOwn(sources, source));
  expect(missing, `${name}: sources without a title`).toEqual([]);
};
