import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { deviceFields } from '../../../src/device-view/numbers.ts';
import { usualNumbers } from '../../../src/engine/index.ts';
import {
  catalogueWith,
  condition,
  demand,
  device as madeUp,
  figure,
  finding,
  use,
} from './made-up.ts';
import { named } from './named.ts';

const catalogue = loadCatalogue();
const { device } = named(catalogue);
const useOf = (id: string) => {
  const use = catalogue.devices.uses.find((row) => row.id === id);
  if (use === undefined) throw new Error(`no use ${id}`);
  return use;
};

describe('what a use is reckoned with where nothing is said', () => {
  test.each([
    // Four fifths of 20 V; of 45 V is more than the usual 24 V.
    ['bc109', 'transistor-stage', 'top-voltage', 16, 'what a BC109 bears'],
    ['bc107', 'transistor-stage', 'top-voltage', 24, 'usual'],
    ['78l05', 'reg-rail', 'load-current', 0.1, 'what a 78L05 bears'],
    ['7805', 'reg-rail', 'load-current', 0.5, 'usual'],
    ['1n4001', 'diode-rectifier', 'reverse-peak', 40, 'what a 1N4001 bears'],
    ['1n4004', 'diode-rectifier', 'reverse-peak', 60, 'usual'],
    ['1n4007', 'diode-rectifier', 'reverse-peak', 400, 'half of what a 1N4007 bears'],
    ['1n4007', 'diode-polarity', 'reverse-peak', 30, 'usual'],
    ['1n5817', 'diode-polarity', 'reverse-peak', 16, 'what a 1N5817 bears'],
    // Chosen for a high voltage: half of four fifths of 300 V, 160 V and 140 V.
    ['mje340', 'transistor-power', 'top-voltage', 120, 'half of what an MJE340 bears'],
    ['2n5551', 'transistor-stage', 'top-voltage', 64, 'half of what a 2N5551 bears'],
    ['mj15003', 'transistor-power', 'top-voltage', 56, 'half of what an MJ15003 bears'],
    ['tip41c', 'transistor-power', 'top-voltage', 45, 'usual'],
    // 3000 mA in its row.
    ['2n3055', 'transistor-power', 'top-current', 3, 'usual'],
    // Chosen for what stands far above low voltages.
    ['1n4007', 'diode-switching', 'reverse-peak', 400, 'half of what a 1N4007 bears'],
    // The circuit has proved itself with what the old part asks of it.
    ['lm2940-5', 'reg-rail', 'output-capacitor', 22e-6, 'what an LM2940-5 itself needs'],
    ['7805', 'reg-rail', 'output-capacitor', 10e-6, 'usual'],
    ['1n4007', 'diode-polarity', 'drop-allowed', 1.0384, 'what a 1N4007 itself needs'],
    ['1n5817', 'diode-polarity', 'drop-allowed', 0.7, 'usual'],
    // The mains is what it is, whatever stood there.
    ['1n4001', 'diode-direct', 'reverse-peak', 650, 'usual'],
    ['4011a', 'logic-12v', 'supply', 12, 'usual'],
  ])('%s in %s: %s is %d, %s', (old, use, condition, si, from) => {
    const field = deviceFields(catalogue, useOf(use), device(old)).find(
      ({ definition }) => definition.id === condition,
    );
    expect((field?.usual ?? 0) / si).toBeCloseTo(1, 3);
    expect(field?.from).toBe(from);
  });

  test('is more than the usual number where the old part bears twice that, and the usual one without an old part', () => {
    for (const use of catalogue.devices.uses) {
      const plain = usualNumbers(catalogue, use, undefined);
      expect(plain.every(({ ofBorne }) => ofBorne === undefined)).toBe(true);
      for (const old of catalogue.devices.devices.filter((row) =>
        use.functions.includes(row.function),
      ))
        for (const [index, { range, ofBorne }] of usualNumbers(catalogue, use, old).entries())
          expect(Math.sign(range.typ - (plain[index]?.range.typ ?? 0))).toBe(
            { all: -1, half: 1, needed: 1, none: 0 }[ofBorne ?? 'none'],
          );
    }
  });
});

