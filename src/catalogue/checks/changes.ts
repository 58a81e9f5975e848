import { tableNames } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';

const rule = 'changes';
const file = 'changes.csv';

const isDay = (text: string): boolean => {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

export const changes: Check = {
  id: rule,
  about: 'Changes of the data stand under days that there are, the newest first, and name tables.',
  needs: [file],
  check: ({ [file]: { rows } }) =>
    rows.flatMap((row, index) => {
      const { date = '', tables = '' } = row.cells;
      const above = rows[index - 1]?.cells['date'] ?? date;
      const unknown = tables
        .split(';')
        .map((name) => name.trim())
        .find((name) => !tableNames.some((one) => one === name));
      return [
        ...(isDay(date)
          ? []
          : [
              cellFault(rule, file, row, 'date', {
                wrong: 'no such day',
                expected: 'a day of the calendar',
              }),
            ]),
        ...(isDay(date) && date > above
          ? [
              cellFault(rule, file, row, 'date', {
                wrong: 'a newer change below an older one',
                expected: `${above} or before`,
              }),
            ]
          : []),
        ...(unknown === undefined
          ? []
          : [
              cellFault(rule, file, row, 'tables', {
                wrong: 'no such table',
                got: unknown,
                expected: 'names of tables joined by semicolons',
              }),
            ]),
      ];
    }),
};
