import type { Page } from '@playwright/test';
import { groupsOfKinds, onePageOfEachKind, SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** For eyes that need large letters and fingers that need large targets. */

/** A window of 1280 by 1024 at four times the size shows this much of a page. */
const AT_400_PERCENT = { width: 320, height: 256 };
/** Share of the window that what stays in place while one scrolls may take. */
const MOST_STUCK = 0.4;

const stuckShare = (page: Page): Promise<number> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('body *')]
      .filter((element) => ['fixed', 'sticky'].includes(getComputedStyle(element).position))
      .filter((element) => element.checkVisibility() && element.closest('table') === null)
      .map((element) => element.getBoundingClientRect())
      .filter(({ top, bottom }) => bottom > 0 && top < innerHeight)
      .reduce((most, { height }) => Math.max(most, height / innerHeight), 0),
  );

test('at 400 % every kind of page needs no sideways scroll and is not covered', async ({
  page,
}) => {
  await page.setViewportSize(AT_400_PERCENT);
  for (const path of onePageOfEachKind) {
    await page.goto(path);
    const widest = await page.evaluate(() => document.documentElement.scrollWidth);
    expect.soft(widest, path).toBeLessThanOrEqual(AT_400_PERCENT.width);
    await page.evaluate(() => scrollTo(0, innerHeight * 2));
    expect.soft(await stuckShare(page), `${path}: covered`).toBeLessThanOrEqual(MOST_STUCK);
  }
});

/** Spacing that a reader may set (WCAG 2.2, 1.4.12). */
const WIDE_TEXT = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-bottom: 2em !important; }`;

test.describe('spaced text', () => {
  test.use({ bypassCSP: true });
  test('cuts nothing off', async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 800 });
    for (const path of onePageOfEachKind) {
      await page.goto(path);
      await page.addStyleTag({ content: WIDE_TEXT });
      const cut = await page.evaluate(() => [
        ...(document.documentElement.scrollWidth > innerWidth ? ['the page scrolls sideways'] : []),
        ...[...document.querySelectorAll<HTMLElement>('main *')]
          .filter((element) => {
            const { overflowX, overflowY } = getComputedStyle(element);
            const hides = overflowX === 'hidden' || overflowY === 'hidden';
            return (
              hides &&
              element.checkVisibility() &&
              !element.matches('.hidden-text, svg, svg *') &&
              (element.scrollWidth > element.clientWidth + 1 ||
                element.scrollHeight > element.clientHeight + 1)
            );
          })
          .map(({ outerHTML }) => outerHTML.slice(0, 120)),
      ]);
      expect.soft(cut, path).toEqual([]);
    }
  });
});

/** What a finger hits without aiming (WCAG 2.2, 2.5.5), px. */
const TARGET = 44;

/** Controls that are too small, with their sizes; links inside sentences are as high as their line. */
const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate((least) => {
    const boxOf = (element: Element): DOMRect => {
      const label = element instanceof HTMLInputElement ? element.labels?.[0] : undefined;
      const isTick =
        element instanceof HTMLInputElement && ['radio', 'checkbox'].includes(element.type);
      return (isTick && label ? label : element).getBoundingClientRect();
    };
    return [
      ...document.querySelectorAll(
        'button, input:not([type=hidden]), select, textarea, summary, nav a, a.button, .actions a',
      ),
    ]
      .filter((element) =>
        element.checkVisibility({ visibilityProperty: true, opacityProperty: true }),
      )
      .map((element) => ({ element, box: boxOf(element) }))
      .filter(({ box }) => box.width > 1 && box.height > 1)
      .filter(({ box }) => box.height < least - 0.5 || box.width < least - 0.5)
      .map(
        ({ element, box }) =>
          `${Math.round(box.width)} × ${Math.round(box.height)}: ${element.outerHTML.slice(0, 90)}`,
      );
  }, TARGET);

test.describe('touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 800 } });
  for (const { name, paths } of groupsOfKinds)
    test(`${name}: pages have targets of 44 px`, async ({ page }) => {
      for (const path of paths) {
        await page.goto(path);
        expect(await page.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true);
        expect.soft(await smallTargets(page), path).toEqual([]);
      }
    });

  for (const { path, ready } of [
    { path: '/?q=103M+1KV+Z5U', ready: '.reading .chips' },
    { path: '/read/?m=4K7', ready: '.reading .chips' },
    { path: `${SUBSTITUTION}?load=47k&have=pc-metallized`, ready: '#results summary' },
    { path: '/look/?body=disc', ready: '#answer' },
  ])
    test(`${path} has targets of 44 px when it has answered`, async ({ page }) => {
      await page.goto(path);
      await expect(page.locator(ready).first()).toBeVisible();
      expect(await smallTargets(page)).toEqual([]);
    });
});
