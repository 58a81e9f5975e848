import { describe, expect, test } from 'vitest';
import { heatFor } from '../../../src/engine/findings/heating.ts';
import type { Range } from '../../../src/engine/quantities/range.ts';
import type { BodyRow } from '../../../src/schemas/sizes.ts';
import { given, known, notKnown } from '../assessment/setting.ts';
import { base, holdTo, holdUnknown, made, single, span, type ByHand } from './by-hand.ts';
import { probeIn, type Spoiling } from './probe.ts';
import {
  LISTED,
  LISTED_BASES,
  at100Hz,
  byFrequency,
  byTemperature,
  can,
  from,
  listed,
  part,
  resistance,
  ripple,
  tables,
} from './heat-probe.ts';

/** What ripple warms and wears out, worked out by hand for an invented part of 1000 µF 25 V. */

const HIGHEST = 'temperature-max';

const parallel: NonNullable<Spoiling['part']> = {
  ...made({ kind: 'parallel' }, [
    { ...single, ratedVoltage: 25, capacitance: 2e-3 },
    { ...single, ratedVoltage: 25, capacitance: 1e-3 },
  ]),
  ...{ capacitance: 3e-3, ratedVoltage: 25 },
};

/** Beside it one of twice the value: a fifth of its resistance, in a can of the same size. */
const withLarger: NonNullable<Spoiling['tables']> = {
  ...tables,
  bodies: [{ ...can, c_max: 2e-3 }],
  seriesResistance: [
    resistance,
    { ...resistance, capacitance: 2e-3, esr_min: 0.2, esr_typ: 0.2, esr_max: 0.2 },
  ],
};

const HOURS = 3600;

/** 0.2966 A in one ohm are 88 mW: 8 K at the surface, 10 K in the core. */
const tenKelvin: NonNullable<Spoiling['conditions']> = given({ 'ripple-current': 0.29658 });
const oneOhm: NonNullable<Spoiling['tables']> = {
  ...tables,
  seriesResistance: [{ ...resistance, esr_min: 1, esr_max: 1 }],
};

const lived: Spoiling = {
  part,
  tables: oneOhm,
  figures: {
    'rated-life': known(span(1000 * HOURS, 2000 * HOURS, 4000 * HOURS)),
    [HIGHEST]: known(85),
    'life-doubling': notKnown,
    'rise-halving': notKnown,
  },
  conditions: {
    ...tenKelvin,
    ...given({ 'f-work': 100, vdc: 12.5 }),
    't-max': span(45, 55, 65),
    // Nine to eleven years of 8766 h at 40 to 60 % of the time: at most 57 856 h.
    years: span(9 * 8766 * HOURS, 10 * 8766 * HOURS, 11 * 8766 * HOURS),
    duty: span(0.4, 0.5, 0.6),
  },
};

