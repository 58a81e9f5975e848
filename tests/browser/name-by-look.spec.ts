import type { Page } from '@playwright/test';
import { broken, dropRepeated, forAxe, VIEWS } from './axe.ts';
import { expect, test } from './watched.ts';

/** Naming a part as someone at the bench would: a look at it, then a meter. */

const tick = async (page: Page, question: string, ...answers: string[]): Promise<void> => {
  const details = page.locator(`#question-${question}`);
  if (!(await details.evaluate((element) => (element as HTMLDetailsElement).open))) {
    await details.locator('summary').click();
  }
  for (const answer of answers) await details.getByRole('checkbox', { name: answer }).check();
};

const write = async (page: Page, question: string, text: string): Promise<void> => {
  const details = page.locator(`#question-${question}`);
  if (!(await details.evaluate((element) => (element as HTMLDetailsElement).open))) {
    await details.locator('summary').click();
  }
  await details.locator('input').fill(text);
};

const answer = (page: Page) => page.locator('#answer');
const firstStyle = (page: Page) => page.locator('#found .found-style').first();

test('a waxed paper tube: three looks, and the way to what replaces it with its value', async ({
  page,
}) => {
  await page.goto('/look/');
  await tick(page, 'form', 'Round tube or rod');
  await tick(page, 'finish', 'Wax, or waxed card');
  await tick(page, 'marks', 'One band or bar at one end');
  await write(page, 'capacitance', '.05 MFD');
  await expect(answer(page)).toContainText('Waxed paper tube');
  await expect(answer(page)).toContainText('%');
  await expect(page.locator('#question-capacitance .given')).toHaveText('50 nF');
  await expect(page.locator('#look-capacitance-note')).toHaveText('Read as 50 nF.');
  await expect(firstStyle(page).locator('svg.part-drawing')).toBeVisible();
  await expect(firstStyle(page)).toContainText('Surface: wax, or waxed card; usual');
  await expect(page).toHaveURL(/form=tube/);
  await firstStyle(page).getByRole('link', { name: 'what replaces it' }).click();
  await expect(page).toHaveURL(/\/replace\/paper-wax\/\?c=50n/);
});

test('polyester or polypropylene: the warm test and D settle it', async ({ page }) => {
  await page.goto('/look/?form=tube&finish=tape&ends=resin');
  await expect(page.locator('.apart')).toContainText('or');
  const inside = firstStyle(page).locator('.inside li').first();
  await write(page, 'd-1khz', '0,5');
  await expect(inside).toContainText('Metallized polyester');
  await write(page, 'd-1khz', '0.03 %');
  await expect(inside).toContainText('olypropylene');
  await write(page, 'warm-c', '−0,45');
  await expect(page.locator('#look-warm-c-note')).toContainText('Read as −0.45');
  await expect(inside).toContainText('olypropylene');
  await expect(firstStyle(page)).toContainText('as usual (−0.64 to −0.24 %)');
});

test('a domino like mica that holds paper', async ({ page }) => {
  await page.goto('/look/?form=domino&marks=dot-apart&capacitance=10n&year=1948');
  await expect(answer(page)).toContainText('Moulded paper like mica');
  await page.goto('/look/?form=domino&marks=dots&capacitance=600p');
  await expect(answer(page)).toContainText('Moulded mica with dots');
  const apart = page.locator('.apart');
  await expect(apart).toContainText('Test at working voltage');
  await apart.getByRole('link', { name: /Loss D at 1 kHz/ }).click();
  await expect(page.locator('#look-d-1khz')).toBeFocused();
});

test('a wrong unit is told beside the field and counts for nothing', async ({ page }) => {
  await page.goto('/look/?form=box');
  await expect(answer(page)).toContainText('box');
  const before = await answer(page).textContent();
  await write(page, 'd-1khz', '5 mV');
  const note = page.locator('#look-d-1khz-note');
  await expect(note).toContainText('That is a voltage');
  await expect(page.locator('#look-d-1khz')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('#question-d-1khz .given')).toHaveText('not understood');
  expect(await answer(page).textContent()).toBe(before);
  await write(page, 'd-1khz', '0.5 %');
  await expect(note).toContainText('Read as 0.5');
  await expect(page.locator('#look-d-1khz')).not.toHaveAttribute('aria-invalid');
});

