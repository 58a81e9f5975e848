import type { Catalogue } from '../engine/index.ts';
import type { DemandRow, FindingRow } from '../schemas/positions.ts';

/** A position of any kind of part, or a use of devices. */
interface Place {
  id: string;
  name: string;
}

/** Places that ask for the same findings of a sum. */
export interface AskedIn {
  /** Names of the findings. */
  findings: readonly string[];
  /** Where one of them must be met. */
  must: readonly Place[];
  /** Where they weigh without ruling a part out. */
  weighs: readonly Place[];
}

const groups = (
  places: readonly Place[],
  demands: readonly DemandRow[],
  findings: ReadonlyMap<string, FindingRow>,
  sum: string,
): readonly AskedIn[] => {
  const asking = places.flatMap((place) => {
    const own = demands.filter(
      (demand) => demand.position === place.id && findings.get(demand.finding)?.sum === sum,
    );
    const names = own.map(({ finding }) => findings.get(finding)?.name ?? finding).toSorted();
    return own.length === 0
      ? []
      : [{ place, names, must: own.some(({ weight }) => weight === 'hard') }];
  });
  return [...Map.groupBy(asking, ({ names }) => names.join(';')).values()]
    .toSorted((a, b) => b.length - a.length)
    .map((group) => ({
      findings: group[0]?.names ?? [],
      must: group.filter(({ must }) => must).map(({ place }) => place),
      weighs: group.filter(({ must }) => !must).map(({ place }) => place),
    }));
};

/** Positions that ask for what a sum works out, by what they ask; most positions first. */
export const askedIn = (
  { positions, kindPositions, demands, findings }: Catalogue,
  sum: string,
): readonly AskedIn[] =>
  groups(
    [...Object.values(positions), ...Object.values(kindPositions)],
    demands,
    new Map(Object.entries(findings)),
    sum,
  );

/** Uses of devices that ask for what a sum works out, in the same way. */
export const askedInUses = (
  { devices: { uses, demands, findings } }: Catalogue,
  sum: string,
): readonly AskedIn[] => groups(uses, demands, new Map(findings.map((row) => [row.id, row])), sum);