describe('what the old part bears', () => {
  const asks = (said: Parameters<typeof demand>[1]) => demand('load', { limit: 80, ...said });
  const rated = finding('load', {
    unit: '%',
    better: 'low',
    properties: ['load-max'],
    conditions: ['load-current'],
  });
  const usual = (
    demands = [asks({})],
    findings = [rated],
    figures = [figure('old', 'load-max', { typ: 0.5, unit: 'A' })],
  ) =>
    usualNumbers(
      catalogueWith({
        demands,
        findings,
        figures,
        conditions: [
          condition('load-current', 1, { max: 2, follows: 'rating' }),
          condition('load-current', 9, { position: 'there', follows: 'rating' }),
        ],
      }),
      use,
      madeUp('old'),
    ).map(({ condition: id, range, ofBorne }) => [id, range.min, range.typ, range.max, ofBorne]);
  const borne = (most: number) => [['load-current', most, most, most, 'all']];
  const asEver = [['load-current', 1, 1, 1, undefined]];
  const rating = (typ: number) =>
    usual([asks({})], [rated], [figure('old', 'load-max', { typ, unit: 'A' })]);

  test('is the share of its rating that the use allows', () => {
    expect(usual()).toEqual(borne(0.4));
  });

  test.each([
    // Four fifths of 2.5 A is the row's most, of 3 A more than that.
    ['no more than the row says', 2.5, asEver],
    ['more than the row says', 3, [['load-current', 1.2, 1.2, 1.2, 'half']]],
  ])('counts for half where it is more than the row says: %s', (_what, typ, expected) => {
    expect(rating(typ)).toEqual(expected);
  });

  test('is the least of what several demands allow', () => {
    expect(usual([asks({}), asks({ limit: 60 })])).toEqual(borne(0.3));
  });

  test.each<[string, ReturnType<typeof usual>]>([
    ['a demand of little weight', usual([asks({ weight: 'strong' })])],
    ['a demand of another use', usual([asks({ position: 'there' })])],
    ['a demand without a limit', usual([asks({ limit: undefined })])],
    ['a finding that is no share', usual(undefined, [{ ...rated, unit: 'A' }])],
    ['a finding that is better high', usual(undefined, [{ ...rated, better: 'high' }])],
    ['two properties', usual(undefined, [{ ...rated, properties: ['load-max', 'gain'] }])],
    ['two conditions', usual(undefined, [{ ...rated, conditions: ['load-current', 'supply'] }])],
    ['another condition', usual(undefined, [{ ...rated, conditions: ['supply'] }])],
    ['a rating that nobody knows', usual(undefined, undefined, [])],
    ['a finding that there is not', usual(undefined, [])],
  ])('is not asked for by %s', (_what, found) => {
    expect(found).toEqual(asEver);
  });
});

describe('what the old part needs', () => {
  // What the invented regulator needs is 20 µF, and an invented diode drops half a volt.
  const figures = [
    figure('old', 'output-capacitor-min', { typ: 20, unit: 'uF' }),
    figure('old', 'reverse-leakage', { typ: 500, unit: 'nA' }),
  ];
  const share = finding('output-capacitor', {
    unit: '%',
    better: 'high',
    properties: ['output-capacitor-min'],
    conditions: ['output-capacitor'],
  });
  const leakage = finding('reverse-leakage', {
    unit: 'nA',
    better: 'low',
    properties: ['reverse-leakage'],
    conditions: [],
  });
  const capacitor = condition('output-capacitor', 10, { follows: 'needed' });
  const allowed = condition('leakage-allowed', 0.1, { follows: 'needed' });
  const shareAsked = demand('output-capacitor', { limit: 100 });
  const leakageAsked = demand('reverse-leakage', { limit: 1, limit_of: 'leakage-allowed' });
  const needed = (
    conditions: ReturnType<typeof condition>[],
    demands: ReturnType<typeof demand>[],
    known = figures,
  ) =>
    usualNumbers(
      catalogueWith({ demands, findings: [share, leakage], figures: known, conditions }),
      use,
      madeUp('old'),
    ).map(({ range, ofBorne }) => [range.typ, ofBorne]);

  test.each<[string, ReturnType<typeof needed>, number, string | undefined]>([
    ['all of what it needs', needed([capacitor], [shareAsked]), 20e-6, 'needed'],
    [
      'twice what it needs, where the use asks twice',
      needed([capacitor], [demand('output-capacitor', { limit: 200 })]),
      40e-6,
      'needed',
    ],
    ['what it has of what is allowed', needed([allowed], [leakageAsked]), 500e-9, 'needed'],
    [
      'half of that where the use allows twice',
      needed([allowed], [demand('reverse-leakage', { limit: 2, limit_of: 'leakage-allowed' })]),
      250e-9,
      'needed',
    ],
    [
      'the usual number, where that is enough',
      needed([condition('output-capacitor', 30, { follows: 'needed' })], [shareAsked]),
      30e-6,
      undefined,
    ],
    ['the usual number, where nobody asks', needed([capacitor], [leakageAsked]), 10e-6, undefined],
    [
      'the usual number, where another use asks',
      needed([capacitor], [demand('output-capacitor', { limit: 100, position: 'there' })]),
      10e-6,
      undefined,
    ],
    [
      'the usual number, where nobody knows',
      needed([capacitor], [shareAsked], []),
      10e-6,
      undefined,
    ],
    [
      'the usual number, where the row does not follow',
      needed([condition('output-capacitor', 10)], [shareAsked]),
      10e-6,
      undefined,
    ],
  ])('is %s', (_what, [only], si, from) => {
    expect(Number(only?.[0]) / si).toBeCloseTo(1, 6);
    expect(only?.[1]).toBe(from);
  });
});
