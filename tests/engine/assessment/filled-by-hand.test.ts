import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import { filledSum } from '../../../src/engine/assessment/filled-sum.ts';
import { isOfKind, type FilledSum } from '../../../src/engine/assessment/sum-fields.ts';
import type { Assessment } from '../../../src/engine/assessment/assess.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { SumInputRow } from '../../../src/schemas/sums.ts';
import { base, made, single, span } from '../findings/by-hand.ts';
import { PROBE, probeIn, type Spoiling } from '../findings/probe.ts';
import { catalogue, given, known, notKnown } from './setting.ts';

/** What a finding about an invented part of 1 µF 50 V puts into the fields of an invented sum. */

const FINDING = 'droop';
const SUM = 'invented-sum';
const provenance = { source: 'trade', locator: '', basis: 'common-practice' as const, note: '' };

const finding = (more: Partial<Finding> = {}): Finding => ({
  ...{ demand: 'invented', finding: FINDING, name: '', weight: 'hard', unit: 'V' },
  ...{ margin: 1, verdict: 'fits', missing: [], working: '', why: '', sources: [] },
  ...{ sure: 'sure', basis: 'published', weakest: [], standIn: exactly(2e-3) },
  ...more,
});

const row = (takes: SumInputRow['takes'], of: string[] = [], more: Partial<SumInputRow> = {}) => ({
  ...{ sum: SUM, input: 'field', takes, of, for: [] },
  ...more,
});

/** Loss of 1 % at 1 kHz: 1.592 ohm there; 2 ohm near 100 kHz. */
const figures = {
  'dissipation-factor-120hz': notKnown,
  'dissipation-factor-1khz': known(0.01),
  'dissipation-factor-1mhz': notKnown,
  'esr-100khz': known(2),
  'ac-share': known(0.5),
  dvdt: known(20e6),
};
const conditions = {
  ...given({ 'f-work': 1000, 'source-resistance': 10, vac: 10 }),
  't-min': span(10, 15, 20),
  't-max': span(35, 45, 55),
  bleeder: span(0.9e6, 1e6, 1.1e6),
};
/** A can of 10 × 20 mm gives off 110 mW at ten kelvin. */
const can = {
  ...{ type: PROBE, style: 'radial can', shape: 'can' as const, c_min: 1e-6, c_max: 1e-6 },
  ...{ voltage: 50, voltage_kind: 'dc' as const, length_mm: 10, width_mm: 10, height_mm: 20 },
  ...{ pitch_mm: [5], lead_mm: 0.6 },
  ...provenance,
};
const listed = {
  ...{ type: PROBE, capacitance: 1e-6, v_min: 50, v_max: 50, frequency_hz: 100 },
  ...{ esr_min: undefined, esr_typ: 1, esr_max: 1, ripple_a: 0.5, ripple_c: 85 },
  ...provenance,
};
const byFrequency = {
  ...{ type: PROBE, v_min: 1, v_max: 99, c_min: 1e-9, c_max: 1, frequency_hz: 100, factor: 1 },
  ...provenance,
};
const reformed = {
  ...{ figure: 'step' as const, types: [PROBE], idle_from: 0, v_from: 0, v_to: 99 },
  ...{ value: 1, unit: 'V' },
  ...provenance,
};
const edges = [20, 50].map((dvdt, index) => ({
  ...{ type: PROBE, style: `style ${String(index)}`, c_min: 1e-9, c_max: 1, voltage: 50 },
  ...{ voltage_kind: 'dc' as const, dvdt },
  ...provenance,
}));

interface Asked extends Spoiling {
  finding?: Partial<Finding>;
  sum?: string;
  buy?: Assessment['buy'];
}

const filled = (
  rows: SumInputRow[],
  { finding: more, sum = SUM, buy, ...spoiling }: Asked = {},
): FilledSum | undefined => {
  const known = catalogue.findings[FINDING];
  if (known === undefined) throw new Error('no such finding');
  const { part, circumstances } = probeIn(base, {
    ...spoiling,
    part: { capacitance: 1e-6, ratedVoltage: 50, ...spoiling.part },
    figures: { ...figures, ...spoiling.figures },
    conditions: { ...conditions, ...spoiling.conditions },
    original: { type: PROBE, capacitance: 2e-6, ratedVoltage: 63 },
    tables: {
      ...{ bodies: [can], coreRises: [], seriesResistance: [], rippleByFrequency: [] },
      reforming: [],
      findings: { ...catalogue.findings, [FINDING]: { ...known, sum } },
      sumInputs: rows,
      ...spoiling.tables,
    },
  });
  const assessment = buy === undefined ? { candidate: part } : { candidate: part, buy };
  return filledSum(finding(more), assessment, circumstances);
};