const cases: Record<string, ByHand> = {
  // Over 10.995 mW/K, times 1.25: 5 mW, 40 mW and 320 mW.
  '0.1² × 0.5, 0.2² × 1 and 0.4² × 2 ohm warm a can, and its core by a quarter more': {
    finding: 'ripple-heating',
    spoiling: { part, tables, conditions: { ...at100Hz, ...ripple } },
    value: [0.5684, 4.5475, 36.38],
    figures: '200 mA, 0.5–2 Ω, 40 mW, 10, 20 mm, 1.25 ×, 0.568–36.4 K',
    words: 'for its value and voltage',
    properties: [],
    sources: LISTED,
    bases: LISTED_BASES,
  },
  'a core that nobody speaks of warms as much as its surface': {
    finding: 'ripple-heating',
    spoiling: {
      part,
      tables: { ...tables, coreRises: [] },
      conditions: { ...at100Hz, ...ripple },
    },
    value: [0.4548, 3.638, 29.104],
    figures: '200 mA, 0.5–2 Ω, 40 mW, 10, 20 mm, 0.455–29.1 K',
    properties: [],
    sources: ['sheet-of-resistances', 'sheet-of-bodies'],
    bases: ['published'],
  },
  // 1000 µF × 25 V over 50, 25 and 12.5 kC/m³ are 0.5, 1 and 2 cm³; a usual can, 1.6 times as high
  // as wide, has π × 1.85 × ∛(4 V / 1.6 π)² of surface: 3.146, 4.994 and 7.927 cm². It gives off
  // 5.753, 8.327 and 12.054 mW/K; what packs most is smallest and gets warmest.
  'a body that is estimated from what its type packs in': {
    finding: 'ripple-heating',
    spoiling: {
      part,
      tables: { ...tables, bodies: [], coreRises: [] },
      figures: { 'charge-density': known(span(12_500, 25_000, 50_000)) },
      conditions: { ...at100Hz, ...ripple },
    },
    value: [0.4148, 4.8036, 55.62],
    figures: '200 mA, 0.5–2 Ω, 40 mW, 0.415–55.6 K',
    words: 'estimated from the charge',
    properties: ['charge-density'],
    sources: ['sheet-of-resistances'],
    bases: ['published'],
  },
  // Of 0.3 A the larger carries 0.2 A: 8 mW in its 0.2 ohm; the smaller 0.1 A: 10 mW in its ohm.
  'of two beside each other the warmer one counts': {
    finding: 'ripple-heating',
    spoiling: {
      part: parallel,
      tables: { ...withLarger, coreRises: [] },
      conditions: { ...at100Hz, ...given({ 'ripple-current': 0.3 }) },
    },
    value: [0.4548, 0.9095, 1.819],
    figures: '100 mA, 0.5–2 Ω, 10 mW, 10, 20 mm, 0.455–1.82 K',
    properties: [],
    sources: ['sheet-of-resistances', 'sheet-of-bodies'],
    bases: ['published'],
  },
  // 0.4 A against 0.5 A that are taken to warm it by 10 K: 0.8² × 10 K.
  'no more than the listed current lets expect: 6.4 K instead of 36.4 K': {
    finding: 'ripple-heating',
    spoiling: {
      part,
      tables: { ...tables, seriesResistance: [listed()], rippleByFrequency: byFrequency },
      conditions: { ...at100Hz, ...ripple },
    },
    value: [0.5684, 4.5475, 6.4],
    figures: '200 mA, 0.5–2 Ω, 40 mW, 10, 20 mm, 1.25 ×, 0.568–6.4 K, 500 mA, 100 Hz, 85 °C',
    words: 'no more than',
    properties: [],
    sources: [...LISTED, 'sheet-of-frequencies'],
    bases: LISTED_BASES,
  },
  // 0.4 A against 1 A × 1.4 at 1 kHz: (0.4 / 1.4)² × 10 K.
  'nor usually more than that, 1.4 times as fast': {
    finding: 'ripple-heating',
    spoiling: {
      part,
      tables: {
        ...tables,
        seriesResistance: [listed({ ripple_a: 1 })],
        rippleByFrequency: byFrequency,
      },
      conditions: { ...given({ 'f-work': 1000, 't-max': 55 }), ...ripple },
    },
    value: [0.5684, 0.81633, 0.81633],
    figures: '200 mA, 0.5–2 Ω, 40 mW, 10, 20 mm, 1.25 ×, 0.568–0.816 K, 1 A, 100 Hz, 85 °C',
    properties: [],
    sources: [...LISTED, 'sheet-of-frequencies'],
    bases: LISTED_BASES,
  },
  // (0.4 / 0.15)² × 10 K = 71 K.
  'a listed current that lets expect more says nothing': {
    finding: 'ripple-heating',
    spoiling: {
      part,
      tables: {
        ...tables,
        seriesResistance: [listed({ ripple_a: 0.15 })],
        rippleByFrequency: byFrequency,
      },
      conditions: { ...at100Hz, ...ripple },
    },
    value: [0.5684, 4.5475, 36.38],
    figures: '200 mA, 0.5–2 Ω, 40 mW, 10, 20 mm, 1.25 ×, 0.568–36.4 K',
    properties: [],
    sources: LISTED,
    bases: LISTED_BASES,
  },
  // 0.5 A × 1.4 × 1.5 = 1.05 A.
  '105, 210 and 420 mA where the sheet allows 1.05 A so fast and so cool': {
    finding: 'ripple-current',
    spoiling: {
      part,
      tables: {
        ...tables,
        seriesResistance: [listed()],
        rippleByFrequency: byFrequency,
        rippleByTemperature: byTemperature,
      },
      conditions: {
        ...given({ 'f-work': 1000, 't-max': 65 }),
        'ripple-current': span(0.105, 0.21, 0.42),
      },
    },
    value: [0.1, 0.2, 0.4],
    figures: '105–420 mA, 500 mA, 100 Hz, 85 °C, 1.4, 1 kHz, 1.5, 65 °C, 10–40 %',
    words: 'costs life',
    properties: [],
    sources: ['sheet-of-resistances', 'sheet-of-frequencies', 'sheet-of-temperatures'],
    bases: ['published', 'memory'],
  },
  // A quarter of the resistance bears twice the current at equal heat.
  '0.2 A where 0.5 A × √(1 Ω / 0.25 Ω) is allowed, and no more in the cool': {
    finding: 'ripple-current',
    spoiling: {
      part,
      tables: {
        ...tables,
        seriesResistance: [
          listed(),
          {
            ...resistance,
            frequency_hz: 1000,
            esr_min: 0.2,
            esr_typ: 0.25,
            esr_max: 0.3,
            ...from('sheet-of-impedances', 'memory'),
          },
        ],
      },
      conditions: given({ 'f-work': 1000, 't-max': 65, 'ripple-current': 0.2 }),
    },
    value: [0.2, 0.2, 0.2],
    figures: '200 mA, 500 mA, 100 Hz, 85 °C, 2, 1 kHz, 1, 65 °C, 20 %',
    properties: [],
    sources: ['sheet-of-resistances', 'sheet-of-impedances'],
    bases: ['published', 'memory'],
  },
  // Ten kelvin in the core are eight at the surface: 88 mW; √(88 mW / 2, 1, 0.5 Ω).
  'without a listed current, what warms the core by ten kelvin: 210, 297 and 419 mA': {
    finding: 'ripple-current',
    spoiling: { part, tables, conditions: { ...at100Hz, ...given({ 'ripple-current': 0.1 }) } },
    value: [0.2384, 0.3372, 0.4768],
    figures: '100 mA, 210–419 mA, 10 K, 23.8–47.7 %',
    words: 'an estimate',
    properties: [HIGHEST],
    sources: LISTED,
    bases: [...LISTED_BASES, 'common-practice'],
  },
  'five kelvin below its highest temperature it bears five: 1/√2 of that': {
    finding: 'ripple-current',
    spoiling: {
      part,
      tables,
      figures: { [HIGHEST]: known(span(50, 60, 90)) },
      conditions: { ...at100Hz, ...given({ 'ripple-current': 0.1 }) },
    },
    value: [0.3372, 0.4768, 0.6743],
    figures: '100 mA, 148–297 mA, 5 K, 33.7–67.4 %',
    properties: [HIGHEST],
    sources: LISTED,
    bases: [...LISTED_BASES, 'common-practice'],
  },
  // A hundredth of a kelvin is a thousandth of ten: 1/31.6 of the current.
  'above its highest temperature it bears next to nothing, but not nothing': {
    finding: 'ripple-current',
    spoiling: {
      part,
      tables: oneOhm,
      figures: { [HIGHEST]: known(50) },
      conditions: { ...at100Hz, ...given({ 'ripple-current': 0.1 }) },
    },
    value: [10.66, 10.66, 10.66],
    figures: '100 mA, 9.38 mA, 0.01 K, 1070 %',
    properties: [HIGHEST],
    sources: LISTED,
    bases: [...LISTED_BASES, 'common-practice'],
  },
  // The larger bears √(110 mW / 0.2 Ω) = 741 mA and has 0.2 A; the smaller 332 mA and has 0.1 A.
  'of two beside each other the one that is loaded most counts': {
    finding: 'ripple-current',
    spoiling: {
      part: parallel,
      tables: { ...withLarger, coreRises: [] },
      conditions: { ...at100Hz, ...given({ 'ripple-current': 0.3 }) },
    },
    value: [0.2132, 0.3016, 0.4265],
    figures: '100 mA, 1000 µF, 234–469 mA, 10 K, 21.3–42.6 %',
    properties: [HIGHEST],
    sources: ['sheet-of-resistances', 'sheet-of-bodies'],
    bases: ['published', 'common-practice'],
  },
  // Half the voltage counts as 60 %: 0.6^-2.5 = 3.586, for the worst part not at all.
  // 1000 h × 2^(2 - 1), 2000 h × 2^(3 - 1) × 3.586 and 4000 h × 2^(4 - 1) × 3.586:
  // 2000 h, 28 689 h and 114 756 h.
  '57 856 h of use by a life of ten kelvin a doubling, in the air and of its own heat': {
    finding: 'life',
    spoiling: lived,
    value: [0.5042, 2.0167, 28.928],
    figures: '1000–4000, 85 °C, 55 °C, 10 K, 3.59, 0.228–13.1 years, 10 years, 50 %, 50.4–2890 %',
    properties: ['rated-life', HIGHEST],
    sources: LISTED,
    bases: LISTED_BASES,
  },
  // 1000 h × 2^(20/20 - 10/5), 2000 h × 2^(30/20 - 1) × 3.586, 4000 h × 2^(40/20 - 10/20) × 3.586:
  // 500 h, 10 143 h and 40 573 h.
  'the same by figures of its own for the air and for its heat': {
    finding: 'life',
    spoiling: {
      ...lived,
      figures: {
        ...lived.figures,
        'life-doubling': known(span(10, 20, 40)),
        'rise-halving': known(span(5, 10, 20)),
      },
    },
    value: [1.426, 5.704, 115.71],
    properties: ['rated-life', HIGHEST],
    sources: LISTED,
    bases: LISTED_BASES,
  },
  // Ten times the current is a hundred times the heat: a thousand kelvin, and 2^-100 of the life at best.
  'a part that boils has no life, and its share is not counted on': {
    finding: 'life',
    spoiling: {
      ...lived,
      conditions: { ...lived.conditions, ...given({ 'ripple-current': 2.9658 }) },
    },
    value: [1000, 1000, 1000],
    words: 'less than an hour of use',
    properties: ['rated-life', HIGHEST],
    sources: LISTED,
    bases: LISTED_BASES,
  },
  'nothing dries out where a life has no meaning': {
    finding: 'life',
    spoiling: { ...lived, figures: { 'rated-life': { status: 'not-applicable', sources: [] } } },
    value: [0, 0, 0],
    properties: [],
  },
};

