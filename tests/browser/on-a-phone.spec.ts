import type { Page } from '@playwright/test';
import { openWhole } from './open-whole.ts';
import { groupsOfKinds, SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** On a phone nothing jumps, text can be read, and a finger hits what it is meant to. */

/** The shift of a page, as a share of the screen and of the way, that is called good. */
const STEADY = 0.1;
const LEGIBLE = 12;
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
        'button, input:not([type=hidden]), select, textarea, summary, nav a, a.button, .actions a, .in-line > a, .in-line > li > a, .plain-list > li > a:first-child',
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

const shiftOf = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) {
            const { value, hadRecentInput } = entry as PerformanceEntry & {
              value: number;
              hadRecentInput: boolean;
            };
            if (!hadRecentInput) sum += value;
          }
        }).observe({ type: 'layout-shift', buffered: true });
        requestAnimationFrame(() => setTimeout(() => resolve(sum), 300));
      }),
  );

/** The smallest text that is seen, in CSS pixels, and an example of it. */
const smallestText = (page: Page): Promise<{ size: number; words: string }> =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    let smallest = { size: Infinity, words: '' };
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const words = node.textContent?.trim() ?? '';
      const { parentElement } = node;
      if (words === '' || parentElement === null || parentElement.closest('svg, math, sup, sub'))
        continue;
      if (!parentElement.checkVisibility()) continue;
      const size = Number.parseFloat(getComputedStyle(parentElement).fontSize);
      if (size < smallest.size) smallest = { size, words: words.slice(0, 60) };
    }
    return smallest;
  });

test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

for (const { name, paths } of groupsOfKinds)
  test(`${name}: pages stay where they are, can be read and be touched`, async ({ page }) => {
    // A dozen pages, each until it is quiet.
    test.setTimeout(120_000);
    for (const path of paths) {
      await openWhole(page, path);
      expect(await page.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true);
      expect.soft(await shiftOf(page), path).toBeLessThan(STEADY);
      const { size, words } = await smallestText(page);
      expect.soft(size, `${path}: ${words}`).toBeGreaterThanOrEqual(LEGIBLE);
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
