import type { Catalogue } from '../../engine/index.ts';
import type { Adjustment, Job } from '../model/job.ts';
import type { PlannedLine } from '../planning/planned.ts';

const trimmersOf = (lines: readonly PlannedLine[], kinds: Catalogue['kinds']): Adjustment[] =>
  lines
    .filter(({ part }) => kinds[part.kind]?.wiper === 'preset')
    .flatMap(({ line, part }) =>
      part.designators.map((designator) => ({
        id: designator,
        what: [designator, line.note.trim()].filter((text) => text !== '').join(': '),
        before: '',
        after: '',
        done: false,
        at: '',
      })),
    );

/**
 * All adjustments of a board in the order in which they are made: as the visitor has put them, then
 * the trimmers of the parts list that are not among them.
 */
export const adjustmentsOf = (
  { adjustments }: Pick<Job, 'adjustments'>,
  lines: readonly PlannedLine[],
  kinds: Catalogue['kinds'],
): Adjustment[] => {
  const known = new Set(adjustments.map(({ id }) => id));
  return [...adjustments, ...trimmersOf(lines, kinds).filter(({ id }) => !known.has(id))];
};

/** The same with one of them moved by so many places, as far as there are any. */
export const moved = (all: readonly Adjustment[], id: string, by: number): Adjustment[] => {
  const from = all.findIndex((one) => one.id === id);
  const one = all[from];
  if (one === undefined) return [...all];
  const to = Math.max(0, Math.min(all.length - 1, from + by));
  return all.toSpliced(from, 1).toSpliced(to, 0, one);
};
