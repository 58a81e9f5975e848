import { readFile } from 'node:fs/promises';
import { openDemo, planned } from './job-table.ts';
import { expect, test } from './watched.ts';

/** The order list copied, saved and printed: each time every line once. */

/** Cells of comma-separated values as a spreadsheet shows them. */
const cellsOf = (text: string): string[][] =>
  text
    .trim()
    .split('\r\n')
    .map((row) =>
      [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/gu)].map(
        ([, quoted, bare]) => quoted?.replaceAll('""', '"') ?? bare ?? '',
      ),
    );

for (const demo of [0, 1]) {
  test(`the order of demonstration ${String(demo + 1)} is copied as it is saved and printed`, async ({
    page,
    context,
  }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await openDemo(page, demo);
    await page.getByRole('link', { name: 'Order list' }).click();
    const shown = page.locator('#order-list tbody tr');
    await expect(shown.first()).toBeVisible();
    const count = await shown.count();
    expect(count).toBeGreaterThan(3);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('#order-csv').click(),
    ]);
    const saved = cellsOf((await readFile(await download.path(), 'utf8')).replace(/^\uFEFF/u, ''));
    const [heads = [], ...rows] = saved;
    expect(rows).toHaveLength(count);
    const cell = (row: readonly string[], head: string): string => row[heads.indexOf(head)] ?? '';

    const copy = async (button: string): Promise<string> => {
      await page.locator(button).click();
      await expect(page.locator('#order-copied')).toHaveText('Copied.');
      return page.evaluate(() => navigator.clipboard.readText());
    };
    // What a spreadsheet is given holds the very cells of the file.
    const tabbed = (await copy('#order-copy')).trim().split(/\r?\n/u);
    expect(tabbed.map((row) => row.split('\t'))).toEqual(saved);
    const copied = (await copy('#order-copy-text')).trim().split('\n');
    expect(copied).toHaveLength(count);
    const printed = await shown.allInnerTexts();
    for (const [at, row] of rows.entries()) {
      const [line = '', paper = ''] = [copied[at], printed[at]].map((text) =>
        text?.replaceAll('\u00A0', ' '),
      );
      expect(line).toContain(`${cell(row, 'Quantity')} × ${cell(row, 'What')}`);
      expect(line).toContain(`(${cell(row, 'Designators')})`);
      for (const head of ['Value', 'Tolerance', 'Voltage', 'Pitch', 'Height at most', 'Notes']) {
        const said = cell(row, head).replaceAll('\u00A0', ' ').replace(/^'/u, '');
        expect(line, head).toContain(said);
        expect(paper, head).toContain(said);
      }
    }
    // No part is bought twice.
    const named = rows.flatMap((row) =>
      cell(row, 'Designators')
        .split(' ')
        .map((name) => `${name} ${cell(row, 'What')}`),
    );
    expect(new Set(named).size).toBe(named.length);
  });
}

for (const format of ['A4', 'Letter'] as const) {
  test(`the printed order on ${format} holds every line once, none cut by a page`, async ({
    page,
  }) => {
    await openDemo(page);
    await page.getByRole('link', { name: 'Order list' }).click();
    await expect(page.locator('#order-list tbody tr').first()).toBeVisible();
    const before = await page.locator('#order-list tbody tr').count();
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect(page.locator('#order-list tbody tr:visible')).toHaveCount(before);
    await expect(page.locator('#order-list thead')).toBeVisible();
    // How many to buy stands on one line.
    const lines = await page.locator('#order-list tbody td:first-child').evaluateAll((cells) =>
      cells.map((cell) => {
        const words = document.createRange();
        words.selectNodeContents(cell);
        return words.getClientRects().length;
      }),
    );
    expect(new Set(lines)).toEqual(new Set([1]));
    const breaks = await page
      .locator('#order-list tbody tr')
      .evaluateAll((rows) => rows.map((row) => getComputedStyle(row).breakInside));
    expect(new Set(breaks)).toEqual(new Set(['avoid']));
    await expect(
      page.locator('#order .actions, #plan, #sheet, #record').locator('visible=true'),
    ).toHaveCount(0);
    const paper = await page.pdf({ format });
    expect(paper.subarray(0, 5).toString()).toBe('%PDF-');
    // The size of its pages in points.
    const size = {
      A4: /\/MediaBox \[0 0 59[45](?:\.\d+)? 84[12]/u,
      Letter: /\/MediaBox \[0 0 612 792\]/u,
    }[format];
    expect(paper.toString('latin1')).toMatch(size);
  });
}

test('an order of nothing offers nothing to copy, save or print', async ({ page }) => {
  await page.goto('/job/');
  await page.getByLabel('Designators, row 1', { exact: true }).fill('C1');
  await page.getByLabel('Marking, row 1', { exact: true }).fill('103');
  await planned(page);
  await page.locator('#to-plan').click();
  await planned(page);
  await page.locator('#to-order').click();
  await expect(page.locator('#order-list')).toContainText('Nothing is to be ordered yet');
  for (const id of ['#order-copy', '#order-copy-text', '#order-csv'])
    await expect(page.locator(id)).toBeHidden();
});
