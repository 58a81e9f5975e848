import { SUBSTITUTION } from './site.ts';
import { planned } from './job-table.ts';
import { expect, test } from './watched.ts';

/** From a page of stand-ins into a job: the way of somebody who looked a part up first. */

const TRIMMER = '/trimmers/carbon-preset/in/bias-trim/';

test('a part goes into a new job, with its numbers and what is to be fitted', async ({ page }) => {
  await page.goto(`${SUBSTITUTION}?c=22n&v=400`);
  await page.getByRole('link', { name: 'Add to a job' }).click();
  await page.getByLabel('Designators').fill('C12');
  await page.getByLabel('Printed on it').fill('.022 400');
  await expect(page.getByLabel('Job', { exact: true })).toHaveValue('');
  const fitted = page.getByLabel('To be fitted');
  const [, , second = ''] = await fitted
    .locator('option')
    .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
  await fitted.selectOption(second);
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.locator('#added')).toContainText('as row 1: C12, ');
  await expect(page.locator('#added')).not.toContainText('value');
  // A second press adds no second row.
  await expect(page.getByRole('button', { name: 'Add it' })).toBeDisabled();
  await page.locator('#added').getByRole('link', { name: 'Open the job' }).click();
  const cell = (field: string) => page.getByLabel(`${field}, row 1`, { exact: true });
  await expect(cell('Designators')).toHaveValue('C12');
  await expect(cell('Value')).toHaveValue('22n');
  await expect(page.locator('#rows-shown')).toHaveText('1 row.');
  await planned(page);
  await page.locator('#to-plan').click();
  const line = page.locator('.plan-line');
  await line.locator('summary').first().click();
  await expect(line).toContainText('Chosen by you.');
  await expect(line.getByRole('link', { name: 'All findings' })).toHaveAttribute(
    'href',
    /c=22n&v=400/u,
  );
});

test('a part joins the job that was open last, and a page that shows it hears of it', async ({
  context,
  page,
}) => {
  await page.goto('/job/');
  await page.locator('#job-title').fill('Mixer board');
  await page.getByLabel('Designators, row 1', { exact: true }).fill('C1');
  await expect(page.locator('#keeping')).toHaveText('Kept in this browser.');
  const other = await context.newPage();
  await other.goto(SUBSTITUTION);
  await other.getByRole('link', { name: 'Add to a job' }).click();
  await other.getByLabel('Designators').fill('C2, C3');
  await other.getByRole('button', { name: 'Add it' }).click();
  await expect(other.locator('#added')).toContainText('Added to “Mixer board” as row 2: C2, C3,');
  await expect(other.locator('#added')).toContainText('Its value is still to be said there');
  await expect(page.locator('#elsewhere')).toBeVisible();
  await page.locator('#take-theirs').click();
  await expect(page.getByLabel('Designators, row 2', { exact: true })).toHaveValue('C2, C3');
});

test('a trimmer takes what was read of it along, there and back', async ({ page }) => {
  await page.goto(`${TRIMMER}?value=10k&old-setting=2.7k&old-total=9.6k`);
  await page.getByRole('link', { name: 'Add to a job' }).click();
  await page.getByLabel('Designators').fill('RV1');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.locator('#added').getByRole('link', { name: 'Its plan' }).click();
  await planned(page);
  await page.locator('.plan-line summary').first().click();
  await page.locator('[data-set="decision"]').selectOption('replace');
  await planned(page);
  await page.locator('#to-sheet').click();
  await page.locator('#bench-after').click();
  await expect(page.locator('[data-preset="oldTotal"]')).toHaveValue('9.6k');
  // What is read at the bench is on the page that the plan leads to.
  await page.locator('[data-preset="oldTotal"]').fill('9.7k');
  await page.locator('[data-preset="total"]').fill('10.3k');
  await planned(page);
  await page.locator('#to-plan').click();
  await page.getByRole('link', { name: 'All findings' }).click();
  await expect(page.locator('#field-old-total')).toHaveValue('9.7\u00a0kΩ');
  await expect(page.locator('#field-new-total')).toHaveValue('10.3k');
});

test('a device goes into a job by its number, its use and its numbers', async ({ page }) => {
  await page.goto('/devices/tl072/in/amp-line/?supply=9%20V');
  await page.getByRole('link', { name: 'Add to a job' }).click();
  await page.getByLabel('Designators').fill('IC3');
  await page.getByLabel('Printed on it').fill('TL072CP');
  // What is kept out is not offered.
  await expect(page.getByLabel('To be fitted').locator('option')).not.toHaveCount(1);
  await expect(page.getByLabel('To be fitted')).not.toContainText('keep out');
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.locator('#added')).toContainText('row 1: IC3, TL072 as ');
  await page.locator('#added').getByRole('link', { name: 'Its plan' }).click();
  await planned(page);
  const line = page.locator('.plan-line');
  await expect(line).toContainText('TL072CP');
  await line.locator('summary').first().click();
  await expect(line.getByRole('link', { name: 'All findings' })).toHaveAttribute(
    'href',
    /devices\/tl072\/in\/amp-line\/\?supply=9/u,
  );
});

