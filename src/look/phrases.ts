import {
  formatQuantity,
  type Catalogue,
  type Ground,
  type QuestionId,
  type Range,
} from '../engine/index.ts';
import type { LookRangeRow, QuestionRow } from '../schemas/look.ts';
import { printFigure } from '../text/numbers.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { listed } from '../text/words.ts';
import { unitOf, YEAR } from './address.ts';

/** From which likelihood on a word holds, the strongest first. */
const WORDS: readonly [number, string][] = [
  [0.9, 'very likely'],
  [0.6, 'likely'],
  [0.25, 'possible'],
  [0.05, 'unlikely'],
  [0, 'very unlikely'],
];

/** A likelihood in a word. */
export const likelihoodWord = (likelihood: number): string =>
  WORDS.find(([from]) => likelihood >= from)?.[1] ?? 'very unlikely';

/** Rules of thumb carry no finer steps than these, nor anything closer to certainty. */
const STEP = 5;
const MOST = 95;

/** A likelihood in per cent, no finer than it deserves: `about 70 %`, `over 95 %`. */
export const likelihoodPercent = (likelihood: number): string => {
  const percent = likelihood * 100;
  if (percent > MOST) return `over ${MOST}\u00A0%`;
  if (percent < STEP) return `under ${STEP}\u00A0%`;
  return `about ${Math.round(percent / STEP) * STEP}\u00A0%`;
};

/** The row of a question; nothing for one that the tables do not have. */
export const questionOf = ({ look }: Catalogue, id: QuestionId): QuestionRow | undefined =>
  look.questions.find((question) => question.id === id);

/** The words of an answer to a question. */
export const answerName = ({ look }: Catalogue, question: QuestionId, id: string): string =>
  look.answers.find((answer) => answer.question === question && answer.id === id)?.name ?? id;

/** The words of some answers, for the middle of a sentence. */
export const answerNames = (
  catalogue: Catalogue,
  question: QuestionId,
  ids: readonly string[],
  last = 'and',
): string =>
  listed(
    ids.map((id) => midSentence(answerName(catalogue, question, id))),
    last,
  );

/** A number that answers a question, as people read it. */
export const numberText = (catalogue: Catalogue, question: QuestionRow, number: Range): string => {
  if (question.id === YEAR) {
    return printFigure({ min: Math.round(number.min), max: Math.round(number.max) }, 'grade');
  }
  // A reading at the end of the scale of a meter has no upper end of its own.
  const { factor = 1 } = catalogue.units[question.unit] ?? {};
  const isOpen = number.max > number.min && number.max >= (question.highest ?? Infinity) * factor;
  const unit = unitOf(catalogue, question);
  return isOpen
    ? `above ${formatQuantity({ min: number.min, typ: number.min, max: number.min }, unit)}`
    : formatQuantity(number, unit);
};

/** Units that are printed with a prefix to suit the number. */
const PREFIXED = ['F', 'ohm'];

/** Steps of a score by their words. */
const scoreText = (
  catalogue: Catalogue,
  question: QuestionId,
  low: number,
  high: number,
): string => {
  const steps = catalogue.look.answers
    .filter((answer) => answer.question === question)
    .map(({ id }) => id)
    .filter((id) => Number(id) >= low && Number(id) <= high);
  return answerNames(catalogue, question, steps, 'or');
};

/** What is usual of a row: `1–470 nF`, `1930–1959`, `from 3000 MΩ·µF`. */
export const rangeText = (catalogue: Catalogue, row: LookRangeRow): string => {
  const min = row.usual_low ?? row.low;
  const max = row.usual_high ?? row.high;
  const question = questionOf(catalogue, row.question);
  if (question?.kind === 'score') {
    return scoreText(catalogue, row.question, min ?? -Infinity, max ?? Infinity);
  }
  if (question?.id === YEAR && max === undefined && min !== undefined) return `from ${min} on`;
  if (!PREFIXED.includes(row.unit) || min === undefined || max === undefined) {
    return printFigure({ min, max }, row.unit);
  }
  const unit = row.unit === 'F' ? 'F' : 'ohm';
  return formatQuantity({ min, typ: Math.sqrt(min * max), max }, unit);
};

/** How an answer stands to a style, after it. */
const HOW: Record<Ground['how'], string> = {
  usual: 'usual',
  sometimes: 'met now and then',
  seldom: 'seldom',
  'not-met': 'not met in it',
  inside: 'as usual',
  fringe: 'at the edge',
  outside: 'outside',
  senseless: 'makes no sense for it',
};

/** One ground as words: `Surface: wax, or waxed card; usual`. */
export const groundText = (catalogue: Catalogue, ground: Ground): string => {
  const { question: id, ticked, number, how, range } = ground;
  const question = questionOf(catalogue, id);
  if (question === undefined) return '';
  const said =
    ticked !== undefined
      ? answerNames(catalogue, id, ticked, question.kind === 'any' ? 'and' : 'or')
      : number === undefined
        ? ''
        : numberText(catalogue, question, number);
  const against = range === undefined ? '' : ` (${rangeText(catalogue, range)})`;
  return `${question.name}: ${said}; ${HOW[how]}${against}`;
};