describe('what ripple warms and wears out', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  const noBody = { ...tables, bodies: [] };
  const noDensity = { 'charge-density': notKnown };
  const noResistance = {
    'dissipation-factor-120hz': notKnown,
    'dissipation-factor-1khz': notKnown,
    'dissipation-factor-1mhz': notKnown,
  };
  const conditions = { ...lived.conditions, ...at100Hz };

  test.each<[string, string, Spoiling, string[]]>([
    ['ripple-heating', 'a size', { tables: noBody, figures: noDensity }, ['charge-density']],
    [
      'ripple-heating',
      'a resistance',
      { tables: { ...tables, seriesResistance: [] }, figures: noResistance },
      ['dissipation-factor-120hz'],
    ],
    ['ripple-current', 'a size', { tables: noBody, figures: noDensity }, ['charge-density']],
    ['life', 'a life', { ...lived, figures: { 'rated-life': notKnown } }, ['rated-life']],
    ['life', 'a temperature', { ...lived, figures: { [HIGHEST]: notKnown } }, ['rated-life']],
    ['life', 'a size', { ...lived, tables: noBody, figures: noDensity }, ['rated-life']],
  ])('%s is not known without %s', (id, _what, spoiling, missing) => {
    holdUnknown(id, { part, tables, conditions, ...spoiling }, missing);
  });

  test('of two, one of unknown size leaves the whole unknown, whichever it is', () => {
    const bodiesOf = (row: Partial<BodyRow>): Spoiling => ({
      part: parallel,
      tables: { ...withLarger, bodies: [{ ...can, ...row }] },
      figures: noDensity,
      conditions,
    });
    expect.hasAssertions();
    for (const id of ['ripple-heating', 'ripple-current']) {
      holdUnknown(id, bodiesOf({ c_max: 1e-3 }), ['charge-density']);
      holdUnknown(id, { ...bodiesOf({}), tables: noBody }, ['charge-density']);
    }
  });

  test('gives off 110 mW at ten kelvin from 7.069 cm², and an unknown amount from no size', () => {
    const heatIn = (spoiling: Spoiling): Range | undefined => {
      const probed = probeIn(base, { part, ...spoiling });
      return heatFor(probed.part, probed.circumstances, 10);
    };
    expect(heatIn({ tables })?.typ).toBeCloseTo(0.10995, 4);
    expect(heatIn({ tables: noBody, figures: noDensity })).toBeUndefined();
  });
});
