import type { Page } from '@playwright/test';
import { expect, test } from './watched.ts';

/** What is drawn in turns, and changed in place, ends up as the same address opened anew. */

const shown = (page: Page) => page.locator('#answer, #results, #grounds').allTextContents();

const settled = (page: Page) => expect(page.locator('#results')).not.toHaveAttribute('aria-busy');

for (const [path, field, texts] of [
  [
    '/replace/ceramic-disc-unknown/in/interstage-coupling/',
    'c',
    ['22 nF', '4,7 µF', 'abc', '470 pF', '47 nF'],
  ],
  ['/resistors/carbon-film/in/plate-load/', 'value', ['47k', '2M2', '100', '220k']],
  ['/devices/4016b/in/switch-hold/', 'hold-time', ['1 s', '1 ms', 'abc', '0.2 s']],
] as const) {
  test(`${path} is the same after many edits as it is when opened`, async ({ page }) => {
    await page.goto(path);
    const built = await shown(page);
    const input = page.locator(`#field-${field}`);
    for (const text of texts) await input.fill(text);
    await expect(page).toHaveURL(new RegExp(`${field}=`, 'u'));
    // What reckons is fetched at the first edit; until it is there, nothing is busy.
    await expect.poll(() => shown(page)).not.toEqual(built);
    await settled(page);
    const edited = await shown(page);
    await page.reload();
    await expect.poll(() => shown(page)).toEqual(edited);
  });
}
