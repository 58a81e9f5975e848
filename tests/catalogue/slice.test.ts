import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { slicePosition } from '../../src/catalogue/slice.ts';
import {
  allPairings,
  findStandIns,
  judgeFirst,
  type Assessment,
  type Catalogue,
} from '../../src/engine/index.ts';

const catalogue = loadCatalogue();

/** The catalogue of one position as a browser gets it: written out and read in again. */
const asFetched = (position: string): Catalogue =>
  JSON.parse(JSON.stringify(slicePosition(catalogue, position))) as Catalogue;

/** All that a page shows, but for rows' sources that only the full catalogue names. */
const shown = (assessments: readonly Assessment[]): unknown =>
  assessments.map(({ candidate, verdict, worst, buy, findings }) => ({
    candidate,
    verdict,
    worst,
    buy,
    findings: findings.map((finding) => ({ ...finding, sources: [] })),
  }));

/** One type a position is enough to see what is missing, and another family to be sure. */
const pairsOf = (position: string): string[] => {
  const met = allPairings(catalogue).filter(
    (pair) => pair.position === position && pair.pairing.met,
  );
  return [...new Set([met[0]?.type, met.at(-1)?.type])].filter((type) => type !== undefined);
};

describe('a browser reckons from its slice as the build does from everything', () => {
  test.each(Object.keys(catalogue.positions))('%s', (position) => {
    const slice = asFetched(position);
    for (const type of pairsOf(position)) {
      const request = { original: { type }, position };
      const full = findStandIns(catalogue, request);
      expect(JSON.parse(JSON.stringify(shown(findStandIns(slice, request)))), type).toEqual(
        JSON.parse(JSON.stringify(shown(full))),
      );
      const marked = { type, capacitance: 1e-5, ratedVoltage: 25 };
      const evidence = { esr: 1, leakage: 1e-5, signs: ['wet-signs'] };
      expect(judgeFirst(slice, marked, position, evidence)).toEqual(
        judgeFirst(catalogue, marked, position, evidence),
      );
      const cited = new Set(full.flatMap(({ findings }) => findings.flatMap((one) => one.sources)));
      const missing = [...cited].filter((source) => !Object.hasOwn(slice.sources, source));
      expect(missing, `${type}: sources without a title`).toEqual([]);
    }
  });
});
