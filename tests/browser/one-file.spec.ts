import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from '@playwright/test';
import { ONE_FILE, SITE } from './site.ts';
import { expect, test } from './watched.ts';

/** The one file for a stick, opened as a file: no server, no network, nothing beside it. */

const FILE = resolve(SITE, ONE_FILE);
const ADDRESS = pathToFileURL(FILE).href;

/** Opens a page of the file afresh. */
const open = async (page: Page, place: string): Promise<void> => {
  await page.goto('about:blank');
  await page.goto(`${ADDRESS}${place}`);
  await isReady(page);
};

/** All 18 MB of it are parsed each time that a page is opened, which a busy machine takes seconds for. */
const isReady = (page: Page): Promise<void> =>
  expect(page.locator('#content')).toHaveAttribute('data-ready', '', { timeout: 30_000 });

test('the page that offers it says its size', async ({ page }) => {
  await page.goto('/offline/');
  const megabytes = (statSync(FILE).size / 1e6).toFixed(1);
  await expect(page.locator('#one-file-size')).toContainText(`${megabytes}\u00a0MB`);
});

test('it asks for nothing outside of itself', () => {
  const html = readFileSync(FILE, 'utf8');
  expect(html).toContain("default-src 'none'");
  expect(html).not.toMatch(/<(script|img|link|iframe)[^>]* (src|href)="(?!#|data:)/);
});

test('its box reads markings and finds pages', async ({ page }) => {
  await open(page, '');
  await page.locator('#box').fill('103M 1KV Z5U');
  await expect(page.locator('#at-once')).toContainText('10\u00a0nF ±20\u00a0% 1\u00a0kV');
  await page.locator('#box').fill('microphonic');
  const hit = page.locator('#pages a').first();
  const title = (await hit.textContent()) ?? '';
  await hit.click();
  await isReady(page);
  await expect(page.locator('h1')).toContainText(title.slice(0, 12));
  await page.goBack();
  await isReady(page);
  await expect(page.locator('#box')).toHaveValue('microphonic');
});

test('its box finds words that stand together in quotation marks', async ({ page }) => {
  await open(page, '');
  await page.locator('#box').fill('"leakage current"');
  await expect(page.locator('#pages li').first()).toContainText(/leakage current/i);
  await page.locator('#box').fill('"current leakage of the moon"');
  await expect(page.locator('#pages li')).toHaveCount(0);
});

for (const { place, shown, text } of [
  { place: '#/read/?m=103M+1KV+Z5U', shown: '#readings', text: '10\u00a0nF ±20\u00a0% 1\u00a0kV' },
  {
    place: '#/read/colours/?s=resistor-4&b=red,red,red,gold',
    shown: '#colour-readings',
    text: '2.2\u00a0kΩ ±5\u00a0%',
  },
  { place: '#/look/?form=domino&finish=moulded&marks=dots', shown: '#answer', text: 'mica' },
  { place: '#/values/?value=4.8u', shown: '#nearest', text: '4.7\u00a0µF' },
  { place: '#/read/printed/?c=10n', shown: '#printed', text: '103' },
]) {
  test(`${place} is answered as on the site`, async ({ page }) => {
    await open(page, place);
    await expect(page.locator(shown)).toContainText(text);
  });
}

test('a pair is reckoned with one’s own numbers, as on the site', async ({ page }) => {
  const path = '/replace/al-electrolytic-wet/in/bulk-rail/';
  await page.goto(`${path}?c=47u&v=16`);
  await expect(page.locator('#answer')).toContainText('16\u00a0V');
  // The answer comes first, the list in a turn after it.
  await expect(page.locator('#results')).not.toHaveAttribute('aria-busy');
  const answer = await page.locator('#answer').textContent();
  const headings = await page.locator('#results h3').allTextContents();
  await open(page, `#${path}`);
  await page.locator('#field-c').fill('47u');
  await page.locator('#field-v').fill('16');
  await expect(page.locator('#answer')).toHaveText(answer ?? '');
  await expect.poll(() => page.locator('#results h3').allTextContents()).toEqual(headings);
  expect(page.url()).toContain('c=47u&v=16');
  await page.locator('main').getByRole('link', { name: 'Cautions' }).click();
  await expect(page.locator('#cautions')).toBeInViewport();
  expect(page.url()).toContain('c=47u&v=16#cautions');
});

test('a page is opened at its top, or where one left it', async ({ page }) => {
  const scrolled = (): Promise<number> => page.evaluate(() => scrollY);
  await open(page, '#/replace/film-unknown/in/bulk-rail/');
  const basis = page.locator('.caution a.basis').filter({ visible: true }).last();
  await basis.scrollIntoViewIfNeeded();
  const left = await scrolled();
  expect(left).toBeGreaterThan(1000);
  await basis.click();
  await expect(page.locator('h1')).not.toContainText('bulk');
  await isReady(page);
  await page.goBack();
  await expect(page.locator('h1')).toContainText('bulk');
  await isReady(page);
  await expect.poll(scrolled).toBe(left);
  await page.locator('main a[href="#/positions/bulk-rail/"]').last().click();
  await expect(page.locator('h1')).toHaveText('Bulk capacitor on a rail');
  await isReady(page);
  expect(await scrolled()).toBe(0);
});

test('a finding leads to where its position says why it is asked', async ({ page }) => {
  await open(page, '#/replace/film-unknown/in/bulk-rail/');
  await page.locator('#results summary').first().click();
  await page.locator('#results .findings th a').nth(5).click();
  await expect(page.locator('h1')).toHaveText('Bulk capacitor on a rail');
  await isReady(page);
  await expect(
    page.locator(`#${new URL(page.url()).hash.split('#').at(-1) ?? ''}`),
  ).toBeInViewport();
  expect(await page.evaluate(() => scrollY)).toBeGreaterThan(500);
});

test('a device is assessed in its place, as on the site', async ({ page }) => {
  await page.goto('/devices/');
  const device =
    (await page.locator('main a[href^="/devices/"]').first().getAttribute('href')) ?? '';
  await page.goto(device);
  const path = (await page.locator('main a[href*="/in/"]').first().getAttribute('href')) ?? '';
  await page.goto(path);
  const answer = await page.locator('#answer').textContent();
  await open(page, `#${path}`);
  await expect(page.locator('#answer')).toHaveText(answer ?? '');
  await expect(page.locator('#results h3').first()).toBeVisible();
});

test('every pair of a type leads to its page', async ({ page }) => {
  await open(page, '#/replace/ceramic-disc-unknown/');
  const places = await page
    .locator('main a[href*="/in/"]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
  expect(places.length).toBeGreaterThan(15);
  for (const place of [places[0], places.at(-1)]) {
    await open(page, place ?? '');
    await expect(page.locator('#results h3').first()).toBeVisible();
  }
});

/** All are worked out by one script from one list, so that a few stand for them. */
const EVERY_FEW = 5;

test('sums are listed and worked out', async ({ page }) => {
  await open(page, '#/sums/');
  const places = await page
    .locator('main a[href^="#/sums/"]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
  const sums = new Set(places.filter((place) => /^#\/sums\/[\w-]+\/$/.test(place)));
  expect(sums.size).toBeGreaterThan(30);
  for (const place of [...sums].filter((_, at) => at % EVERY_FEW === 0)) {
    await open(page, place);
    const before = (await page.locator('#answer').textContent()) ?? '';
    expect.soft(before, place).not.toBe('');
    // Worked out in the browser, an answer is the one that was built.
    await page.evaluate(() => {
      const field = document.querySelector('#sum')?.querySelector('input, select');
      document.querySelector('#answer')?.replaceChildren();
      field?.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await expect.soft(page.locator('#answer'), place).toHaveText(before);
  }
});

test('a job is planned, kept by the browser, and opened again', async ({ page }) => {
  await open(page, '#/job/');
  await page.locator('[data-demo]').first().click();
  await expect(page.locator('#job-title')).not.toHaveValue('');
  const title = await page.locator('#job-title').inputValue();
  await page.locator('#to-plan').click();
  await expect(page.locator('#plan-lines li').first()).toContainText(/replace|test|leave/i);
  await expect(page.locator('#keeping')).toHaveText('Kept in this browser.');
  const saved = page.waitForEvent('download');
  await page.locator('#save-job').click();
  expect((await saved).suggestedFilename()).toMatch(/\.json$/);
  await open(page, '#/job/');
  await expect(page.locator('#job-title')).toHaveValue(title);
});

test('where a file may keep nothing the job stays open, and leaving is asked about', async ({
  page,
  faults,
}) => {
  await page.addInitScript(() => {
    indexedDB.open = () => {
      throw new DOMException('not for files', 'SecurityError');
    };
  });
  await open(page, '#/job/');
  await page.locator('#job-title').pressSequentially('Mixer');
  await expect(page.locator('#job-said')).toContainText('save it as a file');
  await page.locator('.site-nav a').first().click();
  await expect.poll(() => faults.length).toBe(1);
  expect(faults[0]).toContain('dialog');
  await expect(page.locator('#job-title')).toHaveValue('Mixer');
  faults.length = 0;
});

test('what stands in its address is text and nothing else', async ({ page }) => {
  const hostile = encodeURIComponent('"><img src=x onerror=alert(1)><script>alert(1)</script>');
  for (const place of [`#/${hostile}`, `#/read/?m=${hostile}`, `#/?q=${hostile}`]) {
    await open(page, place);
    await expect(page.locator('h1')).toBeVisible();
    await expect(page.locator('main img, main script')).toHaveCount(0);
  }
});

test('what it leaves out it says', async ({ page }) => {
  await open(page, '#/data/');
  await expect(page.locator('h1')).toHaveText('Not in this file');
});

test('a source is named with where it was seen', async ({ page }) => {
  await open(page, '#/replace/ceramic-disc-unknown/in/interstage-coupling/');
  const source = page.locator('#grounds a[href^="#/sources/"]').first();
  const title = (await source.textContent()) ?? '';
  await page.locator('#source-list > summary').click();
  await source.click();
  await isReady(page);
  await expect(page.locator('h1')).toHaveText(title);
});
