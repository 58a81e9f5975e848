import type { Catalogue } from '../engine/index.ts';
import type { DemandRow, PositionRow } from '../schemas/positions.ts';

/** A position whose findings rest on the physics of a sum. */
export interface AskedIn {
  position: PositionRow;
  /** Names of those findings, the weightiest first, and whether one of them must be met. */
  findings: readonly string[];
  must: boolean;
}

const WEIGHTS: readonly DemandRow['weight'][] = ['hard', 'strong', 'mild'];

/** Positions that ask for what a sum works out; those in which it must be met come first. */
export const askedIn = (
  { positions, demands, findings }: Catalogue,
  sum: string,
): readonly AskedIn[] =>
  Object.values(positions)
    .flatMap((position) => {
      const own = demands
        .filter(
          (demand) => demand.position === position.id && findings[demand.finding]?.sum === sum,
        )
        .toSorted((a, b) => WEIGHTS.indexOf(a.weight) - WEIGHTS.indexOf(b.weight));
      if (own.length === 0) return [];
      return [
        {
          position,
          findings: own.map(({ finding }) => findings[finding]?.name ?? finding),
          must: own[0]?.weight === 'hard',
        },
      ];
    })
    .toSorted((a, b) => Number(b.must) - Number(a.must));
