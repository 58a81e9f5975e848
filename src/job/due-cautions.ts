import type { Catalogue } from '../engine/index.ts';
import { cautionsAt, cautionsFor } from '../substitution/cautions.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { PlannedLine } from './planned.ts';
import { isCapacitor } from './stand-in.ts';

/** Whether a caution holds for any work at a bench, whatever the part and its place. */
export const isGeneral = ({ types, positions, condition, made, kinds }: CautionRow): boolean =>
  [...types, ...positions, ...made, ...kinds, condition].every((text) => text === '');

/** Types that the work on a line meets: of a part that is replaced, of the new one, or of both. */
const typesAtHand = (
  { worked, standIn, decision }: PlannedLine,
  part: CautionRow['part'],
): string[] => {
  const old = worked?.request?.original.type ?? '';
  // A part that is only tested stays in if it reads well, so it counts as either.
  if (decision !== 'replace' || standIn === undefined || !isCapacitor(standIn)) return [old];
  const fitted = (standIn.candidate.made?.parts ?? [standIn.candidate]).map(({ type }) => type);
  if (part === 'old') return [old];
  return part === 'new' ? fitted : [old, ...fitted];
};

/**
 * Cautions of parts besides capacitors: those that name the kind or that the use of a device names,
 * and those that the numbers of its position bring up.
 */
const ofOthers = (
  { part, worked }: PlannedLine,
  catalogue: Catalogue | undefined,
  cautions: readonly CautionRow[],
): CautionRow[] => {
  const { conditions, cautions: named = [] } = worked ?? {};
  const { type = '', position = '' } = part;
  const tied = cautions.filter((row) => !isGeneral(row) && row.kinds.length === 0);
  const here =
    catalogue === undefined || conditions === undefined
      ? []
      : cautionsAt(
          { ...catalogue, cautions: tied },
          { id: type },
          { id: position },
          { conditions, assessments: [] },
        )
          .filter(({ due }) => due)
          .map(({ caution }) => caution);
  const own = cautions.filter(({ id, kinds }) => kinds.includes(part.kind) || named.includes(id));
  return [...new Set([...own, ...here])];
};

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
  const request = worked?.request;
  const position = catalogue?.positions[request?.position ?? ''];
  if (request === undefined || catalogue === undefined || position === undefined)
    return ofOthers(planned, catalogue, cautions);
  const tied = cautions.filter((row) => !isGeneral(row) && row.kinds.length === 0);
  const assessments = standIn === undefined || !isCapacitor(standIn) ? [] : [standIn];
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
