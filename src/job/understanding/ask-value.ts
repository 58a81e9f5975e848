import { formatValue, writeQuantity, type Range, type Unit } from '../../engine/index.ts';
import type { Ask } from './ask.ts';

/** Two values further apart than this, as a fraction, are not the same. */
const SAME = 0.01;

/** Whether two values (SI) are the same, as far as they are written. */
export const isSameValue = (one: number, other: number): boolean =>
  Math.abs(one - other) <= SAME * Math.max(one, other);

/** Asks which of two values is right, where the list types one and the marking reads as another. */
export const askWhichValue = (
  typed: number | undefined,
  marked: Range | undefined,
  unit: Unit,
): Ask[] => {
  if (typed === undefined || marked === undefined || isSameValue(typed, marked.typ)) return [];
  const [here, there] = [formatValue(typed, unit), formatValue(marked.typ, unit)];
  return [
    {
      about: 'value',
      question: `The list says ${here}, which is used; the marking reads as ${there}. Which is right?`,
      choices: [{ label: there, set: { value: writeQuantity(marked, unit) } }],
    },
  ];
};
