import type { Catalogue } from '../engine/index.ts';
import { cautionsFor } from '../substitution/cautions.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { PlannedLine } from './planned.ts';

/** Whether a caution holds for any work at a bench, whatever the part and its place. */
export const isGeneral = ({ types, positions, condition, made, kinds }: CautionRow): boolean =>
  [...types, ...positions, ...made, ...kinds, condition].every((text) => text === '');

/** Types that the work on a line meets: of a part that is replaced, of the new one, or of both. */
const typesAtHand = (
  { worked, standIn, decision }: PlannedLine,
  part: CautionRow['part'],
): string[] => {
  const old = worked?.request.original.type ?? '';
  // A part that is only tested stays in if it reads well, so it counts as either.
  if (decision !== 'replace' || standIn === undefined) return [old];
  const fitted = (standIn.candidate.made?.parts ?? [standIn.candidate]).map(({ type }) => type);
  if (part === 'old') return [old];
  return part === 'new' ? fitted : [old, ...fitted];
};

/** Cautions of kinds of part that are not assessed here: none but those that name the kind. */
const ofKind = ({ part }: PlannedLine, cautions: readonly CautionRow[]): CautionRow[] =>
  cautions.filter(({ kinds }) => kinds.includes(part.kind));

/**
 * What can hurt a person or the part in the work on a line: by the part that comes out, the one that
 * goes in, their place and its numbers. What holds for any work is not among them.
 * @param catalogue of the line's position
 * @param cautions the table of cautions, which slices of the catalogue leave out
 */
export const lineCautions = (
  planned: PlannedLine,
  catalogue: Catalogue | undefined,
  cautions: readonly CautionRow[],
): readonly CautionRow[] => {
  const { worked, standIn } = planned;
  const position = catalogue?.positions[worked?.request.position ?? ''];
  if (worked === undefined || catalogue === undefined || position === undefined)
    return ofKind(planned, cautions);
  const { request } = worked;
  const tied = cautions.filter((row) => !isGeneral(row) && row.kinds.length === 0);
  const assessments = standIn === undefined ? [] : [standIn];
  const isFor = (row: CautionRow, id: string): boolean =>
    typesAtHand(planned, row.part).includes(id) &&
    (row.types.length === 0 || row.positions.includes(position.id) || row.types.includes(id));
  const due = [...new Set(typesAtHand(planned, ''))].flatMap((id) => {
    const type = catalogue.types[id];
    if (type === undefined) return [];
    const whole = { ...catalogue, cautions: tied.filter((row) => isFor(row, id)) };
    return cautionsFor(whole, type, position, { request, assessments })
      .filter((one) => one.due)
      .map(({ caution }) => caution);
  });
  return [...new Set(due)];
};

/** The same, worked out once for all lines of a board that ask the same. */
export const newLineCautions = (): typeof lineCautions => {
  const known = new Map<unknown, { of: PlannedLine; due: readonly CautionRow[] }[]>();
  return (planned, catalogue, cautions) => {
    if (planned.worked === undefined) return lineCautions(planned, catalogue, cautions);
    const alike = known.get(planned.worked) ?? [];
    const before = alike.find(
      ({ of }) => of.standIn === planned.standIn && of.decision === planned.decision,
    );
    if (before !== undefined) return before.due;
    const due = lineCautions(planned, catalogue, cautions);
    known.set(planned.worked, [...alike, { of: planned, due }]);
    return due;
  };
};
