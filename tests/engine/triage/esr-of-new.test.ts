import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { esrOfNew } from '../../../src/engine/triage/esr-of-new.ts';
import { leakageLimit } from '../../../src/engine/triage/leakage-limit.ts';

const { esrOfNew: table, leakageLimits } = loadCatalogue();

describe('esrOfNew', () => {
  // Printed: an instrument's guide gives 2.0 Ω for 100 µF 10 V, which is a loss of 15 % at 120 Hz
  // (1.99 Ω); a table of worst-case readings gives 0.32 Ω for 100 µF 25 V.
  it.each([
    ['standard-grade', 1e-4, 10, 2, 0.001],
    ['standard-grade', 1e-4, 25, 1.38, 0.02],
    ['worst-case', 1e-4, 25, 0.32, 0.001],
    ['worst-case', 1e-4, 6.3, 1.2, 0.001],
    ['worst-case', 1e-3, 400, 0.06, 0.001],
    ['worst-case', 4.7e-5, 50, 0.61, 0.02],
  ] as const)('%s, %f F, %f V: %f Ω', (grade, farad, volt, ohm, within) => {
    expect(Math.abs((esrOfNew(table, grade, farad, volt) ?? NaN) / ohm - 1)).toBeLessThan(within);
  });

  it('says nothing about values that no rating is tabulated at', () => {
    expect(esrOfNew(table, 'worst-case', 0.1e-6, 50)).toBeUndefined();
    expect(esrOfNew(table, 'worst-case', 0.1, 16)).toBeUndefined();
  });

  it('does not go by the order of the rows', () => {
    const about = (rows: typeof table): (number | undefined)[] =>
      [0.5e-6, 3e-6, 4.7e-5, 1e-4, 3e-4, 2e-3].flatMap((farad) =>
        [6.3, 20, 50, 300].map((volt) => esrOfNew(rows, 'worst-case', farad, volt)),
      );
    expect(about(table.toReversed())).toEqual(about(table));
    const shuffled = table.toSorted((a, b) => ((a.esr * 7919) % 1) - ((b.esr * 7919) % 1));
    expect(about(shuffled)).toEqual(about(table));
  });

  it('stays within the tabulated readings', () => {
    const all = table.map(({ esr }) => esr);
    fc.assert(
      fc.property(
        fc.double({ min: 1e-7, max: 0.02, noNaN: true }),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (farad, volt) => {
          const ohm = esrOfNew(table, 'worst-case', farad, volt);
          expect(ohm === undefined || (ohm >= Math.min(...all) && ohm <= Math.max(...all))).toBe(
            true,
          );
        },
      ),
    );
  });
});

describe('leakageLimit', () => {
  it.each([
    ['al-electrolytic-wet', 1e-4, 25, 25e-6],
    ['al-electrolytic-wet', 1e-6, 50, 3e-6],
    ['al-electrolytic-wet', 32e-6, 350, 249e-6],
    ['ta-mno2-solid', 1e-5, 16, 1.6e-6],
    ['al-low-leakage', 1e-6, 50, 0.4e-6],
  ])('%s, %f F, %f V: %f A', (type, farad, volt, ampere) => {
    expect(leakageLimit(leakageLimits, type, farad, volt)).toBeCloseTo(ampere, 9);
  });

  it.each([
    [16, 3e-6],
    [16.1, undefined],
    [25, undefined],
    [35, 9e-6],
    [63, 9e-6],
    [64, undefined],
  ])('a band holds its upper rating and not its lower one: %f V', (volt, ampere) => {
    const band = { types: ['glass'], per_charge: 0, added: 0, least: 0, minutes: 2 };
    const made = { ...band, source: 'trade', locator: '', basis: 'memory', note: '' } as const;
    const bands = [
      { ...made, v_from: 0, v_to: 16, added: 3 },
      { ...made, v_from: 25, v_to: 63, added: 9 },
    ];
    expect(leakageLimit(bands, 'glass', 1e-6, volt)).toBe(ampere);
  });

  it('has no limit for film', () => {
    expect(leakageLimit(leakageLimits, 'pet-metallized', 1e-7, 63)).toBeUndefined();
  });
});
