import { describe, expect, test } from 'vitest';
import { originOf, resistanceOf } from '../../../src/engine/findings/series-resistance.ts';
import { temperature } from '../../../src/engine/findings/temperature.ts';
import type { SeriesResistanceRow } from '../../../src/schemas/sizes.ts';
import { given, known, notKnown } from '../assessment/setting.ts';
import { base, holdTo, holdUnknown, made, single, span, tryOut, type ByHand } from './by-hand.ts';
import { probeIn, type Spoiling } from './probe.ts';
import { resistanceRow } from './probe-rows.ts';

/** Stand-ins that are made of two parts, and series resistance, worked out by hand. */

const RESISTANCE = 'esr-100khz';
const INDUCTANCE = 'inductance';
const one = { ...single, capacitance: 1e-6 };
const two = { ...single, capacitance: 2e-6 };

const resistance = (capacitance: number, more: Partial<SeriesResistanceRow> = {}) =>
  resistanceRow({ capacitance, frequency_hz: 1e5, ...more });

/** Insulation of 1, 4 and 9 s: as many megohm of a microfarad; 10 V at the most. */
const leaking = (part: NonNullable<Spoiling['part']>): Spoiling => ({
  part,
  figures: {
    'insulation-rc': known(span(1, 4, 9)),
    'insulation-halving': notKnown,
    'leakage-floor': notKnown,
  },
  conditions: { vdc: span(2, 5, 10), ...given({ 't-max': 25 }) },
});
const insulation = { properties: ['insulation-rc'] };

const losses = {
  'dissipation-factor-120hz': notKnown,
  'dissipation-factor-1khz': notKnown,
  'dissipation-factor-1mhz': notKnown,
};
const window = given({ 'esr-min': 0.1, 'esr-max': 10 });
const resisting = (part: NonNullable<Spoiling['part']>, more: Spoiling = {}): Spoiling => ({
  part,
  conditions: window,
  tables: { seriesResistance: [resistance(1e-6)] },
  ...more,
  figures: { ...losses, [RESISTANCE]: notKnown, ...more.figures },
});
const byRow = { properties: [], sources: ['sheet-of-resistances'], bases: ['published'] };

const cases: Record<string, ByHand> = {
  '1.11–10 µA through a microfarad, twice that through two, beside each other': {
    finding: 'leakage-current',
    spoiling: leaking(made({ kind: 'parallel' }, [one, two])),
    value: [3.3333e-6, 7.5e-6, 30e-6],
    figures: '1.11–10 µA, 2.22–20 µA, 10 V, 3.33–30 µA',
    ...insulation,
  },
  'half of 1.11–10 µA through two in a row': {
    finding: 'leakage-current',
    spoiling: leaking(made({ kind: 'series' }, [one, one])),
    value: [0.55556e-6, 1.25e-6, 5e-6],
    figures: '5 V, 0.556–5 µA',
    words: 'the same through both',
    ...insulation,
  },
  'and 10 V over twice a megohm through the resistors across them': {
    finding: 'leakage-current',
    spoiling: leaking(made({ kind: 'series', bleeder: 1e6 }, [one, one])),
    value: [5.55556e-6, 6.25e-6, 10e-6],
    figures: '0.556–5 µA, 5 V, 10 V, 2, 1 MΩ, 5.56–10 µA',
    words: 'through the resistors',
    ...insulation,
  },
  'all of it through one of two back to back': {
    finding: 'leakage-current',
    spoiling: leaking(made({ kind: 'back-to-back' }, [one, one])),
    value: [1.1111e-6, 2.5e-6, 10e-6],
    figures: '10 V, 1.11–10 µA',
    words: 'one of them has all',
    ...insulation,
  },
  'as through the part, with a resistor before it': {
    finding: 'leakage-current',
    spoiling: leaking(made({ kind: 'with-resistor', resistor: 10 }, [one])),
    value: [1.1111e-6, 2.5e-6, 10e-6],
    figures: '10 V, 1.11–10 µA',
    ...insulation,
  },
  'half the resistance of two alike beside each other': {
    finding: 'esr-window',
    spoiling: resisting(made({ kind: 'parallel' }, [one, { ...one }])),
    value: [0.25, 0.5, 1],
    figures: '0.25–1 Ω, 0.1 Ω, 10 Ω',
    words: 'for its value and voltage',
    ...byRow,
  },
  'twice of two in a row': {
    finding: 'esr-window',
    spoiling: resisting(made({ kind: 'series' }, [one, { ...one }])),
    value: [1, 2, 4],
    ...byRow,
  },
  'three ohm more with a resistor of three': {
    finding: 'esr-window',
    spoiling: resisting(made({ kind: 'with-resistor', resistor: 3 }, [one])),
    value: [3.5, 4, 5],
    ...byRow,
  },
  // 0.5, 1 and 2 ohm of the row and 1, 2 and 4 ohm of the type, in a row.
  'of one that is listed and one that is not, both grounds, and the weaker in words': {
    finding: 'esr-window',
    spoiling: resisting(made({ kind: 'series' }, [one, two]), {
      figures: { [RESISTANCE]: known(span(1, 2, 4)) },
    }),
    value: [1.5, 3, 6],
    words: 'as of its type',
    properties: [RESISTANCE],
    sources: ['sheet-of-resistances', 'trade'],
    bases: ['published', 'common-practice'],
  },
  // 2 % / (2π × 100 kHz × 2 µF) = 15.9 mΩ, and an ohm.
  'of one that is listed and one by its loss': {
    finding: 'esr-window',
    spoiling: resisting(made({ kind: 'series' }, [one, two]), {
      figures: { 'dissipation-factor-1mhz': known(0.02) },
    }),
    value: [0.515915, 1.015915, 2.015915],
    words: 'by the loss of its type at 100 kHz',
    properties: ['dissipation-factor-1mhz'],
    sources: ['sheet-of-resistances'],
    bases: ['published'],
  },
  // 1, 2 and 4 nH beside as much are half; 1 / (2π √(0.5, 1 and 2 nH × 1 µF)).
  'half the inductance of two beside each other': {
    finding: 'self-resonance',
    spoiling: {
      part: made({ kind: 'parallel' }, [one, { ...one }]),
      figures: { [INDUCTANCE]: known(span(1e-9, 2e-9, 4e-9)) },
      conditions: given({ 'f-work': 1e6 }),
    },
    // The whole is marked 1000 µF in all cases here.
    value: [112.54e3, 159.155e3, 225.08e3],
    figures: '1, 0.5–2 nH, 1000 µF, 113–225 kHz, 1 MHz',
    properties: [INDUCTANCE],
  },
};

