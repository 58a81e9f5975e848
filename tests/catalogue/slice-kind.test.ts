import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceKindPosition } from '../../src/catalogue/slice-kind.ts';
import { allKindPairings, findKindStandIns, type Catalogue } from '../../src/engine/index.ts';

const catalogue = loadCatalogue();
const written = (result: unknown): unknown => JSON.parse(JSON.stringify(result));
const met = allKindPairings(catalogue).filter(({ pairing }) => pairing.met);

describe('a browser reckons about a kind from its slice as the build does from everything', () => {
  test.each(Object.keys(catalogue.kindPositions))('%s', (position) => {
    const slice = written(sliceKindPosition(catalogue, position)) as Catalogue;
    const pairs = met.filter((pair) => pair.position.id === position);
    expect(pairs).not.toEqual([]);
    for (const { type } of pairs) {
      const request = { original: { type: type.id }, position };
      const full = findKindStandIns(catalogue, request);
      expect(written(findKindStandIns(slice, request)), type.id).toEqual(written(full));
      const cited = full.flatMap(({ findings }) => findings.flatMap((one) => one.sources));
      const missing = cited.filter((source) => !Object.hasOwn(slice.sources, source));
      expect(missing, `${type.id}: sources without a title`).toEqual([]);
    }
  });
});