test('the address is the whole state, and what cannot be told is left out', async ({ page }) => {
  await page.goto('/look/');
  await tick(page, 'form', 'Round flat disc');
  await tick(page, 'marks', 'Three digits', 'X7R, Z5U');
  // What draws the results came with the first answer.
  await expect(page.locator('#found [data-style]').first()).toBeVisible();
  await write(page, 'capacitance', '10n');
  await expect(page.locator('#look-capacitance-note')).toContainText('Read as 10');
  await expect(page).toHaveURL(/capacitance=10n/);
  const [said, address] = [await answer(page).textContent(), page.url()];
  await page.goto('about:blank');
  await page.goto(address);
  await expect(answer(page)).toHaveText(said ?? '');
  await expect(page.locator('[name="marks"][value="class2"]')).toBeChecked();
  await expect(page.locator('#look-capacitance')).toHaveValue('10n');
  await tick(page, 'marks');
  await page.locator('[name="marks"][value="class2"]').uncheck();
  await page.locator('[name="marks"][value="code"]').uncheck();
  await expect(page).not.toHaveURL(/marks=/);
  await page.getByRole('button', { name: 'Start again' }).click();
  await expect(answer(page)).toContainText('Nothing is answered yet');
  await expect(page).toHaveURL(/\/look\/$/);
  await expect(page.locator('[name="form"][value="disc"]')).not.toBeChecked();
});

test('nonsense in the address does no harm', async ({ page }) => {
  await page.goto('/look/?form=%3Cb%3E&marks=...&year=banana&d-1khz=%F0%9F%92%A9&smell=wax');
  await expect(answer(page)).toContainText('Nothing is answered yet');
  await expect(page.locator('#question-year .given')).toHaveText('not understood');
});

test('by keyboard alone: the next question comes to the top and takes the focus', async ({
  page,
}) => {
  await page.goto('/look/');
  await expect(page.locator('#questions > details').first()).toHaveAttribute('id', 'question-form');
  await page.locator('[name="form"][value="disc"]').focus();
  await page.keyboard.press('Space');
  await expect(answer(page)).toContainText('disc');
  const next = page.locator('#next-question');
  await expect(next).toHaveText(/^Ask next: /);
  const name = (await next.textContent())?.replace('Ask next: ', '') ?? '';
  await next.focus();
  await page.keyboard.press('Enter');
  const first = page.locator('#questions > details').first();
  await expect(first.locator('.question-name')).toHaveText(new RegExp(name, 'i'));
  await expect(first.locator('input').first()).toBeFocused();
  await expect(first).toHaveAttribute('open');
});

test('both losses say what ails a part', async ({ page }) => {
  await page.goto('/look/?form=pillow&d-1khz=0.5&d-120hz=3');
  await expect(page.locator('#found')).toContainText('is 6: leakage rules');
});

test.describe('axe', () => {
  test.use(forAxe);
  test('finds nothing in results with all questions open', async ({ page }) => {
    test.setTimeout(120_000);
    await page.goto('/look/?form=tube&finish=tape&d-1khz=5mV&capacitance=100n');
    await expect(page.locator('.fault').first()).toBeAttached();
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('#look details')) {
        (details as HTMLDetailsElement).open = true;
      }
      // The list of all styles has a test of its own.
      document.querySelector('.styles')?.closest('.part')?.remove();
    });
    await dropRepeated(page);
    for (const { width, colorScheme, seenOnly } of VIEWS) {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      expect.soft(await broken(page, seenOnly), `${String(width)} px, ${colorScheme}`).toEqual([]);
    }
  });
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('all styles are there, with drawings, disguises, readings and ways on', async ({ page }) => {
    await page.goto('/look/');
    await expect(page.locator('#look')).toBeHidden();
    const groups = await page
      .locator('section[aria-labelledby=styles] li a')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
    let drawings = 0;
    for (const group of groups) {
      await page.goto(group);
      drawings += await page.locator('.style svg.part-drawing').count();
    }
    expect(drawings).toBeGreaterThan(95);
    await page.goto('/look/');
    await page.getByRole('link', { name: 'Mica', exact: true }).click();
    const mica = page.locator('#mica-moulded-dots');
    await mica.locator('summary').click();
    await expect(mica).toContainText('Test at working voltage');
    await expect(mica.getByRole('link', { name: 'what replaces it' }).first()).toHaveAttribute(
      'href',
      /\/replace\/silvered-mica\//,
    );
    await page.goto('/look/');
    await page.getByRole('link', { name: 'What meters say' }).last().click();
    await expect(page.locator('section[aria-labelledby=test-warm-c]')).toContainText('0.5–1.6');
  });
});
