import type { Catalogue, StyleId } from '../engine/index.ts';
import type { DisguiseRow, FeatureRow, LookRangeRow, QuestionRow } from '../schemas/look.ts';
import { answerNames, rangeText } from './phrases.ts';

/** One thing that is known of a style, in words, with the rows that it rests on. */
export interface StyleFact {
  question: QuestionRow;
  said: string;
  rows: (FeatureRow | LookRangeRow)[];
}

/** How often, in front of the answers. */
const OFTEN: Record<FeatureRow['how'], string> = {
  usual: '',
  sometimes: 'now and then ',
  seldom: 'seldom ',
};

const chosen = (catalogue: Catalogue, rows: readonly FeatureRow[]): string =>
  (['usual', 'sometimes', 'seldom'] as const)
    .flatMap((how) => {
      const answers = rows.filter((row) => row.how === how);
      const names = answers.flatMap((row) =>
        row.answers.map((id) => answerNames(catalogue, row.question, [id])),
      );
      return names.length === 0 ? [] : [`${OFTEN[how]}${names.join(', ')}`];
    })
    .join('; ');

/** All that the data say of how a style looks, in the order of the questions. */
export const styleFacts = (catalogue: Catalogue, style: StyleId): StyleFact[] => {
  const { questions, features, ranges } = catalogue.look;
  return questions.flatMap((question) => {
    const isOwn = (row: FeatureRow | LookRangeRow): boolean =>
      row.style === style && row.question === question.id;
    const [answers, spans] = [features.filter(isOwn), ranges.filter(isOwn)];
    const said =
      answers.length > 0
        ? chosen(catalogue, answers)
        : spans.map((row) => rangeText(catalogue, row)).join(' or ');
    return said === '' ? [] : [{ question, said, rows: [...answers, ...spans] }];
  });
};

/** What a style is taken for, seen from this style, with what settles it. */
export const disguisesOf = (
  { look }: Catalogue,
  id: StyleId,
): { other: StyleId | ''; words: string; row: DisguiseRow }[] =>
  look.disguises
    .filter(({ style, other }) => style === id || other === id)
    .map((row) => {
      const other = row.style === id ? row.other : row.style;
      const words = look.styles.find((style) => style.id === other)?.name ?? row.words;
      return { other, words, row };
    });

/** Bench readings of what may be inside a style, by question. */
export const readingsOf = (
  catalogue: Catalogue,
  kinds: readonly string[],
): { question: QuestionRow; rows: LookRangeRow[] }[] =>
  catalogue.look.questions
    .map((question) => ({
      question,
      rows: catalogue.look.ranges.filter(
        (row) => kinds.includes(row.kind) && row.question === question.id,
      ),
    }))
    .filter(({ rows }) => rows.length > 0);
