import { describe, expect, test } from 'vitest';
import { assess, resolveSituation, type Assessment } from '../../../src/engine/index.ts';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, given } from '../assessment/setting.ts';
import { findingOf, workingOf } from '../assessment/finding-of.ts';

/** A reservoir of 1000 µF 25 V on a small rectifier and a stiff transformer, replaced. */
const reservoir = (capacitance: number): Assessment =>
  assess(
    catalogue,
    {
      original: {
        type: 'al-electrolytic-wet',
        capacitance: exactly(1000e-6),
        ratedVoltage: exactly(25),
        tolerance: { minus: 0.2, plus: 0.2 },
      },
      position: 'reservoir',
      conditions: given({ 'v-surge': 22, 'source-resistance': 0.2, 'surge-current': 20 }),
    },
    { type: 'al-electrolytic-wet', capacitance },
  );

describe('surge at switch-on', () => {
  test('the same value fits, ten times the value does not', () => {
    expect(findingOf(reservoir(1000e-6), 'inrush').verdict).toBe('fits');
    expect(findingOf(reservoir(10_000e-6), 'inrush').verdict).toBe('stopgap');
  });

  test('what the old part drew is allowed where it is more than the rating', () => {
    const { limit, original } = findingOf(reservoir(1000e-6), 'inrush');
    expect(limit?.high).toBe(Math.max(20, original?.max ?? 0));
  });

  test('the working carries the numbers', () => {
    expect(workingOf(reservoir(2200e-6), 'inrush')).toBe(
      '22 V / (0.2 Ω + 93.8 mΩ for its value and voltage) = 74.9 A at the first instant; as hot ' +
        'as a half sine of 16.3–25 A for 8.3 ms; charge 2.2 × that of the old part, energy 532 mJ',
    );
  });
});

describe('ripple and life', () => {
  /** A rail of 25 V parts with 1 A, 55 °C, ten years at a quarter of the time. */
  const rail = (type: string, capacitance: number, vdc = 18): Assessment =>
    assess(
      catalogue,
      {
        original: {
          type: 'al-electrolytic-wet',
          capacitance: exactly(2200e-6),
          ratedVoltage: exactly(25),
        },
        position: 'reservoir',
        conditions: given({ vdc, 'load-current': 0.3, 'ripple-current': 0.6, 't-max': 55 }),
      },
      { type, capacitance, ratedVoltage: 25 },
    );

  test('half the capacitance lets twice the ripple through', () => {
    const [whole, half] = [2200e-6, 1100e-6].map((farad) =>
      findingOf(rail('al-electrolytic-wet', farad), 'ripple-voltage'),
    );
    expect(half?.standIn?.typ).toBeCloseTo(2 * (whole?.standIn?.typ ?? 0), 9);
    expect(half?.standIn?.max).toBeCloseTo(2 * (whole?.standIn?.max ?? 0), 9);
  });

  test('a current that is not known for certain is one current, in the limit and in the finding', () => {
    const spread = assess(
      catalogue,
      {
        original: {
          type: 'al-electrolytic-wet',
          capacitance: exactly(2200e-6),
          ratedVoltage: exactly(25),
        },
        position: 'reservoir',
        conditions: {
          ...given({ 'ripple-allowed': 1e-3 }),
          'load-current': { min: 0.1, typ: 0.3, max: 0.9 },
        },
      },
      { type: 'al-electrolytic-wet', capacitance: 2200e-6, ratedVoltage: 25 },
    );
    const { standIn, limit } = findingOf(spread, 'ripple-voltage');
    const certain = findingOf(rail('al-electrolytic-wet', 2200e-6), 'ripple-voltage');
    // A reservoir may be an eighth less.
    const designed = 0.3 / (100 * 0.87 * 2200e-6);
    expect((standIn?.max ?? NaN) / (limit?.high ?? NaN)).toBeCloseTo(
      (certain.standIn?.max ?? NaN) / designed,
      1,
    );
  });

  test('a low-impedance part lasts longer than a general one', () => {
    const [general, better] = ['al-electrolytic-wet', 'al-electrolytic-low-esr'].map(
      (type) => findingOf(rail(type, 2200e-6), 'life').standIn?.typ ?? NaN,
    );
    expect(better).toBeLessThan(general ?? 0);
  });

  test('unused voltage lengthens the typical life, but not that of the worst part', () => {
    const [full, half] = [25, 12].map((vdc) =>
      findingOf(rail('al-electrolytic-wet', 2200e-6, vdc), 'life'),
    );
    expect(half?.standIn?.typ).toBeLessThan(full?.standIn?.typ ?? 0);
    expect(half?.standIn?.max).toBe(full?.standIn?.max);
  });

  test('nothing dries out in a solid part', () => {
    const solid = rail('ta-mno2-solid', 2200e-6);
    expect(findingOf(solid, 'life').standIn).toEqual(exactly(0));
    expect(workingOf(solid, 'life')).toBe('nothing in it dries out');
  });

  test('the workings carry the numbers', () => {
    const part = rail('al-electrolytic-wet', 2200e-6);
    expect(workingOf(part, 'ripple-voltage')).toMatch(
      /^300 mA \/ \(100 Hz × [\d.]+–[\d.]+ µF\) = .* V peak to peak, .* RMS$/,
    );
    expect(workingOf(part, 'ripple-heating')).toMatch(
      /^600 mA squared × 0\.0468–0\.187 Ω for its value and voltage = 33\.8 mW in a listed can of ⌀12\.5/,
    );
    expect(workingOf(part, 'life')).toMatch(/ at 55 °C and .* K of self-heating, × 2\.27 for/);
  });
});

