import { cellFault, type Check } from './check.ts';
import { byId, goodRows } from './lookups.ts';
import { valuesOf } from '../read-folder.ts';

const rule = 'look-answer';

export const lookAnswers: Check = {
  id: rule,
  about: 'A feature is an answer to a question that has fixed answers, and a range one to another.',
  needs: ['look/questions.csv', 'look/answers.csv', 'look/features.csv', 'look/ranges.csv'],
  check: (tables) => {
    const questions = byId(valuesOf(tables, 'look/questions.csv'));
    const known = Map.groupBy(valuesOf(tables, 'look/answers.csv'), ({ question }) => question);
    const features = goodRows(tables, 'look/features.csv').flatMap((row) => {
      const ids = (known.get(row.value.question) ?? []).map(({ id }) => id);
      const unknown = row.value.answers.find((answer) => !ids.includes(answer));
      if (unknown === undefined && row.value.answers.length > 0) return [];
      return [
        cellFault(rule, 'look/features.csv', row, 'answers', {
          wrong: unknown === undefined ? 'no answer' : `${row.value.question} has no such answer`,
          got: unknown ?? '',
          expected: `some of ${ids.join(', ')}`,
        }),
      ];
    });
    const ranges = goodRows(tables, 'look/ranges.csv').flatMap((row) => {
      const kind = questions.get(row.value.question)?.kind;
      if (kind === undefined || kind === 'range' || kind === 'score') return [];
      return [
        cellFault(rule, 'look/ranges.csv', row, 'question', {
          wrong: 'a range for a question with fixed answers',
          expected: 'a question that takes a number',
        }),
      ];
    });
    return [...features, ...ranges];
  },
};
