import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import {
  deviceCircumstances,
  deviceStandIns,
  filledDeviceSum,
  isMetIn,
} from '../../../src/engine/index.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { resultOf } from '../../../src/engine/sums/run-sum.ts';

const catalogue = loadCatalogue();
const { devices, uses, findings } = catalogue.devices;
const sumOf = (id: string) => {
  const sum = allSums.find((one) => one.id === id);
  if (sum === undefined) throw new Error(`no sum ${id}`);
  return sum;
};

const facts = new Map(allSums.map((sum) => [sum.id, sum.facts?.(catalogue)]));

/** The output of a sum that is the figure of the finding, where there is one. */
const SAME: Readonly<Record<string, string>> = {
  settling: 'time',
  'hold-droop': 'total',
  'charge-step': 'step',
  'bias-droop': 'runs',
  discharge: 'share',
};

/** Every finding that leads to a sum, for each device that is tried in the place of the first of its function. */
const led = uses.flatMap((use) =>
  use.functions.flatMap((id) => {
    const old = devices.find((device) => device.function === id && isMetIn(device, use));
    if (old === undefined) return [];
    const circumstances = deviceCircumstances(catalogue, { original: old, use });
    return deviceStandIns(catalogue, { original: old, use }).flatMap(({ device, findings: own }) =>
      own.flatMap((finding) => {
        const filled = filledDeviceSum(finding, device, circumstances);
        return filled === undefined ? [] : [{ use, device, finding, filled }];
      }),
    );
  }),
);

describe('a sum that a finding about a device leads to', () => {
  test('is there for each finding that names one', () => {
    const named = findings.filter(({ sum }) => sum !== '').map(({ id }) => id);
    expect([...new Set(led.map(({ finding }) => finding.finding))].toSorted()).toEqual(
      named.toSorted(),
    );
  });

  test('understands every number that is filled in', () => {
    for (const { use, device, finding, filled } of led) {
      const sum = sumOf(filled.sum);
      const { faults } = readInputs(sum, facts.get(sum.id), filled.inputs);
      expect(faults, `${device.id} in ${use.id}: ${finding.finding}`).toEqual({});
    }
  });

  test.each(Object.entries(SAME))('%s comes to the same in its sum', (id, output) => {
    const some = led.filter(({ finding }) => finding.finding === id);
    expect(some.length).toBeGreaterThan(2);
    for (const { use, device, finding, filled } of some) {
      const sum = sumOf(filled.sum);
      const { given } = readInputs(sum, facts.get(sum.id), filled.inputs);
      const range = resultOf(sum, given, facts.get(sum.id)).outputs[output];
      const at = `${device.id} in ${use.id}`;
      for (const end of ['min', 'max'] as const) {
        const [mine, theirs] = [finding.standIn?.[end] ?? NaN, range?.[end] ?? NaN];
        expect(Math.abs(mine - theirs), at).toBeLessThanOrEqual(Math.abs(mine) * 2e-3 + 1e-15);
      }
    }
  });
});
