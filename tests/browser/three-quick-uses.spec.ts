import type { Page } from '@playwright/test';
import { expect, test, watch } from './watched.ts';

/** The three things that must each take seconds. */

const field = (page: Page, name: string) => page.locator(`#field-${name}`);

/** What the answer rests on and what it comes to. */
const stateOf = async (page: Page) => ({
  answer: await page.locator('#answer').textContent(),
  fields: await page
    .locator('#numbers input')
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value)),
  order: await page.locator('#results ol > li').evaluateAll((items) => items.map(({ id }) => id)),
  reasons: await page.locator('#results ol > li > p').allTextContents(),
});

test('a marking leads to stand-ins, and a link carries the numbers', async ({
  page,
  browser,
  context,
  baseURL,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/');
  await page.locator('#box').fill('103M 1KV Z5U');
  const reading = page.locator('.reading').first();
  await expect(reading.locator('h3')).toHaveText(/^10\snF ±20\s% 1\skV Z5U\s+sure$/);
  await expect(reading).toContainText('class 2');
  await expect(reading).toContainText(/3\.52–14\.6\snF/);

  await reading.getByRole('link', { name: 'Coupling between stages', exact: true }).click();
  await expect(page).toHaveURL(/\/replace\/[^/]*z5u\/in\/interstage-coupling\/\?/);
  await expect(field(page, 'c')).toHaveValue(/^10\snF$/);
  await expect(field(page, 'tol')).toHaveValue(/^±20\s%$/);
  await expect(field(page, 'v')).toHaveValue(/^1\skV$/);
  await expect(page.locator('#numbers [data-from="given"]')).toHaveCount(3);

  await expect(page.locator('#results ol > li#ceramic-c0g')).toBeVisible();
  await expect(page.locator('#answer')).toContainText(/for 1\skV: measure the voltage across it/);
  const { order } = await stateOf(page);
  const firstClass2 = order.findIndex((id) => /^ceramic-(x7r|x5r|y5v|z5u)$/.test(id));
  expect(firstClass2).toBeGreaterThan(0);
  for (const better of ['pp-film-foil', 'pp-metallized', 'pet-metallized', 'ceramic-c0g'])
    expect(order.slice(0, firstClass2)).toContain(better);
  for (const item of await page.locator('#results ol > li').all())
    await expect(item).toContainText(
      /(Least to spare|Decides): .*\d.*[(;] ?(at most|at least) .*\d.* (allowed|needed)/,
    );

  const before = await stateOf(page);
  await field(page, 'load').fill('47k');
  await expect(page.locator('#load-note')).toHaveText('yours');
  await expect
    .poll(async () => (await stateOf(page)).reasons.join())
    .not.toBe(before.reasons.join());
  await expect(page).toHaveURL(/load=47k/);
  await field(page, 'load').blur();
  await expect(field(page, 'load')).toHaveValue(/^47\skΩ$/);

  await page.locator('#copy-link').click();
  await expect(page.locator('#copied')).toHaveText('Copied.');
  const link = await page.evaluate(() => navigator.clipboard.readText());
  expect(link).toBe(page.url());

  const faults: string[] = [];
  const elsewhere = await browser.newContext();
  await watch(elsewhere, new URL(baseURL ?? '').origin, faults);
  const other = await elsewhere.newPage();
  await other.goto(link);
  await expect(other.locator('#load-note')).toHaveText('yours');
  expect(await stateOf(other)).toEqual(await stateOf(page));
  await elsewhere.close();
  expect(faults).toEqual([]);
});

for (const { words, to } of [
  {
    words: 'ceramic disc in audio path',
    to: '/replace/ceramic-disc-unknown/in/interstage-coupling/',
  },
  { words: 'wax paper coupling', to: '/replace/paper-wax/in/interstage-coupling/' },
  { words: 'reservoir', to: '/positions/reservoir/' },
]) {
  test(`"${words}" leads on in one click`, async ({ page }) => {
    await page.goto('/');
    await page.locator('#box').fill(words);
    await page.locator('#at-once a').first().click();
    await expect(page).toHaveURL(new RegExp(`${to}$`));
    await expect(page.locator('h1')).toBeVisible();
  });
}

test('a link to a reading shows it, and the address follows the text', async ({ page }) => {
  await page.goto('/read/?m=473K');
  await expect(page.locator('#marking')).toHaveValue('473K');
  await expect(page.locator('.reading h3').first()).toContainText(/47\snF ±10\s%/);
  await page.locator('#marking').fill('n47');
  await expect(page.locator('.reading h3').first()).toContainText(/470\spF/);
  await expect(page).toHaveURL(/\/read\/\?m=n47$/);
  await page.locator('#marking').fill('');
  await expect(page.locator('.reading')).toHaveCount(0);
  await expect(page).toHaveURL(/\/read\/$/);
});

test('the first page answers to its own address', async ({ page }) => {
  await page.goto('/?q=473K');
  await expect(page.locator('#box')).toHaveValue('473K');
  await expect(page.locator('.reading h3').first()).toContainText(/47\snF ±10\s%/);
});

test('findings open where they are, with the keyboard still at them', async ({ page }) => {
  await page.goto('/replace/ceramic-disc-unknown/in/interstage-coupling/');
  const second = page.locator('#results ol > li').nth(1);
  await second.locator('summary').focus();
  await page.keyboard.press('Enter');
  await expect(second.locator('svg.range-bar').first()).toBeVisible();
  await expect(second.locator('summary')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(second.locator('table')).toBeHidden();
});

test('a number put back by hand or at once leaves a clean address', async ({ page }) => {
  await page.goto('/replace/ceramic-disc-unknown/in/interstage-coupling/?c=22n');
  await expect(field(page, 'c')).toHaveValue(/^22\snF$/);
  await field(page, 'c').fill('');
  await expect(page).toHaveURL(/interstage-coupling\/$/);
  await field(page, 'c').blur();
  await expect(field(page, 'c')).toHaveValue(/^10\snF$/);
  await field(page, 'load').fill('100k');
  await field(page, 'g').selectOption('maker');
  await expect(page).toHaveURL(/load=100k&g=maker$/);
  await page.getByRole('button', { name: 'Back to the usual numbers' }).click();
  await expect(page).toHaveURL(/interstage-coupling\/$/);
  await expect(field(page, 'load')).toHaveValue(/^1\sMΩ$/);
  await expect(field(page, 'g')).toHaveValue('workshop');
  await expect(page.locator('#load-note')).toHaveText('from the old part');
});
