import { expect, test, type Page } from '@playwright/test';
import { allSums } from '../../src/engine/sums/index.ts';
import type { QuantityInput, Sum } from '../../src/engine/sums/sum.ts';

/** What a reader is promised of every sum, on its page as it is built. */

/** A field with a number that may as well be a tenth more: the one that is drawn along, or the first. */
const fieldOf = (sum: Sum): { key: string; more: string } => {
  const all = Object.entries(sum.inputs).flatMap(([key, input]) => {
    if (input.kind !== 'quantity') return [];
    const [, before = '', number, after = ''] =
      /^(\D*?)(\d+(?:\.\d+)?)(.*)$/u.exec(input.usual) ?? [];
    const more = Number(number) * 1.1;
    return more > 0 ? [{ key, more: `${before}${Number(more.toPrecision(3))}${after}` }] : [];
  });
  const found = all.find(({ key }) => key === sum.plots[0]?.x) ?? all[0];
  if (found === undefined) throw new Error(`${sum.id} has no number to change`);
  return found;
};

/** What the page comes to, once all of it is drawn. */
const resultOf = async (page: Page): Promise<string> => {
  const result = page.locator('#result');
  await expect(result).not.toHaveAttribute('aria-busy', 'true', { timeout: 20_000 });
  return result.innerHTML();
};

/** Opened anew, as somebody gets it who was sent the link, the address comes to the same result. */
const expectSent = async (page: Page, wanted: string): Promise<void> => {
  const address = page.url();
  await page.goto('about:blank');
  await page.goto(address);
  await expect.poll(() => resultOf(page), { timeout: 20_000 }).toBe(wanted);
};

for (const sum of allSums) {
  test(`${sum.id}: fields, answer, working, plot, cautions, sources, link and print`, async ({
    page,
  }) => {
    await page.goto(`/sums/${sum.id}/`);
    for (const key of Object.keys(sum.inputs)) {
      await expect(page.locator(`label[for="field-${key}"]`)).toBeVisible();
      await expect(page.locator(`#field-${key}`)).toBeEditable();
    }
    await expect(page.locator('#answer')).toHaveText(/\d|[a-z]{3}/u);
    await expect(page.locator('.sum-outputs .headline dd')).toHaveCount(1);
    const working = page.locator('.working .equation');
    expect(await working.count()).toBeGreaterThan(0);
    expect(await working.locator('> math').count()).toBe(await working.count());
    expect(await working.locator('.numbers-in math').count()).toBeGreaterThan(0);

    const plots = page.locator('figure.plot');
    expect(await plots.count()).toBeGreaterThan(0);
    for (const plot of await plots.all()) {
      await expect(plot.locator('> svg[role="img"]')).toHaveAttribute('aria-label', /\S/u);
      expect(await plot.locator('svg text').count()).toBeGreaterThan(3);
      await expect(plot.locator('.plot-table table')).toHaveCount(1);
    }
    expect(await page.locator('figure.plot .plot-point').count()).toBeGreaterThan(0);
    expect(
      await page
        .locator(
          '.sum-note, section[aria-labelledby="cautions"] aside, section[aria-labelledby="cautions"] .caution',
        )
        .count(),
    ).toBeGreaterThan(0);
    expect(
      await page.locator('section[aria-labelledby="proof"] a[href*="/sources/"]').count(),
    ).toBeGreaterThan(1);
    await expect(page.getByRole('button', { name: 'Copy link with these numbers' })).toBeVisible();
    await expect(page.getByRole('button', { name: 'Print' })).toBeVisible();

    const { key, more } = fieldOf(sum);
    const before = await resultOf(page);
    await page.locator(`#field-${key}`).fill(more);
    const inAddress = () => new URL(page.url()).searchParams.get(key);
    await expect.poll(inAddress).toBe(more);
    await expect.poll(() => resultOf(page)).not.toBe(before);
    // Drawn again only where it differs, it comes to what is drawn whole.
    await page.locator(`#field-${key}`).fill((sum.inputs[key] as QuantityInput).usual);
    await page.locator(`#field-${key}`).fill(more);
    await expect.poll(inAddress).toBe(more);
    await expectSent(page, await resultOf(page));

    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
    await expect(page.locator('#answer')).toBeVisible();
    await expect(plots.first()).toBeVisible();
    await expect(working.first()).toBeVisible();
  });
}

test('the seed of a draw is in the address, and draws the same for whoever gets the link', async ({
  page,
}) => {
  await page.goto('/sums/second-order-filter/');
  await page.locator('details.chance summary').first().click();
  const drawn = page.locator('details.chance').first();
  const first = await drawn.innerHTML();
  const seed = page.getByLabel('Seed of the draw');
  await seed.fill('7');
  await expect(page).toHaveURL(/seed=7/u);
  await expect.poll(() => drawn.innerHTML()).not.toBe(first);
  await expect(drawn).toHaveAttribute('open', '');
  const closed = (await resultOf(page)).replaceAll(
    '<details class="chance" open="">',
    '<details class="chance">',
  );
  await expectSent(page, closed);
  await page.locator('details.chance summary').first().click();
  await seed.fill('seven');
  await expect(page.locator('#seed-note')).toHaveClass('fault');
  await seed.fill('1');
  await expect(page.locator('#seed-note')).toHaveClass('hint');
});
