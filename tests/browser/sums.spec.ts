import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { openWhole } from './open-whole.ts';

test('a sum reckons with what is written, keeps it in the address and says what is wrong', async ({
  page,
  context,
}) => {
  await page.goto('/sums/coupling-corner/');
  const answer = page.locator('#answer');
  await expect(answer).toContainText('33.9');
  await page.getByLabel('Capacitance').fill('10n');
  await page.getByLabel('Source and load resistance').fill('1M');
  await expect(answer).toHaveText('Corner frequency: 15.9 Hz.');
  await page.getByLabel('Frequency of the signal').fill('20 µF');
  await expect(page.locator('#f-note')).toHaveClass('fault');
  await expect(page.getByLabel('Frequency of the signal')).toHaveValue('20 µF');
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(other.locator('#answer')).toHaveText('Corner frequency: 15.9 Hz.');
  await expect(other.getByLabel('Capacitance')).toHaveValue('10n');
  await expect(other.locator('#f-note')).toHaveClass('fault');
});

test('a sum with data of its own follows a choice, and its numbers go back', async ({ page }) => {
  await page.goto('/sums/working-voltage/?type=ta-mno2-solid&rating=50&temp=85');
  const answer = page.locator('#answer');
  await expect(answer).toHaveText('Allowed by workshop practice: 25 V.');
  await page.getByRole('button', { name: 'Back to them' }).click();
  await expect(answer).not.toHaveText('Allowed by workshop practice: 25 V.');
  await expect(page).toHaveURL(/\/sums\/working-voltage\/$/u);
});

test('a decimal comma, a range and a tolerance are understood', async ({ page }) => {
  await page.goto('/sums/rc-timing/?r=4,7k&c=100n+%C2%B110+%25&x=63,2+%25');
  await expect(page.locator('#answer')).toContainText(/Time: 470\sµs, from 423\sµs to 517\sµs/u);
});

test('the plot follows by keyboard alone and its table opens', async ({ page }) => {
  await page.goto('/sums/reservoir/');
  await page.getByLabel('Reservoir', { exact: true }).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('4700u');
  await expect(page.locator('#answer')).toContainText('638');
  const summary = page.locator('.plot-table summary').first();
  await summary.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.plot-table').first().getByRole('table')).toBeVisible();
});

test('what is drawn for the first time leaves the keyboard where it was', async ({ page }) => {
  await page.goto('/sums/reservoir/');
  const summary = page.locator('.plot-table summary').first();
  await summary.focus();
  // As if the last key had been pressed just before the keyboard went on to the table.
  await page.getByLabel('Reservoir', { exact: true }).evaluate((field) => {
    if (field instanceof HTMLInputElement) field.value = '4700u';
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await expect(page.locator('#answer')).toContainText('638');
  await expect(page.locator('#result')).not.toHaveAttribute('aria-busy', 'true');
  await expect(summary).toBeFocused();
});

test('every sum answers without scripts', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('/sums/');
  const links = await page
    .locator('main dt a')
    .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
  expect(links.length).toBeGreaterThan(30);
  for (const link of links) {
    await page.goto(link);
    await expect(page.locator('#answer')).not.toHaveText(/not defined|^$/iu);
  }
  await context.close();
});

test('a finding leads to its sum with its numbers, and the sum back to the position', async ({
  page,
}) => {
  await page.goto('/replace/pp-film-foil/in/sample-hold/');
  await page
    .getByText(/^All \d+ findings/u)
    .first()
    .click();
  await page
    .getByRole('row')
    .filter({ hasText: '% per decade' })
    .getByRole('link', { name: 'try other numbers' })
    .first()
    .click();
  await expect(page).toHaveURL(/\/sums\/absorption\/\?/u);
  await expect(page.locator('.fault')).toHaveCount(0);
  await expect(page.getByLabel('Voltage step before the hold')).toHaveValue('5 V');
  await expect(page.getByRole('link', { name: 'sample-and-hold capacitor' })).toBeVisible();
});

test('scripts of a sum stay light', async ({ page }) => {
  const sizes: Promise<number>[] = [];
  page.on('response', (response) => {
    if (response.url().endsWith('.js'))
      sizes.push(response.body().then((body) => gzipSync(body).length));
  });
  await openWhole(page, '/sums/combine-resistors/?value=5k');
  const whole = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
  expect(whole).toBeGreaterThan(10_000);
  expect(whole).toBeLessThan(36 * 1024);
});
