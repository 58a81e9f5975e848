import { assessDevice, type Catalogue } from '../../../src/engine/index.ts';
import type { DeviceRow, UseRow } from '../../../src/schemas/devices.ts';

/** What tests ask of a catalogue by ids; a name that is not there fails the test. */
export interface Named {
  device: (id: string) => DeviceRow;
  use: (id: string) => UseRow;
  /** What one finding says of a device in the place of an old one. */
  verdictOf: (
    old: string,
    at: string,
    stranger: string,
    finding: string,
    given?: Record<string, number>,
  ) => string | undefined;
}

export const named = (catalogue: Catalogue): Named => {
  const find = <Row extends { id: string }>(rows: readonly Row[], id: string): Row => {
    const row = rows.find((one) => one.id === id);
    if (row === undefined) throw new Error(`there is no ${id}`);
    return row;
  };
  const device = (id: string): DeviceRow => find(catalogue.devices.devices, id);
  const use = (id: string): UseRow => find(catalogue.devices.uses, id);
  return {
    device,
    use,
    verdictOf: (old, at, stranger, finding, given = {}) =>
      assessDevice(
        catalogue,
        { original: device(old), use: use(at), given },
        device(stranger),
      ).findings.find((one) => one.finding === finding)?.verdict,
  };
};
