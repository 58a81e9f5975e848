import { existsSync } from 'node:fs';
import { chromium, type BrowserContext, type Page } from '@playwright/test';
import { findBrowser } from '../browser.ts';
import { SITE } from '../site-folder.ts';
import { median, quantile, RUNS, show, type Row } from './measuring.ts';
import { servePacked } from './packed-site.ts';
import { PHONE, throttledPage } from './throttled.ts';

/** What somebody with a slow phone waits for: the built site in Chromium, throttled. */

const MOST_MS = { painted: 1000, reckoned: 16 };
const EDITS = 40;
const FIRST_EDITS = 5;
const NINETEEN_OF_TWENTY = 0.95;

/** A page with the field that is edited and the places that show what comes of it. */
interface Looked {
  name: string;
  path: string;
  edit?: {
    field: string;
    /** What answers first. */
    answer: string;
    /** What is busy until all that follows from the edit stands in the page. */
    whole: string;
    texts: readonly [string, string];
  };
}

const LOOKED: readonly Looked[] = [
  {
    name: 'home',
    path: '/',
    edit: { field: '#box', answer: '#at-once', whole: '#at-once', texts: ['103K', '473J'] },
  },
  {
    name: 'a pair',
    path: '/replace/ceramic-disc-unknown/in/interstage-coupling/',
    edit: { field: '#field-c', answer: '#answer', whole: '#results', texts: ['22 nF', '47 nF'] },
  },
  { name: 'a type', path: '/types/ceramic-disc-unknown/' },
  { name: 'a table', path: '/read/class2-codes/' },
  {
    name: 'a sum',
    path: '/sums/rc-timing/',
    edit: { field: '#field-c', answer: '#answer', whole: '#result', texts: ['22 nF', '47 nF'] },
  },
  { name: 'a job', path: '/job/' },
];

/** When the largest piece was painted, ms after the address was asked for. */
const painted = async (page: Page, address: string): Promise<number> => {
  await page.goto(address, { waitUntil: 'load' });
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => {
          resolve(list.getEntries().at(-1)?.startTime ?? NaN);
        }).observe({ type: 'largest-contentful-paint', buffered: true });
      }),
  );
};

/** How long after an edit its answer stands in the page, and all that follows from it, ms. */
interface Reckoned {
  answered: number;
  whole: number;
}

/** Times from edits to what comes of them. */
const reckoned = async (page: Page, edit: NonNullable<Looked['edit']>): Promise<Reckoned[]> => {
  // On a phone numbers are folded below this line; who edits one has opened them.
  const folded = page.locator('.assumed:not([open]) > summary');
  if ((await folded.count()) > 0) await folded.click();
  // What reckons is fetched at the first edit, which counts for none.
  await page.locator(edit.field).fill(edit.texts[1]);
  await page.waitForLoadState('networkidle');
  const times = await page.evaluate(
    async ({ field, answer: answers, whole: all, texts, edits }) => {
      const input = document.querySelector<HTMLInputElement>(field);
      const [answer, whole] = [document.querySelector(answers), document.querySelector(all)];
      if (input === null || answer === null || whole === null) return [];
      const once = (place: Element, seen: MutationObserverInit, isSo: () => boolean) =>
        new Promise<void>((resolve) => {
          const observer = new MutationObserver(() => {
            if (!isSo()) return;
            observer.disconnect();
            resolve();
          });
          observer.observe(place, seen);
        });
      const isBusy = (): boolean => whole.hasAttribute('aria-busy');
      const took: { answered: number; whole: number }[] = [];
      for (let at = 0; at < edits; at += 1) {
        const said = { childList: true, subtree: true, characterData: true };
        const changed = once(answer, said, () => true);
        input.value = texts[at % texts.length] ?? '';
        const start = performance.now();
        input.dispatchEvent(new Event('input', { bubbles: true }));
        await changed;
        const answered = performance.now() - start;
        if (isBusy()) await once(whole, { attributes: true }, () => !isBusy());
        took.push({ answered, whole: performance.now() - start });
        await new Promise((resolve) => setTimeout(resolve));
      }
      return took;
    },
    { ...edit, edits: EDITS + FIRST_EDITS },
  );
  return times.slice(FIRST_EDITS);
};

const rowsOf = async (context: BrowserContext, origin: string, one: Looked): Promise<Row[]> => {
  const paints: number[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    const page = await throttledPage(context);
    paints.push(await painted(page, `${origin}${one.path}`));
    await page.close();
  }
  const rows: Row[] = [
    [
      `largest piece of ${one.name} painted`,
      show(median(paints)),
      'ms',
      `at most ${MOST_MS.painted}`,
    ],
  ];
  if (one.edit === undefined) return rows;
  const page = await throttledPage(context);
  await page.goto(`${origin}${one.path}`, { waitUntil: 'load' });
  const times = await reckoned(page, one.edit);
  await page.close();
  const slow = (of: (one: Reckoned) => number): string =>
    show(quantile(times.map(of), NINETEEN_OF_TWENTY));
  return [
    ...rows,
    [
      `edit of ${one.name} to its answer, 95 of 100`,
      slow(({ answered }) => answered),
      'ms',
      `at most ${MOST_MS.reckoned}`,
    ],
    [`edit of ${one.name} to all of it, 95 of 100`, slow(({ whole }) => whole), 'ms'],
  ];
};

/** Rows of the table, of the built site; a row that says so where there is none or no browser. */
export const onAPhone = async (): Promise<Row[]> => {
  const executablePath = findBrowser();
  if (!existsSync(SITE) || executablePath === undefined)
    return [['on a phone', 'not measured', '', 'needs a built site and Chromium']];
  const { origin, stop } = await servePacked(SITE);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    const context = await browser.newContext({ viewport: PHONE, serviceWorkers: 'block' });
    const rows: Row[] = [];
    for (const one of LOOKED) rows.push(...(await rowsOf(context, origin, one)));
    return rows;
  } finally {
    await browser.close();
    await stop();
  }
};