const tolerance = { minus: 0.2, plus: 0.2 };
const unknownResistance = {
  ...figures,
  'dissipation-factor-1khz': notKnown,
  'esr-100khz': notKnown,
};
const rises = [{ types: [PROBE], diameter_mm: 10, ratio: 1.25, ...provenance }];
const unheard = { 'charge-density': notKnown };
const nowhere = { bodies: [] };

describe('a field is filled', () => {
  test.each<[string, SumInputRow, Asked, string]>([
    ['with the mark and its tolerance', row('capacitance'), { part: { tolerance } }, '0.8..1.2u'],
    ['with the rating', row('rated-voltage'), {}, '50 V'],
    ['with the mark of the old part', row('old-capacitance'), {}, '2u'],
    ['with the rating of the old part', row('old-rated-voltage'), {}, '63 V'],
    // 1 % / (2π × 1 kHz × 1 µF).
    ['with its resistance where it works', row('series-resistance'), {}, '1.592 ohm'],
    ['with its resistance near 100 kHz', row('surge-resistance'), {}, '2 ohm'],
    [
      'with its resistance and what stands in front',
      row('with-own-resistance', ['source-resistance']),
      {},
      '11.59 ohm',
    ],
    [
      'with its resistance near 100 kHz and what stands in front',
      row('with-surge-resistance', ['source-resistance']),
      {},
      '12 ohm',
    ],
    [
      'with what stands in front where no more is known',
      row('with-own-resistance', ['source-resistance']),
      { figures: unknownResistance },
      '10 ohm',
    ],
    [
      'with what is left in service',
      row('service-capacitance'),
      { part: { tolerance } },
      '0.8..1.2u',
    ],
    ['with the loss nearest to where it works', row('loss'), {}, '0.01 fraction'],
    // 2.3 mW/K × 7.069^0.8 × 10 K.
    ['with the heat of ten kelvin', row('heat-for-ten-kelvin'), {}, '109.9m'],
    ['with the rise of the core', row('core-rise'), { tables: { coreRises: rises } }, '1.25 x'],
    ['with half of 50 V for AC', row('alternating-rating'), {}, '25 V'],
    ['with the edge of its type', row('pulse-rating'), {}, '20000000 V/s'],
    [
      'with the edge of the style that is bought',
      row('pulse-rating'),
      { tables: { pulseRatings: edges }, buy: { style: 'style 1', pitch: [], series: 'E6' } },
      '50000000 V/s',
    ],
    // 0.2² × 1.592 = 63.7 mW over 10.995 mW/K.
    [
      'with its own heat',
      row('own-heat'),
      { conditions: given({ 'ripple-current': 0.2 }) },
      '5.79 K',
    ],
    [
      'with its ripple current',
      row('ripple-rating'),
      { tables: { seriesResistance: [listed] } },
      '500m',
    ],
    [
      'with the frequency of that',
      row('ripple-rating-frequency'),
      { tables: { seriesResistance: [listed] } },
      '100 Hz',
    ],
    [
      'with the temperature of that',
      row('ripple-rating-temperature'),
      { tables: { seriesResistance: [listed] } },
      '85 degC',
    ],
    [
      'with a type whose ripple goes by frequency',
      row('ripple-type'),
      { tables: { rippleByFrequency: [{ ...byFrequency, type: 'another' }, byFrequency] } },
      PROBE,
    ],
    [
      'with a type that is re-formed',
      row('reformed-type'),
      { tables: { reforming: [{ ...reformed, types: ['another'] }, reformed] } },
      PROBE,
    ],
    ['with a type that has two properties', row('type', ['dvdt', 'ac-share']), {}, PROBE],
    [
      'with a type that has less than none of one',
      row('type', ['voltage-coefficient']),
      { figures: { 'voltage-coefficient': known(span(-1, 0, 0)) } },
      PROBE,
    ],
    ['with 45 less 15 kelvin', row('warming'), {}, '30 K'],
    ['with the finding itself', row('figure'), {}, '2m'],
    ['with a condition', row('condition', ['bleeder']), {}, '0.9..1.1M'],
    ['with a condition of another unit', row('condition', ['t-max']), {}, '35..55 degC'],
    ['with the highest of a condition', row('highest', ['t-max']), {}, '55 degC'],
    ['with the peak of 10 V', row('peak', ['vac']), {}, '14.14 V'],
    ['with a property', row('property', ['dissipation-factor-1khz']), {}, '1 %'],
    ['with a property that is known', row('property-if-known', ['dvdt']), {}, '20 V/us'],
    ['with words', row('words', ['sine']), {}, 'sine'],
  ])('%s', (_what, one, asked, text) => {
    expect(filled([one], asked)).toEqual({ sum: SUM, inputs: { field: text } });
  });

  test.each<[string, SumInputRow, Asked]>([
    [
      'with what nobody knows of it',
      row('property-if-known', ['dvdt']),
      { figures: { dvdt: notKnown } },
    ],
    ['on purpose', row('nothing'), {}],
  ])('with nothing, and keeps its number: %s', (_what, one, asked) => {
    expect(filled([one], asked)).toEqual({ sum: SUM, inputs: {} });
  });
});

