import type { DeviceRow, PinFunctionRow } from '../../schemas/devices.ts';
import { weakestOf } from '../assessment/basis.ts';
import type { Basis, Catalogue, SourceId } from '../catalogue.ts';

type Role = PinFunctionRow['role'];

/** One pin that does something else. */
export interface PinDifference {
  pin: number;
  /** What it does in the old part and in the new one; `no pin` where there is none. */
  old: string;
  now: string;
  /** Main where the circuit needs the pin or the new part drives it; trim otherwise. */
  role: 'main' | 'trim';
}

/** What each pin of a pinout does. */
const pinsOf = ({ devices }: Pick<Catalogue, 'devices'>, pinout: string): Map<number, string> =>
  new Map(
    devices.pins
      .filter((row) => row.pinout === pinout)
      .map((row) => [
        row.pin,
        row.section === '' ? row.function : `${row.function}:${row.section}`,
      ]),
  );

const roleOf = ({ devices }: Pick<Catalogue, 'devices'>, what: string | undefined): Role =>
  devices.pinFunctions.find((row) => row.id === what?.split(':')[0])?.role ?? 'none';

const nameOf = ({ devices }: Pick<Catalogue, 'devices'>, what: string | undefined): string => {
  const [id, section] = (what ?? '').split(':');
  const name = devices.pinFunctions.find((row) => row.id === id)?.name ?? 'no pin';
  return section === undefined ? name : `${name} ${section}`;
};

/**
 * Pins of one order that do something else in another. Where neither part uses a pin, it makes no
 * difference. One that is a main pin of either part, or that only one of them has, counts as main; a
 * trim pin that meets another trim pin or an unused one counts as trim.
 */
export const pinDifferences = (
  catalogue: Pick<Catalogue, 'devices'>,
  oldOrder: string,
  newOrder: string,
): PinDifference[] => {
  const [before, after] = [pinsOf(catalogue, oldOrder), pinsOf(catalogue, newOrder)];
  const pins = [...new Set([...before.keys(), ...after.keys()])].sort((a, b) => a - b);
  return pins.flatMap((pin) => {
    const [was, is] = [before.get(pin), after.get(pin)];
    if (was === is) return [];
    const roles = [roleOf(catalogue, was), roleOf(catalogue, is)];
    if (roles.every((role) => role === 'none') && was !== undefined && is !== undefined) return [];
    const role = roles.includes('main') || was === undefined || is === undefined ? 'main' : 'trim';
    return [{ pin, old: nameOf(catalogue, was), now: nameOf(catalogue, is), role }];
  });
};

/** Everything that two devices' orders of pins come to. */
export interface PinComparison {
  /** Of the usual order of each. */
  usual: PinDifference[];
  /** Main pins that differ between the usual orders, and at best and at worst over all orders. */
  main: { least: number; usual: number; most: number };
  /** Trim pins that differ between the usual orders. */
  trim: number;
  basis: Basis;
  sources: SourceId[];
}

const mainOf = (differences: readonly PinDifference[]): number =>
  differences.filter(({ role }) => role === 'main').length;

/** Compares the pins of two devices, or nothing where an order is not known. */
export const comparePins = (
  catalogue: Pick<Catalogue, 'devices'>,
  old: DeviceRow,
  standIn: DeviceRow,
): PinComparison | undefined => {
  const [first, ...others] = old.pinouts.flatMap((from) =>
    standIn.pinouts.map((to) => pinDifferences(catalogue, from, to)),
  );
  if (first === undefined) return undefined;
  const counts = [first, ...others].map(mainOf);
  const rows = catalogue.devices.pins.filter((row) =>
    [...old.pinouts, ...standIn.pinouts].includes(row.pinout),
  );
  return {
    usual: first,
    main: { least: Math.min(...counts), usual: mainOf(first), most: Math.max(...counts) },
    trim: first.length - mainOf(first),
    basis: weakestOf(rows.map((row) => row.basis)),
    sources: [...new Set(rows.map((row) => row.source))],
  };
};
