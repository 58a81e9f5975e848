import { FLOAT_ERROR } from '../quantities/within.ts';
import type { Tolerance } from '../markings/meanings/reading.ts';
import type { Use } from '../markings/meanings/token.ts';
import { inOrderOfUse, rarer } from '../markings/meanings/use.ts';
import type { PartToPrint } from '../printed/way.ts';
import {
  meaningsOf,
  schemesFor,
  type ColourId,
  type ColourReadingTables,
  type FormRow,
  type Group,
  type LayoutRow,
  type MeaningRow,
  type Scheme,
  type SchemeRow,
} from './scheme.ts';

/** One way in which colours may mark a part. */
export interface Painted {
  scheme: SchemeRow;
  layout: LayoutRow;
  form: FormRow;
  /** Ids of colours, a place each; nothing where what it tells is not known of the part. */
  colours: (ColourId | undefined)[];
  /** The least usual of all that it is put together from. */
  use: Use;
}

/** What each place of a group is painted, and how usual that is. */
interface Paint {
  colours: (ColourId | undefined)[];
  use: Use;
}

const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= FLOAT_ERROR * Math.max(1, Math.abs(b));

/** The meaning of a role that is wanted, in colours that are first taken for it. */
const paintedAs = (
  scheme: Scheme,
  { role, at }: Group,
  wanted: (row: MeaningRow) => boolean,
  value?: number,
): Paint | undefined => {
  for (const row of scheme.meanings) {
    const colours = row.second === '' ? [row.colour] : [row.colour, row.second];
    if (row.role !== role || colours.length !== at.length || !wanted(row)) continue;
    if (meaningsOf(scheme, role, colours, value)[0] === row) return { colours, use: row.use };
  }
  return undefined;
};

const open = ({ at }: Group): Paint => ({ colours: at.map(() => undefined), use: 'usual' });

const PERCENT = 100;
const PICO = 1e12;

const isTolerance =
  ({ minus, plus, unit }: Tolerance) =>
  (row: MeaningRow): boolean => {
    const size = unit === 'F' ? PICO : PERCENT;
    if ((row.unit === 'pF') !== (unit === 'F')) return false;
    return near(row.low ?? 0, -minus * size) && near(row.high ?? 0, plus * size);
  };

/** A figure of a number whose places are groups of their own. */
const figureAt = (scheme: Scheme, group: Group, figures: string): Paint | undefined => {
  const own = scheme.groups.filter(({ role }) => role === group.role);
  const figure = figures.padStart(own.length, '0').charAt(own.indexOf(group));
  return figures.length > own.length
    ? undefined
    : paintedAs(scheme, group, ({ value }) => String(value) === figure);
};

/** A value as its figures and the factor that they are multiplied by. */
interface Written {
  figures: string;
  factor: number;
}

/** How a value is written in so many figures as a scheme has places for. */
const writtenIn = ({ row, groups, meanings }: Scheme, value: number): Written[] => {
  const places = groups.filter(({ role }) => role === 'digit').length;
  const factors = new Set(
    meanings.flatMap(({ role, value: factor }) => (role === 'multiplier' ? (factor ?? []) : [])),
  );
  return [...factors].flatMap((factor) => {
    const figures = String(Number((value / (row.unit_si ?? NaN) / factor).toPrecision(9)));
    return /^[1-9]\d*$/.test(figures) && figures.length === places ? [{ figures, factor }] : [];
  });
};

const paintGroup = (
  scheme: Scheme,
  group: Group,
  part: PartToPrint,
  { figures, factor }: Written,
): Paint | undefined => {
  const { capacitance, tolerance, ratedVoltage: volts, temperatureCharacteristic } = part;
  switch (group.role) {
    case 'digit':
      return figureAt(scheme, group, figures);
    case 'multiplier':
      return paintedAs(scheme, group, ({ value }) => value === factor);
    case 'tolerance':
      return tolerance === undefined
        ? open(group)
        : paintedAs(scheme, group, isTolerance(tolerance), capacitance);
    case 'voltage':
      return volts === undefined
        ? open(group)
        : paintedAs(scheme, group, ({ value }) => value === volts, capacitance);
    case 'hundreds-of-volts':
      if (volts === undefined) return open(group);
      return volts % 100 === 0 ? figureAt(scheme, group, String(volts / 100)) : undefined;
    case 'temperature':
    case 'class':
    case 'characteristic':
      return temperatureCharacteristic === undefined
        ? open(group)
        : paintedAs(scheme, group, ({ word }) => word === temperatureCharacteristic);
    default:
      // What kind of part or make it is: not known.
      return open(group);
  }
};

/** Whether what a scheme tells by having no place for it agrees with the part. */
const absenceAgrees = (scheme: Scheme, { tolerance, capacitance }: PartToPrint): boolean => {
  if (tolerance === undefined || !scheme.row.absent.includes('tolerance')) return true;
  const told = meaningsOf(scheme, 'tolerance', ['none'], capacitance)[0];
  return told === undefined || isTolerance(tolerance)(told);
};

const paintedIn = (scheme: Scheme, part: PartToPrint, written: Written): Painted[] => {
  const paints = scheme.groups.map((group) => paintGroup(scheme, group, part, written));
  if (paints.includes(undefined)) return [];
  const known = paints.flatMap((paint) => paint ?? []);
  const use = known.reduce((least, paint) => rarer(least, paint.use), scheme.row.use);
  const { row, layout, form } = scheme;
  return [{ scheme: row, layout, form, colours: known.flatMap(({ colours }) => colours), use }];
};

/**
 * Every way in which colours may mark a part, by the tables that colours are read with, usual ones
 * first; what is not known of the part leaves its places open. F, ohm, V and fractions.
 */
export const coloursPainted = (
  { markings: tables }: { markings: ColourReadingTables },
  part: PartToPrint,
): Painted[] => {
  const quantity = part.capacitance === undefined ? 'resistance' : 'capacitance';
  const value = part.capacitance ?? part.resistance ?? NaN;
  const painted = tables.colourSchemes
    .filter((row) => row.quantity === quantity)
    .filter(
      ({ value_min: least = 0, value_max: most = Infinity }) =>
        value >= least * (1 - FLOAT_ERROR) && value <= most * (1 + FLOAT_ERROR),
    )
    .flatMap((row) => schemesFor(tables, { scheme: row.id }, row.places.length))
    .filter((scheme) => absenceAgrees(scheme, part))
    .flatMap((scheme) =>
      writtenIn(scheme, value).flatMap((written) => paintedIn(scheme, part, written)),
    );
  return inOrderOfUse(painted);
};
