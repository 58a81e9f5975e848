import { openWhole } from './open-whole.ts';
import { expect, test } from './watched.ts';

/** How numbers are written is chosen once and kept in the browser. */

test('a decimal comma and letters are obeyed by sums and kept for other pages', async ({
  page,
}) => {
  await page.goto('/sums/divider/');
  const answer = page.locator('#answer');
  await expect(answer).toContainText(/0\.98|98\d/u);
  await page.getByText('How numbers are written').click();
  await page.getByLabel('Decimal sign').selectOption('comma');
  await page.getByLabel('Ohms').selectOption('letter');
  await expect(page.locator('.sum-outputs')).toContainText('9,9\u00A0%');
  await expect(page.locator('.sum-working')).toContainText('9k1');
  await page.goto('/replace/pp-film-foil/in/sample-hold/');
  await expect(page.locator('#results')).toContainText(/\d,\d+\sµs/u);
  await expect(page.locator('#results')).not.toContainText(/\d\.\d+\sµs/u);
  await page.getByText('How numbers are written').click();
  await page.getByLabel('Decimal sign').selectOption('point');
  await expect(page.locator('#results')).toContainText(/\d\.\d+\sµs/u);
});

test('capacitances stand without nanofarads for who likes that', async ({ page }) => {
  await page.addInitScript(() => {
    localStorage.setItem('habit', 'capacitance=pF-uF&decimal=semicolon&nonsense');
  });
  await page.goto('/sums/combine-capacitors/');
  await expect(page.locator('#answer')).toContainText('0.05\u00A0µF');
  await expect(page.getByLabel('Value wanted')).toHaveValue('50 nF');
});

test('readings of markings and of colours follow', async ({ page }) => {
  await page.addInitScript(() => {
    localStorage.setItem('habit', 'decimal=comma&ohm=letter');
  });
  await page.goto('/read/?m=4n7');
  await expect(page.locator('#readings')).toContainText('4,7\u00A0nF');
  // What is typed before the tables are there is not heard.
  await openWhole(page, '/read/colours/');
  await page.locator('#typed').fill('yellow violet red gold');
  await expect(page.locator('#colour-readings')).toContainText('4k7');
  await page.getByText('How numbers are written').click();
  await page.getByLabel('Ohms').selectOption('symbol');
  await expect(page.locator('#colour-readings')).toContainText('4,7\u00A0kΩ');
});

test('a working is written in the units that a reader likes', async ({ page }) => {
  await page.addInitScript(() => {
    localStorage.setItem('habit', 'capacitance=pF-uF');
  });
  await page.goto('/replace/pp-film-foil/in/sample-hold/');
  await expect(page.locator('#results')).toContainText('µF');
  await expect(page.locator('#results')).not.toContainText(/\d\u00A0nF/u);
});

test('colours are chosen once, kept, and there before anything is painted', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  // A page that only begins to come has no body yet.
  const paper = (): Promise<string> =>
    page.locator('body').evaluate((body) => getComputedStyle(body).backgroundColor);
  await page.goto('/');
  const light = await paper();
  await page.getByRole('radio', { name: 'dark' }).check();
  const dark = await paper();
  expect(dark).not.toBe(light);
  await page.goto('/types/', { waitUntil: 'commit' });
  await expect.poll(paper).toBe(dark);
  await expect(page.getByRole('radio', { name: 'dark' })).toBeChecked();
  await page.getByRole('radio', { name: 'as the system' }).check();
  expect(await paper()).toBe(light);
  await page.reload();
  expect(await paper()).toBe(light);
});
