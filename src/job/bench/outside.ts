import {
  formatQuantity,
  formatValue,
  type Catalogue,
  type Range,
  type Tolerance,
  type Unit,
} from '../../engine/index.ts';
import { printTolerance } from '../../substitution/typed-numbers.ts';
import type { Fitted } from '../model/job.ts';
import type { PlannedLine } from '../planning/planned.ts';
import { isCapacitor, isKind } from '../planning/stand-in.ts';
import { benchFieldsOf, type BenchField } from './bench-fields.ts';
import type { PresetSteps } from './preset.ts';

/** Readings that a part is marked with, of kinds that go by value. */
const MARKED: readonly string[] = ['resistance', 'total'];

/** Mark of what goes in, in the unit of a reading; nothing where the reading is of something else. */
const markOf = (
  { standIn }: PlannedLine,
  { row }: BenchField,
): { value: number; tolerance: Tolerance } | undefined => {
  if (standIn === undefined) return undefined;
  if (isCapacitor(standIn) && row.id === 'capacitance') {
    const { capacitance, tolerance } = standIn.candidate;
    return { value: capacitance, tolerance };
  }
  if (!isKind(standIn) || !MARKED.includes(row.id)) return undefined;
  const { value, unit, tolerance } = standIn.candidate;
  return value === undefined || tolerance === undefined || unit !== row.unit
    ? undefined
    : { value: value * (standIn.inSeries ?? 1), tolerance };
};

/**
 * What is to be said of a reading after the work that lies outside what the new part may be by its
 * own mark, with the numbers; nothing where it lies inside, or where nothing can be said.
 */
const outsideOf = (planned: PlannedLine, field: BenchField): string => {
  const { row, time, range, display } = field;
  const mark =
    planned.decision === 'replace' && time === 'after' ? markOf(planned, field) : undefined;
  if (mark === undefined || (range === undefined && display !== 'over')) return '';
  const unit = row.unit as Unit;
  const { value, tolerance } = mark;
  const allowed: Range = {
    min: value * (1 - tolerance.minus),
    typ: value,
    max: value * (1 + tolerance.plus),
  };
  const said =
    `outside its tolerance: ${formatValue(value, unit)} ${printTolerance(tolerance)} is ` +
    `${formatQuantity({ ...allowed, typ: allowed.min }, unit)}, and this is `;
  if (range === undefined) return `${said}over range`;
  const { min, typ, max } = range;
  if (max >= allowed.min && min <= allowed.max) return '';
  const off = Math.abs(typ / value - 1);
  const way = typ > value ? 'above' : 'below';
  return `${said}${formatValue(off, 'fraction')} ${way} its mark`;
};

/**
 * What is to be said of a trimmer that was set otherwise than its setting asks, by more than the new
 * one can be set; nothing where it is right, or where nothing can be said.
 */
const offSetting = (
  { standIn }: PlannedLine,
  { row, time, range }: BenchField,
  { set, total, from }: PresetSteps,
): string => {
  const trimmer = standIn !== undefined && isKind(standIn) ? standIn : undefined;
  const share = trimmer?.finest?.[from.use];
  if (row.id !== 'set-to' || time !== 'after' || range === undefined) return '';
  if (set === undefined || total === undefined || share === undefined) return '';
  const finest = share.max * total.max;
  const { min, typ, max } = range;
  if (max >= set.min - finest && min <= set.max + finest) return '';
  const off = Math.abs(typ - set.typ);
  return (
    `off its setting: it has to read ${formatQuantity(set, 'ohm', { digits: 4 })}, this is ` +
    `${formatValue(off, 'ohm')} ${typ > set.typ ? 'more' : 'less'}, and it can be set to within ${formatValue(finest, 'ohm')}`
  );
};

/** What can be written down at one designator, with what lies outside. */
export const fieldsAt = (
  planned: PlannedLine,
  fitted: Fitted,
  common: Catalogue,
  preset?: PresetSteps,
): BenchField[] =>
  benchFieldsOf(planned.part, fitted, common).map((field) => ({
    ...field,
    outside:
      outsideOf(planned, field) || (preset === undefined ? '' : offSetting(planned, field, preset)),
  }));
