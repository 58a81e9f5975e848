import type { WithRules } from '../../engine/index.ts';
import { lowerRating, type LowerRating } from '../../substitution/lower-rating.ts';
import type { PlannedLine } from './planned.ts';
import { isCapacitor } from './stand-in.ts';

/** Whether what goes in for a line is rated for less than the old part, and nobody typed the voltage. */
export const lowerRatingOfLine = (
  rules: WithRules,
  { part, standIn, worked }: Pick<PlannedLine, 'part' | 'standIn' | 'worked'>,
): LowerRating | undefined => {
  if (standIn === undefined || !isCapacitor(standIn)) return undefined;
  const { type = '', ratedVoltage, voltageKind } = part;
  const original = { type, ratedVoltage, voltageKind };
  const { conditions } = worked?.request ?? {};
  return lowerRating(rules, { original, conditions }, standIn.candidate);
};
