import type { Browser, Page } from '@playwright/test';
import { SUBSTITUTION } from './site.ts';
import { expect, test, watch } from './watched.ts';

/** Asking a substitution page about a part that one has. */

const MARKUP = '<img src=x onerror=alert(1)>';

const field = (page: Page, key: string) => page.locator(`#field-${key}`);
const note = (page: Page, key: string) => page.locator(`#${key}-note`);
const answer = (page: Page) => page.locator('#have-part');
const query = (page: Page, key: string) => new URL(page.url()).searchParams.get(key);

const open = async (page: Page): Promise<void> => {
  await page.goto(SUBSTITUTION);
  await page.locator('#have > summary').click();
  await expect(field(page, 'have')).toBeVisible();
};

/** What a page shows at an address, in a browser that has never been there. */
const seenElsewhere = async (browser: Browser, link: string): Promise<string> => {
  const faults: string[] = [];
  const context = await browser.newContext();
  await watch(context, new URL(link).origin, faults);
  const page = await context.newPage();
  await page.goto(link);
  await expect(answer(page).locator('table')).toBeVisible();
  const text = (await answer(page).textContent()) ?? '';
  await context.close();
  expect(faults).toEqual([]);
  return text;
};

test('any part is answered for, and a copied link shows it', async ({ page, browser }) => {
  await open(page);
  await field(page, 'have').selectOption({ label: 'Metallized polycarbonate film' });
  await expect(answer(page).locator('h3')).toHaveText(/keep out\s+Metallized polycarbonate film/);
  await expect(answer(page)).toContainText('not made in this value and voltage');
  await expect(answer(page)).toContainText('A sound one');
  await expect(page.locator('#having-said')).toHaveText('Metallized polycarbonate film: keep out');
  await expect(note(page, 'have-c')).toHaveText(/^taken as 10\snF$/);
  await field(page, 'have-c').fill('12n');
  await field(page, 'have-v').fill('63 V');
  await expect(answer(page).locator('strong').first()).toHaveText(/^12\snF ±\d+\s% 63\sV$/);
  await expect.poll(() => query(page, 'have')).toBe('pc-metallized');
  await expect.poll(() => query(page, 'have-c')).toBe('12n');
  await expect.poll(() => query(page, 'have-v')).toBe('63 V');

  const rows = answer(page).locator('tbody tr');
  const count = Number(/\d+/.exec(await answer(page).locator('summary').innerText())?.[0]);
  expect(count).toBeGreaterThan(10);
  expect(await rows.count()).toBeGreaterThan(count);

  const own = await answer(page).textContent();
  expect(await seenElsewhere(browser, page.url())).toBe(own);
  await page.reload();
  await expect(answer(page)).toHaveText(own ?? '');
  await expect(field(page, 'have-c')).toHaveValue('12n');
});

