import type { Catalogue } from '../../../src/engine/index.ts';
import type { DeviceRow, UseRow } from '../../../src/schemas/devices.ts';

/** Rows of devices and uses by their ids; a name that is not there fails the test. */
export const named = ({
  devices,
}: Catalogue): { device: (id: string) => DeviceRow; use: (id: string) => UseRow } => {
  const find = <Row extends { id: string }>(rows: readonly Row[], id: string): Row => {
    const row = rows.find((one) => one.id === id);
    if (row === undefined) throw new Error(`there is no ${id}`);
    return row;
  };
  return {
    device: (id) => find(devices.devices, id),
    use: (id) => find(devices.uses, id),
  };
};
