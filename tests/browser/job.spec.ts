import type { Page } from '@playwright/test';
import { broken, dropRepeated } from './axe.ts';
import { expect, test } from './watched.ts';

/** The page for a job, from the parts list to the record. */

const PARTS = ['parts', 'plan', 'order', 'sheet', 'record'] as const;

/** Pastes a text onto a cell as a spreadsheet's clipboard would. */
const paste = async (page: Page, text: string): Promise<void> => {
  await page.getByLabel('Designators, row 1', { exact: true }).evaluate((cell, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    cell.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    );
  }, text);
};

const HOSTILE = '<img src=x onerror=alert(1)>';
const TABLE = [
  'C1, C2\tcapacitor\t\tal-electrolytic-wet\t10 µF\t20 %\t25 V\tinterstage-coupling\t',
  `R1\tresistor\t\t\t10 k\t5 %\t\t\t${HOSTILE}`,
].join('\n');

const openDemo = async (page: Page): Promise<void> => {
  await page.goto('/job/');
  await page
    .getByRole('button', { name: /^Demonstration/u })
    .first()
    .click();
  await expect(page.locator('#invented')).toContainText('invented');
};

test('a line of the plan that is just being opened stays open when the plan is drawn anew', async ({
  page,
}) => {
  await openDemo(page);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const line = page.locator('.plan-line').nth(2);
  await expect(line).toContainText('fits');
  // The browser tells of it in an event of its own, which comes after the plan.
  await line
    .locator('details')
    .first()
    .evaluate((details: HTMLDetailsElement) => {
      details.open = true;
      // All numbers are written otherwise, so that every line is drawn anew.
      const decimal = document.querySelector<HTMLSelectElement>('#habit-decimal');
      if (decimal === null) throw new Error('there is no choice of the decimal sign');
      decimal.value = 'comma';
      decimal.dispatchEvent(new Event('change', { bubbles: true }));
    });
  await expect(line.getByLabel('Decision')).toBeVisible();
});

test('a pasted table is planned, done at the bench and recorded', async ({ page }) => {
  await page.goto('/job/');
  await paste(page, TABLE);
  await expect(page.locator('#part-rows tr')).toHaveCount(2);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const line = page.locator('.plan-line').first();
  await expect(line.locator('.verdict')).toContainText('fits');
  await line.locator('summary').click();
  await line.getByLabel('Decision').selectOption('replace');
  await page.getByRole('link', { name: 'Order list' }).click();
  await expect(page.locator('#order-list')).toContainText(/C1\W+C2/u);
  await page.getByRole('link', { name: 'Bench sheet' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  const step = page.locator('#bench-steps .bench-step');
  await expect(step).toHaveCount(1);
  await expect(step).toContainText('R1: test');
  await step.getByLabel('Resistance, before').fill('9,1 k');
  await step.getByLabel('Tested').check();
  await page.getByRole('link', { name: 'Record' }).click();
  await expect(page.locator('#record-list')).toContainText('9.1\u00A0kΩ');
  await expect(page.locator('#record-list')).toContainText(HOSTILE);
  await expect(page.locator('#record-list img')).toHaveCount(0);
});

test('what was typed survives that the page is killed, and can be undone', async ({
  page,
  context,
}) => {
  await page.goto('/job/');
  await page.getByLabel('Designators, row 1', { exact: true }).fill('C7');
  await expect(page.locator('#keeping')).toContainText('Kept');
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.goto('/job/');
  const cell = again.getByLabel('Designators, row 1', { exact: true });
  await expect(cell).toHaveValue('C7');
  await cell.fill('C8');
  await again.getByRole('button', { name: 'Undo' }).click();
  await expect(cell).toHaveValue('C7');
});

test('two tabs are told of each other, and neither loses what it has', async ({
  page,
  context,
}) => {
  await page.goto('/job/');
  await page.getByRole('textbox', { name: 'Title' }).fill('Ours');
  await expect(page.locator('#keeping')).toContainText('Kept');
  const other = await context.newPage();
  await other.goto('/job/');
  await expect(other.getByRole('textbox', { name: 'Title' })).toHaveValue('Ours');
  await other.getByRole('textbox', { name: 'Title' }).fill('Theirs');
  await expect(other.locator('#keeping')).toContainText('Kept');
  await expect(page.locator('#elsewhere')).toBeVisible();
  await page.getByRole('textbox', { name: 'Equipment' }).fill('Mine');
  await expect(page.locator('#jobs option')).toHaveCount(2);
  await expect(other.getByRole('textbox', { name: 'Title' })).toHaveValue('Theirs');
  await expect(page.getByRole('textbox', { name: 'Equipment' })).toHaveValue('Mine');
});

test('a file that is no job changes nothing, and a job opens again', async ({ page }) => {
  await openDemo(page);
  const file = page.locator('#job-file');
  const give = (text: string) =>
    file.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await give(`{"format":"${HOSTILE}"}`);
  await expect(page.locator('#job-said')).toContainText('nothing is opened');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  const rows = await page.locator('#part-rows tr').count();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.locator('#part-rows tr')).toHaveCount(1);
  await file.setInputFiles(await download.path());
  await expect(page.locator('#part-rows tr')).toHaveCount(rows);
});

test('a link holds the whole job', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openDemo(page);
  const rows = await page.locator('#part-rows tr').count();
  await page.getByRole('button', { name: 'Copy a link' }).click();
  await expect(page.locator('#job-said')).toContainText(/link of \d+ characters/u);
  const address = await page.evaluate(() => navigator.clipboard.readText());
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.locator('#part-rows tr')).toHaveCount(1);
  await page.goto('about:blank');
  await page.goto(address);
  await expect(page.locator('#part-rows tr')).toHaveCount(rows);
});

