import type { Found, Line } from './model.ts';

const isReading = (id: string): id is Exclude<keyof Found, 'signs'> =>
  id === 'capacitance' ||
  id === 'loss120hz' ||
  id === 'loss1khz' ||
  id === 'esr' ||
  id === 'leakage' ||
  id === 'insulation';

/** What was found of one designator: what holds for its line, and its own readings before that. */
export const foundAt = ({ found, fitted }: Line, designator: string): Found => {
  const own = Object.entries(fitted[designator]?.found ?? {}).filter(
    ([id, text]) => isReading(id) && text.trim() !== '',
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
