import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { deviceFields } from '../../../src/device-view/numbers.ts';
import { usualNumbers } from '../../../src/engine/index.ts';
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
