import { broken, dropRepeated, forAxe, VIEWS } from './axe.ts';
import { groupsOfKinds, SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** For everybody: by keyboard, by screen reader, light and dark. */

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
