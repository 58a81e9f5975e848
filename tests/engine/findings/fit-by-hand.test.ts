import { describe, expect, test } from 'vitest';
import type { OfferedPart } from '../../../src/engine/assessment/parts.ts';
import type { BodyRow } from '../../../src/schemas/sizes.ts';
import { catalogue, given, known, notKnown } from '../assessment/setting.ts';
import { holdTo, holdUnknown, span, tryOut, type ByHand } from './by-hand.ts';
import { PROBE, type Spoiling } from './probe.ts';

/** Room, leads, edges and where to buy: an invented part, measured with a rule. */

const SHEET = 'sheet-of-bodies';

const row = (
  shape: BodyRow['shape'],
  farad: number,
  [length_mm, width_mm, height_mm]: [number, number, number],
  more: Partial<BodyRow> = {},
): BodyRow => ({
  type: PROBE,
  style: `invented ${shape}`,
  shape,
  c_min: farad,
  c_max: farad,
  voltage: 25,
  voltage_kind: 'dc',
  length_mm,
  width_mm,
  height_mm,
  pitch_mm: [],
  lead_mm: undefined,
  source: SHEET,
  locator: '',
  basis: 'memory',
  note: '',
  ...more,
});

/** π/4 × 10² × 20 = 1571 mm³ and π/4 × 8² × 10 = 503 mm³. */
const cans = [
  row('can', 1e-3, [10, 10, 20], { pitch_mm: [7.5, 5], lead_mm: 0.6 }),
  row('can', 4.7e-4, [8, 8, 10]),
];
/** 10 × 3 × 10 = 300 mm³ and 5 × 2 × 7 = 70 mm³. */
const boxes = [row('box', 1e-6, [10, 3, 10]), row('box', 1e-7, [5, 2, 7])];

const ofValue = (capacitance: number, more: Spoiling = {}): Spoiling => ({
  part: { capacitance, ratedVoltage: 25 },
  tables: { bodies: [...cans, ...boxes] },
  ...more,
});
const instead = (old: number, capacitance: number): Spoiling =>
  ofValue(capacitance, { original: { type: PROBE, capacitance: old, ratedVoltage: 25 } });

const listed = { properties: [], sources: [SHEET], bases: ['memory'] };
const nothing = { properties: [] };
const roomFor = (millimetres: number): NonNullable<Spoiling['conditions']> =>
  given({ room: millimetres / 1000 });
const hole = given({ hole: 1e-3 });
const edge = { edge: span(1e6, 2e6, 5e6) };

const single = (capacitance: number, style = 'radial box'): OfferedPart => ({
  type: PROBE,
  tolerance: { minus: 0, plus: 0 },
  voltageKind: 'dc',
  ratedVoltage: 25,
  capacitance,
  style,
  pitch: [],
  series: 'E6',
});
const pair = (one: OfferedPart, other: OfferedPart): NonNullable<Spoiling['part']> => ({
  ratedVoltage: 25,
  capacitance: one.capacitance + other.capacitance,
  made: { kind: 'parallel', parts: [one, other], why: '' },
});

const template = catalogue.offers[0];
if (template === undefined) throw new Error('no offers');

/** Offers of the probe in two styles: 5 or 10 mm below 1 µF, 15 mm from there; always bent leads. */
const offers = [
  { style: 'radial box', c_min: 1e-9, c_max: 1e-7, pitch_mm: [10, 5], source: 'maker-of-boxes' },
  { style: 'radial box', c_min: 1e-6, c_max: 1e-5, pitch_mm: [15], source: 'maker-of-boxes' },
  { style: 'axial', c_min: 1e-9, c_max: 1e-6, pitch_mm: [], source: '' },
].map((offer) => ({
  ...template,
  type: PROBE,
  voltages: [25],
  basis: 'published' as const,
  ...offer,
}));

const sold = (part: NonNullable<Spoiling['part']>): Spoiling => ({
  part: { ratedVoltage: 25, ...part },
  tables: { bodies: [], offers },
  figures: { 'charge-density': notKnown },
  conditions: roomFor(10),
});

