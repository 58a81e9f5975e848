import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

/** What an older browser is lent does what the language does. */

const LENT = ['toSorted', 'toReversed', 'toSpliced', 'with'] as const;

const own = (owner: object, name: string): PropertyDescriptor => {
  const found = Object.getOwnPropertyDescriptor(owner, name);
  if (found === undefined) throw new Error(`the language has no ${name}`);
  return found;
};

const given = LENT.map((name) => [name, own(Array.prototype, name)] as const);
const grouping = own(Map, 'groupBy');
const groupBy = grouping.value as typeof Map.groupBy;

/** What the language itself makes of it. */
const native = (name: (typeof LENT)[number], on: readonly number[], ...rest: unknown[]): unknown =>
  (given.find(([one]) => one === name)?.[1].value as (...all: unknown[]) => unknown).apply(
    on,
    rest,
  );

describe('what an older browser is lent', () => {
  beforeAll(async () => {
    for (const name of LENT) Reflect.deleteProperty(Array.prototype, name);
    Reflect.deleteProperty(Map, 'groupBy');
    await import('../src/browser/older-browsers.ts');
  });

  afterAll(() => {
    for (const [name, property] of given) Object.defineProperty(Array.prototype, name, property);
    Object.defineProperty(Map, 'groupBy', grouping);
  });

  const numbers = fc.array(fc.integer({ min: -9, max: 9 }));

  test('is none of what the language has', () => {
    expect(Map.groupBy).not.toBe(groupBy);
    for (const [name, property] of given) expect([][name]).not.toBe(property.value);
  });

  test('sorts and turns round a copy', () => {
    fc.assert(
      fc.property(numbers, (list) => {
        const before = [...list];
        const falling = (a: number, b: number): number => b - a;
        expect(list.toSorted()).toEqual(native('toSorted', list));
        expect(list.toSorted(falling)).toEqual(native('toSorted', list, falling));
        expect(list.toReversed()).toEqual(native('toReversed', list));
        expect(list).toEqual(before);
      }),
    );
  });

  test('takes out and puts in', () => {
    fc.assert(
      fc.property(numbers, fc.nat(12), fc.nat(12), numbers, (list, start, skip, items) => {
        expect(list.toSpliced(start, skip, ...items)).toEqual(
          native('toSpliced', list, start, skip, ...items),
        );
      }),
    );
  });

  test('changes one in a copy', () => {
    fc.assert(
      fc.property(numbers, fc.nat(), (list, pick) => {
        fc.pre(list.length > 0);
        const at = pick % list.length;
        expect(list.with(at, 99)).toEqual(native('with', list, at, 99));
      }),
    );
  });

  test('groups in the order of first sight', () => {
    fc.assert(
      fc.property(numbers, (list) => {
        const keyOf = (one: number, at: number): string => `${String(one % 3)} ${String(at % 2)}`;
        expect([...Map.groupBy(list, keyOf)]).toEqual([...groupBy(list, keyOf)]);
      }),
    );
  });
});
