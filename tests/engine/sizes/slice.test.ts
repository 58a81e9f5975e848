import { describe, expect, test } from 'vitest';
import { slicePosition } from '../../../src/catalogue/slices/slice-position.ts';
import { allPairings, findStandIns } from '../../../src/engine/index.ts';
import { catalogue } from '../assessment/setting.ts';

/** Findings that rest on the tables of sizes. */
const OF_SIZE = [
  'body',
  'height',
  'side',
  'lead-pitch',
  'lead-wire',
  'esr-window',
  'impedance',
  'pulse',
  'inrush',
  'ripple-heating',
  'ripple-current',
  'life',
  'acquisition',
  'level-shift',
];

const met = allPairings(catalogue).filter(({ pairing }) => pairing.met);

/** The first and the last type that is met in each position: values far apart. */
const pairs = Object.keys(catalogue.positions).flatMap((position) => {
  const types = met.filter((pair) => pair.position === position).map(({ type }) => type);
  return [types.at(0), types.at(-1)].flatMap((type) =>
    type === undefined ? [] : [{ position, type }],
  );
});

const sizesSaid = (from: typeof catalogue, type: string, position: string): string[] =>
  findStandIns(from, { original: { type }, position }).map(({ candidate, buy, findings }) =>
    JSON.stringify([
      candidate.type,
      buy,
      findings
        .filter(({ finding }) => OF_SIZE.includes(finding))
        .map(({ finding, working, sources, sure }) => [finding, working, sources, sure]),
    ]),
  );

describe('the slice for a position', () => {
  test.each(pairs)('says the same of sizes at $position for $type', ({ position, type }) => {
    const slice = slicePosition(catalogue, position);
    expect(sizesSaid(slice, type, position)).toEqual(sizesSaid(catalogue, type, position));
    for (const { source } of slice.bodies) expect(slice.sources[source]).toBeDefined();
  });
});
