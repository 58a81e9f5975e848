import { SUBSTITUTION } from './site.ts';
import { expect, test } from './watched.ts';

/** What was looked up last, the key to the box, and the guideline that a reader likes. */

test('look-ups are listed on the first page until they are to be forgotten', async ({ page }) => {
  await page.goto('/read/?m=103M+1KV');
  await page.goto(SUBSTITUTION);
  await page.goto('/types/');
  await page.goto('/');
  const links = page.locator('#recent a');
  await expect(links).toHaveCount(2);
  await expect(links.first()).toContainText('Ceramic disc');
  await expect(links.nth(1)).toHaveText('Read a marking: 103M 1KV');
  await links.nth(1).click();
  await expect(page.locator('#marking')).toHaveValue('103M 1KV');
  await page.goto('/');
  await page.getByRole('button', { name: 'Forget these' }).click();
  await expect(page.locator('#recent')).toBeHidden();
  await page.reload();
  await expect(page.locator('#recent')).toBeHidden();
});

test('what somebody else wrote into the list leads nowhere else', async ({ page }) => {
  await page.addInitScript(() => {
    const bad = [
      { path: '//evil.example/', query: '', title: 'away' },
      { path: 'javascript:alert(1)', query: '', title: 'script' },
      { path: '/read/', query: '?m=1#"><b>', title: 'place' },
      { path: '/read/', query: '?m=47n', title: '<img src=x onerror=alert(1)>' },
    ];
    localStorage.setItem('recent', JSON.stringify(bad));
  });
  await page.goto('/');
  await expect(page.locator('#recent a')).toHaveText(['<img src=x onerror=alert(1)>']);
  await expect(page.locator('#recent img')).toHaveCount(0);
});

test('Ctrl+K leads to the box, from the first page and from any other', async ({ page }) => {
  await page.goto('/');
  await page.keyboard.press('Control+k');
  await expect(page.locator('#box')).toBeFocused();
  await page.goto('/types/');
  await page.keyboard.press('Control+k');
  await page.waitForURL(/\/#box$/);
  await expect(page.locator('#box')).toBeFocused();
});

test('a guideline is chosen once, kept, and carried by links where it is not the usual one', async ({
  page,
}) => {
  await page.goto(SUBSTITUTION);
  const choice = page.locator('#field-g');
  const usual = await choice.inputValue();
  const other = await choice.locator('option:not(:checked)').first().getAttribute('value');
  await choice.selectOption(other ?? '');
  await page.goto('/replace/al-electrolytic-wet/in/bulk-rail/');
  await expect(choice).toHaveValue(other ?? '');
  await expect.poll(() => new URL(page.url()).searchParams.get('g')).toBe(other);
  await choice.selectOption(usual);
  await page.goto(SUBSTITUTION);
  await expect(choice).toHaveValue(usual);
  expect(page.url()).not.toContain('g=');
});

test('a guideline that there is not, kept by somebody else, is not taken', async ({ page }) => {
  await page.addInitScript(() => {
    localStorage.setItem('guideline', '"><b>');
  });
  await page.goto(SUBSTITUTION);
  await expect(page.locator('#field-g')).toBeEnabled();
  expect(page.url()).not.toContain('g=');
});

test('a link to a finding opens it, of whichever stand-in', async ({ page }) => {
  await page.goto(SUBSTITUTION);
  const summary = page.locator('#results details > summary').nth(2);
  await summary.click();
  await page.locator('#results details[open]').last().getByText('link to this').last().click();
  const id = new URL(page.url()).hash.slice(1);
  expect(id).toContain('--');
  await page.goto('about:blank');
  await page.goto(`${SUBSTITUTION}#${id}`);
  await expect(page.locator(`[id="${id}"]`)).toBeInViewport();
});

test('a slip of the finger is put right, and what came to nothing is not kept', async ({
  page,
}) => {
  await page.goto('/');
  await page.locator('#box').fill('resitor');
  await expect(page.locator('#at-once')).toContainText('Nothing here answers to “resitor”.');
  await page.locator('#at-once a').click();
  await expect(page.locator('#box')).toHaveValue('resistor');
  await expect(page.locator('#at-once a').first()).toBeVisible();
  await page.goto('/');
  await expect(page.locator('#recent a')).toHaveText(['resistor']);
});

test('a resistor in its place is kept among what was looked up', async ({ page }) => {
  await page.goto('/resistors/carbon-film/in/plate-load/');
  await page.goto('/');
  await expect(page.locator('#recent a')).toHaveText([
    'Carbon film resistor in anode or collector load',
  ]);
});

test('an address that leads nowhere is looked up by its words', async ({ page }) => {
  await page.goto('/404.html');
  await expect(page.locator('#box')).toHaveValue('404');
  await page.locator('#box').fill('carbon composition');
  await page.getByRole('button', { name: 'Look it up' }).click();
  await expect(page).toHaveURL(/\/\?q=carbon(?:\+|%20)composition$/);
  await expect(page.locator('#at-once a').first()).toBeVisible();
});
