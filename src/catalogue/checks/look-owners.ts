import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'look-owner';

const files = ['look/features.csv', 'look/ranges.csv'] as const;

export const lookOwners: Check = {
  id: rule,
  about: 'What is said of a look is said of a style or of a kind, not of both and not of nothing.',
  needs: [...files],
  check: (tables) =>
    files.flatMap((file) =>
      goodRows(tables, file).flatMap((row) => {
        const { style, kind } = row.value;
        if ((style === '') !== (kind === '')) return [];
        return [
          cellFault(rule, file, row, 'style', {
            wrong: style === '' ? 'neither a style nor a kind' : 'a style and a kind',
            expected: 'one of the two',
          }),
        ];
      }),
    ),
};
