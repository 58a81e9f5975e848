import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import type { SourceRow } from '../../src/schemas/sources.ts';
import { isApart, letterOf, partsOf, sourcesByKind } from '../../src/text/sources-by-kind.ts';

const titled = (title: string): SourceRow => ({
  id: title.toLowerCase(),
  title,
  publisher: '',
  year: undefined,
  kind: 'data-sheet',
  url: '',
  seen: 'excerpt',
});

const many = (letter: string, count: number): SourceRow[] =>
  Array.from({ length: count }, (_, at) => titled(`${letter}${String(at)}`));

describe('the sources of a kind on pages', () => {
  it('stay together while they are few', () => {
    const parts = partsOf([...many('4', 10), ...many('a', 100), ...many('z', 100)]);
    expect(parts.map(({ path, words }) => [path, words])).toEqual([['', 'A to Z']]);
  });

  it('are shared out by letters where they are many', () => {
    const rows = [...many('1', 50), ...many('b', 150), ...many('m', 30), ...many('t', 170)];
    const parts = partsOf(rows);
    expect(parts.map(({ path, words }) => [path, words])).toEqual([
      ['', 'A to B'],
      ['m', 'M to T'],
    ]);
    expect(parts.flatMap(({ groups }) => groups.flatMap(([, some]) => some))).toEqual(rows);
  });

  it('keep one letter whole however many it has', () => {
    const parts = partsOf(many('r', 600));
    expect(parts.map(({ path, groups }) => [path, groups.length])).toEqual([['', 1]]);
  });

  it('hold every source of this project once, a letter on one page', () => {
    for (const { rows } of sourcesByKind(Object.values(loadCatalogue().sources))) {
      if (!isApart(rows)) continue;
      const parts = partsOf(rows);
      expect(parts.flatMap(({ groups }) => groups.flatMap(([, some]) => some))).toHaveLength(
        rows.length,
      );
      const letters = parts.flatMap(({ groups }) => groups.map(([letter]) => letter));
      expect(new Set(letters).size).toBe(letters.length);
      expect(new Set(rows.map(letterOf)).size).toBe(letters.length);
      expect(new Set(parts.map(({ path }) => path)).size).toBe(parts.length);
    }
  });
});
