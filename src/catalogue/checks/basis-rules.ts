import { publishedKinds } from '../../schemas/sources.ts';
import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId } from './lookups.ts';
import { ofEachTable, remembered } from './remembered.ts';

const rule = 'basis';

const carriesFigures: readonly string[] = publishedKinds;

const sourcesById = remembered((tables) => byId(valuesOf(tables, 'sources.csv')));

export const basisRules: Check = {
  id: rule,
  about: 'What is called published was seen at a named place of a document that may carry figures.',
  needs: ['sources.csv'],
  check: ofEachTable((tables, file) =>
    tables[file].rows.flatMap((row) => {
      if (row.cells['basis'] !== 'published') return [];
      const source = sourcesById(tables).get(row.cells['source'] ?? '');
      if (source === undefined) return [];
      const fault = (wrong: string) =>
        cellFault(rule, file, row, 'basis', { wrong, expected: 'common-practice or memory' });
      if (!carriesFigures.includes(source.kind)) {
        return [fault(`published in a source of kind ${source.kind}`)];
      }
      if (source.seen === 'not-seen') return [fault('published in a source that nobody saw')];
      if (row.cells['locator'] !== '') return [];
      return [
        cellFault('locator', file, row, 'locator', {
          wrong: 'published, but not where',
          expected: 'a table, clause or heading of the source',
        }),
      ];
    }),
  ),
};
