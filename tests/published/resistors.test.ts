import { describe, expect, test } from 'vitest';
import { powerShare, voltageStood } from '../../src/engine/equations/resistor.ts';
import { atWiper, greaterOf, presetOf, wiperCurrent } from '../../src/engine/equations/trimmer.ts';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { knowledgeOf } from '../../src/engine/findings/model.ts';

const catalogue = loadCatalogue();

/** A figure of a type, SI, as an assessment takes it. */
const known = (type: string, property: string, part: { value?: number; rating?: number } = {}) => {
  const found = knowledgeOf({ catalogue }, { type, ...part }, property);
  return found.status === 'known' ? found.range : undefined;
};

describe('resistors against published figures', () => {
  test.each([
    ['carbon film, quarter watt (CFR data sheet)', 'carbon-film', 0.25, 250],
    ['carbon film, half watt (CFR data sheet, earlier issue)', 'carbon-film', 0.5, 350],
    ['metal film, half watt (MF specification, table 1)', 'metal-film', 0.5, 300],
    ['fusible film, 0.33 W (fusible resistors data sheet)', 'fusible-film', 0.33, 250],
  ])('voltage limit: %s', (_what, type, rating, volts) => {
    expect(known(type, 'voltage-limit', { rating })?.typ).toBe(volts);
  });

  test('1 MΩ of a quarter watt stands 250 V, its limit (CFR data sheet)', () => {
    expect(voltageStood(1e6, 0.25, 250)).toBe(250);
  });
});

describe('trimmers against published figures', () => {
  const MULTI = 'cermet-multiturn';

  test('adjustability at 10 V: 1 mV of 25 turns, 5 mV of one (data sheets of both)', () => {
    expect(10 * (known(MULTI, 'adjust-divider')?.typ ?? 0)).toBeCloseTo(0.001, 9);
    expect(10 * (known('cermet-preset', 'adjust-divider')?.typ ?? 0)).toBeCloseTo(0.005, 9);
  });

  test('contact resistance variation of 10 kΩ: 100 Ω; end resistance of 100 Ω: 2 Ω (data sheet)', () => {
    const of = (share: string, least: string, total: number): number =>
      greaterOf(known(MULTI, share)?.typ ?? 0, known(MULTI, least)?.typ ?? 0, total);
    expect(of('contact-share', 'contact-ohm', 10e3)).toBeCloseTo(100, 9);
    expect(of('end-share', 'end-ohm', 100)).toBeCloseTo(2, 9);
  });

  test('0.5 W at 70 °C are 0.25 W at 97.5 °C (data sheet of the 25 turns)', () => {
    const knee = known(MULTI, 'full-power-to')?.typ ?? 0;
    const end = known(MULTI, 'no-power-from')?.typ ?? 0;
    expect(0.5 * (powerShare(knee, end, 97.5) ?? 0)).toBeCloseTo(0.25, 9);
  });

  test('0.5 W in 10 kΩ: 70.7 V (MIL-PRF-22097J, 3.6), and 2 kΩ of it take 0.1 W (3.5)', () => {
    expect(voltageStood(10e3, 0.5, 300)).toBeCloseTo(70.7, 1);
    expect(wiperCurrent(0.5, 10e3) ** 2 * 2e3).toBeCloseTo(0.1, 9);
  });

  test('10 kΩ over 40 K: 40 Ω by its slope (data sheet)', () => {
    expect(10e3 * 40 * (known(MULTI, 'resistance-tc')?.max ?? 0)).toBeCloseTo(40, 9);
  });

  test('3.3 kΩ of a new 9.6 kΩ with 25 turns: 8.59 turns from the end', () => {
    const turns = known(MULTI, 'turns')?.typ ?? 0;
    const preset = { use: 'rheostat', reading: 3300, oldTotal: 10e3, total: 9600, turns } as const;
    expect(presetOf(preset).fromEnd).toBeCloseTo(8.59, 2);
    expect(presetOf({ ...preset, reading: 5000, total: 10e3 }).fromEnd).toBeCloseTo(12.5, 9);
  });
});

test('open carbon presets above 1 MΩ have 30 %, others 20 % (PT-10 data sheet, table)', () => {
  const offers = catalogue.kindOffers.filter(({ type }) => type === 'carbon-preset');
  const at = (ohm: number) =>
    offers.find((one) => ohm >= (one.value_min ?? 0) && ohm <= (one.value_max ?? Infinity));
  expect(at(2.2e6)?.tolerances).toEqual(['30']);
  expect(at(1e6)?.tolerances).toEqual(['20']);
});

