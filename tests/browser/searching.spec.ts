import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { MOST_BYTES, QUESTIONS } from '../../scripts/weight/first-search.ts';
import { FURTHER, INDEX, SEARCHER } from '../../src/search/word-index.ts';
import { htmlOf, leadsOn, pagePaths, SITE } from './site.ts';
import { expect, test } from './watched.ts';

/** Looking for pages by words: two indexes, the second of which is fetched when it is wanted. */

const FIRST_FOLDER = join(SITE, INDEX);
const FURTHER_FOLDER = join(FIRST_FOLDER, FURTHER);
/** Written before what the library packs. */
const MARK = 'pagefind_dcd';

/** Text of a page, or of several by their names. */
type Fragment = { url: string } | Record<string, { url: string }>;

/** Addresses of the pages that an index has. */
const indexed = (folder: string): string[] =>
  globSync('fragment/*', { cwd: folder }).flatMap((name) => {
    const text = gunzipSync(readFileSync(join(folder, name))).toString();
    const fragment = JSON.parse(text.slice(MARK.length)) as Fragment;
    return typeof fragment.url === 'string'
      ? fragment.url
      : Object.values(fragment).map((one) => (one as { url: string }).url);
  });

/** Bytes of a file on the way; those of the index are packed already. */
const sentBytes = (path: string): number => {
  const content = readFileSync(join(SITE, path));
  return /\.(js|json)$/.test(path) ? gzipSync(content).length : content.length;
};

/** Notes what of the indexes a page asks for. */
const asking = (page: Page): string[] => {
  const asked: string[] = [];
  page.context().on('request', (request) => {
    const { pathname } = new URL(request.url());
    if (pathname.startsWith(INDEX)) asked.push(pathname);
  });
  return asked;
};

const hits = (page: Page) => page.locator('#pages li a');
const more = (page: Page) => page.locator('#pages button');

test('every page is in one of the indexes, and in one only', () => {
  const found = [...indexed(FIRST_FOLDER), ...indexed(FURTHER_FOLDER)].toSorted();
  const listed = pagePaths.filter((path) => {
    const html = htmlOf(path);
    return !leadsOn(html) && !html.includes('content="noindex"');
  });
  expect(found).toEqual(listed.toSorted());
});

/** Where some of the questions have to lead. */
const LEADS = new Map([
  ['tantalum decoupling', '/positions/local-decoupling/'],
  ['paper oil leakage', '/types/paper-oil/'],
  ['ripple current', '/sums/ripple-current/'],
  ['what replaces a wax paper capacitor', '/replace/paper-wax/'],
  ['dielectric absorption', '/compare/dielectric-absorption/'],
  // What one hears first, by which the places that make it are found.
  ['hum in the output', '/positions/reservoir/'],
  ['control scratches', '/positions/tone-stack/'],
  ['thin bass', '/positions/output-coupling/'],
  ['4066', '/devices/4066b/'],
  ['TL072', '/devices/tl072/'],
]);

for (const words of QUESTIONS) {
  const path = LEADS.get(words);
  const leads = path === undefined ? '' : `, and leads to ${path}`;
  test(`a first search for ${words} fetches what it may${leads}`, async ({ page }) => {
    const asked = asking(page);
    await page.goto('/');
    await page.locator('#box').fill(words);
    await expect(hits(page).first()).toBeVisible();
    await expect(more(page)).toBeVisible();
    if (path !== undefined) await expect(page.locator(`#pages li a[href="${path}"]`)).toBeVisible();
    expect(asked).toContain(`${INDEX}${SEARCHER}`);
    expect(asked.filter((name) => name.endsWith('.pagefind'))).toHaveLength(1);
    expect(asked.filter((name) => name.endsWith('.pf_index')).length).toBeGreaterThan(0);
    expect(asked.filter((name) => name.endsWith('.pf_fragment')).length).toBeGreaterThan(2);
    expect(asked.filter((name) => name.startsWith(`${INDEX}${FURTHER}`))).toEqual([]);
    const bytes = asked.reduce((sum, name) => sum + sentBytes(name), 0);
    expect(bytes).toBeLessThanOrEqual(MOST_BYTES);
  });
}

