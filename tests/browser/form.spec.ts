import { SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** The numbers of a substitution page: what stands together, and what is folded away. */

const ROOM = ['room', 'height-room', 'side-room', 'hole'];

test('numbers stand in groups, those of the room folded away', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  await expect(page.locator('#numbers .sets legend')).toHaveText([
    'The old part',
    'Voltage across it',
    'The circuit around it',
    'Heat and time',
  ]);
  for (const key of ROOM) await expect(page.locator(`#field-${key}`)).toBeHidden();
  for (const key of ['c', 'vdc', 'g', 'load', 't-max'])
    await expect(page.locator(`#field-${key}`)).toBeVisible();
  await page.locator('.place > summary').press('Enter');
  await page.locator('#field-room').fill('2');
  await expect(page.locator('#room-note')).toHaveText('yours');
  await expect(page).toHaveURL(/\?room=2$/);
});

for (const { query, says } of [
  { query: 'room=5', says: 'yours' },
  { query: 'height-room=abc', says: /Until then .* counts\.$/ },
]) {
  test(`?${query} is seen at once`, async ({ page }) => {
    await page.goto(`${SUBSTITUTION}?${query}`);
    const [key = ''] = query.split('=');
    await expect(page.locator(`#field-${key}`)).toBeVisible();
    await expect(page.locator(`#${key}-note`)).toHaveText(says);
    // Whoever folds it away again has it so.
    await page.locator('.place > summary').click();
    await page.locator('#field-load').fill('47k');
    await expect(page.locator('#load-note')).toHaveText('yours');
    await expect(page.locator(`#field-${key}`)).toBeHidden();
  });
}

test('on a phone the answer stands above the fold', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto(SUBSTITUTION);
  const box = await page.locator('#answer').boundingBox();
  expect((box?.y ?? Infinity) + (box?.height ?? 0)).toBeLessThan(664);
});

test('on a phone the parts of the site take one row and open from a button', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 664 });
  await page.goto(SUBSTITUTION);
  const head = await page.locator('.masthead').boundingBox();
  expect(head?.height).toBeLessThan(60);
  const parts = page.locator('.site-nav a');
  await expect(parts.first()).toBeHidden();
  const menu = page.getByRole('button', { name: 'Menu' });
  await menu.press('Enter');
  await expect(parts.first()).toBeVisible();
  await expect(parts.last()).toBeInViewport();
  await page.keyboard.press('Tab');
  await expect(parts.first()).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(parts.first()).toBeHidden();
});

test('numbers that are folded away stand on paper', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  await page.emulateMedia({ media: 'print' });
  const box = await page.locator('#field-room').boundingBox();
  expect(box?.height).toBeGreaterThan(0);
});

test('what is known of the old part is asked for, kept and judged', async ({ page }) => {
  await page.goto('/replace/al-electrolytic-wet/in/reservoir/');
  await page.locator('#judge-first > summary').press('Enter');
  await page.locator('#field-reads').fill('300 µF');
  await page.locator('#field-esr').fill('lots');
  await expect(page.locator('#esr-note')).toHaveClass('fault');
  await expect(page.locator('#judgement')).toContainText(/marked/);
  await page.locator('#evidence input[type="checkbox"]').first().check();
  await expect(page.locator('#judgement')).toContainText('Replace it.');
  // The value alone says so already; what was ticked is judged after that.
  await expect(page.locator('#judgement')).toContainText('Seen: ');
  const before = await page.locator('#judgement').textContent();
  await page.reload();
  await expect(page.locator('#field-reads')).toHaveValue('300 µF');
  await expect(page.locator('#field-esr')).toHaveValue('lots');
  await expect(page.locator('#evidence input[type="checkbox"]').first()).toBeChecked();
  await expect(page.locator('#judgement')).toHaveText(before ?? '');
});
