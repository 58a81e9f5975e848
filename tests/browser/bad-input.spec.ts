import type { Page } from '@playwright/test';
import { SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** What people type that is wrong, odd or hostile. */

const LONG = '9'.repeat(300);
const MARKUP = '<img src=x onerror=alert(1)>';

/** Fields of one page with text that cannot be used there. */
const REFUSED: readonly { key: string; text: string; says: RegExp }[] = [
  { key: 'c', text: 'abc', says: /number/ },
  { key: 'c', text: '10 parsnips', says: /parsnips|unit/ },
  { key: 'c', text: '50 V', says: /capacitance|voltage|farad/i },
  { key: 'c', text: '1e999', says: /large/ },
  { key: 'c', text: '-5', says: /negative|zero|below/ },
  { key: 'c', text: '0', says: /from 0\.1\spF to 10\sF/ },
  { key: 'c', text: LONG, says: /60 characters/ },
  { key: 'c', text: MARKUP, says: /./ },
  { key: 'tol', text: 'abc', says: /tolerance/ },
  { key: 'tol', text: '500 %', says: /below 100\s?% downwards/ },
  { key: 'tol', text: LONG, says: /tolerance|60 characters/ },
  { key: 'v', text: '1e9 V', says: /from 500\smV to 100\skV/ },
  { key: 'v', text: '10 nF', says: /voltage|volt|unit/i },
  { key: 'v', text: '-5', says: /negative|zero|below|from/ },
  { key: 'vdc', text: '1e9 V', says: /from 0\sV to 50\skV/ },
  { key: 'load', text: '0', says: /from 0\.01|from 10\smΩ/ },
  { key: 'load', text: '10 parsnips', says: /parsnips|unit/ },
  { key: 'load', text: MARKUP, says: /./ },
  { key: 't-max', text: '9000', says: /from −20\s°C to 200\s°C/ },
  { key: 'years', text: '1e999', says: /large/ },
];

/** Odd ways of writing that are right. */
const TAKEN: readonly { key: string; text: string; as: RegExp }[] = [
  { key: 'c', text: '4,7n', as: /^4\.7\snF$/ },
  { key: 'c', text: '4.7\u00b5', as: /^4\.7\sµF$/ },
  { key: 'c', text: '4.7\u03bcF', as: /^4\.7\sµF$/ },
  { key: 'c', text: '10 000 pF', as: /^10\snF$/ },
  { key: 'c', text: ' 22n ', as: /^22\snF$/ },
  { key: 'tol', text: '+80 -20', as: /^−20\s%\/\+80\s%$/ },
  { key: 'tol', text: '20/80', as: /^−20\s%\/\+80\s%$/ },
  { key: 'load', text: '47k', as: /^47\skΩ$/ },
  { key: 'load', text: '2M2', as: /^2\.2\sMΩ$/ },
];

/** What the address asks, which follows an answer by a moment. */
const asked = (page: Page, key: string) => () => new URL(page.url()).searchParams.get(key);

const input = (page: Page, key: string) => page.locator(`#field-${key}`);
const note = (page: Page, key: string) => page.locator(`#${key}-note`);
const standIns = (page: Page) => page.locator('#results ol > li');

const short = (text: string): string => (text.length > 40 ? `${text.length} characters` : text);

test('what cannot be used is refused in a sentence, and kept', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  const usual = await standIns(page).count();
  expect(usual).toBeGreaterThan(0);
  for (const { key, text, says } of REFUSED) {
    await test.step(`${key}: ${short(text)}`, async () => {
      const field = input(page, key);
      const usualText = await field.inputValue();
      await field.fill(text);
      await expect.soft(note(page, key)).toHaveClass('fault');
      await expect.soft(note(page, key)).toHaveText(/^[“\p{Lu}].*\.$/su);
      await expect.soft(note(page, key)).toHaveText(says);
      await expect.soft(note(page, key)).toContainText(`Until then ${usualText} counts.`);
      await expect.soft(field).toHaveAttribute('aria-invalid', 'true');
      await field.blur();
      await expect.soft(field).toHaveValue(text);
      await expect.poll(asked(page, key)).toBe(text);
      await expect.soft(standIns(page)).toHaveCount(usual);

      await field.fill('');
      await expect.soft(note(page, key)).not.toHaveClass('fault');
      await expect.soft(field).not.toHaveAttribute('aria-invalid', 'true');
      expect.soft(page.url()).not.toContain('?');
      await field.blur();
      await expect.soft(field).toHaveValue(usualText);
    });
  }
  await expect(page.locator('main img')).toHaveCount(0);
});

