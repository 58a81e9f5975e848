import { DEFAULT_GUIDELINE, MAKERS } from '../../engine/equations/derating.ts';
import { colourWeightRow } from '../../schemas/marking-colours.ts';
import { ruleOfThumbRow } from '../../schemas/rules-of-thumb.ts';
import type { TableName } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';

/** Rows that are asked for by their id. */
interface Named {
  rule: string;
  about: string;
  file: TableName;
  /** What one of the rows is. */
  what: string;
  ids: readonly string[];
}

const allThere = ({ rule, about, file, what, ids }: Named): Check => ({
  id: rule,
  about,
  needs: [file],
  check: (tables) => {
    // As the cells say it: a row with a fault of its own is there all the same.
    const { rows } = tables[file];
    const there = new Set(rows.map(({ cells }) => cells['id']));
    return rows.slice(0, 1).flatMap((row) =>
      ids
        .filter((id) => !there.has(id))
        .map((id) =>
          cellFault(rule, file, row, 'id', {
            wrong: `no ${what} ${id}`,
            got: '',
            expected: `a row for ${id}`,
          }),
        ),
    );
  },
});

export const rulesComplete = allThere({
  rule: 'rules-complete',
  about: 'Every rule of thumb that assessments go by is there.',
  file: 'rules-of-thumb.csv',
  what: 'rule of thumb',
  ids: ruleOfThumbRow.shape.id.options,
});

export const colourWeightsComplete = allThere({
  rule: 'colour-weights-complete',
  about: 'Every weight that colours are read by is there.',
  file: 'markings/colour-weights.csv',
  what: 'weight',
  ids: colourWeightRow.shape.id.options,
});

export const guidelinesComplete = allThere({
  rule: 'guidelines-complete',
  about: 'The makers’ ceilings and the guideline of cautious use are there.',
  file: 'guidelines.csv',
  what: 'guideline',
  ids: [MAKERS, DEFAULT_GUIDELINE],
});
