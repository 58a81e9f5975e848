import { SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** Paper is as good as the screen. */

test('a substitution page prints', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?load=47k`);
  await expect(page.locator('#load-note')).toHaveText('yours');
  const paper = await page.pdf({ format: 'A4' });
  expect(paper.subarray(0, 5).toString()).toBe('%PDF-');
  expect(paper.length).toBeGreaterThan(20_000);
});

test('on paper stand the answer, the numbers and the stand-ins, no controls', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  const summary = page.locator('#results ol summary').first();
  await summary.click();
  await page.emulateMedia({ media: 'print' });
  for (const shown of ['#answer', '#field-c', '#results ol > li h3', '#keep-out', '.findings'])
    await expect.soft(page.locator(shown).first()).toBeVisible();
  for (const hidden of ['#copy-link', '#numbers button', '.site-nav', '.theme', '.skip'])
    await expect.soft(page.locator(hidden).first()).toBeHidden();
  const ink = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(ink).toBe('rgb(255, 255, 255)');
});

for (const [path, most] of [
  ['/read/?m=103M+1KV+Z5U', 1],
  ['/replace/ceramic-disc-unknown/', 2],
] as const)
  test(`no sheet stays empty before what ${path} says`, async ({ page }) => {
    await page.goto(path, { waitUntil: 'networkidle' });
    const paper = (await page.pdf({ format: 'A4' })).toString('latin1');
    const sheets = paper.match(/\/Type\s*\/Page\b(?!s)/gu) ?? [];
    expect(sheets.length).toBeGreaterThan(0);
    expect(sheets.length).toBeLessThanOrEqual(most);
  });
