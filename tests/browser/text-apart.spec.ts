import { openWhole } from './open-whole.ts';
import { groupsOfKinds, pagePaths } from './site.ts';
import { textsOnTexts } from './text-apart.ts';
import { expect, test } from './watched.ts';

/** A figure that is longer than its column runs into what stands beside it, and neither can be read. */

const WIDTHS = [1280, 800, 390];

/** Pages whose columns hold figures of every length. */
const types = pagePaths.filter((path) => /^\/types\/[^/]+\/$/.test(path));

const groups = [
  ...groupsOfKinds,
  ...[0, 1, 2].map((part) => ({
    name: `types, ${String(part + 1)} of 3`,
    paths: types.filter((_, at) => at % 3 === part),
  })),
];

for (const { name, paths } of groups)
  test(`no text stands on another: ${name}`, async ({ page }) => {
    test.slow();
    for (const path of paths) {
      await openWhole(page, path);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        expect.soft(await textsOnTexts(page), `${path} at ${String(width)} px`).toEqual([]);
      }
    }
  });
