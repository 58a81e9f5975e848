import type { Catalogue } from '../engine/index.ts';
import { cautionsFor } from '../substitution/cautions.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { PlannedLine } from './planned.ts';

/** Cautions that a line brings up: those of its own parts and place, and those of the whole work. */
export interface LineCautions {
  own: readonly CautionRow[];
  general: readonly CautionRow[];
}

/**
 * What can hurt a person or the part in the work on a line, by the old part and the one to fit.
 * @param catalogue of the line's position
 * @param cautions the table of cautions, which slices of the catalogue leave out
 */
export const lineCautions = (
  { worked, standIn }: PlannedLine,
  catalogue: Catalogue | undefined,
  cautions: readonly CautionRow[],
): LineCautions => {
  if (worked === undefined || catalogue === undefined) return { own: [], general: [] };
  const { request } = worked;
  const position = catalogue.positions[request.position];
  if (position === undefined) return { own: [], general: [] };
  const whole = { ...catalogue, cautions: [...cautions] };
  const assessments = standIn === undefined ? [] : [standIn];
  const types = new Set([request.original.type, standIn?.candidate.type ?? request.original.type]);
  const due = [...types].flatMap((id) => {
    const type = catalogue.types[id];
    if (type === undefined) return [];
    return cautionsFor(whole, type, position, { request, assessments })
      .filter((one) => one.due)
      .map(({ caution }) => caution);
  });
  // A step names what its own parts do, and what can kill in its place; the rest stands once above.
  const isOwn = (row: CautionRow): boolean =>
    row.types.some((id) => types.has(id)) ||
    (row.severity === 'danger' &&
      row.types.length === 0 &&
      (row.positions.includes(position.id) || row.condition !== '' || row.made.length > 0));
  const each = [...new Set(due)];
  return {
    own: each.filter(isOwn),
    general: each.filter((row) => !isOwn(row)),
  };
};
