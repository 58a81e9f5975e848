import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readAddress } from '../../src/substitution/address.ts';
import { readKindAddress } from '../../src/substitution/kind-address.ts';

/**
 * A coldest above the warmest would leave a part no span to drift over, and any part would bear it; a
 * least resistance above the largest is met by none. A bulk capacitor is used from 15 to 50 °C unless
 * somebody says otherwise, one behind a regulator with 0.1 to 5 ohm, a plate load from 15 to 55 °C.
 * An electrolytic of 100 µF 25 V has no more than 2.7 ohm by its printed loss, so that the 5 ohm count.
 */

const catalogue = loadCatalogue();

const read = (position: string, query: string) =>
  readAddress(catalogue, 'al-electrolytic-wet', position, new URLSearchParams(query));

const usual = (position: string, condition: string): number =>
  catalogue.conditions.find((row) => row.position === position && row.condition === condition)
    ?.typ ?? NaN;

test('what is usual is as these cases take it', () => {
  expect(['t-min', 't-max'].map((id) => usual('bulk-rail', id))).toEqual([15, 50]);
  expect(['esr-min', 'esr-max'].map((id) => usual('regulator-output', id))).toEqual([0.1, 5]);
  expect(['t-min', 't-max'].map((id) => usual('plate-load', id))).toEqual([15, 55]);
});

describe('numbers of a pair that go together', () => {
  test.each([
    ['bulk-rail', 't-min=50', { 't-min': 50 }],
    ['bulk-rail', 't-max=15', { 't-max': 15 }],
    ['bulk-rail', 't-min=70&t-max=80', { 't-min': 70, 't-max': 80 }],
    ['bulk-rail', 't-min=-20&t-max=-10', { 't-min': -20, 't-max': -10 }],
    ['regulator-output', 'esr-min=10&esr-max=20', { 'esr-min': 10, 'esr-max': 20 }],
    // One of 10 µF 25 V has up to 10.6 ohm at 100 kHz: as much as its regulator has borne.
    ['regulator-output', 'c=10u&v=25&esr-min=10', { 'esr-min': 10 }],
  ])('%s %s are taken', (position, query, taken) => {
    const { request, rejected } = read(position, query);
    expect(rejected).toEqual({});
    expect(
      Object.fromEntries(
        Object.entries(request.conditions ?? {}).map(([id, { typ }]) => [id, typ]),
      ),
    ).toEqual(taken);
  });
});

describe('numbers of a pair that contradict each other', () => {
  test.each([
    ['bulk-rail', 't-min=51', ['t-min'], /no more than “Warmest”, 50\s°C/u],
    ['bulk-rail', 't-max=14', ['t-max'], /no less than “Coldest”, 15\s°C/u],
    // The last of two is refused, and the other where it contradicts what is usual as well.
    ['bulk-rail', 't-min=40&t-max=20', ['t-max'], /no less than “Coldest”, 40\s°C/u],
    ['bulk-rail', 't-min=90&t-max=80', ['t-max', 't-min'], /no less than “Coldest”, 90\s°C/u],
    ['regulator-output', 'c=100u&v=25&esr-min=10', ['esr-min'], /no more than “Largest .*”, 5\sΩ/u],
  ])('%s %s: %j', (position, query, refused, says) => {
    const { request, rejected } = read(position, query);
    expect(Object.keys(rejected)).toEqual(refused);
    expect(rejected[refused[0] ?? '']?.message).toMatch(says);
    expect(rejected[refused[0] ?? '']?.text).toBe(new URLSearchParams(query).get(refused[0] ?? ''));
    for (const id of refused) expect(request.conditions).not.toHaveProperty(id);
  });

  test('are refused of other kinds of part as well', () => {
    const query = new URLSearchParams('t-min=56');
    const { request, rejected } = readKindAddress(catalogue, 'carbon-film', 'plate-load', query);
    expect(rejected['t-min']?.message).toMatch(/no more than “Warmest”, 55\s°C/u);
    expect(request.conditions).toEqual({});
  });
});
