import type { Page } from '@playwright/test';
import { SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** Two parts side by side on a substitution page. */

const choice = (page: Page, letter: 'a' | 'b') => page.locator(`#field-compare-${letter}`);
const note = (page: Page, letter: 'a' | 'b') => page.locator(`#compare-${letter}-note`);
const table = (page: Page) => page.locator('#comparison table');
const compared = (page: Page) => new URL(page.url()).searchParams.get('compare');

test('the one that is chosen first stays chosen until there is another', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  await page.locator('#compare > summary').click();
  await choice(page, 'a').selectOption('pp-film-foil');
  await expect.poll(() => compared(page)).toBe('pp-film-foil,');
  await page.reload();
  await expect(choice(page, 'a')).toHaveValue('pp-film-foil');
  await choice(page, 'b').selectOption('ceramic-x7r');
  await expect(table(page).locator('thead')).toContainText('A: Polypropylene film and foil');
});

test('two are chosen, compared, and kept in the address', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  await page.locator('#compare > summary').click();
  const first = await page.locator('#results ol > li').first().getAttribute('id');
  await expect(choice(page, 'a')).toHaveValue(first ?? '');
  await expect(table(page)).toHaveCount(0);
  await choice(page, 'b').selectOption('ceramic-x7r');
  await expect(table(page)).toBeVisible();
  await expect.poll(() => compared(page)).toBe(`${first},ceramic-x7r`);
  await expect(page.locator('#compared')).toHaveText(/^\d+ of \d+ verdicts? differs?; \d+ more/);
  await expect(page.locator('#compared')).toHaveRole('status');

  await choice(page, 'a').selectOption('pp-film-foil');
  await expect(table(page).locator('thead')).toContainText('A: Polypropylene film and foil');
  await expect(table(page).locator('thead')).toContainText('B: Ceramic class 2, X7R');
  const groups = await table(page).locator('th.group').allTextContents();
  expect(groups).toEqual([
    'The part',
    'Verdicts that differ',
    'Figures that differ',
    'Alike in both',
  ]);
  const names = await table(page).locator('tbody').first().locator('th').allTextContents();
  expect(names.slice(1, 6)).toEqual(['Value', 'Tolerance', 'Rated voltage', 'Size', 'Lead pitch']);
  const row = table(page).locator('tr', { hasText: 'Corner frequency' });
  await expect(row).toContainText(/at most 20\sHz/);
  await expect(row.locator('[data-verdict]')).toHaveText(['fits', 'fits if …']);
  // Drawn for the eye: the row above says the same in words.
  const bar = table(page).locator('svg.range-bar').first();
  await expect(bar).toBeVisible();
  await expect(bar).toHaveAttribute('aria-hidden', 'true');
  for (const word of ['old part', 'A', 'B']) await expect(bar).toContainText(word);

  await page.reload();
  await expect(choice(page, 'a')).toHaveValue('pp-film-foil');
  await expect(choice(page, 'b')).toHaveValue('ceramic-x7r');
  await expect(table(page)).toBeVisible();
});

test('a figure leads to how it was reckoned', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?compare=pp-film-foil,ceramic-x7r`);
  const row = table(page).locator('tr', { hasText: 'Corner frequency' });
  await row.locator('td[data-of="B"] a').click();
  const target = page.locator(':target');
  await expect(target).toBeVisible();
  await expect(target).toBeInViewport();
  await expect(page.locator('#ceramic-x7r details')).toHaveAttribute('open');
  await expect(target).toContainText('Corner frequency');
  for (const link of await table(page).locator('td[data-of] a').all()) {
    const id = ((await link.getAttribute('href')) ?? '').slice(1);
    await expect.soft(page.locator(`[id="${id}"]`), id).toHaveCount(1);
  }
});

test('the part that one has stands beside another', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?have=pc-metallized`);
  await page.locator('#have-part').getByRole('button', { name: 'Side by side' }).press('Enter');
  await expect(table(page)).toBeVisible();
  await expect.poll(() => compared(page)).toMatch(/,have$/);
  await expect(page.locator('#compare > summary')).toBeFocused();
  await expect(choice(page, 'b')).toHaveValue('have');
  await expect(table(page)).toContainText('B: Metallized polycarbonate film');
  await table(page).locator('td[data-of="B"] a').first().click();
  await expect(page.locator(':target')).toBeInViewport();
  // Without that part there is nothing left to compare with.
  await page.locator('#field-have').selectOption('');
  await expect(table(page)).toHaveCount(0);
  await expect(note(page, 'b')).toHaveText('Say above which part you have.');
});

test('numbers of the circuit count for both, and the choice stays', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?compare=pp-film-foil,ceramic-x7r`);
  const before = await table(page).textContent();
  await page.locator('#field-load').fill('100k');
  await expect(table(page)).not.toHaveText(before ?? '');
  await expect(choice(page, 'b')).toHaveValue('ceramic-x7r');
});

for (const { text, letter, says } of [
  { text: 'unobtainium,ceramic-x7r', letter: 'a', says: /not among the stand-ins/ },
  { text: 'pp-film-foil,<b>x</b>', letter: 'b', says: /not among the stand-ins/ },
  { text: 'pp-film-foil,pp-film-foil', letter: 'b', says: /two different parts/ },
  { text: 'pp-film-foil,have', letter: 'b', says: /which part you have/ },
] as const) {
  test(`compare=${text} is answered in a sentence`, async ({ page }) => {
    await page.goto(`${SUBSTITUTION}?compare=${encodeURIComponent(text)}`);
    await expect(note(page, letter)).toHaveText(says);
    await expect(note(page, letter)).toHaveClass('fault');
    await expect(choice(page, letter)).toHaveAttribute('aria-invalid', 'true');
    await expect(table(page)).toHaveCount(0);
    await expect.poll(() => compared(page)).toBe(text);
    await choice(page, letter).selectOption('ceramic-y5v');
    await expect(note(page, letter)).toHaveText('');
  });
}

test('a phone shows it without scrolling sideways', async ({ page }) => {
  for (const width of [390, 320]) {
    await page.setViewportSize({ width, height: 800 });
    await page.goto(`${SUBSTITUTION}?have=pc-metallized&compare=ceramic-x7r,have`);
    await expect(table(page)).toBeVisible();
    const box = await table(page).boundingBox();
    expect(box?.width).toBeLessThanOrEqual(width);
    const widest = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(widest).toBeLessThanOrEqual(width);
    // Each figure says on its own line whose it is.
    const label = await table(page)
      .locator('td[data-of="A"]')
      .first()
      .evaluate((cell) => getComputedStyle(cell, '::before').content);
    expect(label).toContain('A');
  }
});

test('paper has the table and no controls', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?compare=pp-film-foil,ceramic-x7r`);
  await expect(table(page)).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(table(page)).toBeVisible();
  await expect(choice(page, 'a')).toBeHidden();
  await expect(page.locator('#have')).toBeHidden();
});
