import type { PlannedLine } from '../job/index.ts';
import { typeset } from '../text/words.ts';

type Old = Pick<PlannedLine, 'line' | 'part'>;

/**
 * The type of the old part. Of a device the number with all letters that stand on it, for a gain group
 * or a grade is in them; its plain number where what was typed does not show it.
 */
const typeWords = ({ line, part }: Old, typeName: (id: string) => string): string => {
  if (part.family !== 'device') return typeName(line.type);
  const name = typeName(part.type ?? line.type);
  const shows = (text: string): boolean => text.toUpperCase().includes(name.toUpperCase());
  return [line.marking, line.value].find(shows) ?? name;
};

/** The old part in a line of the plan: type, value and rated voltage, else what is printed on it. */
export const oldWords = (old: Old, typeName: (id: string) => string): string => {
  const { value, volts, marking } = old.line;
  // Many lists have the type number in the column of values, which says it once more.
  const said = new Set([typeWords(old, typeName), value, volts]);
  return typeset([...said].filter((text) => text !== '').join(' ')) || marking;
};
