import {
  formatValue,
  magnitude,
  parseQuantity,
  type Catalogue,
  type LookAnswers,
  type Range,
  type Unit,
} from '../engine/index.ts';
import type { QuestionRow } from '../schemas/look.ts';
import { readYear } from './year.ts';

/** What an address, or a form, says of a part; every key is the id of a question. */
export interface Looked {
  answers: LookAnswers;
  /** What could not be understood of the numbers, by question. */
  rejected: Record<string, string>;
}

/** The question that is answered by a year. */
export const YEAR = 'year';

/** What stands between the answers to one question in an address. */
const BETWEEN = '.';

/** The answers to one question as an address carries them. */
export const writeTicked = (ticked: readonly string[]): string => ticked.join(BETWEEN);

/** Longest text that one number may have. */
const LONGEST = 60;

type Read = { value: Range } | { message: string };

/** `>2000 MΩ`, `over 2000 M`: a reading at the end of what a meter shows. */
const OVER = /^\s*(?:>|≥|over|above|more than)\s*/iu;

/** SI unit of the numbers that answer a question, as the engine names it. */
export const unitOf = (catalogue: Catalogue, { unit }: QuestionRow): Unit =>
  (catalogue.units[unit]?.si ?? 'ratio') as Unit;

/** Least and greatest number that a question takes, SI. */
const boundsOf = (catalogue: Catalogue, question: QuestionRow): [number, number] => {
  const { unit, sign, lowest = 0, highest = Infinity } = question;
  const factor = catalogue.units[unit]?.factor ?? 1;
  return [sign === 'signed' ? lowest * factor : 0, highest * factor];
};

const bounded = (
  range: Range,
  { sign }: QuestionRow,
  [least, most]: readonly [number, number],
  unit: Unit,
): Read => {
  if (range.min >= least && range.max <= most) return { value: range };
  return {
    message:
      range.min < 0 && sign === 'positive'
        ? 'Please give a value of zero or above.'
        : `Please give a value from ${formatValue(least, unit)} to ${formatValue(most, unit)}.`,
  };
};

/** Reads a number that answers a question, in SI. */
const readNumberText = (catalogue: Catalogue, question: QuestionRow, text: string): Read => {
  if (text.length > LONGEST) return { message: `Please keep to ${LONGEST} characters.` };
  const bounds = boundsOf(catalogue, question);
  if (question.id === YEAR) return readYear(text, question.lowest ?? 0, bounds[1]);
  const unit = unitOf(catalogue, question);
  const over = OVER.exec(text)?.[0] ?? '';
  const parsed = parseQuantity(text.slice(over.length), unit, question.bare || undefined);
  if (!parsed.ok) return { message: parsed.fault.message };
  const { min } = parsed.value;
  const read = over === '' ? parsed.value : { min, typ: min, max: Math.max(min, bounds[1]) };
  return bounded(question.sign === 'size' ? magnitude(read) : read, question, bounds, unit);
};

/**
 * The answers that an address carries. Keys and answers that the tables do not have are passed over;
 * numbers that cannot be understood count for nothing and are reported.
 */
export const readLook = (catalogue: Catalogue, query: URLSearchParams): Looked => {
  const chosen: Record<string, string[]> = {};
  const numbers: Record<string, Range> = {};
  const rejected: Record<string, string> = {};
  for (const question of catalogue.look.questions) {
    const text = query.get(question.id)?.trim() ?? '';
    if (text === '') continue;
    if (question.kind === 'range') {
      const read = readNumberText(catalogue, question, text);
      if ('value' in read) numbers[question.id] = read.value;
      else rejected[question.id] = read.message;
    } else {
      const known = catalogue.look.answers.filter((answer) => answer.question === question.id);
      const texts = text.split(BETWEEN);
      const ticked = known.map(({ id }) => id).filter((id) => texts.includes(id));
      if (ticked.length > 0) chosen[question.id] = ticked;
    }
  }
  return { answers: { chosen, numbers }, rejected };
};
