import { expect, test } from 'vitest';
import { declaring } from '../../scripts/mutation/collect.ts';

test('tests are kept by names of their own, with the rows of their tables', async () => {
  const { declared, describe: group, test: declare } = declaring();
  const run: unknown[] = [];
  declare('alone', () => run.push('alone'));
  group('group', () => {
    declare('same', () => run.push('first'));
    declare('same', () => run.push('second'));
    declare.each([
      [1, 'one'],
      [2, 'two'],
    ])('row', (...row) => run.push(row));
  });
  group.each(['a', 'b'])('letter', (letter) => {
    declare('inside', () => run.push(letter));
  });
  expect(run).toEqual([]);
  expect(declared.map(({ name }) => name)).toEqual([
    'alone',
    'group > same',
    'group > same (2)',
    'group > row [0]',
    'group > row [1]',
    'letter [0] > inside',
    'letter [1] > inside',
  ]);
  for (const one of declared) await one.run();
  expect(run).toEqual(['alone', 'first', 'second', [1, 'one'], [2, 'two'], 'a', 'b']);
});
