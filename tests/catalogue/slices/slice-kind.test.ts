import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceKindPosition } from '../../../src/catalogue/slices/slice-kind.ts';
import { allKindPairings, findKindStandIns } from '../../../src/engine/index.ts';
import { asFetched, expectSame } from './as-fetched.ts';

const catalogue = loadCatalogue();
const met = allKindPairings(catalogue).filter(({ pairing }) => pairing.met);

describe('a browser reckons about a kind from its slice as the build does from everything', () => {
  test.each(Object.keys(catalogue.kindPositions))('%s', (position) => {
    const slice = asFetched(sliceKindPosition(catalogue, position));
    const pairs = met.filter((pair) => pair.position.id === position);
    expect(pairs).not.toEqual([]);
    for (const { type } of pairs) {
      const request = { original: { type: type.id }, position };
      const full = findKindStandIns(catalogue, request);
      const findings = full.flatMap((one) => one.findings);
      const { sources } = slice;
      expectSame(type.id, findKindStandIns(slice, request), full, { findings, sources });
    }
  });
});