test('a place that nobody knows is said to be missing, and not asked of the site', async ({
  page,
}) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto('/job/');
  await page.getByLabel('Designators, row 1', { exact: true }).fill('C1');
  await page.getByLabel('Type, row 1', { exact: true }).fill('paper-wax');
  await page.getByLabel('Value, row 1', { exact: true }).fill('22n');
  await page.getByLabel('Position, row 1', { exact: true }).fill('behind the moon');
  await planned(page);
  await page.locator('#to-plan').click();
  await expect(page.locator('.plan-line')).toContainText(/position|sit/iu);
  expect(asked.filter((url) => /moon/u.test(url))).toEqual([]);
});

test('on a phone the answer comes before the numbers, which open where they stand', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const path of [SUBSTITUTION, '/resistors/carbon-composition/in/plate-load/']) {
    await page.goto(path);
    await expect(page.locator('#in-short')).toBeVisible();
    await expect(page.locator('#in-short')).toHaveText(/^Numbers: .+usual ones?$/u);
    const first = page.locator('.stand-ins > li').first();
    const top = await first.evaluate((one) => one.getBoundingClientRect().top + scrollY);
    expect(top).toBeLessThan(1.5 * 844);
    await page.locator('#in-short').focus();
    await page.keyboard.press('Enter');
    const field = page.locator('#numbers input').first();
    await expect(field).toBeVisible();
    await field.fill(path === SUBSTITUTION ? '33n' : '33k');
    await expect(page.locator('#in-short')).toContainText(/33\s(?:nF|kΩ)/u);
  }
});

test('on a phone a number that cannot be read is seen at once, and paper has them all', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(`${SUBSTITUTION}?c=much`);
  await expect(page.locator('#numbers .fault').first()).toBeVisible();
  await page.goto(`${SUBSTITUTION}?c=33n`);
  await expect(page.locator('#in-short')).toContainText('33\u00a0nF');
  await expect(page.locator('#numbers input').first()).toBeHidden();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#numbers input').first()).toBeVisible();
});

test('numbers that a wide screen or paper shows whole stand in nothing that is closed', async ({
  page,
}) => {
  // Only newer browsers can show what stands within a closed `details`.
  for (const path of [SUBSTITUTION, '/devices/tl072/in/amp-line/']) {
    await page.goto(path);
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media });
      const inputs = page.locator('#numbers :is(input, select):visible');
      expect(await inputs.count()).toBeGreaterThan(1);
      const closed = await inputs.evaluateAll(
        (all) => all.filter((one) => one.closest('details:not([open])') !== null).length,
      );
      expect(closed).toBe(0);
    }
    await page.emulateMedia({ media: null });
  }
});

test('numbers of the place stay folded on a wide screen, and open by their line', async ({
  page,
}) => {
  await page.goto(SUBSTITUTION);
  const field = page.locator('.place + fieldset input').first();
  await expect(field).toBeHidden();
  await page.locator('.place > summary').click();
  await expect(field).toBeVisible();
});

test('a type of every kind has a page that says where it may sit', async ({ page }) => {
  await page.goto('/types/carbon-composition/');
  await page.getByRole('link', { name: 'What may stand in for it' }).click();
  await expect(page).toHaveURL(/\/resistors\/carbon-composition\/$/u);
  await expect(page.locator('h1')).toContainText('What replaces');
  await page.goto('/resistors/carbon-composition/?value=47k');
  await page.locator('main a[href*="/in/plate-load/?value=47k"]').click();
  await expect(page.locator('#field-value')).toHaveValue('47\u00a0kΩ');
});

test('a job without parts has nothing to step through at the bench', async ({ page }) => {
  await page.goto('/job/#sheet');
  await expect(page.locator('#bench-said')).toHaveText('Nothing to do at the bench yet.');
  await expect(page.locator('#bench-go')).toBeHidden();
});

test('on a narrow screen with no scripts the numbers open by themselves', async ({ browser }) => {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    viewport: { width: 390, height: 844 },
  });
  const page = await context.newPage();
  await page.goto(SUBSTITUTION);
  await expect(page.getByText('Add to a job')).toHaveCount(2);
  for (const one of await page.getByText('Add to a job').all()) await expect(one).toBeHidden();
  await page.locator('#in-short').click();
  await expect(page.locator('#numbers input').first()).toBeVisible();
  await context.close();
});
