import type { Catalogue } from '../engine/index.ts';
import type { PositionRow } from '../schemas/positions.ts';

/** Positions that ask for the same findings of a sum. */
export interface AskedIn {
  /** Names of the findings. */
  findings: readonly string[];
  /** Where one of them must be met. */
  must: readonly PositionRow[];
  /** Where they weigh without ruling a part out. */
  weighs: readonly PositionRow[];
}

/** Positions that ask for what a sum works out, by what they ask; most positions first. */
export const askedIn = (
  { positions, demands, findings }: Catalogue,
  sum: string,
): readonly AskedIn[] => {
  const asking = Object.values(positions).flatMap((position) => {
    const own = demands.filter(
      (demand) => demand.position === position.id && findings[demand.finding]?.sum === sum,
    );
    const names = own.map(({ finding }) => findings[finding]?.name ?? finding).toSorted();
    return own.length === 0
      ? []
      : [{ position, names, must: own.some(({ weight }) => weight === 'hard') }];
  });
  return [...Map.groupBy(asking, ({ names }) => names.join(';')).values()]
    .toSorted((a, b) => b.length - a.length)
    .map((group) => ({
      findings: group[0]?.names ?? [],
      must: group.filter(({ must }) => must).map(({ position }) => position),
      weighs: group.filter(({ must }) => !must).map(({ position }) => position),
    }));
};
