import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { broken, dropRepeated, forAxe, VIEWS } from './axe.ts';
import { ONE_FILE, SITE } from './site.ts';
import { expect, test } from './watched.ts';

/** Pages about stand-ins for resistors and trimmers, with the visitor's own numbers. */

const RESISTOR = '/resistors/carbon-film/in/plate-load/';
const TRIMMER = '/trimmers/carbon-preset/in/pitch-trim/';

test('a resistor is reckoned with what is typed, and the address holds it', async ({ page }) => {
  await page.goto(RESISTOR);
  await page.locator('#field-value').fill('220k');
  await page.locator('#field-rating').fill('1/2 W');
  await expect(page.locator('#rating-note')).toHaveText('yours');
  await expect(page).toHaveURL(/\?value=220k&rating=1%2F2\+W$/);
  await expect(page.locator('#stand-ins + ol > li').first()).toContainText('220\u00a0kΩ');
  const answer = await page.locator('#answer').textContent();
  await page.reload();
  await expect(page.locator('#answer')).toHaveText(answer ?? '');
  await expect(page.locator('#field-rating')).toHaveValue('0.5\u00a0W');
});

test('a resistor that the visitor has is judged, and put beside another', async ({ page }) => {
  await page.goto(RESISTOR);
  await page.locator('#have > summary').click();
  await page.locator('#field-have').selectOption('metal-film');
  await page.locator('#field-have-rating').fill('1/8 W');
  await expect(page.locator('#having-said')).toHaveText('Metal film resistor: keep out');
  await expect(page.locator('#have-rating-note')).toHaveText('yours');
  await expect(page.locator('#have-part')).toContainText('0.125\u00a0W');
  await expect(page).toHaveURL(/have=metal-film&have-rating=1%2F8\+W/);

  await page.locator('#compare > summary').click();
  await page.locator('#field-compare-a').selectOption('have');
  await page.locator('#field-compare-b').selectOption('metal-oxide');
  const table = page.locator('#comparison table');
  await expect(table).toBeVisible();
  const names = await table.locator('tbody').first().locator('th').allTextContents();
  expect(names.slice(1, 4)).toEqual(['Resistance', 'Tolerance', 'Rated power']);
  await page.reload();
  await expect(table).toBeVisible();
  await expect(page.locator('#compared')).toHaveText(/differ\.$|differs\.$/);
});

test('what an old resistor reads is judged by its mark, and stands in the address', async ({
  page,
}) => {
  await page.goto(RESISTOR);
  await page.locator('#judge-first > summary').click();
  await page.locator('#field-reads').fill('128k');
  await expect(page.locator('#reads-note')).toContainText('marked');
  await expect(page.locator('#judgement')).toContainText('Leave it');
  await page.locator('#field-value').fill('100k');
  await expect(page.locator('#judgement')).toContainText('Replace it.');
  await expect(page.locator('#judgement')).toContainText('28\u00a0% above its mark');
  await expect(page).toHaveURL(/\?reads=128k&value=100k$/);
  await page.reload();
  await expect(page.locator('#field-reads')).toHaveValue('128k');
  await expect(page.locator('#judgement')).toContainText('Replace it.');
});

test('what cannot be understood is said beside its field and stays', async ({ page }) => {
  await page.goto(`${RESISTOR}?value=lots&vdc=12+W`);
  await expect(page.locator('#value-note')).toHaveText(/Until then 100\u00a0kΩ counts\.$/);
  await expect(page.locator('#field-value')).toHaveValue('lots');
  await expect(page.locator('#field-value')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('#vdc-note')).toHaveClass('fault');
  await page.getByRole('button', { name: 'Back to the usual numbers' }).click();
  await expect(page.locator('#value-note')).toHaveText('usual');
  await expect(page).toHaveURL(new RegExp(`${RESISTOR}$`));
});

