import { expect, test } from 'vitest';
import { citations } from '../../src/text/citations.ts';

test('every row that cites a source says what it is about, and where it stands', () => {
  const rows = [...citations.values()].flat();
  expect(rows.length).toBeGreaterThan(10_000);
  const silent = rows.filter(({ what, path }) => what === '' || !path.startsWith('/'));
  expect([...new Set(silent.map(({ table }) => table))]).toEqual([]);
});