describe('what is made of two', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  test('is not known by its resistance where one of them is not', () => {
    holdUnknown('esr-window', resisting(made({ kind: 'series' }, [one, two])), [RESISTANCE]);
    holdUnknown('esr-window', resisting(made({ kind: 'parallel' }, [two, one])), [RESISTANCE]);
  });

  test('is not known by its leakage where none is', () => {
    const spoiling = leaking(made({ kind: 'parallel' }, [one, two]));
    holdUnknown('leakage-current', { ...spoiling, figures: { 'insulation-rc': notKnown } }, [
      'insulation-rc',
    ]);
  });
});

describe('series resistance by the loss', () => {
  // tan δ / (2π f C): 1 % at 1 kHz of 800, 1000 and 1250 nF, the least resistance of the largest.
  test('1 to 4 % of a microfarad and its tolerance, at the frequency that is asked', () => {
    const { part, circumstances } = probeIn(base, {
      part: { ...one, tolerance: { minus: 0.2, plus: 0.25 } },
      figures: {
        ...losses,
        'dissipation-factor-1khz': known(span(0.01, 0.02, 0.04)),
        [RESISTANCE]: notKnown,
      },
    });
    const at = (hertz: number) => resistanceOf(part, circumstances, hertz);
    expect(at(1000)?.range.min).toBeCloseTo(1.2732, 3);
    expect(at(1000)?.range.typ).toBeCloseTo(3.1831, 3);
    expect(at(1000)?.range.max).toBeCloseTo(7.9577, 3);
    expect(at(2000)?.range.typ).toBeCloseTo(1.5915, 3);
    expect(at(1000)).toBe(at(1000));
    expect(at(1000)).toMatchObject({
      by: 'loss',
      properties: ['dissipation-factor-1khz'],
      sources: [],
      bases: [],
    });
  });

  test('says where it is from', () => {
    const rest = { range: span(1, 1, 1), properties: [], sources: [], bases: [] };
    const said = (['value', 'type', 'loss'] as const).map((by) =>
      originOf({ ...rest, by }, 2000).replaceAll('\u00A0', ' '),
    );
    expect(new Set(said).size).toBe(3);
    expect(said[2]).toContain('2 kHz');
  });
});

describe('kelvin to spare', () => {
  test.each([
    // Ten kelvin are a factor of two, as the life of a wet part goes.
    ['at the limit', 0, 0, 1],
    ['ten kelvin short of it', -10, 0, 2],
    ['twenty to spare', 20, 0, 0.25],
    ['ten short of five to spare', -5, 5, 2],
  ])('%s', (_what, value, low, beyond) => {
    expect(temperature.beyond?.(value, { low }, base.catalogue)).toBeCloseTo(beyond, 9);
  });

  test('a limit of none is one of zero', () => {
    expect(temperature.beyond?.(-10, {}, base.catalogue)).toBeCloseTo(2, 9);
  });

  test('both ends that are not known are told', () => {
    holdUnknown(
      'temperature',
      { figures: { 'temperature-min': notKnown, 'temperature-max': notKnown } },
      ['temperature-min', 'temperature-max'],
    );
  });

  // Rated −40 (−30 to −50) to 85 (75 to 95) degC; −20 to 70 degC of −25 to −15 and 60 to 70.
  test('are counted at the ends of what it may see', () => {
    const { outcome, figures } = tryOut('temperature', {
      figures: {
        'temperature-min': known(span(-50, -40, -30)),
        'temperature-max': known(span(75, 85, 95)),
      },
      conditions: { 't-min': span(-25, -20, -15), 't-max': span(60, 65, 70) },
    });
    expect(outcome).toMatchObject({ value: { min: 5, typ: 15, max: 25 } });
    expect(figures).toBe('−40 °C, 85 °C, −25 °C, 70 °C, 15 K');
  });
});
