import {
  judgeFirst,
  resolveSituation,
  type Catalogue,
  type Judgement,
} from '../../engine/index.ts';
import { foundAt } from '../model/found-at.ts';
import type { Job } from '../model/job.ts';
import { requestOfLine } from '../planning/line-request.ts';
import type { PlannedLine } from '../planning/planned.ts';

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
  const { type, position } = part;
  const isPlaced = type !== undefined && position !== undefined;
  if (worked === undefined || part.designators.length < 2 || isAlike || !isPlaced) return undefined;
  const own = { ...line, found };
  const { request, evidence } = requestOfLine(catalogue, own, { type, position, part, whole });
  const { original } = resolveSituation(catalogue, request);
  return judgeFirst(catalogue, original, request.position, evidence);
};
