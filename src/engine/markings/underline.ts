import type { Range } from '../quantities/range.ts';
import type { Lexicon } from './lexicon.ts';
import type { Parse } from './parse.ts';
import type { Evidence, Tolerance } from './reading.ts';
import { said } from './said.ts';
import { sayTolerance } from './say.ts';
import { readVoltageCode, sayVolts } from './voltage-codes.ts';

/** What a line under the value says, or that there is none. */
export interface Underline {
  /** V, of a ceramic disc that bears no other rating. */
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

/** Whether the part may be a disc; that there is no line says something only where it is one. */
const mayBeDisc = ({ bodies, hints }: Lexicon, parse: Parse, underlined: boolean): boolean =>
  (hints.body === 'ceramic' || (underlined && hints.body === undefined)) &&
  (parse.bodies & bodies.bitsOf(['ceramic'])) !== 0;

/**
 * Of a ceramic disc, where no voltage is printed. That there is no line is told, but not taken for
 * a rating: later discs of low voltage have none either.
 */
const ofDisc = (lexicon: Lexicon, parse: Parse, underlined: boolean): Underline => {
  const word = underlined ? 'underlined' : 'not underlined';
  const [meaning] = readVoltageCode(lexicon.tables, word);
  const isRated = said(parse, 'voltage').some(({ rated }) => rated);
  if (isRated || meaning === undefined || !mayBeDisc(lexicon, parse, underlined))
    return { evidence: [] };
  const { volts, kind = '', source } = meaning;
  const means = underlined
    ? `underlined, on a ceramic disc: rated ${sayVolts(volts, kind)}`
    : `not underlined: ${sayVolts(volts, kind)} on discs of some makers; not to be relied on`;
  const evidence = evidenceOf(parse, means, source);
  return underlined ? { volts, evidence } : { evidence };
};

/** What the line under the value adds, where somebody looked for it. */
export const underlineOf = (lexicon: Lexicon, parse: Parse): Underline => {
  const { underlined } = lexicon.hints;
  if (underlined === undefined || parse.value === undefined) return { evidence: [] };
  return said(parse, 'resistance').length > 0
    ? ofResistor(parse, underlined)
    : ofDisc(lexicon, parse, underlined);
};
