import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { test as base, expect, type Page } from '@playwright/test';
import {
  HASH_DIGITS,
  LISTS,
  listOf,
  type FileHashes,
  type Lists,
} from '../../src/offline/lists.ts';
import { serveFiles, type FileServer } from './file-server.ts';
import { openWhole } from './open-whole.ts';
import { SITE, SUBSTITUTION } from './site.ts';

/** The site without a network: what was visited, all of it when asked, and updates that may fail. */

const test = base.extend<{ host: FileServer }>({
  host: async ({}, use) => {
    const host = await serveFiles();
    await use(host);
    await host.stop();
  },
});

test.use({ serviceWorkers: 'allow' });

const built = (path: string): string => readFileSync(join(SITE, path), 'utf8');
const hashOf = (text: string): string =>
  createHash('sha256').update(text).digest('hex').slice(0, HASH_DIGITS);
const integrityOf = (text: string): string =>
  `sha256-${createHash('sha256').update(text).digest('base64')}`;

const CACHES_AN_EDITION = 2;

const isKept = (page: Page, path: string): Promise<boolean> =>
  page.evaluate(
    async (asked) =>
      (await caches.match(new URL(asked, location.href), { ignoreSearch: true })) !== undefined,
    path,
  );

const visit = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  await expect.poll(() => isKept(page, new URL(address).pathname), { timeout: 30_000 }).toBe(true);
};

/** The worker with other texts in the place of those that it was built to keep. */
const workerWith = (others: readonly (readonly [built: string, other: string])[]): string =>
  others.reduce(
    (worker, [was, is]) =>
      worker.replace(hashOf(was), hashOf(is)).replace(integrityOf(was), integrityOf(is)),
    built('sw.js'),
  );

const listed = (name: string): FileHashes => JSON.parse(built(listOf(name))) as FileHashes;

/** A word that is searched for without a network, and what all its forms begin with. */
const SOUGHT = { word: 'microphonic', stem: 'microphon' };

/** Whether a search for that word needs a file: of what shows a page only where it is in the page. */
const isForSearch = (path: string): boolean =>
  path.startsWith('pagefind/') &&
  (!path.includes('/fragment/') ||
    gunzipSync(readFileSync(join(SITE, path)))
      .toString()
      .toLowerCase()
      .includes(SOUGHT.stem));

/** Sections with files by the hundred, each like the next, are thinned out to every so many. */
const LONG = /^(?:replace-|data$|devices$|sources$|read$|pagefind$)/;
const EVERY = 25;

/** Puts out an edition that lists only some of the files of its long sections. */
const publishFewer = (host: FileServer): void => {
  const lists = JSON.parse(built(LISTS)) as Lists;
  const texts = lists.sections.map(({ name }) => {
    const files = Object.entries(listed(name));
    const some = files.filter(
      ([path], at) => !LONG.test(name) || at % EVERY === 0 || isForSearch(path),
    );
    return { name, text: JSON.stringify(Object.fromEntries(some)), files: some.length };
  });
  const listsText = JSON.stringify({
    ...lists,
    files: texts.reduce((sum, { files }) => sum + files, 0),
    sections: texts.map(({ name, text }) => ({ name, hash: hashOf(text) })),
  });
  for (const { name, text } of texts) host.instead.set(listOf(name), text);
  host.instead.set(LISTS, listsText);
  host.instead.set('sw.js', workerWith([[built(LISTS), listsText]]));
};

/** Puts out an edition in which the first page says something else; nothing else changes. */
const publish = (host: FileServer, words: string, served = words): void => {
  const changed = (text: string): string => built('index.html').replace('What it does', text);
  const lists = JSON.parse(built(LISTS)) as Lists;
  const top = JSON.parse(built('offline/top.json')) as Record<string, string>;
  const topText = JSON.stringify({ ...top, '': hashOf(changed(words)) });
  const sections = lists.sections.map((one) =>
    one.name === 'top' ? { name: 'top', hash: hashOf(topText) } : one,
  );
  const listsText = JSON.stringify({ ...lists, sections });
  host.instead.set('index.html', changed(served));
  host.instead.set('offline/top.json', topText);
  host.instead.set(LISTS, listsText);
  host.instead.set(
    'sw.js',
    workerWith([
      [built('index.html'), changed(words)],
      [built(LISTS), listsText],
    ]),
  );
};

