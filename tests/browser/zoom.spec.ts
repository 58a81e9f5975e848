import type { Page } from '@playwright/test';
import { onePageOfEachKind } from './site.ts';
import { expect, test } from './watched.ts';

/** For eyes that need large letters. */

/** A window of 1280 by 1024 at four times the size shows this much of a page. */
const AT_400_PERCENT = { width: 320, height: 256 };
/** Share of the window that what stays in place while one scrolls may take. */
const MOST_STUCK = 0.4;

/** How wide a page is that may scroll; tables scroll by themselves. */
const widthOf = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth);

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
    expect.soft(await widthOf(page), path).toBeLessThanOrEqual(AT_400_PERCENT.width);
    await page.evaluate(() => scrollTo(0, innerHeight * 2));
    expect.soft(await stuckShare(page), `${path}: covered`).toBeLessThanOrEqual(MOST_STUCK);
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    expect.soft(await widthOf(page), `${path}: opened`).toBeLessThanOrEqual(AT_400_PERCENT.width);
  }
});

/** What a key or a box answers is no page of its own. */
const ANSWERS = ['/look/?form=tube&finish=clear', '/look/?form=drop'];

test('at 400 % what is answered needs no sideways scroll', async ({ page }) => {
  await page.setViewportSize(AT_400_PERCENT);
  for (const path of ANSWERS) {
    await page.goto(path);
    await expect(page.locator('#found')).not.toBeEmpty();
    expect.soft(await widthOf(page), path).toBeLessThanOrEqual(AT_400_PERCENT.width);
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
