import { describe, expect, test } from 'vitest';
import { offeredParts } from '../../../src/engine/candidates/generate.ts';
import type { Circumstances } from '../../../src/engine/findings/model.ts';
import type { OfferRow } from '../../../src/schemas/types.ts';
import { catalogue, given } from '../assessment/setting.ts';
import { base } from '../findings/by-hand.ts';
import { PROBE, probeIn } from '../findings/probe.ts';

/** In which order parts are offered, and which are left out, of invented offers. */

const template = catalogue.offers[0];
if (template === undefined) throw new Error('no offers');
const offer = (more: Partial<OfferRow> = {}): OfferRow => ({
  ...template,
  ...{ type: PROBE, style: 'radial can', series: 'E6', voltage_kind: 'dc' },
  ...{ c_min: 4.7e-6, c_max: 4.7e-6, voltages: [25], tolerances: ['20'] },
  ...more,
});
const LARGER = { c_min: 6.8e-6, c_max: 6.8e-6 };

/** For some value at 20 V, half to twice of which will do. */
const place = (offers: OfferRow[], capacitance = 5e-6, kept?: number): Circumstances => ({
  ...probeIn(base, {
    original: { capacitance, ratedVoltage: 63 },
    position: { value_policy: 'window', value_low: 0.5, value_high: 2, safety: [] },
    conditions: given({ vdc: 20, vac: 0, 'v-surge': 0, 't-max': 25 }),
    tables: { offers, derating: [], categoryVoltages: [] },
  }).circumstances,
  ...(kept === undefined ? {} : { kept }),
});

const offered = (circumstances: Circumstances): string[] =>
  offeredParts(circumstances.catalogue, PROBE, circumstances).map((part) =>
    [Number((part.capacitance * 1e6).toPrecision(6)), part.ratedVoltage, part.tolerance.plus].join(
      ' ',
    ),
  );

/** As far from 4.7 as from 6.8 µF, in ratio, save for rounding. */
const MIDWAY = Math.sqrt(4.7 * 6.8) * 1e-6;

describe('one would choose first', () => {
  test.each<[string, OfferRow[], number, string[]]>([
    [
      'the nearer value, in whatever order the offers stand',
      [offer(LARGER), offer()],
      5e-6,
      ['4.7 25 0.2', '6.8 25 0.2'],
    ],
    [
      'the lowest rating of each offer before the next ones',
      [offer({ voltages: [25, 50] }), offer({ voltages: [63] })],
      5e-6,
      ['4.7 25 0.2', '4.7 63 0.2', '4.7 50 0.2'],
    ],
    [
      'the usual tolerance of each offer before others',
      [offer({ tolerances: ['5', '20'] }), offer({ tolerances: ['10'] })],
      5e-6,
      ['4.7 25 0.1', '4.7 25 0.05', '4.7 25 0.2'],
    ],
    // styles.csv: hermetic tubes are kept by few dealers.
    [
      'what many dealers keep, though few keep a lower rating and a looser tolerance',
      [offer({ style: 'axial hermetic', voltages: [20, 50] }), offer({ tolerances: ['10'] })],
      5e-6,
      ['4.7 25 0.1', '4.7 20 0.2', '4.7 50 0.2'],
    ],
    [
      'of two values that are as near the looser, be it the larger',
      [offer({ tolerances: ['5'] }), offer({ ...LARGER, tolerances: ['20'] })],
      MIDWAY * (1 - 1e-9),
      ['6.8 25 0.2', '4.7 25 0.05'],
    ],
    [
      'or the smaller',
      [offer({ ...LARGER, tolerances: ['5'] }), offer({ tolerances: ['20'] })],
      MIDWAY * (1 + 1e-9),
      ['4.7 25 0.2', '6.8 25 0.05'],
    ],
    [
      'of a value those with leads before chips, whatever their rating and tolerance',
      [
        offer({ style: 'chip can', voltages: [25, 40] }),
        offer({ voltages: [63], tolerances: ['5'] }),
      ],
      5e-6,
      ['4.7 63 0.05', '4.7 25 0.2', '4.7 40 0.2'],
    ],
    [
      'a chip of the nearer value',
      [offer(LARGER), offer({ style: 'chip can' })],
      5e-6,
      ['4.7 25 0.2', '6.8 25 0.2'],
    ],
  ])('%s', (_what, offers, capacitance, parts) => {
    expect(offered(place(offers, capacitance))).toEqual(parts);
  });
});

