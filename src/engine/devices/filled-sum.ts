import type { DeviceRow, DeviceSumInputRow } from '../../schemas/devices.ts';
import { fillSum, type FilledSum } from '../assessment/sum-fields.ts';
import type { Finding } from '../assessment/finding.ts';
import { writtenRange } from '../assessment/written-range.ts';
import { REFERENCE_CELSIUS } from '../equations/reference.ts';
import { leakageWhenWarm } from '../equations/switch.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { deviceKnowledge } from './known.ts';
import type { DeviceCircumstances } from './model.ts';
import { isLeakage } from './models/amplifier.ts';
import { injectedCharge } from './models/switch.ts';

const rangeOf = (
  device: DeviceRow,
  { of, at }: DeviceSumInputRow,
  { catalogue, conditions }: DeviceCircumstances,
): Range | undefined => deviceKnowledge(catalogue, device, of, conditions[at]?.typ)?.range;

const temperatureIn = ({ conditions }: DeviceCircumstances): number =>
  conditions['temperature']?.typ ?? REFERENCE_CELSIUS;

const leakageOf = (
  device: DeviceRow,
  row: DeviceSumInputRow,
  circumstances: DeviceCircumstances,
): Range | undefined => {
  const leakage = rangeOf(device, row, circumstances);
  const doubling = ruleOf(circumstances.catalogue, 'junction-doubling');
  return leakage && leakageWhenWarm(leakage, temperatureIn(circumstances), doubling);
};

const biasOf = (
  device: DeviceRow,
  row: DeviceSumInputRow,
  circumstances: DeviceCircumstances,
): Range | undefined => {
  const fet = deviceKnowledge(circumstances.catalogue, device, 'fet-input')?.range;
  return fet && (isLeakage(fet) ? leakageOf : rangeOf)(device, row, circumstances);
};

/** What one field of a sum is filled with; nothing where that is not known. */
const fill = (
  device: DeviceRow,
  row: DeviceSumInputRow,
  circumstances: DeviceCircumstances,
): string | undefined => {
  const { catalogue, original, conditions } = circumstances;
  const { properties, conditionDefinitions } = catalogue.devices;
  const unitOf = (rows: readonly { id: string; unit: string }[]): string =>
    rows.find(({ id }) => id === row.of)?.unit ?? '';
  const write = (range: Range | undefined, unit = unitOf(properties)): string | undefined =>
    writtenRange(catalogue, range, unit);
  switch (row.takes) {
    case 'words':
      return row.of;
    case 'condition': {
      const asked = conditions[row.of];
      return write(asked && exactly(asked.typ), unitOf(conditionDefinitions));
    }
    case 'property':
      return write(rangeOf(device, row, circumstances));
    case 'property-if-known':
      return write(rangeOf(device, row, circumstances)) ?? '';
    case 'warm-leakage':
      return write(leakageOf(device, row, circumstances));
    case 'bias':
      return write(biasOf(device, row, circumstances));
    case 'old-bias':
      return write(biasOf(original, row, circumstances));
    case 'charge':
      return write(injectedCharge(device, circumstances)?.range, 'C');
  }
};

/**
 * The bench sum that works out the same as a finding about a device, with the numbers of both devices
 * and of the use. Nothing where there is none or where one of its numbers is not known.
 */
export const filledDeviceSum = (
  finding: Finding,
  device: DeviceRow,
  circumstances: DeviceCircumstances,
): FilledSum | undefined => {
  const { findings, sumInputs } = circumstances.catalogue.devices;
  const sum = findings.find(({ id }) => id === finding.finding)?.sum;
  return fillSum(sumInputs, sum, finding, (row) => fill(device, row, circumstances));
};
