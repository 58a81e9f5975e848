import type { Catalogue } from '../engine/catalogue.ts';
import type { ConditionRow, DemandRow } from '../schemas/positions.ts';
import { printFigure, printNumber, printWithUnit } from './numbers.ts';

/** The limit of a demand in words: a number, or a multiple of a condition. */
export const demandLimit = (catalogue: Catalogue, demand: DemandRow): string => {
  const finding = catalogue.findings[demand.finding];
  if (!finding) return '';
  const condition = catalogue.conditionDefinitions[demand.limit_of];
  if (condition) {
    const factor = demand.limit ?? 1;
    const name = `${condition.name.charAt(0).toLowerCase()}${condition.name.slice(1)}`;
    const bound = finding.better === 'high' ? 'at least' : 'at most';
    return factor === 1 ? `${bound} the ${name}` : `${bound} ${printNumber(factor)} × the ${name}`;
  }
  const { limit, limit_high } = demand;
  if (finding.unit === 'grade') return 'yes or no';
  if (limit !== undefined && limit_high !== undefined) {
    return printFigure({ min: limit, max: limit_high }, finding.unit);
  }
  if (limit_high !== undefined) return `at most ${printWithUnit(limit_high, finding.unit)}`;
  if (limit === undefined) return 'by the conditions';
  return `${finding.better === 'high' ? 'at least' : 'at most'} ${printWithUnit(limit, finding.unit)}`;
};

/** The default of a condition in words: a figure, or how it follows from the old part. */
export const conditionDefault = (catalogue: Catalogue, row: ConditionRow): string => {
  const definition = catalogue.conditionDefinitions[row.condition];
  if (!definition) return '';
  const typ = row.typ ?? 1;
  switch (row.follows) {
    case 'rated-voltage':
      return `${printNumber(typ)} × the old part's rated voltage`;
    case 'corner':
      return `what puts the corner at ${printWithUnit(typ, 'Hz')} with the old value`;
    case 'value':
      return `${printNumber(typ)} F·${definition.unit === 'ohm' ? 'Ω' : definition.unit} over the old value`;
    default:
      return printFigure(row, definition.unit);
  }
};
