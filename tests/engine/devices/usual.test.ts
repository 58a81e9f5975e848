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
    ['1n4007', 'diode-rectifier', 'reverse-peak', 60, 'usual'],
    // The mains is what it is, whatever stood there.
    ['1n4001', 'diode-direct', 'reverse-peak', 650, 'usual'],
    ['4011a', 'logic-12v', 'supply', 12, 'usual'],
  ])('%s in %s: %s is %d, %s', (old, use, condition, si, from) => {
    const field = deviceFields(catalogue, useOf(use), device(old)).find(
      ({ definition }) => definition.id === condition,
    );
    expect(field?.usual).toBeCloseTo(si);
    expect(field?.from).toBe(from);
  });

  test('is never more than the usual number, and the usual one without an old part', () => {
    for (const use of catalogue.devices.uses) {
      const plain = usualNumbers(catalogue, use, undefined);
      expect(plain.every(({ isBorne }) => !isBorne)).toBe(true);
      for (const old of catalogue.devices.devices.filter((row) =>
        use.functions.includes(row.function),
      ))
        for (const [index, { range }] of usualNumbers(catalogue, use, old).entries())
          expect(range.typ).toBeLessThanOrEqual(plain[index]?.range.typ ?? 0);
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
          condition('load-current', 1, { min: 0.5, max: 2, follows: 'rating' }),
          condition('load-current', 9, { position: 'there', follows: 'rating' }),
        ],
      }),
      use,
      madeUp('old'),
    ).map(({ condition: id, range, isBorne }) => [id, range, isBorne]);
  const borne = (most: number) => [['load-current', { min: most, typ: most, max: most }, true]];
  const asEver = [['load-current', { min: 0.5, typ: 1, max: 2 }, false]];

  test('is the share of its rating that the use allows', () => {
    expect(usual()).toEqual(borne(0.4));
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
    [
      'a rating that bears more',
      usual(undefined, undefined, [figure('old', 'load-max', { typ: 5, unit: 'A' })]),
    ],
  ])('is not asked for by %s', (_what, found) => {
    expect(found).toEqual(asEver);
  });
});