const cases: Record<string, ByHand> = {
  '1571 mm³ for 503 mm³': {
    finding: 'body',
    spoiling: instead(4.7e-4, 1e-3),
    value: [3.125, 3.125, 3.125],
    figures: '10, 20 mm, 1.57 cm³, 0.503 cm³, 8, 10 mm, 3.13 ×',
    ...listed,
  },
  '300 mm³ for 70 mm³, which a board takes for 150': {
    finding: 'body',
    spoiling: instead(1e-7, 1e-6),
    value: [2, 2, 2],
    ...listed,
  },
  '70 mm³ for 300 mm³: no less than 150 either': {
    finding: 'body',
    spoiling: instead(1e-6, 1e-7),
    value: [0.5, 0.5, 0.5],
    ...listed,
  },
  // 10 µF × 25 V over 50, 100 and 500 C/m³ are 5, 2.5 and 0.5 cm³, for 503 mm³.
  'a volume by the charge that a type packs in, for 503 mm³': {
    finding: 'body',
    spoiling: {
      ...instead(4.7e-4, 1e-5),
      figures: { 'charge-density': known(span(50, 100, 500)) },
    },
    value: [0.9947, 4.974, 9.947],
    properties: ['charge-density'],
  },
  '20 mm high': {
    finding: 'height',
    spoiling: ofValue(1e-3, { conditions: given({ 'height-room': 0.025 }) }),
    value: [0.02, 0.02, 0.02],
    figures: '10, 20 mm, 20 mm, 25 mm',
    ...listed,
  },
  '10 mm long': {
    finding: 'side',
    spoiling: ofValue(1e-3, { conditions: given({ 'side-room': 0.012 }) }),
    value: [0.01, 0.01, 0.01],
    figures: '10, 20 mm, 10 mm, 12 mm',
    ...listed,
  },
  '5 mm, the shorter of what its body has': {
    finding: 'lead-pitch',
    spoiling: { ...ofValue(1e-3), conditions: roomFor(10) },
    value: [5e-3, 5e-3, 5e-3],
    figures: '5 mm, 10, 20 mm, 10 mm',
    ...listed,
  },
  '7.5 mm on offer where the body does not say': {
    finding: 'lead-pitch',
    spoiling: { ...ofValue(4.7e-4), offer: { pitch_mm: [10, 7.5] }, conditions: roomFor(10) },
    value: [7.5e-3, 7.5e-3, 7.5e-3],
    figures: '7.5 mm, 10 mm',
    words: 'on offer',
    ...nothing,
  },
  '15 mm as a box of a microfarad': {
    finding: 'lead-pitch',
    spoiling: sold(single(1e-6)),
    value: [0.015, 0.015, 0.015],
    figures: '15 mm, 10 mm',
    ...nothing,
  },
  'leads that one bends, in the other style': {
    finding: 'lead-pitch',
    spoiling: sold(single(1e-6, 'axial')),
    value: [0, 0, 0],
    figures: '10 mm',
    words: 'bent',
    ...nothing,
  },
  'the shortest of any style where that is open': {
    finding: 'lead-pitch',
    spoiling: sold({ capacitance: 1e-7 }),
    value: [5e-3, 5e-3, 5e-3],
    ...nothing,
  },
  '15 mm by the wider of two': {
    finding: 'lead-pitch',
    spoiling: sold(pair(single(1e-7), single(1e-6))),
    value: [0.015, 0.015, 0.015],
    ...nothing,
  },
  'leads of 0.6 mm, as listed for the body, and 0.2 mm of clearance': {
    finding: 'lead-wire',
    spoiling: ofValue(1e-3, { conditions: hole }),
    value: [0.8e-3, 0.8e-3, 0.8e-3],
    figures: '0.6 mm, 0.2 mm, 1 mm',
    ...listed,
  },
  'leads of 0.5, 0.6 and 0.8 mm, as of the type': {
    finding: 'lead-wire',
    spoiling: ofValue(4.7e-4, {
      conditions: hole,
      figures: { 'lead-wire': known(span(0.5e-3, 0.6e-3, 0.8e-3)) },
    }),
    value: [0.7e-3, 0.8e-3, 1e-3],
    figures: '0.6 mm, 0.2 mm, 1 mm',
    properties: ['lead-wire'],
  },
  'no leads on a chip, whatever its type has': {
    finding: 'lead-wire',
    spoiling: {
      part: single(1e-6, 'chip'),
      conditions: hole,
      tables: { bodies: [row('chip', 1e-6, [3.2, 1.6, 1.6], { style: 'chip', lead_mm: 0.6 })] },
      figures: { 'lead-wire': known(0.5e-3) },
    },
    value: [0, 0, 0],
    figures: '1 mm',
    words: 'no leads',
    ...nothing,
  },
  'no leads where a lead has no meaning': {
    finding: 'lead-wire',
    spoiling: ofValue(4.7e-4, {
      conditions: hole,
      figures: { 'lead-wire': { status: 'not-applicable', sources: [] } },
    }),
    value: [0, 0, 0],
    ...nothing,
  },
  // The steepest edge there may be, over what the weakest and the best part bear.
  '5 V/µs over 10, 20 and 50 V/µs as of the type': {
    finding: 'pulse',
    spoiling: { conditions: edge, figures: { dvdt: known(span(10e6, 20e6, 50e6)) } },
    value: [0.1, 0.25, 0.5],
    figures: '5 V/µs, 10–50 V/µs, 10–50 %',
    words: 'of its type',
    properties: ['dvdt'],
    sources: ['trade'],
    bases: ['common-practice'],
  },
  '5 V/µs over 20 V/µs as listed': {
    finding: 'pulse',
    spoiling: {
      part: { capacitance: 1e-6, ratedVoltage: 25 },
      conditions: edge,
      tables: {
        pulseRatings: [
          {
            ...{ type: PROBE, style: 'radial box', c_min: 1e-6, c_max: 1e-6 },
            ...{ voltage: 25, voltage_kind: 'dc', dvdt: 20 },
            ...{ source: 'sheet-of-edges', locator: '', basis: 'published', note: '' },
          },
        ],
      },
    },
    value: [0.25, 0.25, 0.25],
    figures: '5 V/µs, 20 V/µs, 25 %',
    words: 'by its value',
    properties: [],
    sources: ['sheet-of-edges'],
    bases: ['published'],
  },
  'a microfarad that a maker of boxes has': {
    finding: 'availability',
    spoiling: sold({ capacitance: 1e-5 }),
    value: [0, 0, 0],
    properties: [],
    sources: ['maker-of-boxes'],
    bases: ['published'],
  },
  'as much from two that nobody needs be named for': {
    finding: 'availability',
    spoiling: {
      ...sold(pair(single(1e-5), single(1e-6))),
      tables: {
        ...sold({}).tables,
        combinations: {
          parallel: {
            ...{ id: 'parallel', mends: [], wiring: '', mind: '', locator: '', note: '' },
            source: 'handbook-of-pairs',
            basis: 'memory',
          },
        },
      },
    },
    value: [0, 0, 0],
    properties: [],
    sources: ['maker-of-boxes', 'maker-of-boxes', 'handbook-of-pairs'],
    bases: ['published', 'memory'],
  },
  'nobody has half a microfarad of 25 V': {
    finding: 'availability',
    spoiling: {
      ...sold({ capacitance: 5e-7 }),
      tables: { offers: offers.filter(({ style }) => style !== 'axial') },
    },
    value: [1, 1, 1],
    properties: [],
    bases: ['common-practice'],
  },
};