describe('a sum is not filled', () => {
  test.each<[string, SumInputRow, Asked]>([
    ['a resistance', row('series-resistance'), { figures: unknownResistance }],
    ['what stands in front', row('with-own-resistance', ['esr-old']), {}],
    ['a condition', row('condition', ['esr-old']), {}],
    ['a condition, for its highest', row('highest', ['esr-old']), {}],
    ['a condition, for its peak', row('peak', ['esr-old']), {}],
    ['a property', row('property', ['dvdt']), { figures: { dvdt: notKnown } }],
    ['a size', row('heat-for-ten-kelvin'), { tables: nowhere, figures: unheard }],
    ['a core', row('core-rise'), { tables: nowhere, figures: unheard }],
    [
      'a heat',
      row('own-heat'),
      { tables: nowhere, figures: unheard, conditions: given({ 'ripple-current': 0.2 }) },
    ],
    ['a current that heats', row('own-heat'), {}],
    ['a loss', row('loss'), { figures: unknownResistance }],
    ['an edge', row('pulse-rating'), { figures: { dvdt: notKnown } }],
    ['a share for AC', row('alternating-rating'), { figures: { 'ac-share': notKnown } }],
    ['a ripple current', row('ripple-rating'), {}],
    [
      'factors for its ripple',
      row('ripple-type'),
      { tables: { rippleByFrequency: [{ ...byFrequency, type: 'another' }] } },
    ],
    [
      'how it is re-formed',
      row('reformed-type'),
      { tables: { reforming: [{ ...reformed, types: ['another'] }] } },
    ],
    [
      'one of two properties',
      row('type', ['dvdt', 'ac-share']),
      { figures: { 'ac-share': notKnown } },
    ],
    ['any of a property', row('type', ['dvdt', 'ac-share']), { figures: { 'ac-share': known(0) } }],
    ['what only other kinds have', row('value'), {}],
  ])('for want of %s', (_what, one, asked) => {
    expect(filled([row('words', ['here'], { input: 'other' }), one], asked)).toBeUndefined();
  });

  test('where the finding leads to none, or is not known itself', () => {
    const rows = [row('words', ['sine'])];
    expect(filled(rows, { sum: '' })).toBeUndefined();
    const { standIn, ...unknown } = finding();
    expect(standIn).toBeDefined();
    const { part, circumstances } = probeIn(base);
    expect(filledSum(unknown, { candidate: part }, circumstances)).toBeUndefined();
    expect(
      filledSum(finding({ finding: 'unheard-of' }), { candidate: part }, circumstances),
    ).toBeUndefined();
  });

  test('for what is made of two', () => {
    const rows = [row('words', ['sine'])];
    const part = made({ kind: 'parallel' }, [single, single]);
    expect(filled(rows, {})).toBeDefined();
    expect(filled(rows, { part })).toBeUndefined();
  });
});

describe('of several rows', () => {
  test('those of the sum count, and of a field the one for the very finding', () => {
    const rows = [
      row('words', ['other-sum'], { sum: 'another-sum' }),
      row('words', ['any']),
      row('words', ['this'], { for: ['inrush', FINDING] }),
      row('words', ['that'], { for: ['inrush'], input: 'second' }),
      row('words', ['all'], { input: 'third' }),
    ];
    expect(filled(rows)).toEqual({ sum: SUM, inputs: { field: 'this', third: 'all' } });
  });
});

test.each<[SumInputRow['takes'], boolean]>([
  ['value', true],
  ['wiring', true],
  ['capacitance', false],
  ['words', false],
])('%s is for other kinds of part: %s', (takes, own) => {
  expect(isOfKind(takes)).toBe(own);
});
