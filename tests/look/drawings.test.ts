import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { specOfRow } from '../../src/drawing/index.ts';

const { look } = loadCatalogue();

describe('drawings of styles', () => {
  test.each(look.drawings)('$style has a form that can be drawn', (row) => {
    expect(specOfRow(row)).toMatchObject({ form: row.form });
  });

  test('are there for every style', () => {
    expect(look.drawings.map(({ style }) => style)).toEqual(look.styles.map(({ id }) => id));
  });

  test.each(look.drawings)('$style is of a size that is possible for it', (row) => {
    const size = look.ranges.find(
      ({ style, question }) => style === row.style && question === 'size',
    );
    const longest = Math.max(row.length_mm, row.width_mm, row.height_mm);
    expect(longest).toBeGreaterThanOrEqual(size?.low ?? Infinity);
    expect(longest).toBeLessThanOrEqual(size?.high ?? 0);
  });
});