test('the circuit’s numbers count for it as well', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?have=al-electrolytic-wet`);
  const before = await answer(page).textContent();
  await page.locator('#field-load').fill('10k');
  await expect(answer(page)).not.toHaveText(before ?? '');
  await expect.poll(() => query(page, 'have')).toBe('al-electrolytic-wet');
});

for (const { type, says } of [
  { type: 'film-x2', says: /275\sV AC|305\sV AC/ },
  { type: 'paper-x-safety', says: /Not from old stock either\. The case cracks/ },
  { type: 'paper-wax', says: /Not from old stock either\. Paper takes up moisture/ },
  { type: 'ceramic-disc-unknown', says: /Worse than the first/ },
  { type: 'pp-motor-run', says: /Worse than the first/ },
  { type: 'ceramic-c0g', says: /the first/ },
]) {
  test(`${type} is answered for in one sentence against the best`, async ({ page }) => {
    await page.goto(`${SUBSTITUTION}?have=${type}`);
    await expect(answer(page)).toContainText(says);
    await expect(answer(page)).toContainText(/the first/);
    await expect(answer(page).locator('table')).toBeVisible();
  });
}

test('what cannot be used is refused beside its field, and kept', async ({ page }) => {
  await open(page);
  await field(page, 'have-c').fill('10n');
  await expect(note(page, 'have')).toHaveText('Please say of what type it is.');
  await field(page, 'have-c').fill('');
  await field(page, 'have').selectOption('pc-metallized');
  for (const { key, text, says } of [
    { key: 'have-c', text: '12q', says: /unit/ },
    { key: 'have-c', text: '50 V', says: /voltage|capacitance/ },
    { key: 'have-c', text: '9'.repeat(300), says: /60 characters/ },
    { key: 'have-tol', text: 'abc', says: /tolerance/ },
    { key: 'have-v', text: '-5', says: /negative|zero|below|from/ },
    { key: 'have-v', text: MARKUP, says: /./ },
  ]) {
    await field(page, key).fill(text);
    await expect.soft(note(page, key)).toHaveClass('fault');
    await expect.soft(note(page, key)).toHaveText(says);
    await expect.soft(note(page, key)).toHaveText(/ Until then .* counts\.$/);
    await expect.soft(field(page, key)).toHaveAttribute('aria-invalid', 'true');
    await field(page, key).blur();
    await expect.soft(field(page, key)).toHaveValue(text);
    await expect.poll(() => query(page, key)).toBe(text);
    await expect.soft(answer(page).locator('table')).toBeVisible();
    await field(page, key).fill('');
    await expect.soft(note(page, key)).toHaveText(/^taken as /);
  }
  await expect(page.locator('main img')).toHaveCount(0);
});

test('a bad address is answered for the rest of it', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?have=unobtainium&have-c=abc&have-v=63`);
  await expect(note(page, 'have')).toHaveText('There is no such type here; please choose one.');
  await expect(field(page, 'have')).toHaveValue('');
  await expect(field(page, 'have-c')).toHaveValue('abc');
  await expect(note(page, 'have-c')).toHaveClass('fault');
  await expect(answer(page)).toHaveCount(0);
  await field(page, 'have').selectOption('pp-metallized');
  await expect(answer(page)).toContainText(/63\sV/);
});

test('the keyboard asks and answers', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  await page.locator('#have > summary').focus();
  await page.keyboard.press('Enter');
  await expect(field(page, 'have')).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(field(page, 'have')).toBeFocused();
  await page.keyboard.type('Glass');
  await expect(answer(page).locator('h3')).toContainText('Glass dielectric');
  await expect(field(page, 'have')).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.type('22n');
  await expect(answer(page).locator('strong').first()).toHaveText(/^22\snF/);
  await expect(field(page, 'have-c')).toBeFocused();
});

test('kept-out parts open to all their findings', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  const kept = page.locator('#results ul > li').first();
  const summary = kept.locator('summary');
  const count = Number(/\d+/.exec(await summary.innerText())?.[0]);
  await expect(kept.locator('table')).toHaveCount(0);
  await summary.click();
  await expect(kept.locator('table')).toBeVisible();
  await expect(summary).toBeVisible();
  const named = await kept.locator('tbody a[href^="/positions/"]').count();
  expect(named).toBe(count);
});

test('the numbers of the form go back without those of the part', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?load=47k&have=glass&reads=8n`);
  await expect(answer(page)).toBeVisible();
  await page.getByRole('button', { name: 'Back to the usual numbers' }).click();
  await expect(page).toHaveURL(/\?have=glass&reads=8n$/);
  await expect(answer(page)).toBeVisible();
});

test('what is folded stays folded, and follows the numbers once it is opened again', async ({
  page,
}) => {
  await page.goto(`${SUBSTITUTION}?have=al-electrolytic-wet&compare=pp-film-foil,have`);
  const [summary, compared] = [page.locator('#have > summary'), page.locator('#comparison table')];
  await expect(answer(page).locator('table')).toBeVisible();
  await expect(compared).toBeVisible();
  const before = await answer(page).textContent();
  const beside = await compared.textContent();
  await summary.click();
  await page.locator('#compare > summary').click();
  await page.locator('#field-load').fill('10k');
  await expect(page.locator('#load-note')).toHaveText('yours');
  await expect(page.locator('#results')).not.toHaveAttribute('aria-busy');
  await expect(answer(page)).toBeHidden();
  await expect(compared).toBeHidden();
  await summary.click();
  await expect(answer(page).locator('table')).toBeVisible();
  await expect(answer(page)).not.toHaveText(before ?? '');
  await page.locator('#compare > summary').click();
  await expect(compared).not.toHaveText(beside ?? '');
});
