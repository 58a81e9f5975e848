import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceKindPosition } from '../../../src/catalogue/slices/slice-kind.ts';
import { allKindPairings, exactly, findKindStandIns } from '../../../src/engine/index.ts';
import { asFetched, expectSame } from './as-fetched.ts';

const catalogue = loadCatalogue();
const met = allKindPairings(catalogue).filter(({ pairing }) => pairing.met);

describe('a browser reckons about a kind from its slice as the build does from everything', () => {
  test.each(Object.keys(catalogue.kindPositions))('%s', (position) => {
    const slice = asFetched(sliceKindPosition(catalogue, position));
    const pairs = met.filter((pair) => pair.position.id === position);
    expect(pairs).not.toEqual([]);
    // The least value that a type was made in takes the most power at a usual voltage.
    const requests = pairs.flatMap(({ type }) => [
      { type, request: { original: { type: type.id }, position } },
      {
        type,
        request: { original: { type: type.id, value: exactly(type.old_min ?? 1) }, position },
      },
    ]);
    for (const { type, request } of requests) {
      const full = findKindStandIns(catalogue, request);
      const findings = full.flatMap((one) => one.findings);
      const { sources } = slice;
      expectSame(type.id, findKindStandIns(slice, request), full, { findings, sources });
    }
  });
});
