import { lastFew } from '../building/last-few.ts';
import { loadCatalogue } from '../catalogue/index.ts';
import { deviceStandIns, isMetIn } from '../engine/index.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';

/** Every device in every use that it is met in, as paths of pages. */
export const devicePaths = (): {
  params: { device: string; use: string };
  props: { device: DeviceRow; use: UseRow };
}[] => {
  const { devices, uses } = loadCatalogue().devices;
  return devices.flatMap((device) =>
    uses
      .filter((use) => isMetIn(device, use))
      .map((use) => ({ params: { device: device.id, use: use.id }, props: { device, use } })),
  );
};

/** A page and the figures beside it are built together, several at a time. */
const assessed = lastFew<ReturnType<typeof deviceStandIns>>(16);

/** The ranked stand-ins of a device in a use, at the usual numbers. */
export const referenceDevices = (device: DeviceRow, use: UseRow) =>
  assessed(`${device.id} ${use.id}`, () => deviceStandIns(loadCatalogue(), device, use));