test('metal film moves by 0.003 % in 100 V, carbon film by ten times that (paper on noise and voltage)', () => {
  expect(100 * (known('metal-film', 'voltage-change')?.max ?? 0)).toBeCloseTo(0.00003, 9);
  expect(100 * (known('carbon-film', 'voltage-change')?.max ?? 0)).toBeCloseTo(0.0003, 9);
});

describe('arithmetic of trimmers against printed answers', () => {
  /** Share of the total, per cent, in a degree of a part with so many turns. */
  const percentPerDegree = (turns: number): number => {
    const { perTurn } = presetOf({ use: 'rheostat', reading: 0, oldTotal: 1, total: 100, turns });
    return perTurn / 360;
  };

  test.each([
    ['one turn of 270 degrees (table of a seller)', 270 / 360, 0.37, 2],
    ['twenty turns (table of a seller)', 20, 0.014, 3],
  ])('share of the total in a degree: %s', (_what, turns, printed, digits) => {
    expect(percentPerDegree(turns)).toBeCloseTo(printed, digits);
  });

  test.each([
    ['end resistance of 10 kΩ: 20 Ω or 2 % (MIL-PRF-22097J, 3.7.2)', 0.02, 20, 10e3, 200],
    [
      'contact variation of 100 Ω, characteristic C: 3 % or 20 Ω (MIL-PRF-39035E, 3.9)',
      0.03,
      20,
      100,
      20,
    ],
  ])('whichever is greater: %s', (_what, share, ohm, total, printed) => {
    expect(greaterOf(share, ohm, total)).toBeCloseTo(printed, 9);
  });

  test('3.2 V of 8 V are a setting of 40 % (MIL-PRF-39015E, 4.8.11.1)', () => {
    const preset = { use: 'divider', reading: 3.2, oldTotal: 8, total: 8, turns: 25 } as const;
    expect(presetOf(preset).ratio).toBeCloseTo(0.4, 9);
    expect(presetOf({ ...preset, total: 10e3 }).newRatio).toBeCloseTo(0.4, 9);
  });

  test('10 kΩ with 25 turns: 12.5 turns at mid travel, 400 Ω a turn (data sheet of the 25 turns)', () => {
    const preset = {
      use: 'rheostat',
      reading: 5e3,
      oldTotal: 10e3,
      total: 10e3,
      turns: 25,
    } as const;
    expect(presetOf(preset)).toMatchObject({ fromEnd: 12.5, perTurn: 400 });
    expect(known('cermet-multiturn', 'turns')?.typ).toBe(25);
  });

  test('a carbon preset of 10 mm acts over 220 degrees (overview of rotation angles)', () => {
    expect((known('carbon-preset', 'turns')?.typ ?? 0) * 360).toBeCloseTo(220, 0);
  });
});

describe('a trimmer under load against printed answers', () => {
  const at = (total: number, setting: number, load: number, bias = 0) =>
    atWiper({ total, setting, voltage: 10, load, bias });

  test.each([
    // Printed as bounds on what 10 kΩ lose, of the whole voltage, at the worst setting.
    [20e3, 0.075],
    [200e3, 0.0075],
    [1e6, 0.0015],
  ])('10 kΩ with %d Ω lose less than %f of the whole voltage (a page on pots)', (load, bound) => {
    const settings = Array.from({ length: 1001 }, (_none, index) => index / 1000);
    const worst = Math.max(
      ...settings.map((setting) => {
        const { ideal, out } = at(10e3, setting, load);
        return (ideal - out) / 10;
      }),
    );
    expect(worst).toBeLessThan(bound);
    expect(worst).toBeGreaterThan(bound * 0.85);
  });

  test.each([
    // Printed to the millivolt, by a text on circuit analysis.
    [1e6, 0.1, 100, 0.001, 3],
    [1e6, 0.5, 100, 0.002, 4],
    [1e6, 0.9, 100, 0.01, 2],
    [100, 0.5, 1e6, 5, 3],
  ])('%d Ω set to %f with %d Ω gives %f V of 10 V', (total, setting, load, printed, digits) => {
    expect(at(total, setting, load).out).toBeCloseTo(printed, digits);
  });

  test('80 nA, the printed bias current of a 741, are 80 mV in 1 MΩ', () => {
    const { ideal, out, source } = at(4e6, 0.5, 1e15, 80e-9);
    expect(source).toBe(1e6);
    expect(ideal - out).toBeCloseTo(0.08, 6);
  });
});
