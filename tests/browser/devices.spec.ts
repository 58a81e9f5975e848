import type { Page } from '@playwright/test';
import { broken, dropRepeated, forAxe } from './axe.ts';
import { expect, test } from './watched.ts';

/** Devices by type number: found by their print, judged with a visitor's numbers, led on to sums. */

const HOLD = '/devices/4016b/in/switch-hold/';
const PAGES = [
  '/devices/',
  '/devices/4016b/',
  '/devices/uses/switch-hold/',
  HOLD,
  '/devices/dip-14-dual/',
  '/devices/2n3055/in/transistor-power/',
];

const input = (page: Page, key: string) => page.locator(`#field-${key}`);
const note = (page: Page, key: string) => page.locator(`#${key}-note`);
const first = (page: Page) => page.locator('#results ol > li').first();

test('a printed number leads to the device, the reading as a value folded below', async ({
  page,
}) => {
  await page.goto('/?q=LM741CN');
  const answer = page.locator('#at-once');
  await expect(answer.locator('h2').first()).toHaveText('By type number');
  const value = answer.locator('details', { hasText: 'capacitor or resistor' });
  await expect(value).not.toHaveAttribute('open');
  await value.locator('summary').press('Enter');
  await expect(value.locator('.reading').first()).toBeVisible();
  await answer.getByRole('link', { name: '741', exact: true }).click();
  await expect(page).toHaveURL(/\/devices\/741\/$/);
});

test('the page that reads says a type number first, unless the part is said to be another', async ({
  page,
}) => {
  await page.goto('/read/?m=RC4558P');
  const readings = page.locator('#readings');
  await expect(readings.locator('h2').first()).toHaveText('By type number');
  await expect(readings.locator('details.rival summary').first()).toContainText('unlikely');
  await page.goto('/read/?m=1N33');
  await expect(readings.locator('p').first()).toContainText('may be the type number of a diode');
  await expect(readings).toContainText(/1\.33\snF/);
  await page.goto('/read/?m=RC4558P&kind=capacitor');
  await expect(readings.locator('h2').first()).not.toHaveText('By type number');
});

test('reckons with a visitor’s numbers, which the address keeps', async ({ page }) => {
  await page.goto(HOLD);
  const usual = await first(page).textContent();
  await input(page, 'hold-time').fill('10 s');
  await expect(note(page, 'hold-time')).toHaveText('yours');
  await expect(first(page)).not.toHaveText(usual ?? '');
  await expect.poll(() => new URL(page.url()).searchParams.get('hold-time')).toBe('10 s');
  const mine = await first(page).textContent();
  await page.reload();
  await expect(first(page)).toHaveText(mine ?? '');
  await input(page, 'hold-time').fill('');
  await expect(first(page)).toHaveText(usual ?? '');
});

test('what cannot be used is refused in a sentence, and the usual number holds', async ({
  page,
}) => {
  await page.goto(HOLD);
  const usual = await first(page).textContent();
  for (const [key, text, says] of [
    ['supply', 'abc', /number/],
    ['supply', '10 nF', /voltage|volt|unit/i],
    ['supply', '9999', /from 1\sV to 60\sV/],
    ['hold-time', '-1', /from|zero|negative/],
    ['hold-capacitor', '<img src=x onerror=alert(1)>', /./],
    ['hold-capacitor', '9'.repeat(300), /60 characters/],
  ] as const) {
    await input(page, key).fill(text);
    await expect(note(page, key)).toHaveText(says);
    await expect(note(page, key)).toHaveText(/ Until then .+ counts\.$/);
    await expect(input(page, key)).toHaveAttribute('aria-invalid', 'true');
    await expect(first(page)).toHaveText(usual ?? '');
    await input(page, key).fill('');
  }
});

test('a number is written out as it was understood, and the usual ones come back', async ({
  page,
}) => {
  await page.goto(HOLD);
  const usual = await input(page, 'hold-time').inputValue();
  await input(page, 'hold-time').fill('0.25 s');
  await input(page, 'hold-time').blur();
  await expect(input(page, 'hold-time')).toHaveValue(/^250\sms$/);
  await input(page, 'supply').fill('');
  await input(page, 'supply').blur();
  await expect(input(page, 'supply')).toHaveValue(/^\d+\sV$/);
  await page.getByRole('button', { name: 'Back to the usual numbers' }).click();
  await expect(input(page, 'hold-time')).toHaveValue(usual);
  await expect(note(page, 'hold-time')).toHaveText('usual');
  await expect(page).toHaveURL(new RegExp(`${HOLD}$`));
});

test('a link with one’s own numbers is copied', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`${HOLD}?hold-time=10+s`);
  await page.locator('#copy-link').click();
  await expect(page.locator('#copied')).toHaveText('Copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(page.url());
});

test('a finding leads to its sum with its numbers, and the sum back to the use', async ({
  page,
}) => {
  await page.goto(HOLD);
  const standIn = first(page);
  await standIn.locator('details > summary').press('Enter');
  const step = standIn.locator('a[href*="/sums/hold-step/"]');
  await expect(step).toHaveAttribute('href', /\?q=.+&c=10n/);
  await step.click();
  await expect(page.locator('#sum [name="c"]')).toHaveValue(/^10\s?n/);
  await expect(page.locator('#answer')).toContainText('V');
  await page.locator('main a[href="/devices/uses/switch-hold/"]').click();
  await expect(page).toHaveURL(/\/devices\/uses\/switch-hold\/$/);
});

for (const path of PAGES)
  test(`${path} keeps within a narrow screen and is reached by keyboard`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 700 });
    await page.goto(path);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
    await page.keyboard.press('Tab');
    await expect(page.locator(':focus')).toBeVisible();
  });

test.describe('axe', () => {
  test.use(forAxe);
  test.describe.configure({ timeout: 90_000 });
  for (const path of [
    '/devices/dip-14-dual/',
    '/devices/2n3055/in/transistor-power/',
    '/read/?m=LM741CN',
  ])
    test(`${path} breaks no rule`, async ({ page }) => {
      await page.goto(path);
      if (path.includes('?')) await expect(page.locator('#readings h2').first()).toBeVisible();
      await dropRepeated(page);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        expect.soft(await broken(page, colorScheme === 'dark'), colorScheme).toEqual([]);
      }
    });
});
