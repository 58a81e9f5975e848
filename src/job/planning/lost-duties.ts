import { isTaper, type Catalogue } from '../../engine/index.ts';
import { isKind } from './stand-in.ts';
import type { PlannedLine } from './planned.ts';

/**
 * What the type of an old part is made for, such as not to burn, and that of what goes in is not: `flameproof`.
 * A track is ordered as the place or the mark asks.
 */
export const lostDuties = (
  { kindTypes }: Pick<Catalogue, 'kindTypes'>,
  { part, standIn }: Pick<PlannedLine, 'part' | 'standIn'>,
): string[] => {
  if (standIn === undefined || !isKind(standIn)) return [];
  const kept = kindTypes[standIn.candidate.type]?.duties ?? [];
  return (kindTypes[part.type ?? '']?.duties ?? []).filter(
    (duty) => !isTaper(duty) && !kept.includes(duty),
  );
};
