import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import type { KnownNumberRow } from '../../src/schemas/devices.ts';

const { devices } = loadCatalogue();
const { knownNumbers, devices: all, figures } = devices;

/** A device that a number without figures is compared with, and that a job may judge it by. */
interface Pair {
  row: KnownNumberRow;
  near: string;
}

const pairs: Pair[] = knownNumbers.flatMap((row) => row.near.map((near) => ({ row, near })));

const titled = (some: readonly Pair[]): [string, Pair][] =>
  some.map((pair) => [`${pair.row.number} by ${pair.near}`, pair]);

/** The figure of that words (V, A, mA) that a row promises, in its unit; a letter's or a list's own are none. */
const promised = (what: string, unit: string): number | undefined => {
  const [plain] = what.split(';');
  const found = new RegExp(String.raw`(?<![\d.])(\d+(?:\.\d+)?) ${unit}(?![a-zA-Z])`, 'u').exec(
    plain ?? '',
  );
  return found?.[1] === undefined ? undefined : Number(found[1]);
};

const greatest = (of: string, property: string): number | undefined =>
  figures.find((row) => row.of === of && row.property === property)?.max;

const functionOf = (id: string): string => all.find((device) => device.id === id)?.function ?? '';

/** Words that say what a transistor is, and the functions that such a one has. */
const KINDS: readonly [RegExp, RegExp][] = [
  [/\bgermanium NPN\b/u, /^npn-germanium$/u],
  [/\bgermanium PNP\b/u, /^pnp-germanium$/u],
  [/\bNPN\b(?<!germanium NPN)/u, /^npn/u],
  [/\bPNP\b(?<!germanium PNP)/u, /^pnp/u],
  [/\bN-channel JFET/u, /^n-jfet$/u],
  [/\bP-channel/u, /^p-/u],
  [/\ba single operational/u, /^single-amp$/u],
  [/\b(?:a dual|two) (?:\w+ )*(?:operational )?amplifiers?/u, /^dual-amp$/u],
  [/\ba quad (?:\w+ )*operational/u, /^quad-amp$/u],
];

describe('a device that a number without figures may be judged by', () => {
  it.each(titled(pairs))('%s is of its kind', (_, { row, near }) => {
    for (const [words, functions] of KINDS) {
      if (words.test(row.what)) expect(functionOf(near)).toMatch(functions);
    }
    expect(functionOf(near)).not.toBe('');
  });

  const withVolts = pairs.filter(
    ({ row, near }) =>
      promised(row.what, 'V') !== undefined &&
      (greatest(near, 'breakdown') ?? greatest(near, 'reverse-voltage')) !== undefined,
  );
  it.each(titled(withVolts))('%s: bears no less voltage', (_, { row, near }) => {
    const bears = greatest(near, 'breakdown') ?? greatest(near, 'reverse-voltage');
    expect(bears).toBeGreaterThanOrEqual(promised(row.what, 'V') ?? Number.NaN);
  });

  const withAmperes = pairs.filter(
    ({ row, near }) =>
      (promised(row.what, 'A') ?? promised(row.what, 'mA')) !== undefined &&
      (greatest(near, 'current-max') ?? greatest(near, 'forward-current')) !== undefined,
  );
  it.each(titled(withAmperes))('%s: carries no less current', (_, { row, near }) => {
    const amperes = promised(row.what, 'A') ?? (promised(row.what, 'mA') ?? Number.NaN) / 1000;
    const carries = (greatest(near, 'current-max') ?? Number.NaN) / 1000;
    expect(greatest(near, 'forward-current') ?? carries).toBeGreaterThanOrEqual(amperes);
  });

  it('there is none for a number whose voltage is written behind it', () => {
    const open = pairs.filter(({ row: { number } }) => /[#@]/u.test(number));
    expect(open.map(({ row, near }) => `${row.number} by ${near}`)).toEqual([]);
  });
});
