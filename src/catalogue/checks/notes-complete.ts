import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'missing-note';

/** What a page about a position is no use without. */
const NEEDED = ['equation', 'usual-choice', 'symptom', 'trap'] as const;

export const notesComplete: Check = {
  id: rule,
  about: 'Every position has an equation, a usual choice, a symptom and a trap.',
  needs: ['positions.csv', 'kinds/positions.csv', 'position-notes.csv'],
  check: (tables) => {
    const present = new Set(
      tables['position-notes.csv'].rows.map(({ cells }) => `${cells['position']} ${cells['kind']}`),
    );
    return (['positions.csv', 'kinds/positions.csv'] as const).flatMap((file) =>
      goodRows(tables, file).flatMap((row) =>
        NEEDED.filter((kind) => !present.has(`${row.value.id} ${kind}`)).map((kind) =>
          cellFault(rule, file, row, 'id', {
            wrong: `no note of kind ${kind}`,
            expected: `a row ${row.value.id},${kind} in position-notes.csv`,
          }),
        ),
      ),
    );
  },
};