test('a file with a table is confirmed column by column', async ({ page }) => {
  await page.goto('/job/');
  const text = `Reference;Value;Voltage;Shelf\nC1;10 µF;25 V;${HOSTILE}\n;;;\nC2;1;2;3;4;5\n`;
  await page
    .locator('#table-file')
    .setInputFiles({ name: 'x.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  const table = page.locator('#table-in');
  await expect(table).toContainText('1 row to add, 1 not understood');
  await expect(table).toContainText(HOSTILE);
  await table.getByLabel(/Column 4/u).selectOption('note');
  await table.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.getByLabel('Note, row 1', { exact: true })).toHaveValue(HOSTILE);
  await expect(page.locator('#part-rows tr')).toHaveCount(1);
  await page.getByRole('link', { name: 'Record' }).click();
  await expect(page.locator('#record-list')).toContainText('Row 4');
});

test('work goes on without the network', async ({ page, context }) => {
  // The browser asks for the page's icon again by itself.
  await page.route('**/icon.svg', (route) =>
    route.fulfill({
      contentType: 'image/svg+xml',
      body: '<svg xmlns="http://www.w3.org/2000/svg"/>',
    }),
  );
  await openDemo(page);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await expect(page.locator('.plan-line .verdict').first()).toBeVisible();
  await expect(page.locator('#planning')).toHaveText('');
  await context.setOffline(true);
  await page.getByRole('link', { name: 'Bench sheet' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  await page.locator('#bench-steps').getByLabel('Tested').check();
  await page.getByRole('link', { name: 'Record' }).click();
  await expect(page.locator('#record-list')).toContainText('yes');
  await context.setOffline(false);
});

for (const width of [1280, 320]) {
  test(`every part of the demonstration is for everybody at ${String(width)} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    await openDemo(page);
    for (const part of PARTS) {
      await page.locator(`#to-${part}`).click();
      await expect(page.locator(`#${part}`)).toBeVisible();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      await dropRepeated(page);
      expect(await broken(page, width < 1280), part).toEqual([]);
    }
  });
}
