import type { ConditionRow } from '../../schemas/positions.ts';
import type { Catalogue, ConditionId } from '../catalogue.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { rowsAt } from './at-position.ts';
import {
  derivedDefault,
  FOLLOW_CONDITIONS,
  leastThere,
  plainDefault,
  tellsLittle,
  type Before,
} from './derived-default.ts';
import { completeOriginal, rowNamed } from './original.ts';
import type { OldPart, Request } from './parts.ts';

/** One condition as an assessment uses it. */
export interface ResolvedCondition {
  id: ConditionId;
  /** SI */
  range: Range;
  /** given by the visitor; a default of the position; derived from the old part. */
  from: 'given' | 'default' | 'derived';
  row: ConditionRow;
}

/** Everything that an assessment starts from, filled in. */
export interface Situation {
  original: OldPart;
  conditions: ResolvedCondition[];
}

const STEADY = ['vdc', 'v-surge'];
const ALTERNATING = ['vac'];

/**
 * The old part completed and every condition of the position: the visitor's numbers where given,
 * the documented defaults elsewhere.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const resolveSituation = (catalogue: Catalogue, request: Request): Situation => {
  const position = rowNamed(catalogue.positions, request.position, 'position');
  const rows = rowsAt(catalogue.conditions, position.id);
  const said = (row: ConditionRow): Range | undefined =>
    request.conditions?.[row.condition] ??
    (row.follows === '' ? plainDefault(catalogue, row) : undefined);
  const steady = rows.find(({ condition }) => condition === 'vdc');
  const direct = (steady && said(steady))?.max;
  /** What is known of a voltage before the rating of the old part is. */
  const known = (row: ConditionRow): Range | undefined =>
    said(row) ??
    leastThere(catalogue, row) ??
    (row.follows !== 'direct-voltage' || direct === undefined || tellsLittle(row, direct)
      ? undefined
      : exactly((row.typ ?? 0) * direct));
  const highest = (stresses: readonly ConditionId[]): number =>
    Math.max(
      0,
      ...rows.filter((row) => stresses.includes(row.condition)).map((row) => known(row)?.max ?? 0),
    );
  const original = completeOriginal(catalogue, request.original, position, {
    peak: highest(STEADY),
    rms: highest(ALTERNATING),
  });
  const pitch = rows.find(({ condition }) => condition === 'room');
  const room =
    (request.conditions?.['room'] ?? (pitch && plainDefault(catalogue, pitch)))?.typ ?? 0;
  const resolve = (row: ConditionRow, conditions: Before['conditions']): ResolvedCondition => {
    const given = request.conditions?.[row.condition];
    if (given !== undefined) return { id: row.condition, range: given, from: 'given', row };
    return row.follows === ''
      ? { id: row.condition, range: plainDefault(catalogue, row), from: 'default', row }
      : {
          id: row.condition,
          range: derivedDefault(catalogue, row, original, { room, conditions }),
          from: 'derived',
          row,
        };
  };
  const first = rows
    .filter(({ follows }) => !FOLLOW_CONDITIONS.includes(follows))
    .map((row) => resolve(row, {}));
  const settled = Object.fromEntries(first.map(({ id, range }) => [id, range]));
  const conditions = rows.map(
    (row) => first.find((one) => one.row === row) ?? resolve(row, settled),
  );
  return { original, conditions };
};
