import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { slicePosition } from '../../../src/catalogue/slices/slice-position.ts';
import {
  allPairings,
  assess,
  findStandIns,
  judgeFirst,
  type Catalogue,
} from '../../../src/engine/index.ts';
import { asFetched, expectSame } from './as-fetched.ts';

const catalogue = loadCatalogue();

const sliceOf = (position: string): Catalogue => asFetched(slicePosition(catalogue, position));

/** One type a position is enough to see what is missing, and another family to be sure. */
const pairsOf = (position: string): string[] => {
  const met = allPairings(catalogue).filter(
    (pair) => pair.position === position && pair.pairing.met,
  );
  return [...new Set([met[0]?.type, met.at(-1)?.type])].filter((type) => type !== undefined);
};

describe('a browser reckons from its slice as the build does from everything', () => {
  test.each(Object.keys(catalogue.positions))('%s', (position) => {
    const slice = sliceOf(position);
    for (const type of pairsOf(position)) {
      const request = { original: { type }, position };
      const full = findStandIns(catalogue, request);
      const findings = full.flatMap((one) => one.findings);
      const { sources } = slice;
      expectSame(type, findStandIns(slice, request), full, { findings, sources });
      const marked = { type, capacitance: 1e-5, ratedVoltage: 25 };
      const evidence = { esr: 1, leakage: 1e-5, signs: ['wet-signs'] };
      expect(judgeFirst(slice, marked, position, evidence)).toEqual(
        judgeFirst(catalogue, marked, position, evidence),
      );
    }
  });
});

/** A part as visitors have it: no more than its type, or also numbers that nobody offers. */
const PARTS_HAD = [{}, { capacitance: 1.2e-8, ratedVoltage: 47 }];

describe('whatever part one has, a browser answers as the build would', () => {
  test.each(Object.keys(catalogue.positions))('%s', (position) => {
    const slice = sliceOf(position);
    const [type = ''] = pairsOf(position);
    const request = { original: { type }, position };
    for (const had of Object.keys(catalogue.types)) {
      for (const said of PARTS_HAD) {
        const full = assess(catalogue, request, { type: had, ...said });
        const sliced = assess(slice, request, { type: had, ...said });
        expectSame(had, sliced, full, { findings: full.findings, sources: slice.sources });
        const part = full.candidate;
        expect(judgeFirst(slice, part, position, {})).toEqual(
          judgeFirst(catalogue, part, position, {}),
        );
      }
    }
  });
});
