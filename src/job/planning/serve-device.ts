import { readDeviceNumbers } from '../../device-view/numbers.ts';
import {
  assessDevice,
  comparePins,
  deviceStandIns,
  judgeDevice,
  type Catalogue,
  type DeviceAssessment,
} from '../../engine/index.ts';
import { fail, ok } from '../../engine/result.ts';
import type { DeviceRow, UseRow } from '../../schemas/devices.ts';
import { messagesOf } from '../../substitution/typed-numbers.ts';
import { misfitOf, restOf, type Server } from './asked.ts';
import type { Worked } from './planned.ts';
import type { DevicePart, DeviceStandIn } from './stand-in.ts';

const deviceOf = ({ devices }: Catalogue, id: string): DeviceRow | undefined =>
  devices.devices.find((row) => row.id === id);
const useOf = ({ devices }: Catalogue, id: string): UseRow | undefined =>
  devices.uses.find((row) => row.id === id);

/** A device as a part to order, with the bodies of the orders of pins that it is sold with. */
const partOf = ({ devices }: Catalogue, { id, name, pinouts }: DeviceRow): DevicePart => {
  const orders = pinouts.flatMap((one) => devices.pinouts.find((row) => row.id === one) ?? []);
  return {
    type: id,
    number: name,
    bodies: [...new Set(orders.map(({ body }) => body))],
    namesBody: orders.some((row) => row.name_body),
  };
};

const standInOf = (
  catalogue: Catalogue,
  old: DeviceRow,
  { device, verdict, findings, worst }: DeviceAssessment,
): DeviceStandIn => {
  const compared = comparePins(catalogue, old, device);
  const pins = (compared?.usual ?? [])
    .filter(({ role }) => role === 'main')
    .map(({ pin, old: before, now }) => ({ pin, old: before, now }));
  const isInDoubt = compared !== undefined && compared.main.most > compared.main.least;
  return {
    candidate: partOf(catalogue, device),
    verdict,
    findings,
    worst,
    pins,
    pinNote: isInDoubt
      ? `sold with more than one order of pins: from ${String(compared.main.least)} to ${String(compared.main.most)} may differ, so check the one that comes`
      : '',
  };
};

const work = (
  catalogue: Catalogue,
  old: DeviceRow,
  use: UseRow,
  given: Readonly<Record<string, number>>,
): Worked => {
  const all = deviceStandIns(catalogue, { original: old, use, given });
  const { verdict, findings } = assessDevice(catalogue, { original: old, use, given }, old);
  const rest = restOf(all, (one) => standInOf(catalogue, old, one));
  return {
    cautions: use.cautions,
    judgement: judgeDevice(catalogue, old),
    best: rest.standIns[0],
    misfit: () => misfitOf(verdict, () => findings),
    rest: () => rest,
  };
};

/** Parts that go by type number, in the use that they are put to. */
export const devices: Server = {
  knowsType: (catalogue, type) => deviceOf(catalogue, type) !== undefined,
  knowsPosition: (catalogue, position) => useOf(catalogue, position) !== undefined,
  ask: (asking) => {
    const { catalogue, line, part, type, position } = asking;
    const [old, use] = [deviceOf(catalogue, type), useOf(catalogue, position)];
    if (old === undefined || use === undefined)
      throw new RangeError(`there is no device ${type} in the use ${position}`);
    const { given, rejected } = readDeviceNumbers(
      catalogue,
      use,
      new URLSearchParams(line.conditions),
    );
    return {
      key: JSON.stringify(['device', type, position, given]),
      rejected: { ...part.rejected, ...messagesOf(rejected) },
      work: () => work(catalogue, old, use, given),
      judge: () => judgeDevice(catalogue, old),
      choose: (choice) => {
        const device = deviceOf(catalogue, choice.type);
        return device === undefined
          ? fail('There is no such device.')
          : ok({
              key: device.id,
              assess: () =>
                standInOf(
                  catalogue,
                  old,
                  assessDevice(catalogue, { original: old, use, given }, device),
                ),
            });
      },
    };
  },
};
