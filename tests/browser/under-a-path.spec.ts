import { existsSync, globSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { test as base, expect, type Page } from '@playwright/test';
import { UNDER_A_PATH } from '../../scripts/under-a-path.ts';
import { serveFiles, type FileServer } from './file-server.ts';
import { openWhole } from './open-whole.ts';
import { kindOf, leadsOn, SUBSTITUTION } from './site.ts';

/** The site on a host that gives it a path and not the top of an address. */

const { base: BASE, folder: FOLDER } = UNDER_A_PATH;

const files = globSync('**/*.html', { cwd: FOLDER }).map((file) => file.split(sep).join('/'));
if (files.length === 0)
  throw new Error(`${FOLDER} is empty: run "npm run build:under-a-path" first`);

const test = base.extend<{ host: FileServer; faults: string[] }>({
  host: async ({}, use) => {
    const host = await serveFiles(FOLDER, BASE);
    await use(host);
    await host.stop();
  },
  faults: [
    async ({ context, host }, use) => {
      const faults: string[] = [];
      context.on('weberror', (fault) => faults.push(fault.error().message));
      context.on('response', (response) => {
        const { origin, pathname } = new URL(response.url());
        if (!response.url().startsWith('http')) return;
        if (origin !== host.origin || !pathname.startsWith(BASE))
          faults.push(`asked beside the site: ${response.url()}`);
        else if (response.status() >= 400) faults.push(`missing: ${response.url()}`);
      });
      await use(faults);
      expect(faults).toEqual([]);
    },
    { auto: true },
  ],
});

/** Where a page of the site is there. */
const addressOf = (host: FileServer, path: string): string =>
  `${host.origin}${BASE}${path.slice(1)}`;

const open = (page: Page, host: FileServer, path: string) => page.goto(addressOf(host, path));

test('every address in every page leads to something under the path', () => {
  const beside = new Set<string>();
  for (const file of files) {
    const html = readFileSync(join(FOLDER, file), 'utf8');
    for (const [, link = ''] of html.matchAll(/\s(?:href|src|action)="([^"]*)"/g)) {
      const { origin, pathname } = new URL(
        link.replaceAll('&amp;', '&'),
        `http://here${BASE}${file}`,
      );
      if (origin !== 'http://here') continue;
      const path = decodeURIComponent(pathname.slice(BASE.length)).replace(
        /(^|\/)$/,
        '$1index.html',
      );
      if (!pathname.startsWith(BASE) || !existsSync(join(FOLDER, path)))
        beside.add(`${file} → ${link}`);
    }
  }
  expect(files.length).toBeGreaterThan(3000);
  expect([...beside].slice(0, 20)).toEqual([]);
});

test('a page of each kind finds all it asks for there', async ({ page, host }) => {
  const pages = files
    .filter((file) => file.endsWith('index.html'))
    .map((file) => `/${file.replace(/index\.html$/, '')}`)
    .filter((path) => !leadsOn(readFileSync(join(FOLDER, path, 'index.html'), 'utf8')));
  for (const [path = '/'] of Map.groupBy(pages, kindOf).values()) {
    await open(page, host, path);
    await expect(page.locator('h1'), path).toBeVisible();
  }
});

test('the box reads, and finds pages', async ({ page, host }) => {
  await open(page, host, '/');
  await page.locator('#box').fill('103M 1KV Z5U');
  await expect(page.locator('.reading h3').first()).toContainText(/^10\snF/u);
  // Opened anew: what was searched for the marking may have asked for the further pages already.
  await open(page, host, '/');
  await page.locator('#box').fill('microphonic');
  await page.locator('#pages button').click();
  await expect(page.locator('#pages section')).toHaveCount(2);
  await expect(page.locator('#pages a').last()).toHaveAttribute(
    'href',
    new RegExp(`^${BASE}.*/in/`),
  );
  const found = page.locator('#pages a').first();
  await expect(found).toHaveAttribute('href', new RegExp(`^${BASE}`));
  await found.click();
  await expect(page).toHaveURL(new RegExp(`^${host.origin}${BASE}`));
  await expect(page.locator('h1')).not.toHaveText('No such page');
});

test('a pair is reckoned with one’s own numbers and a demonstration is planned', async ({
  page,
  host,
}) => {
  await open(page, host, SUBSTITUTION);
  await page.locator('input[name="v"]').fill('400');
  await expect(page).toHaveURL(/[?&]v=400/);
  await expect(page.locator('#answer')).toContainText(/fits?|stopgap/u);
  await open(page, host, '/job/');
  await page
    .getByRole('button', { name: /^Demonstration/u })
    .first()
    .click();
  await expect(page.locator('#invented')).toContainText('invented');
});

test.describe('without a network', () => {
  test.use({ serviceWorkers: 'allow' });

  test('what was opened opens again', async ({ page, host }) => {
    await open(page, host, '/types/');
    const scope = await page.evaluate(async () => (await navigator.serviceWorker.ready).scope);
    expect(scope).toBe(`${host.origin}${BASE}`);
    await openWhole(page, addressOf(host, '/types/'));
    await host.stop();
    await open(page, host, '/types/');
    await expect(page.locator('h1')).not.toHaveText('Use without a network');
    await open(page, host, '/sums/');
    await expect(page.locator('h1')).toHaveText('Use without a network');
  });
});