test('odd ways of writing are taken', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  for (const { key, text, as } of TAKEN) {
    await test.step(`${key}: ${text}`, async () => {
      await input(page, key).fill(text);
      await expect.soft(note(page, key)).toHaveText('yours');
      await expect.poll(asked(page, key)).toBe(text.trim());
      await input(page, key).blur();
      await expect.soft(input(page, key)).toHaveValue(as);
      await input(page, key).fill('');
    });
  }
});

test('spaces alone are nothing', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  const answer = await page.locator('#answer').textContent();
  await input(page, 'c').fill('   ');
  await input(page, 'c').blur();
  await expect(input(page, 'c')).toHaveValue(/^10\snF$/);
  await expect(page.locator('#answer')).toHaveText(answer ?? '');
  expect(page.url()).not.toContain('?');
});

test('a bad address is answered for the rest of it', async ({ page }) => {
  const query = `c=abc&load=${encodeURIComponent(MARKUP)}&v=100&g=none&nonsense=1&__proto__=2`;
  await page.goto(`${SUBSTITUTION}?${query}#%E0`);
  await expect(note(page, 'c')).toHaveClass('fault');
  await expect(input(page, 'c')).toHaveValue('abc');
  await expect(note(page, 'load')).toHaveClass('fault');
  await expect(input(page, 'load')).toHaveValue(MARKUP);
  await expect(input(page, 'v')).toHaveValue(/^100\sV$/);
  // Half of what is usual for such discs, since many are rated far above their circuit.
  await expect(input(page, 'vdc')).toHaveValue(/^25\sV$/);
  await expect(input(page, 'g')).toHaveValue('workshop');
  await expect(standIns(page)).not.toHaveCount(0);
  await expect(page.locator('main img')).toHaveCount(0);
  await expect.poll(asked(page, 'nonsense')).toBe('1');
});

const ODD_MARKINGS: readonly { text: string; shows: RegExp }[] = [
  { text: '   ', shows: /^$/ },
  { text: 'qqq', shows: /does not read as a marking/ },
  { text: MARKUP, shows: /<img|onerror|img/ },
  { text: '😀\u0000\u202e', shows: /does not read as a marking/ },
  { text: `${LONG}x`, shows: /./ },
  { text: '1e999', shows: /./ },
  { text: '0', shows: /./ },
  { text: '4,7n', shows: /4\.7\snF/ },
  { text: '4.7\u03bcF', shows: /4\.7\sµF/ },
  { text: '10 000 pF', shows: /10\snF/ },
];

test('the reader of markings stands anything', async ({ page }) => {
  for (const { text, shows } of ODD_MARKINGS) {
    await test.step(short(text), async () => {
      await page.goto('/read/');
      await page.locator('#marking').fill(text);
      await expect.soft(page.locator('#readings')).toHaveText(shows);
      await expect.soft(page.locator('#marking')).toHaveValue(text);
      await expect.soft(page.locator('main img')).toHaveCount(0);
      if (text.trim() === '') return;
      await expect.poll(asked(page, 'm')).toBe(text);
      await page.reload();
      await expect.soft(page.locator('#marking')).toHaveValue(text);
      await expect.soft(page.locator('#readings')).toHaveText(shows);
    });
  }
});

test('the box on the first page stands anything', async ({ page }) => {
  await page.goto('/');
  for (const { text, shows } of [
    { text: 'zzqqxx', shows: /Nothing here answers to “zzqqxx”/ },
    { text: MARKUP, shows: /\S/ },
    { text: LONG, shows: /\S/ },
    { text: '10 parsnips', shows: /parsnips/ },
  ]) {
    await test.step(short(text), async () => {
      await page.locator('#box').fill(text);
      await expect
        .poll(async () => (await page.locator('#at-once, #pages').allTextContents()).join(' '))
        .toMatch(shows);
      await expect.soft(page.locator('#box')).toHaveValue(text);
      await expect.soft(page.locator('main img')).toHaveCount(0);
      await expect.poll(asked(page, 'q')).toBe(text);
      await page.locator('#box').fill('473K');
      await expect.soft(page.locator('.reading h3').first()).toContainText(/47\snF/);
    });
  }
});
