import { gzipSync } from 'node:zlib';
import { htmlOf, pagePaths } from './site.ts';
import { expect, test } from './watched.ts';

/** Pages of codes, the page that says how a part may be printed, and the ways to them. */

test('"what is 473K" leads to the page of the code in one click', async ({ page }) => {
  await page.goto('/');
  await page.locator('#box').fill('what is 473K');
  await expect(page.locator('.reading h3').first()).toContainText(/47\snF ±10\s%/);
  await page.locator('#at-once a', { hasText: 'The code 473' }).click();
  await expect(page).toHaveURL(/\/read\/codes\/473\/$/);
  await expect(page.locator('h1')).toHaveText(/^473 on a capacitor: 47\snF$/);
  await expect(page.locator('main')).toContainText('473K');
});

test('the word search finds a code page by what is printed', async ({ page }) => {
  await page.goto('/');
  await page.locator('#box').fill('what is 473K');
  // A mark that is surely read leads there at once; the words of single codes are searched when asked.
  await page.locator('#pages button', { hasText: 'codes' }).click();
  await expect(page.locator('#pages a[href$="/read/codes/473/"]')).toBeVisible();
});

test('a part is printed in the ways that its fields say, and the address holds them', async ({
  page,
}) => {
  await page.goto('/read/printed/?c=47n&tol=10&v=100');
  await expect(page.locator('#printed')).toContainText('2A473K');
  await expect(page.locator('#printed')).toContainText('.047 K 100');
  await expect(page.locator('#common')).toBeHidden();
  await page.locator('#field-c').fill('0,1 µF');
  await expect(page.locator('#printed')).toContainText('2A104K');
  await expect(page).toHaveURL(/c=0%2C1\+%C2%B5F/);
  await page.locator('#field-v').fill('nonsense');
  await expect(page.locator('#v-note')).toHaveText(/.{10,}/);
  await page.locator('#field-c').fill('');
  await expect(page.locator('#common')).toBeVisible();
});

test('a code page is small', () => {
  for (const path of pagePaths.filter((one) => /^\/read\/codes\/./.test(one)))
    expect.soft(gzipSync(htmlOf(path)).length, path).toBeLessThan(6 * 1024);
});
