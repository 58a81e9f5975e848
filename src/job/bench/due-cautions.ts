import { resolveSituation, type Catalogue } from '../../engine/index.ts';
import type { CautionRow } from '../../schemas/cautions.ts';
import { cautionsAt, type AtHand } from '../../substitution/cautions.ts';
import type { PlannedLine } from '../planning/planned.ts';
import { isCapacitor } from '../planning/stand-in.ts';
import { assumedBy, type Assumed } from './assumed.ts';

/** A caution that counts, with the number that nobody typed where it rests on one. */
export interface DueCaution {
  row: CautionRow;
  assumed?: Assumed;
}

/** Each once; what counts without an assumed number counts so. */
const eachOnce = (due: readonly DueCaution[]): DueCaution[] =>
  [...Map.groupBy(due, ({ row }) => row).entries()].map(
    ([row, alike]) => alike.find(({ assumed }) => assumed === undefined) ?? alike[0] ?? { row },
  );

/** Cautions that the numbers at hand bring up for a type in a position. */
const dueAt = (
  catalogue: Catalogue,
  type: string,
  position: string,
  atHand: AtHand,
): DueCaution[] =>
  cautionsAt(catalogue, { id: type }, { id: position }, atHand)
    .filter(({ due }) => due)
    .map(({ caution, trigger }) => {
      const assumed = assumedBy(trigger, atHand.conditions, catalogue);
      return assumed === undefined ? { row: caution } : { row: caution, assumed };
    });

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
): DueCaution[] => {
  const { conditions, cautions: named = [] } = worked ?? {};
  const { type = '', position = '' } = part;
  const tied = cautions.filter((row) => !isGeneral(row) && row.kinds.length === 0);
  const here =
    catalogue === undefined || conditions === undefined
      ? []
      : dueAt({ ...catalogue, cautions: tied }, type, position, { conditions, assessments: [] });
  const own = cautions.filter(({ id, kinds }) => kinds.includes(part.kind) || named.includes(id));
  return eachOnce([...own.map((row) => ({ row })), ...here]);
};

/**
 * What can hurt a person or the part in the work on a line: by the part that comes out, the one that
 * goes in, their place and its numbers. What holds for any work is not among them.
 * @param catalogue of the line's position
 * @param cautions the table of cautions, which slices of the catalogue leave out
 */
const lineCautions = (
  planned: PlannedLine,
  catalogue: Catalogue | undefined,
  cautions: readonly CautionRow[],
): readonly DueCaution[] => {
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
  const atHand = { conditions: resolveSituation(catalogue, request).conditions, assessments };
  const due = [...new Set(typesAtHand(planned, ''))].flatMap((id) =>
    catalogue.types[id] === undefined
      ? []
      : dueAt(
          { ...catalogue, cautions: tied.filter((row) => isFor(row, id)) },
          id,
          position.id,
          atHand,
        ),
  );
  return eachOnce(due);
};

/** The same, worked out once for all lines of a board that ask the same. */
export const newLineCautions = (): typeof lineCautions => {
  const known = new Map<unknown, { of: PlannedLine; due: readonly DueCaution[] }[]>();
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
