import type { Catalogue } from '../engine/catalogue.ts';
import {
  UNITS,
  formatQuantity,
  formatValue,
  type Range,
  type Unit,
} from '../engine/quantities/index.ts';
import type { ConditionRow, DemandRow } from '../schemas/positions.ts';
import { midSentence } from './mid-sentence.ts';
import { printNumber } from './numbers.ts';

/** How much of a unit of the tables goes into the SI unit that quantities are printed from. */
const siOf = (catalogue: Catalogue, unit: string): { unit: Unit; factor: number } => {
  const row = catalogue.units[unit];
  const si = UNITS.find((candidate) => candidate === row?.si);
  if (!row || !si) throw new Error(`no way to print a quantity in ${unit}`);
  return { unit: si, factor: row.factor };
};

const print = (catalogue: Catalogue, value: number, unitName: string): string => {
  const { unit, factor } = siOf(catalogue, unitName);
  return formatValue(value * factor, unit);
};

const printRange = (catalogue: Catalogue, range: Range, unitName: string): string => {
  const { unit, factor } = siOf(catalogue, unitName);
  const { min, typ, max } = range;
  return formatQuantity({ min: min * factor, typ: typ * factor, max: max * factor }, unit);
};

/** The limit of a demand in words: a number, or a multiple of a condition. */
export const demandLimit = (catalogue: Catalogue, demand: DemandRow): string => {
  const finding = catalogue.findings[demand.finding];
  if (!finding) return '';
  const bound = finding.better === 'high' ? 'at least' : 'at most';
  const condition = catalogue.conditionDefinitions[demand.limit_of];
  if (condition) {
    const factor = demand.limit ?? 1;
    const name = `the ${midSentence(condition.name)}`;
    return factor === 1 ? `${bound} ${name}` : `${bound} ${printNumber(factor)} × ${name}`;
  }
  const { limit, limit_high } = demand;
  if (finding.unit === 'grade') return 'yes or no';
  if (limit !== undefined && limit_high !== undefined) {
    return printRange(catalogue, { min: limit, typ: limit, max: limit_high }, finding.unit);
  }
  if (limit_high !== undefined) return `at most ${print(catalogue, limit_high, finding.unit)}`;
  if (limit === undefined) return 'by the conditions';
  return `${bound} ${print(catalogue, limit, finding.unit)}`;
};

/** What a body is held against, beside its own size. */
const ofBody = (least: number): string =>
  `the old part, at least ${printNumber(least)} × the room between the leads`;

/** A number, or a range with what is usual of it. */
const printUsual = (catalogue: Catalogue, range: Range, unit: string): string =>
  range.min === range.max
    ? print(catalogue, range.typ, unit)
    : `${printRange(catalogue, range, unit)}, usually ${print(catalogue, range.typ, unit)}`;

/** What goes with the old value: by a factor for other kinds of part, by each microfarad for capacitors. */
const byTheValue = (catalogue: Catalogue, row: ConditionRow, typ: number): string => {
  if (Object.hasOwn(catalogue.kindPositions, row.position))
    return typ === 1 ? 'the old value' : `${printNumber(typ)} × the old value`;
  const unit = catalogue.conditionDefinitions[row.condition]?.unit ?? '';
  return `in proportion to the old value: ${formatValue(typ * 1e-6, siOf(catalogue, unit).unit)} for 1 µF`;
};

/** What a default is told from, in the unit of its condition. */
interface Told {
  catalogue: Catalogue;
  row: ConditionRow;
  min: number;
  typ: number;
  max: number;
  unit: string;
}

const atWorst = ({ catalogue, typ, unit }: Told): string =>
  `that of a new part of the old type at worst, at least ${print(catalogue, typ, unit)}`;

/** How a default that follows from the old part follows from it. */
const FOLLOWING: Partial<Record<ConditionRow['follows'], (told: Told) => string>> = {
  'rated-voltage': ({ catalogue, row, typ, max, unit }) =>
    `${printNumber(typ)} × the old part's rated voltage${row.max === undefined ? '' : `, at least ${print(catalogue, max, unit)} where that bears it`}`,
  'marked-voltage': ({ catalogue, row, typ, max, unit }) =>
    `${printNumber(typ)} × the old part's rated voltage${row.max === undefined ? '' : `, which is at least ${print(catalogue, max, unit)} where nobody says it`}`,
  'direct-voltage': ({ catalogue, row, typ, max }) =>
    `${printNumber(typ)} × the DC voltage${row.min === undefined ? '' : `, above ${print(catalogue, max, 'V')} ${printNumber(row.min)} × the old part's rated voltage`}`,
  corner: ({ catalogue, row, typ, max, unit }) =>
    `what puts the corner at ${print(catalogue, typ, 'Hz')} with the old value${row.min === undefined ? '' : `, at ${print(catalogue, row.min, 'Hz')} with an electrolytic`}${row.max === undefined ? '' : `, at most ${print(catalogue, max, unit)}`}`,
  'body-pitch': ({ catalogue, typ, unit }) =>
    `${print(catalogue, typ, unit)}, but no less than the usual length of the old part`,
  'body-height': ({ typ, min }) => `${printNumber(typ)} × the usual height of ${ofBody(min)}`,
  'body-side': ({ typ, min }) => `${printNumber(typ)} × the usual length of ${ofBody(min)}`,
  'body-lead': ({ catalogue, min, typ, max, unit }) =>
    `${printUsual(catalogue, { min, typ, max }, unit)}, but no less than the leads of the old part need`,
  'series-resistance': ({ catalogue, row, typ, max, unit }) =>
    `${printNumber(typ)} × that of a new part of the old type${row.max === undefined ? '' : `, at most ${print(catalogue, max, unit)}`}`,
  reactive: () => 'what the AC voltage drives through the old value at the working frequency',
  slope: () => 'that of the old type, where it was chosen to balance what is around it, else 0',
  'least-resistance': ({ catalogue, typ, unit }) =>
    `that of a new part of the old type at least, at most ${print(catalogue, typ, unit)}`,
  'worst-resistance': atWorst,
  impedance: atWorst,
  kept: ({ typ }) => `${printNumber(typ)} × the least that the old part itself gives`,
  charge: ({ catalogue, typ, max, unit }) =>
    `what the charge in the old part at its rating would feed for ${formatValue(typ, 's')}, at most ${print(catalogue, max, unit)}`,
  power: ({ catalogue, row, typ, max, unit }) =>
    `what puts ${formatValue(typ, 'fraction')} of its rating into the old part${row.max === undefined ? '' : `, at most ${print(catalogue, max, unit)}`}`,
  thermal: ({ catalogue, typ, unit }) =>
    `${print(catalogue, typ, unit)}, but no less than the thermal noise of the old value and a little more`,
  value: ({ catalogue, row, typ }) => byTheValue(catalogue, row, typ),
};

/** The default of a condition in words: a figure, or how it follows from the old part. */
export const conditionDefault = (catalogue: Catalogue, row: ConditionRow): string => {
  const unit = catalogue.conditionDefinitions[row.condition]?.unit;
  if (unit === undefined) return '';
  const typ = row.typ ?? row.min ?? row.max ?? 0;
  const { min = typ, max = typ } = row;
  const told = { catalogue, row, min, typ, max, unit };
  return FOLLOWING[row.follows]?.(told) ?? printUsual(catalogue, { min, typ, max }, unit);
};
