import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { htmlOf, leadsOn, pagePaths, SITE } from './site.ts';
import { expect, test } from './watched.ts';

/** What a browser needs to install the site, to ask it from the address bar, and to find back. */

test('every page leads to the manifest and to the description of the search', () => {
  const wanted = [
    /<link rel="manifest" href="[^"]*\/manifest\.webmanifest"/,
    /<link rel="search"[^>]* href="[^"]*\/opensearch\.xml"/,
    /<meta name="referrer" content="same-origin"/,
  ];
  const framed = pagePaths.filter((path) => htmlOf(path).includes('class="masthead"'));
  expect(framed.length).toBeGreaterThan(1000);
  for (const pattern of wanted)
    expect(
      framed.filter((path) => !pattern.test(htmlOf(path))),
      String(pattern),
    ).toEqual([]);
});

test('the manifest names pages and icons that are there', async ({ request }) => {
  const manifest = (await (await request.get('/manifest.webmanifest')).json()) as {
    start_url: string;
    icons: { src: string }[];
    shortcuts: { url: string }[];
  };
  const addresses = [
    manifest.start_url,
    ...manifest.icons.map(({ src }) => src),
    ...manifest.shortcuts.map(({ url }) => url),
  ];
  for (const address of addresses) {
    expect((await request.get(address)).status(), address).toBe(200);
  }
});

test('what the address bar asks is answered', async ({ page, request, baseURL }) => {
  const text = await (await request.get('/opensearch.xml')).text();
  const template = /template="([^"]+)"/.exec(text)?.[1] ?? '';
  const asked = new URL(template.replace('{searchTerms}', 'microphonic'));
  await page.goto(`${baseURL ?? ''}${asked.pathname}${asked.search}`);
  await expect(page.locator('#pages li').first()).toBeVisible();
});

test('a page that is not there asks what was looked for', async ({ page, faults }) => {
  await page.goto('/no/such/page/');
  await page.locator('#box').fill('microphonic');
  await page.locator('#box').press('Enter');
  await expect(page.locator('#pages li').first()).toBeVisible();
  // The browser reports the missing page itself.
  expect(faults.every((fault) => fault.includes('404'))).toBe(true);
  faults.length = 0;
});

test('the data package describes the tables that can be fetched, column by column', async ({
  request,
}) => {
  const { resources } = (await (await request.get('/data/datapackage.json')).json()) as {
    resources: { path: string; schema: { fields: { name: string }[] } }[];
  };
  expect(resources.length).toBeGreaterThan(30);
  for (const { path, schema } of resources) {
    const header = (await (await request.get(`/data/${path}`)).text()).split(/\r?\n/)[0];
    expect(schema.fields.map(({ name }) => name).join(','), path).toBe(header);
  }
});

test('each table has a page, with its columns and what they refer to', async ({
  page,
  request,
}) => {
  await page.goto('/data/');
  const listed = await page
    .locator('tbody th a')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
  const { resources } = (await (await request.get('/data/datapackage.json')).json()) as {
    resources: { path: string; schema: { fields: { name: string }[] } }[];
  };
  expect(listed).toEqual(resources.map(({ path }) => `/data/${path.replace(/\.csv$/, '')}/`));
  for (const [index, { schema }] of resources.entries()) {
    const text = await (await request.get(listed[index] ?? '')).text();
    const columns = [...text.matchAll(/<code>([\w-]+)<\/code>/g)].map(([, name]) => name);
    expect(columns, listed[index]).toEqual(schema.fields.map(({ name }) => name));
  }
  await page.goto('/data/markings/value-forms/');
  await page.getByRole('link', { name: 'sources.csv' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sources');
});

test('programs can read the way to a page, and that the data are a data set', async ({ page }) => {
  for (const path of ['/data/', '/data/figures/']) {
    await page.goto(path);
    const blocks = await page.locator('script[type="application/ld+json"]').allTextContents();
    const types = blocks.map((block) => (JSON.parse(block) as { '@type': string })['@type']);
    expect(types.toSorted()).toEqual(['BreadcrumbList', 'Dataset']);
  }
});

test('changes of the data stand on a page and in a feed', async ({ page, request }) => {
  await page.goto('/changes/');
  const address = await page.locator('link[type="application/atom+xml"]').getAttribute('href');
  const feed = await (await request.get(address ?? '')).text();
  const ids = [...feed.matchAll(/<link href="[^"]*#([\w-]+)"/g)].map(([, id]) => id);
  expect(ids.length).toBeGreaterThan(5);
  for (const id of ids) await expect(page.locator(`#${id ?? ''}`)).toHaveCount(1);
});

test('icons are pictures of the size that the manifest says', async ({ page, request }) => {
  await page.goto('/');
  const { icons } = (await (await request.get('/manifest.webmanifest')).json()) as {
    icons: { src: string; sizes: string; type: string }[];
  };
  for (const { src, sizes } of icons.filter(({ type }) => type === 'image/png')) {
    const size = await page.evaluate(async (address) => {
      const picture = await createImageBitmap(await (await fetch(address)).blob());
      return `${picture.width}x${picture.height}`;
    }, src);
    expect(size, src).toBe(sizes);
  }
});

test('a link to a page of any kind is shown with a picture that is there', () => {
  const sizes = new Set<string>();
  const own: string[] = [];
  for (const path of pagePaths) {
    const html = htmlOf(path);
    if (leadsOn(html)) continue;
    const address = /<meta property="og:image" content="([^"]*)"/.exec(html)?.[1] ?? '';
    const alt = /<meta property="og:image:alt" content="([^"]*)"/.exec(html)?.[1] ?? '';
    const png = readFileSync(join(SITE, new URL(address).pathname));
    sizes.add(`${png.readUInt32BE(16)} × ${png.readUInt32BE(20)}`);
    if (!address.includes('/pictures/')) continue;
    own.push(path);
    expect.soft(alt.length, path).toBeGreaterThan(20);
    expect.soft(png.length, path).toBeLessThan(40_000);
  }
  expect([...sizes]).toEqual(['1200 × 630']);
  // Every answer that somebody may want to show to another has one of its own.
  const answers = pagePaths.filter((path) => /\/in\/[^/]+\/$/.test(path) && !leadsOn(htmlOf(path)));
  expect(answers.length).toBeGreaterThan(1000);
  expect(answers.filter((path) => !own.includes(path))).toEqual([]);
});
