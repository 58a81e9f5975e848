import type { Range } from '../../quantities/range.ts';
import type { Lexicon } from '../lexicon/lexicon.ts';
import type { Parse } from '../ways/parse.ts';
import type { Evidence, Tolerance } from '../meanings/reading.ts';
import { said } from './said.ts';
import { sayTolerance } from '../meanings/say.ts';
import { readVoltageCode, sayVolts, type VoltageMeaning } from '../ratings/voltage-codes.ts';

/** What a line under the value says, or that there is none. */
export interface Underline {
  /** V, of a part such as a ceramic disc that bears no other rating. */
  volts?: Range;
  /** Of a chip resistor. */
  tolerance?: Tolerance;
  evidence: Evidence[];
}

const evidenceOf = (parse: Parse, means: string, source: string): Evidence[] =>
  parse.value === undefined ? [] : [{ text: '', at: parse.value.end, means, source }];

/** Of a chip resistor, whose figures may be underlined. */
const ofResistor = (parse: Parse, underlined: boolean): Underline => {
  const { underlinedPercent: percent, source } = parse.value?.meaning ?? {};
  if (!underlined || percent === undefined || source === undefined) return { evidence: [] };
  const share = percent / 100;
  return {
    tolerance: { minus: share, plus: share, unit: 'fraction' },
    evidence: evidenceOf(parse, `underlined: ${sayTolerance(percent, percent, '%')}`, source),
  };
};

/**
 * Whether the part may be of a body that such lines rate; that there is no line says something only where
 * it is one.
 */
const mayBeRatedSo = (
  { bodies, hints: { body } }: Lexicon,
  parse: Parse,
  { bodies: rated }: VoltageMeaning,
  underlined: boolean,
): boolean =>
  (body === undefined ? underlined : rated.includes(body)) &&
  (parse.bodies & bodies.bitsOf(rated)) !== 0;

/**
 * Of a part whose voltage a line tells where none is printed, as it does on discs. That there is no line
 * is told, but not taken for a rating: later parts of low voltage have none either.
 */
const ofRating = (lexicon: Lexicon, parse: Parse, underlined: boolean): Underline => {
  const word = underlined ? 'underlined' : 'not underlined';
  const [meaning] = readVoltageCode(lexicon.tables, word);
  const isRated = said(parse, 'voltage').some(({ rated }) => rated);
  if (isRated || meaning === undefined || !mayBeRatedSo(lexicon, parse, meaning, underlined))
    return { evidence: [] };
  const { volts, kind = '', source } = meaning;
  const on = lexicon.tables.bodies.filter(({ id }) => meaning.bodies.includes(id));
  const line = `${word} (${on.map(({ name }) => name).join('; ')})`;
  const means = underlined
    ? `${line}: rated ${sayVolts(volts, kind)}`
    : `${line}: ${sayVolts(volts, kind)} by some makers; not to be relied on`;
  const evidence = evidenceOf(parse, means, source);
  return underlined ? { volts, evidence } : { evidence };
};

/** What the line under the value adds, where somebody looked for it. */
export const underlineOf = (lexicon: Lexicon, parse: Parse): Underline => {
  const { underlined } = lexicon.hints;
  if (underlined === undefined || parse.value === undefined) return { evidence: [] };
  return said(parse, 'resistance').length > 0
    ? ofResistor(parse, underlined)
    : ofRating(lexicon, parse, underlined);
};
