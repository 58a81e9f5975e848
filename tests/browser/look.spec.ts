import { onePageOfEachKind } from './site.ts';
import { expect, test } from './watched.ts';

/** Nothing of a page sticks out of its place, wide or narrow, on screen or paper. */

const VIEWS = [
  { width: 1280, media: 'screen' },
  { width: 390, media: 'screen' },
  // The width of A4 and of Letter within margins of 15 mm, at 96 px to the inch.
  { width: 680, media: 'print' },
  { width: 702, media: 'print' },
] as const;

for (const path of onePageOfEachKind) {
  test(`${path} in every view`, async ({ page }) => {
    await page.goto(path);
    const working = page.locator('#results summary').first();
    if ((await working.count()) > 0) await working.click();
    for (const { width, media } of VIEWS) {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ media });
      if (media === 'print') await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      const overflowing = await page.evaluate((screen) => {
        const within = (element: Element): boolean =>
          element.closest(screen ? '.table-scroll, .skip, .hidden-text' : '.hidden-text, .skip') !==
          null;
        return [...document.querySelectorAll('body *')]
          .filter((element) => !within(element) && element.checkVisibility())
          .filter((element) => element.getBoundingClientRect().right > innerWidth + 1)
          .slice(0, 3)
          .map((element) => element.outerHTML.slice(0, 120));
      }, media === 'screen');
      expect.soft(overflowing, `${width} px, ${media}`).toEqual([]);
    }
    // On paper it says where it came from, controls stay away.
    await expect(page.locator('#printed-from')).toContainText(`GMT from ${page.url()}`);
    await expect(page.locator('.site-nav:visible, button:visible')).toHaveCount(0);
  });
}
