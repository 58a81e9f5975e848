import { formatValue, type Catalogue, type Unit } from '../engine/index.ts';
import type {
  DeviceFigureRow,
  DevicePropertyRow,
  DeviceRow,
  PinRow,
  PinoutRow,
} from '../schemas/devices.ts';
import { sentence, typeset } from '../text/words.ts';

/** A figure as a page prints it. */
export interface PrintedFigure {
  name: string;
  figure: string;
  /** The supply or current and other conditions that it holds at. */
  at: string;
  note: string;
  row: DeviceFigureRow;
}

/** A figure that says only whether something is so. */
const isYesOrNo = ({ unit, lowest, highest }: DevicePropertyRow): boolean =>
  unit === 'grade' && lowest === 0 && highest === 1;

const printed = (
  row: DeviceFigureRow,
  property: DevicePropertyRow,
  { units }: Catalogue,
): string => {
  if (isYesOrNo(property)) return row.typ === 0 ? 'no' : 'yes';
  const unit = units[row.unit];
  const print = (value: number): string =>
    formatValue(value * (unit?.factor ?? 1), (unit?.si ?? row.unit) as Unit);
  const parts = [
    row.min === undefined ? '' : `at least ${print(row.min)}`,
    row.typ === undefined ? '' : `${print(row.typ)}${(row.max ?? row.min) ? ' typical' : ''}`,
    row.max === undefined ? '' : `at most ${print(row.max)}`,
  ];
  return parts.filter((part) => part !== '').join(', ');
};

/**
 * Every figure of a device in the order of the properties: its own, or else those of its series, the
 * nearest of which goes before what is said of a wider one.
 */
export const figuresOfDevice = (catalogue: Catalogue, device: DeviceRow): PrintedFigure[] => {
  const { figures, properties, series } = catalogue.devices;
  const owners = [device.id, ...device.series.toReversed()];
  return properties.flatMap((property) => {
    const rows = owners.flatMap((owner) =>
      figures.filter((row) => row.of === owner && row.property === property.id),
    );
    const nearest = rows.find(({ use }) => use === 'used')?.of;
    return rows
      .filter(({ of }) => nearest === undefined || of === nearest)
      .map((row) => {
        const of = series.find(({ id }) => id === row.of)?.name;
        const point = row.at === undefined ? '' : formatValue(row.at, property.at as Unit);
        const at = [point, typeset(row.conditions)].filter((part) => part !== '').join(', ');
        const note = [
          of === undefined ? '' : `${of} in general.`,
          row.note === '' ? '' : sentence(row.note),
        ];
        return {
          name: property.name,
          figure: printed(row, property, catalogue),
          at,
          note: note.join(' ').trim(),
          row,
        };
      });
  });
};

/** How one looks at a body to count its pins; some views say where the pins are instead. */
export const viewOf = ({ view }: Pick<PinoutRow, 'view'>): string =>
  sentence(view.startsWith('from ') ? `seen ${view}` : view);

/** An order of pins that a device is sold with. */
export interface PrintedPins {
  pinout: PinoutRow;
  pins: { pin: number; name: string; row: PinRow }[];
}

/** The orders of pins that a device is sold with, the usual one first. */
export const pinsOfDevice = ({ devices }: Catalogue, device: DeviceRow): PrintedPins[] =>
  device.pinouts.flatMap((id) => {
    const pinout = devices.pinouts.find((row) => row.id === id);
    if (pinout === undefined) return [];
    const pins = devices.pins
      .filter((row) => row.pinout === id)
      .map((row) => {
        const name = devices.pinFunctions.find((one) => one.id === row.function)?.name ?? '';
        return { pin: row.pin, name: row.section === '' ? name : `${name} ${row.section}`, row };
      });
    return [{ pinout, pins }];
  });
