import { loadCatalogue } from '../catalogue/index.ts';
import { isMetIn } from '../engine/index.ts';
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
