import fc from 'fast-check';
import { expect, test } from 'vitest';
import { doubledDesignators } from '../../../src/job/model/doubled.ts';

const of = (...lines: string[]) =>
  Object.fromEntries(
    doubledDesignators(lines.map((line) => ({ designators: line.split(' ').filter(Boolean) }))),
  );

test.each([
  [['C1 C2', 'C3'], {}],
  [['C1 C2', 'C2 C3', 'C4'], { 0: ['C2'], 1: ['C2'] }],
  [['C1', 'c1', 'C1'], { 0: ['C1'], 1: ['C1'], 2: ['C1'] }],
  [['C1 C1'], {}],
])('%j', (lines, doubled) => {
  expect(of(...lines)).toEqual(doubled);
});

test('every line of a doubled designator is named, and no other', () => {
  const name = fc.constantFrom('C1', 'C2', 'C3', 'R1');
  fc.assert(
    fc.property(fc.array(fc.uniqueArray(name)), (lines) => {
      const found = doubledDesignators(lines.map((designators) => ({ designators })));
      lines.forEach((designators, at) => {
        const shared = designators.filter((one) =>
          lines.some((other, place) => place !== at && other.includes(one)),
        );
        expect(new Set(found.get(at) ?? [])).toEqual(new Set(shared));
      });
    }),
  );
});
