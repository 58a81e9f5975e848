import { ruleOf, type WithRules } from '../engine/rule-of-thumb.ts';
import type { Range } from '../engine/index.ts';
import { meterDisplay } from './meter-display.ts';
import { readReading } from './old-part.ts';
import type { Read } from './typed-numbers.ts';

/** What was read of an old resistor, trimmer or control, as a field of a form. */
export const resistanceField = {
  reading: 'resistance',
  label: 'Resistance that it reads',
  hint: 'one lead lifted, such as 47.2 k; OL counts as more than 20 MΩ',
} as const;

/** What no meter goes beyond, ohm. */
const MOST = 1e15;

/**
 * A resistance (ohm) as typed off a meter. What shows more than it can was at least at the end of a
 * usual meter's range, and `>200 M` at least at its number; neither has an upper end.
 */
export const readResistance = (catalogue: WithRules, text: string): Read<Range> => {
  const shown = meterDisplay(text);
  if (shown?.is === 'none')
    return { message: `“${text}” is no number to judge by; it is kept as it is written.` };
  const read: Read<Range> =
    shown?.is === 'over'
      ? { value: { min: ruleOf(catalogue, 'meter-most-ohms'), typ: Infinity, max: Infinity } }
      : readReading(shown?.than ?? text, { unit: 'ohm', lowest: 0, highest: MOST });
  return shown?.is === 'more' && 'value' in read
    ? { value: { min: read.value.min, typ: Infinity, max: Infinity } }
    : read;
};
