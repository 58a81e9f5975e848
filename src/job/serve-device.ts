import {
  assessDevice,
  comparePins,
  deviceStandIns,
  type Catalogue,
  type DeviceAssessment,
} from '../engine/index.ts';
import { fail, ok } from '../engine/result.ts';
import { deviceFields } from '../device-view/numbers.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';
import { readRange } from '../substitution/typed-numbers.ts';
import { misfitOf, restOf, type Asking, type Server } from './asked.ts';
import type { Worked } from './planned.ts';
import type { DeviceStandIn } from './stand-in.ts';

const deviceOf = ({ devices }: Catalogue, id: string): DeviceRow | undefined =>
  devices.devices.find((row) => row.id === id);
const useOf = ({ devices }: Catalogue, id: string): UseRow | undefined =>
  devices.uses.find((row) => row.id === id);

/** Bodies of the orders of pins that a device is sold with, each once. */
const bodiesOf = ({ devices }: Catalogue, { pinouts }: DeviceRow): string[] => [
  ...new Set(pinouts.flatMap((id) => devices.pinouts.find((row) => row.id === id)?.body ?? [])),
];

const standInOf = (
  catalogue: Catalogue,
  old: DeviceRow,
  { device, verdict, findings, worst }: DeviceAssessment,
): DeviceStandIn => {
  const compared = comparePins(catalogue, old, device);
  const pins = (compared?.usual ?? [])
    .filter(({ role }) => role === 'main')
    .map(({ pin, old: before, stranger }) => ({ pin, old: before, now: stranger }));
  const isInDoubt = compared !== undefined && compared.main.most > compared.main.least;
  return {
    candidate: { type: device.id, number: device.name, bodies: bodiesOf(catalogue, device) },
    verdict,
    findings,
    worst,
    pins,
    pinNote: isInDoubt
      ? `sold with more than one order of pins: from ${String(compared.main.least)} to ${String(compared.main.most)} may differ, so check the one that comes`
      : '',
  };
};

/** The numbers of a line for its use, SI, and what of them could not be understood. */
const conditionsOf = (
  { catalogue, line }: Asking,
  use: UseRow,
): { given: Record<string, number>; rejected: Record<string, string> } => {
  const given: Record<string, number> = {};
  const rejected: Record<string, string> = {};
  for (const { definition, unit } of deviceFields(catalogue, use)) {
    const text = (line.conditions[definition.id] ?? '').trim();
    if (text === '') continue;
    const factor = catalogue.units[definition.unit]?.factor ?? 1;
    const { lowest, highest } = definition;
    const read = readRange(text, {
      unit,
      bare: definition.unit,
      lowest: lowest * factor,
      highest: highest * factor,
    });
    if ('value' in read) given[definition.id] = read.value.typ;
    else rejected[definition.id] = read.message;
  }
  return { given, rejected };
};

const work = (
  catalogue: Catalogue,
  old: DeviceRow,
  use: UseRow,
  given: Readonly<Record<string, number>>,
): Worked => {
  const all = deviceStandIns(catalogue, old, use, given);
  const { verdict, findings } = assessDevice(catalogue, old, use, old, given);
  const rest = restOf(all, (one) => standInOf(catalogue, old, one));
  return {
    cautions: use.cautions,
    best: rest.standIns[0],
    misfit: misfitOf(verdict, () => findings),
    rest: () => rest,
  };
};

/** Parts that go by type number, in the use that they are put to; no rules judge them first yet. */
export const devices: Server = {
  knowsType: (catalogue, type) => deviceOf(catalogue, type) !== undefined,
  knowsPosition: (catalogue, position) => useOf(catalogue, position) !== undefined,
  ask: (asking) => {
    const { catalogue, part, type, position } = asking;
    const [old, use] = [deviceOf(catalogue, type), useOf(catalogue, position)];
    if (old === undefined || use === undefined)
      throw new RangeError(`there is no device ${type} in the use ${position}`);
    const { given, rejected } = conditionsOf(asking, use);
    return {
      key: JSON.stringify(['device', type, position, given]),
      rejected: { ...part.rejected, ...rejected },
      work: () => work(catalogue, old, use, given),
      choose: (choice) => {
        const device = deviceOf(catalogue, choice.type);
        return device === undefined
          ? fail('There is no such device.')
          : ok({
              key: device.id,
              assess: () =>
                standInOf(catalogue, old, assessDevice(catalogue, old, use, device, given)),
            });
      },
    };
  },
};
