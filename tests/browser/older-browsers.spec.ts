import { openDemo } from './job-table.ts';
import { expect, test } from './watched.ts';

/** A browser without what the language has got since 2023 does all that the others do. */

test.beforeEach(async ({ context }) => {
  await context.addInitScript(() => {
    Reflect.deleteProperty(Map, 'groupBy');
    Reflect.deleteProperty(Object, 'groupBy');
    for (const name of ['toSorted', 'toReversed', 'toSpliced', 'with'])
      Reflect.deleteProperty(Array.prototype, name);
  });
});

test('a marking is read and a type number known', async ({ page }) => {
  await page.goto('/');
  await page.locator('#box').fill('103M 1KV Z5U');
  await expect(page.locator('.reading h3').first()).toHaveText(/^10\snF ±20\s% 1\skV Z5U\s+sure$/u);
  await page.locator('#box').fill('TL072CN');
  await expect(page.locator('main')).toContainText('dual operational amplifier');
});

test('an answer follows the numbers', async ({ page }) => {
  await page.goto('/replace/pet-metallized/in/interstage-coupling/');
  await page.locator('#field-c').fill('0,47 µF');
  await expect(page.locator('#answer')).toContainText(/470\snF/u);
  await page.goto('/devices/tl072/in/amp-line/');
  await page.locator('#numbers input').first().fill('9 V');
  await expect(page.locator('#numbers [data-from="given"]')).toHaveCount(1);
});

for (const [path, waited] of [
  ['/read/?m=103M%201KV%20Z5U', '.reading'],
  ['/read/colours/', '#content svg'],
  ['/read/printed/?c=10n', '#printed table'],
  ['/look/', '#content svg'],
  ['/values/', '#content table, #content output, #content li'],
  ['/sums/reservoir/', '#content svg'],
  ['/resistors/carbon-composition/in/gain-resistor/', '#results'],
] as const)
  test(`${path} works`, async ({ page }) => {
    await page.goto(path);
    await expect(page.locator(waited).first()).toBeVisible();
  });

test('a job is planned', async ({ page }) => {
  await openDemo(page);
  await page.locator('#to-order').click();
  await expect(page.locator('#order-list tbody tr').first()).toBeVisible();
});
