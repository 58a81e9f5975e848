import { formatValue } from '../quantities/index.ts';
import { HOUR, MINUTE } from '../quantities/si.ts';
import type { ReformingPlan } from './plan.ts';

const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`;

/** A time as a bench says it: minutes below an hour, hours beyond. */
const timeInWords = (seconds: number): string =>
  seconds < HOUR ? `${formatValue(seconds / MINUTE, 'grade')}\u00a0min` : formatValue(seconds, 's');

/** A re-forming as one sentence without its full stop, for a working. */
export const reformingInWords = (plan: ReformingPlan): string => {
  const { steps } = plan;
  const time = timeInWords(steps[0]?.time ?? 0);
  const volts = listed(steps.map(({ voltage }) => formatValue(voltage, 'V')));
  const again = plan.bothWays ? ', do the same the other way round' : '';
  return (
    `re-form through ${formatValue(plan.resistor, 'ohm')} (${formatValue(plan.heat, 'W')} at ` +
    `most) with ${volts}, ${time} at each or until the current settles, then ` +
    `${timeInWords(plan.hold)} at full voltage; good once the leakage stays below ` +
    `${formatValue(plan.leakage, 'A')}, which is ${formatValue(plan.drop, 'V')} across the ` +
    `resistor; scrap if ${formatValue(plan.scrapDrop, 'V')} are still there after ` +
    `${timeInWords(plan.giveUp)} or if it warms; discharge through ` +
    `${formatValue(plan.discharge, 'ohm')}${again}, rest for ${timeInWords(plan.rest)}, measure`
  );
};
