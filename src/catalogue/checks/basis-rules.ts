import { publishedKinds } from '../../schemas/sources.ts';
import { tableNames, valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId } from './lookups.ts';

const rule = 'basis';

const carriesFigures: readonly string[] = publishedKinds;

export const basisRules: Check = {
  id: rule,
  about: 'Only what was seen in a document that may carry figures is called published.',
  needs: ['sources.csv'],
  check: (tables) => {
    const sources = byId(valuesOf(tables, 'sources.csv'));
    return tableNames.flatMap((file) =>
      tables[file].rows.flatMap((row) => {
        if (row.cells['basis'] !== 'published') return [];
        const source = sources.get(row.cells['source'] ?? '');
        if (source === undefined) return [];
        const fault = (wrong: string) =>
          cellFault(rule, file, row, 'basis', { wrong, expected: 'common-practice or memory' });
        if (!carriesFigures.includes(source.kind)) {
          return [fault(`published in a source of kind ${source.kind}`)];
        }
        return source.seen === 'not-seen' ? [fault('published in a source that nobody saw')] : [];
      }),
    );
  },
};
