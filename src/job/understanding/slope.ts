/** What lists say of how a resistance follows the temperature. */

/** A coefficient of thousands, as parts have it that are made to follow; what may go either way is none. */
const THOUSANDS =
  /\(?(?<![\d.,±]\s*)(?<sign>[-−+]?)\s*(?<![\d.,])[1-9]\d{3}\s*ppm(?:\s*\/\s*(?:K|°?\s*C)\b)?\)?/iu;

/** What a part says that stays as it is: `25 ppm`, `low tempco`. */
const STEADY = /(?<![\d.,])\d{1,3}\s*ppm|\blow[\s-]*(?:tempco|tcr?)\b/iu;

/** The scale that such a part keeps, which is no voltage of its own. */
const PER_OCTAVE = /\b1\s*V\s*(?:\/|per)\s*oct(?:ave)?\b\.?/iu;

/** The duty of resistors that rise with the temperature as the voltage of a junction does. */
export const COMPENSATING = 'temperature-compensating';

/** Which way a resistance goes by thousands of ppm as it warms; nothing where nothing says so. */
export const slopeOf = (text: string): 'rises' | 'falls' | undefined => {
  const sign = THOUSANDS.exec(text)?.groups?.['sign'];
  if (sign === undefined) return undefined;
  return sign === '-' || sign === '−' ? 'falls' : 'rises';
};

/** Whether a part is said to stay as it is, so that a `tempco` beside it names no part. */
export const isSteady = (text: string): boolean => slopeOf(text) === undefined && STEADY.test(text);

/** A text without what is said of the temperature and of what it is kept out of, which tells no value. */
export const withoutSlope = (text: string): string =>
  slopeOf(text) === undefined
    ? text.replace(PER_OCTAVE, ' ').trim()
    : text.replace(THOUSANDS, ' ').replace(PER_OCTAVE, ' ').trim();
