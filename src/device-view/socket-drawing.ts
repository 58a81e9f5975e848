import { isForm, partsDrawing, type PartSpec } from '../drawing/index.ts';
import { deviceKnowledge, type Catalogue } from '../engine/index.ts';
import { MILLIMETRE } from '../engine/quantities/si.ts';
import { h, type Element } from '../markup/node.ts';
import type { DeviceRow } from '../schemas/devices.ts';

/** Contacts of a socket, by its function; nothing for other devices. */
export const pinsOfSocket = (
  { devices }: Pick<Catalogue, 'devices'>,
  { function: does }: DeviceRow,
): number | undefined => devices.functions.find(({ id }) => id === does)?.socket_pins;

/**
 * A socket seen from above: as wide as the distance of its rows, with a pin for each contact. Nothing
 * for other devices and where the distance of the rows is not known.
 */
export const socketSpec = (catalogue: Catalogue, device: DeviceRow): PartSpec | undefined => {
  const pins = pinsOfSocket(catalogue, device);
  const known = (property: string): number | undefined => {
    const typ = deviceKnowledge(catalogue, device, property)?.range.typ;
    return typ === undefined ? undefined : typ / MILLIMETRE;
  };
  const pitch = known('row-pitch');
  if (pins === undefined || pitch === undefined) return undefined;
  const look = catalogue.job.packageLooks.find(
    ({ pitch_mm }) => Math.abs(pitch_mm - pitch) < 0.01 * pitch,
  );
  if (look === undefined || !isForm(look.form)) return undefined;
  return {
    form: look.form,
    length: (pins / 2) * look.step_mm,
    width: look.width_mm,
    height: known('seat-height') ?? look.height_mm,
    pitch,
    pins,
  };
};

/** What the drawing shows, for those who listen. */
const inWords = (name: string, pins: number): string =>
  `${name} seen from above, notch to the left: pin 1 at the lower left, pin ${String(pins / 2)} at the ` +
  `lower right, pin ${String(pins / 2 + 1)} at the upper right, pin ${String(pins)} at the upper left`;

/** A socket with its notch and the pins at its corners, over a millimetre rule; nothing for other devices. */
export const socketFigure = (catalogue: Catalogue, device: DeviceRow): Element[] => {
  const spec = socketSpec(catalogue, device);
  if (spec === undefined) return [];
  const { pins = 0 } = spec;
  return [
    h(
      'figure',
      { class: 'socket-figure' },
      partsDrawing([{ spec }], { views: 'first', label: inWords(device.name, pins) }),
      h(
        'figcaption',
        { class: 'small quiet' },
        'From above, pin 1 beside the notch; the numbers run round against the clock. From the solder side they run with it. Look which way the old one points before it comes out.',
      ),
    ),
  ];
};
