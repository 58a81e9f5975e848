import { crestOf, formatValue } from '../engine/index.ts';
import type { PlannedLine } from './planned.ts';
import { isCapacitor } from './stand-in.ts';

/** What goes in for less voltage than the old part was made for. */
export interface LowerRating {
  /** Both ratings in words, that of the old part with its crest where it is one for AC. */
  now: string;
  old: string;
  /** Whether the old part may come from a circuit with valves, whose voltages stand. */
  isHigh: boolean;
}

/** From this rating on (V) an old part may come from a circuit with valves. */
const VALVE_RATING = 200;

/**
 * Whether what goes in is rated for less than the old part, by no more than a usual voltage of its place;
 * nothing where somebody typed what stands across it.
 */
export const lowerRating = ({
  part,
  standIn,
  worked,
}: Pick<PlannedLine, 'part' | 'standIn' | 'worked'>): LowerRating | undefined => {
  const rating = part.ratedVoltage?.typ;
  if (rating === undefined || standIn === undefined || !isCapacitor(standIn)) return undefined;
  const isForAc = part.voltageKind === 'ac';
  const crest = isForAc ? crestOf(rating) : rating;
  const { ratedVoltage, voltageKind } = standIn.candidate;
  const isTyped = worked?.request?.conditions?.['vdc'] !== undefined;
  if (voltageKind !== 'dc' || ratedVoltage >= crest || isTyped) return undefined;
  const inCrest = isForAc ? ` AC, a crest of ${formatValue(crest, 'V')}` : '';
  return {
    now: formatValue(ratedVoltage, 'V'),
    old: formatValue(rating, 'V') + inCrest,
    isHigh: rating >= VALVE_RATING,
  };
};
