import type { Page } from '@playwright/test';
import { paste, planned } from './job-table.ts';
import { expect, test } from './watched.ts';

/** The bench sheet of a large board: scrolled through, and on paper. Bounds are in work, not in time. */

const LINES = 2000;

test.beforeEach(async ({ page }) => {
  test.setTimeout(240_000);
  await page.goto('/job/');
  const rows = Array.from(
    { length: LINES },
    (_, at) =>
      `C${String(at + 1)}\tcapacitor\t\tal-electrolytic-wet\t${String(10 + (at % 30))} µF\t20 %\t25 V\tbulk-rail\tNote ${String(at + 1)}`,
  );
  await paste(page, rows.join('\n'), 'Designators, row 1');
  await expect(page.locator('#rows-shown')).toHaveText(`${String(LINES)} rows.`);
  await planned(page);
  await page.getByRole('link', { name: 'Bench sheet' }).click();
  await expect(page.locator('#bench-said')).toContainText(`${String(LINES)} parts`);
});

/** Scrolls by the wheel, and says how many elements were made for that. */
const wheel = async (page: Page, screens: number): Promise<number> => {
  await page.evaluate(() => {
    const made = { elements: 0 };
    new MutationObserver((changes) => {
      for (const { addedNodes } of changes)
        for (const node of addedNodes)
          if (node instanceof Element) made.elements += 1 + node.querySelectorAll('*').length;
    }).observe(document.body, { childList: true, subtree: true });
    Object.assign(window, { made });
  });
  await page.mouse.move(600, 500);
  for (let screen = 0; screen < screens; screen++) {
    await page.mouse.wheel(0, 700);
    await page.waitForTimeout(60);
  }
  return page.evaluate(() => (window as unknown as { made: { elements: number } }).made.elements);
};

test('the whole list has only the parts around the screen drawn', async ({ page }) => {
  await page.getByLabel('Whole list').check();
  const all = page.locator('#bench-steps > .bench-step');
  await expect(all).toHaveCount(LINES, { timeout: 60_000 });
  const drawn = page.locator('#bench-steps .bench-log');
  expect(await drawn.count()).toBeLessThan(40);
  const made = await wheel(page, 20);
  // A part has about a hundred elements; so many screens hold some forty parts.
  expect(made).toBeLessThan(20_000);
  expect(await page.locator('#sheet *').count()).toBeLessThan(15_000);
  const seen = page.locator('#bench-steps .bench-log').filter({ visible: true }).last();
  await seen.scrollIntoViewIfNeeded();
  await seen.getByLabel('Note', { exact: true }).fill('kept while one scrolls');
  await wheel(page, 15);
  await expect(page.locator('#bench-steps input:focus')).toHaveValue('kept while one scrolls');
});

test('paper holds every part once, a row each, the drawing once', async ({ page }) => {
  await expect(page.locator('#bench-in-rows')).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 680, height: 1000 });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const names = await page.locator('.bench-table tr[data-step] td:first-child').allTextContents();
  expect(names.toSorted()).toEqual(
    Array.from({ length: LINES }, (_, at) => `C${String(at + 1)}`).toSorted(),
  );
  await expect(page.locator('.bench-numbered svg')).toHaveCount(1);
  await expect(page.locator('.bench-table tr[data-step]').first()).toContainText('Drawing 1');
  expect(await page.locator('#sheet *').count()).toBeLessThan(LINES * 12);
  const wide = await page
    .locator('.bench-table td')
    .evaluateAll((cells) => cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).length);
  expect(wide).toBe(0);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect(page.locator('.bench-table')).toHaveCount(0);
  await expect(
    page.locator('#bench-steps > .bench-step, #bench-cautions > .bench-step'),
  ).toHaveCount(1);
});