describe('where the rating of the old part is kept', () => {
  test.each<[string, OfferRow[], number | undefined, string[]]>([
    [
      'of each value those rated as high come first',
      [offer({ voltages: [25, 50] }), offer({ ...LARGER, voltages: [25, 50] })],
      50,
      ['4.7 50 0.2', '4.7 25 0.2', '6.8 50 0.2', '6.8 25 0.2'],
    ],
    [
      'those that are as high are as good as higher ones',
      [offer({ voltages: [25, 50] })],
      25,
      ['4.7 25 0.2', '4.7 50 0.2'],
    ],
    ['none is left out', [offer({ voltages: [25, 50] })], 63, ['4.7 25 0.2', '4.7 50 0.2']],
    [
      'and the lower where it is not',
      [offer({ voltages: [25, 50] })],
      undefined,
      ['4.7 25 0.2', '4.7 50 0.2'],
    ],
    // 40 V of the mains are not less than 63 V of a battery.
    [
      'alternating volts are not held against it',
      [offer({ voltages: [40], voltage_kind: 'ac' }), offer({ voltages: [100] })],
      63,
      ['4.7 40 0.2', '4.7 100 0.2'],
    ],
  ])('%s', (_what, offers, kept, parts) => {
    expect(offered(place(offers, 5e-6, kept))).toEqual(parts);
  });
});

describe('of parts with screws', () => {
  const screwed = offer({ voltages: [63], style: 'screw-terminal can' });

  test.each<[string, OfferRow[], string[]]>([
    [
      'none where one of the others bears as much',
      [offer({ voltages: [16] }), offer({ voltages: [40] }), screwed],
      ['4.7 16 0.2', '4.7 40 0.2'],
    ],
    ['none where another just bears it', [offer({ voltages: [20] }), screwed], ['4.7 20 0.2']],
    [
      'none of doorknobs either, whose name begins otherwise',
      [offer({ voltages: [20] }), offer({ voltages: [63], style: 'doorknob with screw ends' })],
      ['4.7 20 0.2'],
    ],
    ['all where no other does', [offer({ voltages: [16] }), screwed], ['4.7 16 0.2', '4.7 63 0.2']],
  ])('%s', (_what, offers, parts) => {
    expect(offered(place(offers))).toEqual(parts);
  });
});

// 44.1 V over 0.7 come to a hair more than 63 V.
test('none has screws where another bears it save for rounding', () => {
  const offers = [
    offer({ voltages: [63] }),
    offer({ voltages: [100], style: 'screw-terminal can' }),
  ];
  const circumstances = place(offers);
  const conditions = { ...circumstances.conditions, ...given({ vdc: 44.1 / 0.7 }) };
  expect(44.1 / 0.7).toBeGreaterThan(63);
  expect(offered({ ...circumstances, conditions })).toEqual(['4.7 63 0.2']);
});

test('the same offers are asked anew at another voltage', () => {
  const quiet = place([offer({ voltages: [25, 50, 63] })]);
  const loud = { ...quiet, conditions: { ...quiet.conditions, ...given({ vdc: 45 }) } };
  expect(offered(quiet)).toEqual(['4.7 25 0.2', '4.7 50 0.2']);
  expect(offered(loud)).toEqual(['4.7 50 0.2', '4.7 63 0.2']);
  expect(offered(quiet)).toEqual(['4.7 25 0.2', '4.7 50 0.2']);
});
