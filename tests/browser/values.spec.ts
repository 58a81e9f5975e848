import { expect, test } from './watched.ts';

test('the nearest values follow what is written, and lead to what combines to it', async ({
  page,
}) => {
  await page.goto('/values/');
  const nearest = page.locator('#nearest');
  await expect(nearest.getByRole('row', { name: /^E12 / })).toContainText('47\u00A0nF');
  await page.getByLabel('Part', { exact: true }).selectOption('resistor');
  await page.getByLabel('Value', { exact: true }).fill('5,1k');
  await expect(nearest.getByRole('row', { name: /^E24 / })).toContainText('exact');
  await page.getByLabel('Value', { exact: true }).fill('20 V');
  await expect(page.locator('#value-note')).toHaveClass('fault');
  await expect(page.getByLabel('Value', { exact: true })).toHaveValue('20 V');
  await page.getByLabel('Value', { exact: true }).fill('5k');
  await nearest.getByRole('link').click();
  await expect(page).toHaveURL(/\/sums\/combine-resistors\/\?value=5/u);
  await expect(page.locator('#answer')).toContainText('5\u00A0kΩ');
});

test('types are compared by a property', async ({ page }) => {
  await page.goto('/compare/dielectric-absorption/');
  const rows = page.getByRole('row');
  const typical = await rows.locator('td:nth-of-type(3)').allTextContents();
  const numbers = typical.map(Number);
  expect(numbers.length).toBeGreaterThan(20);
  expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
});
