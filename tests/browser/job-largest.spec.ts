import { readFile } from 'node:fs/promises';
import { paste } from './job-table.ts';
import type { Page } from '@playwright/test';
import { expect, test } from './watched.ts';

/** A board as large as any: nothing is fast there, but all of it works. */

const LINES = 10_000;
/** No task may hold the page up so long, ms, on a machine with other work to do as well. */
const HANG = 8000;
/** Nor so long where nothing but the record is drawn. */
const RECORD_HANG = 1000;
/** Parts in places where they are usual: most are tested, those of paper replaced. */
const PARTS = [
  ['al-electrolytic-wet', 'interstage-coupling', 'µF'],
  ['al-electrolytic-wet', 'bulk-rail', 'µF'],
  ['ta-mno2-solid', 'local-decoupling', 'µF'],
  ['paper-wax', 'interstage-coupling', 'nF'],
] as const;

const row = (at: number, note = ''): string => {
  const [type, position, unit] = PARTS[at % PARTS.length] ?? PARTS[0];
  const value = `${String(10 + (at % 120))} ${unit}`;
  return [`C${String(at + 1)}`, 'capacitor', '', type, value, '', '', position, note].join('\t');
};

/** Notes on the page how long the longest task took, as `longest`, from when it is loaded. */
const watchTasks = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const longest = { ms: 0 };
    Object.assign(window, { longest });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) longest.ms = Math.max(longest.ms, duration);
    }).observe({ type: 'longtask' });
  });

/** Opens a page for a job with all the lines. */
const openWith = async (page: Page, rows: readonly string[]): Promise<void> => {
  await page.goto('/job/');
  await paste(page, rows.join('\n'), 'Designators, row 1');
  await expect(page.locator('#rows-shown')).toHaveText(`${String(rows.length)} rows.`, patient);
};

const patient = { timeout: 120_000 };

test('ten thousand lines go from the list to order, bench sheet and record', async ({ page }) => {
  test.setTimeout(400_000);
  await watchTasks(page);
  await openWith(
    page,
    Array.from({ length: LINES }, (_, at) => row(at)),
  );
  const to = (name: string) => page.getByRole('link', { name, exact: true }).click();
  await to('Plan');
  await expect(page.locator('#plan-said')).toContainText(`${String(LINES)} lines in`, patient);

  await to('Order list');
  const buy = page.locator('#order-list tbody tr');
  await expect(buy.first()).toBeVisible(patient);
  // Every part of paper is bought, whatever values stand in for theirs.
  const pieces = await buy.locator('td:first-child').allTextContents();
  const needed = pieces.map((text) => Number(/\((\d+)/u.exec(text)?.[1]));
  expect(needed.reduce((sum, one) => sum + one, 0)).toBe(LINES / PARTS.length);

  await to('Bench sheet');
  const steps = page.locator('#bench-go option[value^="part"]');
  await expect(page.locator('#bench-said')).toContainText(/part/iu, patient);
  const all = await steps.count();
  expect(all).toBeGreaterThan(LINES / 2);
  const far = (await steps.nth(all - 20).getAttribute('value')) ?? '';
  await page.locator('#bench-go').selectOption(far);
  const title = (await page.locator('#bench-steps h3').textContent()) ?? '';
  const designator = /C\d+/u.exec(title)?.[0] ?? '';
  await page.locator('#bench-steps [data-bench="note"]').fill('far down the board');
  await page.locator('#bench-steps [data-bench="done"]').check();
  await expect(page.locator('#bench-said')).toContainText(', 1 done', patient);

  // What takes seconds is said before it begins.
  await page.locator('#record-list').evaluate((place) => {
    const said: string[] = [];
    Object.assign(window, { said });
    new MutationObserver(() => {
      if (place.childElementCount === 0) said.push(place.textContent ?? '');
    }).observe(place, { childList: true });
  });
  await to('Record');
  const written = page.locator('#record-list tr', { hasText: 'far down the board' });
  await expect(written).toContainText(designator, patient);
  const download = page.waitForEvent('download', patient);
  await page.locator('#record-csv').click();
  const csv = await readFile(await (await download).path(), 'utf8');
  expect(csv.split('\n').filter((line) => line.startsWith('C')).length).toBeGreaterThanOrEqual(
    LINES,
  );
  expect(csv).toMatch(new RegExp(`^${designator},.*far down the board`, 'mu'));

  const { said, longest } = await page.evaluate(() => {
    const own = window as unknown as { said: string[]; longest: { ms: number } };
    return { said: own.said, longest: own.longest };
  });
  expect(said.join()).toContain(`Writing down ${String(LINES)} lines`);
  const { ms } = longest;
  expect(ms).toBeLessThan(HANG);
  // What is printed of the record is what stands on the page: every part of it.
  const names = await page.locator('#record-list tbody td:first-child').allTextContents();
  expect(names).toContain(designator);
  // Nothing was lost on the way.
  await page.reload();
  await expect(page.locator('#rows-shown')).toHaveText(`${String(LINES)} rows.`, patient);
  await to('Record');
  await expect(written).toContainText(designator, patient);
});

test('a record of ten thousand rows is written down in turns', async ({ page }) => {
  test.setTimeout(200_000);
  await watchTasks(page);
  // No two are alike, so that each of them has a row of its own.
  await openWith(
    page,
    Array.from({ length: LINES }, (_, at) => row(at, `the ${String(at)}th`)),
  );
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await expect(page.locator('#plan-said')).toContainText(`${String(LINES)} lines in`, patient);
  await page.evaluate(() => {
    (window as unknown as { longest: { ms: number } }).longest.ms = 0;
  });
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  const list = page.locator('#record-list');
  await expect(list).toHaveAttribute('aria-busy', 'true');
  // An assertion that is tried again looks at every element of the page each time.
  await page.waitForFunction(
    () => document.querySelector('#record-list[aria-busy]') === null,
    undefined,
    patient,
  );
  const rows = list.locator('table').first().locator('tbody tr');
  const notes = await rows.locator('td:last-child').allTextContents();
  expect(new Set(notes).size).toBe(LINES);
  const ms = await page.evaluate(
    () => (window as unknown as { longest: { ms: number } }).longest.ms,
  );
  expect(ms).toBeLessThan(RECORD_HANG);
  // What is not yet on the page when it goes to paper is drawn at once.
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  expect(await rows.count()).toBe(LINES);
});
