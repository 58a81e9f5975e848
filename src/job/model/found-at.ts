import { meterDisplay } from '../../substitution/meter-display.ts';
import type { Found, Line } from './job.ts';

const isReading = (id: string): id is Exclude<keyof Found, 'signs'> =>
  id === 'capacitance' ||
  id === 'loss120hz' ||
  id === 'loss1khz' ||
  id === 'esr' ||
  id === 'leakage' ||
  id === 'insulation';

/** Whether a part can be judged by what the meter showed: words are kept, and judge nothing. */
const judges = (id: string, text: string): boolean => {
  const shown = meterDisplay(text)?.is;
  return shown === undefined || (shown === 'more' && id === 'insulation');
};

/** What was found of one designator: what holds for its line, and its own readings before that. */
export const foundAt = ({ found, fitted }: Line, designator: string): Found => {
  const own = Object.entries(fitted[designator]?.found ?? {}).filter(
    ([id, text]) => isReading(id) && text.trim() !== '' && judges(id, text),
  );
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
