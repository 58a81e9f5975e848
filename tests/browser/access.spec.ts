import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { groupsOfKinds, onePageOfEachKind, SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** For everybody: by keyboard, by screen reader, narrow, light and dark. */

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What of them a narrow window or other colours may change; the rest reads the same elements. */
const SEEN_RULES = [
  'color-contrast',
  'link-in-text-block',
  'scrollable-region-focusable',
  'target-size',
];

/** Colours do not depend on the width, so two views hold all four. */
const VIEWS = [
  { width: 1280, colorScheme: 'light', seenOnly: false },
  { width: 390, colorScheme: 'dark', seenOnly: true },
] as const;

/** Rows and parts after these are made by the same code as those before and only take time. */
const REPEATED = [
  ...['tbody', 'ul', 'ol', 'dl'].map((list) => `${list} > *:nth-child(n + 9)`),
  'main > .part:nth-child(n + 9)',
];

const dropRepeated = (page: Page): Promise<void> =>
  page.evaluate((rows) => {
    for (const row of document.querySelectorAll(rows)) row.remove();
  }, REPEATED.join());

/** Rules that a page breaks, with the first places. */
const broken = async (page: Page, seenOnly = false) => {
  const all = new AxeBuilder({ page });
  const asked = seenOnly ? all.withRules(SEEN_RULES) : all.withTags(RULES);
  // Without frames there is nothing to gather in a page of its own, which takes half of the time.
  const { violations } = await asked.setLegacyMode().analyze();
  return violations.map(({ id, nodes }) => ({
    id,
    at: nodes.slice(0, 3).map(({ html }) => html.slice(0, 160)),
  }));
};

/** axe puts its own script into the page, which the policy would stop. */
const forAxe = { bypassCSP: true };

test.describe('axe', () => {
  test.use(forAxe);
  // It takes its time over long tables.
  test.describe.configure({ timeout: 240_000 });
  for (const { name, paths } of groupsOfKinds) {
    test(`${name}: pages break no rule`, async ({ page }) => {
      for (const path of paths) {
        await page.goto(path);
        await dropRepeated(page);
        for (const { width, colorScheme, seenOnly } of VIEWS) {
          await page.setViewportSize({ width, height: 900 });
          await page.emulateMedia({ colorScheme });
          expect
            .soft(await broken(page, seenOnly), `${path}: ${width} px, ${colorScheme}`)
            .toEqual([]);
        }
      }
    });
  }

  test('a reading, results of a search and opened findings break no rule', async ({ page }) => {
    for (const { path, ready } of [
      { path: '/?q=103M+1KV+Z5U', ready: '.reading .chips' },
      { path: '/read/?m=103M+1KV+Z5U', ready: '.reading .chips' },
      { path: `${SUBSTITUTION}?c=abc&load=47k`, ready: '.fault' },
    ]) {
      await page.goto(path);
      await expect(page.locator(ready).first()).toBeVisible();
      const summary = page.locator('#results summary');
      if ((await summary.count()) > 0) {
        await summary.first().click();
        await summary.last().click();
      }
      await dropRepeated(page);
      expect.soft(await broken(page), path).toEqual([]);
    }
  });

  test('a part asked about and two side by side break no rule', async ({ page }) => {
    await page.goto(`${SUBSTITUTION}?have=pc-metallized&have-v=x&compare=pp-film-foil,have`);
    await expect(page.locator('#comparison table')).toBeVisible();
    // What the other tests look at only takes time here.
    await page.evaluate(() => {
      for (const part of document.querySelectorAll('#results, #grounds, main > .part'))
        part.remove();
    });
    await dropRepeated(page);
    for (const { width, colorScheme, seenOnly } of VIEWS) {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      expect.soft(await broken(page, seenOnly), `${width} px, ${colorScheme}`).toEqual([]);
    }
  });
});

test('every kind of page fits 320 px; tables scroll by themselves', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  for (const path of onePageOfEachKind) {
    await page.goto(path);
    for (const details of await page.locator('details').all())
      await details.evaluate((element) => {
        (element as HTMLDetailsElement).open = true;
      });
    const widest = await page.evaluate(() => document.documentElement.scrollWidth);
    expect.soft(widest, path).toBeLessThanOrEqual(320);
  }
});

test('the keyboard goes from the box to the first answer', async ({ page }) => {
  await page.goto('/');
  await page.keyboard.press('Tab');
  await expect(page.locator('.skip')).toBeFocused();
  await expect(page.locator('.skip')).toBeInViewport();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.locator('#box')).toBeFocused();
  await page.keyboard.type('ceramic disc in audio path');
  const first = page.locator('#at-once a').first();
  // What the words answered before the last of them was typed stands there for a moment.
  await expect(first).toHaveAttribute('href', SUBSTITUTION);
  await page.keyboard.press('Tab');
  await expect(first).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(new RegExp(`${SUBSTITUTION}$`));
});

test('focus is seen wherever it goes', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  const seen = new Set<string>();
  for (let step = 0; step < 45; step += 1) {
    await page.keyboard.press('Tab');
    const { what, outline, inView } = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const { top, bottom } = element.getBoundingClientRect();
      return {
        what: `${element.tagName} ${element.id || (element.textContent ?? '').trim().slice(0, 40)}`,
        outline: outlineStyle === 'none' ? 0 : Number.parseFloat(outlineWidth),
        inView: bottom > 0 && top < innerHeight,
      };
    });
    seen.add(what);
    expect.soft(outline, `outline of ${what}`).toBeGreaterThanOrEqual(2);
    expect.soft(inView, `${what} in view`).toBe(true);
  }
  expect([...seen].some((what) => what.startsWith('INPUT field-load'))).toBe(true);
  expect([...seen].some((what) => what.startsWith('SUMMARY'))).toBe(true);
});
