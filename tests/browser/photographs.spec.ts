import type { Page } from '@playwright/test';
import { groupsOfKinds, kindOf } from './site.ts';
import { expect, test } from './watched.ts';

/**
 * How a page of each kind looks at its top: wide and narrow, light and dark, and on paper. What is
 * kept beside this file is what they should look like; `npm run photographs` takes them anew. They
 * are two fifths of the size, since they are to show that a page is laid out and painted as it was, not its
 * words: those change with the data, so a tenth of the pixels may differ.
 */

const VIEWS = [
  { name: 'wide-light', width: 1280, height: 900, media: { colorScheme: 'light' } },
  { name: 'wide-dark', width: 1280, height: 900, media: { colorScheme: 'dark' } },
  { name: 'narrow-light', width: 390, height: 844, media: { colorScheme: 'light' } },
  { name: 'narrow-dark', width: 390, height: 844, media: { colorScheme: 'dark' } },
  // The width of A4 within its margins, at 96 pixels an inch.
  { name: 'print', width: 718, height: 1000, media: { media: 'print', colorScheme: 'light' } },
] as const;

const DIFFERENT = 0.1;

/** Text of another font runs otherwise; pictures of it cannot be held against these. */
const FONT_WIDTH = 543;
const PROBE = 'Which part made today may stand in for the old one? 4.7 µF ±20 %';

const fontWidth = (page: Page): Promise<number> =>
  page.evaluate((text) => {
    const context = document.createElement('canvas').getContext('2d');
    if (context === null) return 0;
    context.font = `16px ${getComputedStyle(document.body).fontFamily}`;
    return Math.round(context.measureText(text).width);
  }, PROBE);

/** By kind: which page stands for it may change. */
const nameOf = (path: string): string =>
  kindOf(path)
    .replaceAll(/^\/|\/$|\.html$/g, '')
    .replaceAll('*', 'one')
    .replaceAll('/', '-') || 'start';

test.use({ deviceScaleFactor: 0.4 });

for (const { name, paths } of groupsOfKinds) {
  test(`${name} look as they did`, async ({ page }) => {
    test.setTimeout(120_000);
    for (const path of paths) {
      await page.goto(path);
      const width = await fontWidth(page);
      test.skip(Math.abs(width - FONT_WIDTH) > 1, `other fonts are used here (${width})`);
      for (const { name: view, media, ...size } of VIEWS) {
        await page.setViewportSize(size);
        await page.emulateMedia({ media: 'screen', ...media });
        await expect.soft(page).toHaveScreenshot(`${nameOf(path)}-${view}.png`, {
          scale: 'device',
          maxDiffPixelRatio: DIFFERENT,
        });
      }
    }
  });
}
