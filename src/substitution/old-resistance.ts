import { ruleOf, type WithRules } from '../engine/rule-of-thumb.ts';
import type { Range } from '../engine/index.ts';
import type { KindRow } from '../schemas/kinds.ts';
import { meterDisplay } from './meter-display.ts';
import { readReading } from './old-part.ts';
import type { Read } from './typed-numbers.ts';

/** What was read of an old resistor, trimmer or control, as a field of a form and a key of the address. */
export const resistanceField = {
  key: 'reads',
  reading: 'resistance',
  label: 'Resistance that it reads',
} as const;

/** How to read it: what lies parallel lowers a reading, and a track is read past its wiper. */
export const resistanceHint = ({ wiper }: Pick<KindRow, 'wiper'>): string =>
  `${wiper === '' ? 'one lead lifted' : 'from end to end, out of circuit'}, such as 47.2\u00a0k; OL counts as more than 20\u00a0MΩ`;

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