test('each question that has to lead somewhere is asked', () => {
  expect([...LEADS.keys()].filter((words) => !QUESTIONS.includes(words))).toEqual([]);
});

test('the keyboard searches on, and stands on what that finds', async ({ page }) => {
  const asked = asking(page);
  await page.goto('/?q=tantalum+decoupling');
  await expect(more(page)).toBeVisible();
  const count = await hits(page).count();
  await more(page).focus();
  await page.keyboard.press('Enter');
  const pair = '/replace/ta-mno2-solid/in/local-decoupling/';
  await expect(page.locator('#pages section')).toHaveCount(2);
  await expect(hits(page).nth(count)).toBeFocused();
  await expect(page.locator(`#pages li a[href="${pair}"]`)).toBeVisible();
  await expect(more(page)).toHaveCount(0);
  // What searches is there already.
  expect(asked.filter((path) => path.endsWith('.pagefind'))).toHaveLength(1);
  expect(new Set(asked).size).toBe(asked.length);
  // It stays so for the next words.
  await page.locator('#box').fill('microphonic');
  await expect(page.locator('#pages section')).toHaveCount(2);
  await expect(hits(page).first()).toHaveAttribute('href', '/compare/piezoelectric/');
});

test('what the first index hardly knows is looked for in the other by itself', async ({ page }) => {
  await page.goto('/?q=IEC+60062');
  await expect(page.locator('#pages li a[href="/sources/iec-60062/"]')).toBeVisible();
});

test('beside a marking that is surely read the other is only offered', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto('/?q=473K+400V');
  await expect(page.locator('#at-once')).toContainText('47 nF');
  await expect(more(page)).toBeVisible();
  expect(asked.filter((path) => path.includes(`${INDEX}${FURTHER}`))).toEqual([]);
});

test('whether one part may stand in for another is answered, and leads to where it is judged', async ({
  page,
}) => {
  await page.goto('/');
  await page.locator('#box').fill('electrolytic');
  await expect(page.locator('#pages li').first()).toBeVisible();
  await page.locator('#box').fill('100u 40V electrolytic for 80u 25V electrolytic');
  const answer = page.locator('#at-once');
  await expect(answer).toContainText(/Rated voltage: 40\sV for 25\sV, 60\s% more/u);
  // Pages with the same words would only lead astray.
  await expect(page.locator('#pages')).toBeEmpty();
  await answer.getByRole('link', { name: 'Bulk capacitor on a rail' }).click();
  const having = page.locator('#have-part');
  await expect(having).toContainText(/100\sµF.*40\sV/u);
  await expect(having).toBeInViewport();
});

test('what neither index knows is said', async ({ page }) => {
  await page.goto('/?q=zzyzx');
  await expect(page.locator('#at-once')).toHaveText(/^Nothing here answers to/);
  await page.locator('#box').fill('datasheet');
  await expect(hits(page).first()).toBeVisible();
});

test('without the further index what the first has stays', async ({ page, context, faults }) => {
  await context.route(`**${INDEX}${FURTHER}**`, (route) => route.abort());
  await page.goto('/?q=tantalum+decoupling');
  await more(page).click();
  await expect(more(page)).toHaveText(/could not be fetched/);
  await expect(hits(page).first()).toBeVisible();
  await page.locator('#box').fill('reservoir inrush rectifier');
  await expect(hits(page).first()).toHaveAttribute('href', '/positions/inrush-limiter/');
  await context.unroute(`**${INDEX}${FURTHER}**`);
  await page.locator('#box').fill('iec 60062');
  await expect(page.locator('#pages li a[href="/sources/iec-60062/"]')).toBeVisible();
  // The browser reports by itself what it could not fetch.
  faults.length = 0;
});
