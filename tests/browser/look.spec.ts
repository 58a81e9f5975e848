import { onePageOfEachKind } from './site.ts';
import { expect, test } from './watched.ts';

/** Pictures of every kind of page, to be looked at; and nothing sticks out of its place. */

const VIEWS = [
  { name: 'wide-light', width: 1280, colorScheme: 'light', media: 'screen' },
  { name: 'wide-dark', width: 1280, colorScheme: 'dark', media: 'screen' },
  { name: 'phone-light', width: 390, colorScheme: 'light', media: 'screen' },
  { name: 'phone-dark', width: 390, colorScheme: 'dark', media: 'screen' },
  { name: 'print', width: 720, colorScheme: 'light', media: 'print' },
] as const;

const fileName = (path: string): string =>
  path.replaceAll('/', '_').replace(/^_|_$/g, '') || 'home';

for (const path of onePageOfEachKind) {
  test(`${path} in every view`, async ({ page }) => {
    await page.goto(path);
    const working = page.locator('#results summary').first();
    if ((await working.count()) > 0) await working.click();
    await page.evaluate(() => {
      scrollTo(0, 0);
    });
    for (const { name, width, colorScheme, media } of VIEWS) {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme, media });
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
      expect.soft(overflowing, name).toEqual([]);
      await page.screenshot({ path: `test-results/look/${fileName(path)}-${name}.png` });
    }
  });
}
