import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figuresJson } from '../../src/building/figures-json.ts';

const short = (_key: string, value: unknown): unknown =>
  typeof value === 'number' && Number.isFinite(value) ? Number(value.toPrecision(3)) : value;

test('figures have three digits; what is not there is left out; what is no number stays', () => {
  const page = { a: 1.23456e-9, b: [undefined, NaN, 'x', null], c: undefined, d: { e: -98765 } };
  expect(figuresJson(page)).toBe('{"a":1.23e-9,"b":[null,null,"x",null],"d":{"e":-98800}}');
});

test('a key is a key, whatever it is called', () => {
  const page = Object.fromEntries([['__proto__', null]]);
  expect(figuresJson({ a: page })).toBe('{"a":{"__proto__":null}}');
});

test('is what rounding each figure while it is written would give', () => {
  fc.assert(
    fc.property(fc.object(), (page) => {
      expect(figuresJson(page)).toBe(JSON.stringify(page, short));
    }),
  );
});
