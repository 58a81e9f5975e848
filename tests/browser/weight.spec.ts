import { globSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { MOST_SHELL_BYTES, SHELL } from '../../scripts/offline-shell.ts';
import { budgetOf, CALCULATORS, tooHeavy } from '../../scripts/weight/budgets.ts';
import { weighedPages } from '../../scripts/weight/pages.ts';
import { openWhole } from './open-whole.ts';
import { SITE } from './site.ts';
import { expect, test } from './watched.ts';

/** Pages keep to what they may weigh, packed; `npm run page-weight` shows how near they are. */

test('every page keeps to the budget of its kind', () => {
  test.setTimeout(180_000);
  const kinds = weighedPages();
  for (const [kind, pages] of kinds)
    for (const { path, weight } of pages)
      for (const of of tooHeavy(kind, weight))
        expect.soft(weight[of], `${of} of ${path}`).toBeLessThanOrEqual(budgetOf(kind)[of]);
  expect([...kinds.keys()]).toEqual(expect.arrayContaining([...CALCULATORS]));
});

test('a first visit keeps no more than it may', () => {
  const kept = globSync([...SHELL], { cwd: SITE, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => statSync(join(parentPath, name)).size);
  const bytes = kept.reduce((sum, size) => sum + size, 0);
  expect(bytes).toBeGreaterThan(MOST_SHELL_BYTES / 2);
  expect(bytes).toBeLessThanOrEqual(MOST_SHELL_BYTES);
});

test('no page brings a font', async ({ page }) => {
  for (const path of ['/', '/read/', '/job/']) {
    await openWhole(page, path);
    expect(await page.evaluate(() => document.fonts.size), path).toBe(0);
  }
});