describe('charge behind a regulator', () => {
  const behind = (old: number, capacitance: number, free?: number): Finding =>
    findingOf(
      assess(
        catalogue,
        {
          original: {
            type: 'al-electrolytic-wet',
            capacitance: exactly(old),
            ratedVoltage: exactly(25),
          },
          position: 'regulator-output',
          conditions: free === undefined ? {} : given({ 'diode-free': free }),
        },
        { type: 'al-electrolytic-wet', capacitance },
      ),
      'regulator-dump',
    );

  test.each([
    // The sheet of an adjustable regulator: none up to 25 µF, a reverse diode beyond.
    ['22 µF for 10 µF', 10e-6, 22e-6, undefined, 'fits'],
    ['33 µF for 10 µF', 10e-6, 33e-6, undefined, 'fits-if'],
    ['33 µF for 10 µF where a diode is there', 10e-6, 33e-6, 1, 'fits'],
    ['100 µF for 100 µF, which was borne', 100e-6, 100e-6, undefined, 'fits'],
    ['220 µF for 100 µF', 100e-6, 220e-6, undefined, 'fits-if'],
  ])('%s', (_what, old, next, free, verdict) => {
    expect(behind(old, next, free).verdict).toBe(verdict);
  });

  test('says which way round the diode goes, or to look for it', () => {
    expect(behind(10e-6, 33e-6).working).toContain('cathode to its input and anode to its output');
    expect(behind(100e-6, 100e-6).working).toContain('look for its reverse diode');
  });
});

describe('the current behind a reservoir, where none is given', () => {
  const loadOf = (farad: number, volt: number): number | undefined =>
    resolveSituation(catalogue, {
      original: {
        type: 'al-electrolytic-wet',
        capacitance: exactly(farad),
        ratedVoltage: exactly(volt),
      },
      position: 'reservoir',
    }).conditions.find(({ id }) => id === 'load-current')?.range.typ;

  test.each([
    // Its charge at the old rating over 0.3 s.
    ['a transistor supply', 2200e-6, 25, 0.1833],
    ['a valve supply', 32e-6, 450, 0.048],
    // An EZ80 rectifier valve gives 90 mA at most, with 50 µF at most.
    ['a valve supply at the limit of its rectifier', 50e-6, 450, 0.075],
    ['a power amplifier, no more than an ampere', 10e-3, 63, 1],
  ])('%s', (_what, farad, volt, ampere) => {
    expect((loadOf(farad, volt) ?? NaN) / ampere).toBeCloseTo(1, 2);
  });
});