const lookForUpdate = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const found = new Promise<string>((resolve) => {
      registration.addEventListener('updatefound', () => {
        const coming = registration.installing;
        coming?.addEventListener('statechange', () => {
          if (coming.state !== 'installing') resolve(coming.state);
        });
      });
    });
    await registration.update();
    return found;
  });

test('a page that was opened opens again without a network, whatever its query', async ({
  page,
  host,
}) => {
  await visit(page, `${host.origin}${SUBSTITUTION}`);
  await host.stop();
  await page.goto(`${host.origin}${SUBSTITUTION}?v=100`);
  await expect(page.locator('h1')).toContainText('Ceramic disc');
  await page.goto(`${host.origin}/types/`);
  await expect(page.locator('h1')).toHaveText('Use without a network');
});

test('an address without its last slash leads to the page that is kept, with what it asks', async ({
  page,
  host,
}) => {
  await visit(page, `${host.origin}${SUBSTITUTION}`);
  await host.stop();
  await page.goto(`${host.origin}${SUBSTITUTION.replace(/\/$/, '')}?v=100`);
  expect(new URL(page.url()).pathname).toBe(SUBSTITUTION);
  expect(new URL(page.url()).searchParams.get('v')).toBe('100');
  await expect(page.locator('h1')).toContainText('Ceramic disc');
});

test('what another copy of the site keeps on the same host answers nothing here', async ({
  page,
  host,
}) => {
  await visit(page, `${host.origin}${SUBSTITUTION}`);
  await page.evaluate(async (address) => {
    const other = await caches.open('understudy-/another/-pages-edition');
    await other.put(address, new Response('of another copy'));
  }, `${host.origin}/positions/`);
  await host.stop();
  await page.goto(`${host.origin}/positions`);
  expect(new URL(page.url()).pathname).toBe('/positions');
  await expect(page.locator('h1')).toHaveText('Use without a network');
});

test('what is missing is not kept', async ({ page, host }) => {
  await visit(page, `${host.origin}/`);
  await openWhole(page, `${host.origin}/no/such/page/`);
  await expect(page.locator('h1')).toHaveText('No such page');
  expect(await isKept(page, '/no/such/page/')).toBe(false);
});

test('every file is listed with its hash', () => {
  const { sections, files } = JSON.parse(built(LISTS)) as Lists;
  let count = 0;
  for (const { name, hash } of sections) {
    expect(hashOf(built(listOf(name))), name).toBe(hash);
    for (const [path, listedHash] of Object.entries(listed(name))) {
      const content = readFileSync(join(SITE, path.replace(/(^|\/)$/, '$1index.html')));
      const digest = createHash('sha256').update(content).digest('hex').slice(0, HASH_DIGITS);
      if (digest !== listedHash) expect.soft(digest, path).toBe(listedHash);
      count += 1;
    }
  }
  expect(count).toBe(files);
});

test('once all is saved every page and the search work without a network', async ({
  page,
  host,
}) => {
  test.setTimeout(240_000);
  // A browser takes minutes to keep all ten thousand, and does the same with each of them.
  publishFewer(host);
  await visit(page, `${host.origin}/offline/`);
  await expect(page.locator('#save-all')).toContainText(/\d+\u00a0MB/);
  await page.locator('#save-all').click();
  await expect(page.locator('#saving')).toContainText('of', { timeout: 30_000 });
  await expect(page.locator('#saving')).toContainText('All', { timeout: 200_000 });
  await host.stop();
  for (const path of ['/types/', '/sums/', '/replace/ceramic-disc-unknown/', '/data/']) {
    await page.goto(`${host.origin}${path}`);
    await expect(page.locator('h1'), path).not.toHaveText('Use without a network');
  }
  await page.goto(`${host.origin}/?q=${SOUGHT.word}`);
  await expect(page.locator('#pages li').first()).toBeVisible();
  await page.locator('#pages button').click();
  await expect(page.locator('#pages section')).toHaveCount(2);
});

test('an update is offered and comes only when asked for', async ({ page, host }) => {
  await visit(page, `${host.origin}/`);
  publish(host, 'What is new');
  expect(await lookForUpdate(page)).toBe('installed');
  await expect(page.locator('#update')).toBeVisible();
  await page.goto(`${host.origin}/`);
  await expect(page.locator('#what')).toHaveText('What it does');
  await page.locator('#update button').click();
  await expect(page.locator('#what')).toHaveText('What is new');
});

