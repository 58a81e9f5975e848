import type { Catalogue, Judgement } from '../../engine/index.ts';
import { foundAt } from '../model/found-at.ts';
import type { Job } from '../model/job.ts';
import type { PlannedLine } from '../planning/planned.ts';
import { SERVERS } from '../planning/servers.ts';

/**
 * What the rules say of one of several designators of a line by its own readings, which do not
 * count for the line. Nothing where it has none, or has the line to itself.
 * @param catalogue of the line's position
 */
export const judgedAlone = (
  { line, part, worked }: PlannedLine,
  designator: string,
  { catalogue, whole }: { catalogue: Catalogue; whole: Job['whole'] },
): Judgement | undefined => {
  const found = foundAt(line, designator);
  const isAlike = JSON.stringify(found) === JSON.stringify(line.found);
  const { type, position, family } = part;
  const isPlaced = type !== undefined && position !== undefined && family !== undefined;
  if (worked === undefined || part.designators.length < 2 || isAlike || !isPlaced) return undefined;
  const own = { ...line, found };
  return SERVERS[family].ask({ catalogue, line: own, part, type, position, whole }).judge();
};
