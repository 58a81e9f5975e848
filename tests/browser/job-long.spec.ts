import { planned, paste } from './job-table.ts';
import { expect, test } from './watched.ts';

/** A parts list of thousands of rows, of which only those around the screen stand on the page. */

const LINES = 2000;
/** A few rows below the middle of the list, so that it is on the screen when that is at its top. */
const MIDDLE = LINES / 2 + 5;

test.beforeEach(async ({ page }) => {
  await page.goto('/job/');
  const rows = Array.from(
    { length: LINES },
    (_, at) =>
      `C${String(at + 1)}\tcapacitor\t\tal-electrolytic-wet\t${String(10 + (at % 30))} µF\t20 %\t25 V\tinterstage-coupling\tNote ${String(at + 1)}`,
  );
  await paste(page, rows.join('\n'), 'Designators, row 1');
  await expect(page.locator('#rows-shown')).toHaveText(`${String(LINES)} rows.`);
});

test('every row is reached by scrolling, by the keyboard and by its text', async ({ page }) => {
  const rows = page.locator('#part-rows tr[data-line]');
  const cell = (row: number) => page.getByLabel(`Designators, row ${String(row)}`, { exact: true });
  expect(await rows.count()).toBeLessThan(150);
  // The middle of the list, wherever the page is scrolled to.
  const middle = await page.locator('#part-rows').evaluate((body) => {
    const { top, height } = body.getBoundingClientRect();
    scrollTo(0, scrollY + top + height / 2);
    return height / 2000;
  });
  expect(middle).toBeGreaterThan(20);
  await expect(cell(MIDDLE)).toBeInViewport();
  await cell(MIDDLE).fill('C9999');
  // What is typed in stays on the page however far one scrolls, and keeps the focus.
  await page.locator('#parts-title').evaluate((title) => {
    title.scrollIntoView();
  });
  await expect(cell(1)).toBeInViewport();
  await expect(cell(MIDDLE)).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(cell(MIDDLE + 1)).toBeFocused();
  await expect(cell(MIDDLE + 1)).toBeInViewport();
  await page.getByLabel('Find a row').fill('note 1999');
  await page.keyboard.press('Enter');
  await expect(cell(1999)).toBeInViewport();
  await expect(page.locator('#row-found')).toContainText('Row 1999');
  await page.getByLabel('Find a row').fill('c9999');
  await page.keyboard.press('Enter');
  await expect(cell(MIDDLE)).toHaveValue('C9999');
  await expect(cell(MIDDLE)).toBeInViewport();
});

test('paper has all of them, in words', async ({ page }) => {
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const rows = page.locator('#part-rows tr');
  await expect(rows).toHaveCount(LINES);
  await expect(rows.nth(LINES - 1)).toContainText(`Note ${String(LINES)}`);
  await expect(page.locator('#part-rows input')).toHaveCount(0);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect(page.getByLabel('Designators, row 1', { exact: true })).toHaveValue('C1');
});

test('a change of the whole board is planned while one goes on', async ({ page }) => {
  test.slow();
  await planned(page);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await expect(page.locator('#plan-said')).toContainText(`${String(LINES)} lines in 30 groups`);
  await page.getByText('What holds for the whole board').click();
  await page.locator('#whole-board [name="t-max"]').fill('60');
  await planned(page);
  const first = page.locator('.plan-line').first();
  await first.locator('summary').click();
  await expect(first).toContainText('10\u00A0µF');
});
