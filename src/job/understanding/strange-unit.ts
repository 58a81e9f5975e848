import type { Reading } from '../../engine/index.ts';

/** A number, and behind it one word where its unit would be. */
const NUMBER_AND_WORD = /^\s*\d+(?:[.,]\d+)?\s*(?<word>\p{L}+)\s*$/u;

/** A unit has fewer letters than this; a longer word may be a maker's, beside plain ohms. */
const LONGER = 4;

/**
 * Whether the word behind the number of a value is a unit that nobody knows, as that of `10 kg`: the number
 * alone would be a value of another size. Of capacitors no word goes with a plain number; a resistor has
 * plain ohms, which a maker's name may stand beside.
 * @param readings the value read as a marking
 */
export const hasStrangeUnit = (
  value: string,
  kind: string,
  readings: readonly Reading[],
): boolean => {
  const word = NUMBER_AND_WORD.exec(value)?.groups?.['word'] ?? '';
  const mayBeUnit = word !== '' && (kind === 'capacitor' || word.length < LONGER);
  return mayBeUnit && readings[0]?.notUnderstood.includes(word) === true;
};
