import type { PlannedLine } from './planned.ts';
import { isKind } from './stand-in.ts';

/** Rated watts of what goes in and of the old part. */
export interface LowerPower {
  now: number;
  old: number;
}

/** Ratings that differ by less than their rounding are the same: 0.33 W and a third of a watt. */
const NEAR = 0.99;

/**
 * Whether what goes in for a resistor or a control takes fewer watts than the old part is marked with;
 * nothing where there is no mark, or where somebody typed the voltage across it.
 */
export const lowerPowerOfLine = ({
  line,
  part,
  standIn,
}: Pick<PlannedLine, 'line' | 'part' | 'standIn'>): LowerPower | undefined => {
  const old = part.rating?.typ;
  if (old === undefined || standIn === undefined || !isKind(standIn)) return undefined;
  const { rating, ratingUnit } = standIn.candidate;
  // Equal parts in series share the power.
  const now = rating && rating * (standIn.inSeries ?? 1);
  const isTyped = (line.conditions['vdc'] ?? '').trim() !== '';
  if (now === undefined || ratingUnit !== 'W' || isTyped || now >= old * NEAR) return undefined;
  return { now, old };
};