test('no update is offered over a job that is open', async ({ page, host }) => {
  await visit(page, `${host.origin}/job/`);
  await page.locator('[data-demo]').first().click();
  await expect(page.locator('#job-title')).not.toHaveValue('');
  publish(host, 'What is new');
  expect(await lookForUpdate(page)).toBe('installed');
  await expect(page.locator('#update')).toBeHidden();
  await page.goto(`${host.origin}/types/`);
  await expect(page.locator('#update')).toBeVisible();
});

test('where the link is metered all is fetched only after a question', async ({ page, host }) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'connection', { value: { saveData: true } });
  });
  await visit(page, `${host.origin}/offline/`);
  const answers = [false, true];
  const questions: string[] = [];
  page.on('dialog', async (dialog) => {
    questions.push(dialog.message());
    await (answers.shift() === true ? dialog.accept() : dialog.dismiss());
  });
  await page.locator('#save-all').click();
  await expect(page.locator('#save-all')).toBeEnabled();
  await expect(page.locator('#saving')).toHaveText(/^\d+ files\.$/);
  await page.locator('#save-all').click();
  await expect(page.locator('#saving')).toContainText('of', { timeout: 30_000 });
  expect(questions).toEqual([
    expect.stringMatching(/metered.*\d+\u00a0MB/),
    expect.stringMatching(/metered.*\d+\u00a0MB/),
  ]);
});

test('a half-finished update leaves the old edition whole', async ({ page, host }) => {
  await visit(page, `${host.origin}/`);
  publish(host, 'What is new', 'What is neither');
  expect(await lookForUpdate(page)).toBe('redundant');
  await page.goto(`${host.origin}/`);
  await expect(page.locator('#what')).toHaveText('What it does');
  await expect(page.locator('#update')).toBeHidden();
  await host.stop();
  await page.goto(`${host.origin}/`);
  await expect(page.locator('#what')).toHaveText('What it does');
});

test('the way out takes the worker and all that was kept away', async ({ page, host }) => {
  await visit(page, `${host.origin}/`);
  host.instead.set('sw.js', built('sw-stop.js'));
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await expect.poll(() => page.evaluate(() => caches.keys())).toEqual([]);
  const left = await page.evaluate(async () => await navigator.serviceWorker.getRegistrations());
  expect(left).toHaveLength(0);
});

test('a page that was open goes on with the files of its edition after another took the update', async ({
  page,
  context,
  host,
}) => {
  await visit(page, `${host.origin}/`);
  const other = await context.newPage();
  await visit(other, `${host.origin}/types/`);
  publish(host, 'What is new');
  expect(await lookForUpdate(page)).toBe('installed');
  await page.locator('#update button').click();
  await expect(page.locator('#what')).toHaveText('What is new');
  const asIn = (one: Page): Promise<string> => one.evaluate(async () => (await fetch('/')).text());
  expect(await asIn(page)).toContain('What is new');
  expect(await asIn(other)).toContain('What it does');
  await other.reload();
  await expect.poll(() => other.evaluate(() => caches.keys())).toHaveLength(CACHES_AN_EDITION);
  expect(await asIn(other)).toContain('What is new');
});

test('what a page still offers after another took the update loads that page with it', async ({
  page,
  context,
  host,
}) => {
  await visit(page, `${host.origin}/types/`);
  const other = await context.newPage();
  await visit(other, `${host.origin}/`);
  publish(host, 'What is new');
  expect(await lookForUpdate(page)).toBe('installed');
  await expect(other.locator('#update')).toBeVisible();
  await Promise.all([page.waitForEvent('load'), page.locator('#update button').click()]);
  await expect(other.locator('#what')).toHaveText('What it does');
  await other.locator('#update button').click();
  await expect(other.locator('#what')).toHaveText('What is new');
});

test('kept pages are deleted when asked, all but what every page needs', async ({ page, host }) => {
  await visit(page, `${host.origin}${SUBSTITUTION}`);
  await page.goto(`${host.origin}/offline/`);
  await page.getByRole('button', { name: 'Delete the kept pages' }).click();
  await expect(page.locator('#saving')).toContainText('were let go');
  expect(await isKept(page, SUBSTITUTION)).toBe(false);
  expect(await isKept(page, '/')).toBe(true);
});
