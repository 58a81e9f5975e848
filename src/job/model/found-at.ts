import { meterDisplay } from '../../substitution/meter-display.ts';
import type { Found, Line } from './job.ts';

type Reading = Exclude<keyof Found, 'signs' | 'age' | 'idle'>;

/** What of a designator's readings judges its part, and as which: a track is read from end to end. */
const JUDGED_AS: ReadonlyMap<string, Reading> = new Map([
  ['capacitance', 'capacitance'],
  ['loss120hz', 'loss120hz'],
  ['loss1khz', 'loss1khz'],
  ['esr', 'esr'],
  ['leakage', 'leakage'],
  ['insulation', 'insulation'],
  ['resistance', 'resistance'],
  ['total', 'resistance'],
]);

/** Whether a part can be judged by what the meter showed: words are kept, and judge nothing. */
const judges = (reading: Reading, text: string): boolean => {
  const shown = meterDisplay(text)?.is;
  if (shown === undefined) return true;
  return reading === 'resistance' ? shown !== 'none' : shown === 'more' && reading === 'insulation';
};

/** What was found of one designator: what holds for its line, and its own readings before that. */
export const foundAt = ({ found, fitted }: Line, designator: string): Found => {
  const own = Object.entries(fitted[designator]?.found ?? {}).flatMap(([id, text]) => {
    const reading = JUDGED_AS.get(id);
    const isRead = reading !== undefined && text.trim() !== '' && judges(reading, text);
    return isRead ? [[reading, text] as const] : [];
  });
  return { ...found, ...Object.fromEntries(own) };
};

/**
 * What a line is judged by. Readings at the bench belong to one designator, so they count for a line
 * that has just one.
 */
export const foundOf = (line: Line, designators: readonly string[]): Found => {
  const [only] = designators;
  return only === undefined || designators.length > 1 ? line.found : foundAt(line, only);
};