describe('room, leads, edges and where to buy', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  const nowhere = { bodies: [] };
  const noDensity = { 'charge-density': notKnown };

  test.each<[string, string, Spoiling, string[]]>([
    ['body', 'a size', { tables: nowhere, figures: noDensity }, ['charge-density']],
    ['height', 'a size', { tables: nowhere, figures: noDensity }, ['charge-density']],
    ['side', 'a size', { tables: nowhere, figures: noDensity }, ['charge-density']],
    ['lead-pitch', 'an offer', { offer: { c_max: 1e-18 } }, ['lead-pitch']],
    ['lead-wire', 'a lead', { figures: { 'lead-wire': notKnown } }, ['lead-wire']],
    ['pulse', 'an edge', { figures: { dvdt: notKnown } }, ['dvdt']],
  ])('%s is not known without %s', (id, _what, spoiling, missing) => {
    const conditions = {
      ...edge,
      ...hole,
      ...given({ 'height-room': 1, 'side-room': 1, room: 1 }),
    };
    holdUnknown(id, { ...ofValue(4.7e-4), conditions, ...spoiling }, missing);
  });

  test('of two, one that nobody offers leaves the room unknown', () => {
    holdUnknown('lead-pitch', sold(pair(single(1e-7), single(5e-7))), ['lead-pitch']);
    expect(tryOut('lead-pitch', sold(single(1e-7))).outcome.status).toBe('known');
  });
});