test('what is typed before the tables come counts when they do', async ({ page }) => {
  let release = (): void => undefined;
  const held = new Promise<void>((done) => {
    release = done;
  });
  await page.route('**/catalogue/plate-load.json', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto(RESISTOR);
  await page.locator('#field-value').fill('47k');
  await page.locator('#field-vdc').fill('120');
  release();
  await expect(page.locator('#value-note')).toHaveText('yours');
  await expect(page.locator('#vdc-note')).toHaveText('yours');
  await expect(page.locator('#stand-ins + ol > li').first()).toContainText('47\u00a0kΩ');
});

test('a finding leads to its sum with the numbers filled in', async ({ page }) => {
  await page.goto(`${RESISTOR}?value=220k`);
  await expect(page.locator('#value-note')).toHaveText('yours');
  await page.locator('#stand-ins + ol > li').first().locator('summary').click();
  await page.locator('a[href*="/sums/resistor-limits/?"]').first().click();
  await expect(page.locator('h1')).toHaveText('Power and voltage limits of a resistor');
  await expect(page.locator('#field-r')).toHaveValue('217.8..222.2k');
  await page.locator('main a[href*="/positions/plate-load/"]').first().click();
  await expect(page.locator('h1')).toContainText('Anode or collector load');
});

test('a reading leads to its pages with the value filled in', async ({ page }) => {
  await page.goto('/read/?m=4k7+1/4W+carbon+film');
  await page.locator('.onward a', { hasText: 'Carbon film' }).first().click();
  // The numbers are carried on by a script.
  await page.locator('main a[href*="/in/plate-load/?"]').click();
  await expect(page.locator('#field-value')).toHaveValue('4.7\u00a0kΩ');
  await expect(page.locator('#field-rating')).toHaveValue('0.25\u00a0W');
});

test('the setting of a trimmer is carried over to the one on the bench', async ({ page }) => {
  await page.goto(TRIMMER);
  await page.locator('#field-old-setting').fill('4k');
  await page.locator('#field-old-total').fill('10k');
  await page.locator('#field-new-total').fill('9.6k');
  await page.locator('#field-new-turns').fill('24');
  await page.locator('#field-new-now').fill('4.8k');
  const own = page.locator('#carried tbody tr').first();
  // A divider keeps the ratio: 0.4 × 9.6 kΩ, 400 Ω a turn.
  await expect(own).toContainText('3.84\u00a0kΩ');
  await expect(own).toContainText('9.6 of 24');
  await expect(own).toContainText('2.4 towards the end in use');
  await page.locator('#field-new-total').fill('nine');
  await expect(page.locator('#new-total-note')).toHaveClass('fault');
  await expect(page.locator('#field-new-total')).toHaveValue('nine');
  await expect(page).toHaveURL(/new-turns=24/);
});

for (const path of [`${RESISTOR}?value=abc`, `${TRIMMER}?new-total=abc&new-now=5k`]) {
  test.describe(path, () => {
    test.use(forAxe);
    test('breaks no rule of axe', async ({ page }) => {
      test.setTimeout(90_000);
      await page.goto(path);
      await expect(page.locator('.fault').first()).toBeVisible();
      await dropRepeated(page);
      for (const { width, colorScheme, seenOnly } of VIEWS) {
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme });
        expect
          .soft(await broken(page, seenOnly), `${String(width)} px, ${colorScheme}`)
          .toEqual([]);
      }
    });
  });

  test(`${path} fits a narrow phone and paper`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    await expect(page.locator('.fault').first()).toBeVisible();
    const sideways = () =>
      page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(await sideways()).toBeLessThanOrEqual(0);
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('#answer')).toBeVisible();
    await expect(page.locator('#stand-ins')).toBeVisible();
  });
}

test('the one file reckons as the site does', async ({ page }) => {
  const address = pathToFileURL(resolve(SITE, ONE_FILE)).href;
  await page.goto(`${address}#${TRIMMER}?old-setting=4k&new-total=9.6k`);
  await expect(page.locator('#content')).toHaveAttribute('data-ready', '');
  await expect(page.locator('#carried tbody tr').first()).toContainText('3.84\u00a0kΩ');
  await page.locator('#field-value').fill('22k');
  await expect(page.locator('#value-note')).toHaveText('yours');
});
