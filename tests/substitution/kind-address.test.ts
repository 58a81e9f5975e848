import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { allKindPairings } from '../../src/engine/index.ts';
import { kindFieldsFor, readKindAddress } from '../../src/substitution/kind-address.ts';

const catalogue = loadCatalogue();
const asked = (query: string, type = 'carbon-film', position = 'plate-load') =>
  readKindAddress(catalogue, type, position, new URLSearchParams(query));
const fieldsOf = (...args: Parameters<typeof asked>) => kindFieldsFor(catalogue, asked(...args));
const field = (key: string, ...args: Parameters<typeof asked>) =>
  fieldsOf(...args).find((one) => one.key === key);

describe('an address says what the old resistor is', () => {
  test.each([
    ['value=4k7', 'value', 4700],
    ['value=4,7k', 'value', 4700],
    ['value=0R22', 'value', 0.22],
    ['rating=1/4 W', 'rating', 0.25],
    ['rating=1/8W', 'rating', 0.125],
    ['rating=½ W', 'rating', 0.5],
    ['rating=0,6', 'rating', 0.6],
    ['rating=250 mW', 'rating', 0.25],
  ] as const)('%s', (query, key, expected) => {
    const { request, rejected } = asked(query);
    expect(rejected).toEqual({});
    expect(request.original[key]?.typ).toBeCloseTo(expected, 9);
  });

  test.each([
    ['value=abc', 'value'],
    ['value=-5', 'value'],
    ['value=1e15', 'value'],
    ['rating=1/0', 'rating'],
    ['rating=7 kV', 'rating'],
    ['tol=a few', 'tol'],
    ['vdc=12 W', 'vdc'],
    [`value=${'1'.repeat(80)}`, 'value'],
  ])('%s is said to be wrong, kept as typed, and the usual number counts', (query, key) => {
    const wrong = field(key, query);
    expect(wrong?.text).toBe(new URLSearchParams(query).get(key));
    expect(wrong?.message).toMatch(/^[A-Z“].*\. Until then .+ counts\.$/);
    const { request } = asked(query);
    expect(Object.values(request.conditions ?? {})).toEqual([]);
    expect(request.original.value ?? request.original.rating ?? request.original.tolerance).toBe(
      undefined,
    );
  });

  test('conditions that follow the old part follow what is said of it', () => {
    const usual = field('vdc', '');
    expect(usual?.from).toBe('derived');
    expect(field('vdc', 'rating=2')?.text).not.toBe(usual?.text);
    expect(field('old-total', 'value=22k', 'carbon-preset', 'gain-trim')?.text).toBe('22\u00A0kΩ');
  });
});

test('what a field shows is understood as the same number', () => {
  for (const { type, position, pairing } of allKindPairings(catalogue)) {
    if (!pairing.met) continue;
    const shown = fieldsOf('', type.id, position.id);
    const query = new URLSearchParams(shown.map(({ key, text }) => [key, text])).toString();
    const again = fieldsOf(query, type.id, position.id);
    expect(again.map(({ text, message }) => [text, message])).toEqual(
      shown.map(({ text }) => [text, undefined]),
    );
    expect(again.every(({ from }) => from === 'given')).toBe(true);
  }
});
