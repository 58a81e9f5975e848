import type { Page } from '@playwright/test';
import { groupsOfKinds } from './site.ts';
import { expect, test } from './watched.ts';

/** Nothing of a page sticks out of its place, wide or narrow, on screen or paper. */

const VIEWS = [
  { width: 1280, media: 'screen' },
  { width: 390, media: 'screen' },
  // The width of A4 and of Letter within margins of 15 mm, at 96 px to the inch.
  { width: 680, media: 'print' },
  { width: 702, media: 'print' },
] as const;

/** The first places where something of the page reaches beyond its right edge. */
const overflowing = (page: Page, onScreen: boolean): Promise<string[]> =>
  page.evaluate((screen) => {
    const within = (element: Element): boolean =>
      element.closest(screen ? '.table-scroll, .skip, .hidden-text' : '.hidden-text, .skip') !==
      null;
    return [...document.querySelectorAll('body *')]
      .filter((element) => !within(element) && element.checkVisibility())
      .filter((element) => element.getBoundingClientRect().right > innerWidth + 1)
      .slice(0, 3)
      .map((element) => element.outerHTML.slice(0, 120));
  }, onScreen);

const look = async (page: Page, path: string): Promise<void> => {
  await page.emulateMedia({ media: 'screen' });
  await page.goto(path);
  const working = page.locator('#results summary').first();
  if ((await working.count()) > 0) await working.click();
  for (const { width, media } of VIEWS) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ media });
    if (media === 'print') await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    expect
      .soft(await overflowing(page, media === 'screen'), `${path}: ${width} px, ${media}`)
      .toEqual([]);
  }
  // On paper it says where it came from, controls stay away.
  await expect.soft(page.locator('#printed-from')).toContainText(`GMT from ${page.url()}`);
  await expect.soft(page.locator('.site-nav:visible, button:visible'), path).toHaveCount(0);
};

for (const { name, paths } of groupsOfKinds)
  test(`${name} in every view`, async ({ page }) => {
    for (const path of paths) await look(page, path);
  });
