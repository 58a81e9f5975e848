import { SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** Every page reads fully where scripts are off, and shows nothing that would not work. */

test.use({ javaScriptEnabled: false });

const PAGES: readonly { path: string; shows: readonly (string | RegExp)[] }[] = [
  {
    path: '/',
    shows: ['need scripts', 'What replaces a ceramic disc in an audio path', 'open data'],
  },
  { path: '/read/', shows: ['needs scripts', 'Class 2 codes', 'Voltage codes'] },
  { path: '/read/class2-codes/', shows: ['Z5U'] },
  { path: '/types/ceramic-disc-unknown/', shows: ['Ceramic disc, class unknown', 'Dissipation'] },
  {
    path: '/types/ceramic-disc-unknown/figures/',
    shows: ['Dissipation factor', 'Ceramic class 2, Z5U'],
  },
  { path: '/types/paper-oil/figures/', shows: ['Dielectric absorption', 'not calculated with'] },
  {
    path: SUBSTITUTION,
    shows: [
      'Stand-ins, best first',
      'Keep out',
      'What decides here',
      'Sources',
      'Cautions',
      'With scripts allowed, the page calculates with yours.',
      'the figures as JSON hold the rest',
    ],
  },
];

for (const { path, shows } of PAGES) {
  test(`${path} reads fully`, async ({ page }) => {
    await page.goto(path);
    for (const words of shows)
      await expect.soft(page.locator('main')).toContainText(words, { useInnerText: true });
    const dead = page.locator(
      'button, select:not(:disabled), textarea, input:not([readonly]), fieldset.theme',
    );
    for (const control of await dead.all()) await expect.soft(control).toBeHidden();
  });
}

test('a substitution page answers and opens its working', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  await expect(page.locator('#answer')).toContainText(/fits.*\d/);
  await expect(page.locator('#field-c')).toHaveValue(/^10\snF$/);
  await expect(page.locator('#copy-link')).toBeHidden();
  await expect(page.locator('#results ol > li')).not.toHaveCount(0);

  const first = page.locator('#results ol > li').first();
  await expect(first.locator('table')).toBeHidden();
  await first.locator('summary').click();
  await expect(first.locator('table')).toBeVisible();
  await expect(first.locator('svg.range-bar').first()).toBeVisible();
  await expect(first.locator('thead')).toContainText('Old part');
  await expect(first.locator('tbody tr').first()).toContainText(/\d/);

  // The others show what decides, how it was reckoned and from what; the rest needs scripts.
  for (const item of await page.locator('#results li[id]').all()) {
    await expect
      .soft(item.locator('.working'))
      .toHaveText(/(published|practice|memory|arithmetic)/);
    await expect.soft(item.locator('details.needs-script')).toBeHidden();
  }
  await expect(page.locator('#have')).toBeHidden();
});
