import { giveTable, openDemo, paste } from './job-table.ts';
import { expect, test } from './watched.ts';

/** What goes into a job: tables, questions, conditions. */

const HOSTILE = '<img src=x onerror=alert(1)>';
const FIRST = 'Designators, row 1';

test('a European table is confirmed, its decimal commas and thousands read', async ({ page }) => {
  await page.goto('/job/');
  const table = [
    'Bauteil;Art;Wert;Toleranz;Spannung;Typ;Funktion;Lager',
    'C1, C2;Elko;4,7 µF;20 %;63 V;;tone control;A1',
    'C3;Elko;1.000 µF;20 %;25 V;;;A2',
    'R1;Widerstand;4,7k;5 %;;;;C',
    'C9;cap;1;2;3;4;5;6;7;8;9',
  ].join('\r\n');
  await paste(page, table, FIRST);
  const place = page.locator('#table-in');
  await expect(place).toContainText('3 rows to add, 1 not understood');
  await expect(place.getByLabel('Decimal sign')).toHaveValue('comma');
  await place.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.getByLabel('Value, row 2', { exact: true })).toHaveValue('1000 µF');
  await expect(page.getByLabel('Value, row 1', { exact: true })).toHaveValue('4,7 µF');
  // The row that was not understood stays, with its reason, until somebody decides.
  const bad = page.locator('#bad-rows');
  await expect(bad).toContainText('Row 5');
  await expect(bad).toContainText('C9 | cap');
  await bad.getByRole('button', { name: 'Add it as a note' }).click();
  await expect(bad).toBeEmpty();
  await expect(page.getByLabel('Note, row 4', { exact: true })).toHaveValue(/C9 \| cap/u);
  // One answer for both electrolytics, offered by the word of the list and not taken unasked.
  await expect(page.getByLabel('Type, row 1', { exact: true })).toHaveValue('');
  const ask = page.locator('.question', { hasText: 'What type of capacitor' }).first();
  await expect(ask).toContainText('C3');
  await expect(ask.getByRole('combobox')).toHaveValue('0');
  await page.getByRole('region', { name: 'Types' }).getByRole('button').click();
  for (const row of ['1', '2'])
    await expect(page.getByLabel(`Type, row ${row}`, { exact: true })).toHaveValue(
      /Aluminium electrolytic/u,
    );
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByLabel('Type, row 1', { exact: true })).toHaveValue('');
});

test('what is chosen from lists is taken together, and kept while rows are typed', async ({
  page,
}) => {
  await page.goto('/job/');
  await paste(page, 'C1\t22n 100V MKT\nC2\t470n 100V MKT\nC3\t220p mica\nQ1\tBC109C', FIRST);
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await page.getByRole('link', { name: /^4 questions/u }).click();
  await expect(page.getByRole('heading', { name: '4 questions about these rows' })).toBeFocused();
  const places = page.getByRole('region', { name: 'Places and uses' });
  await expect(places.getByRole('combobox', { name: /^C1/u })).toHaveValue('');
  await places.getByRole('combobox', { name: /^C1/u }).selectOption('Coupling between stages');
  await places.getByRole('combobox', { name: /^Q1/u }).selectOption({ index: 1 });
  // The questions are drawn anew once the list is another.
  await page.getByLabel('Note, row 2', { exact: true }).fill('behind the knob');
  await page.getByLabel('Designators, row 2', { exact: true }).fill('C22');
  await page.getByLabel('Note, row 1', { exact: true }).focus();
  await expect(places.getByRole('combobox', { name: /^C22/u })).toHaveValue('');
  await places.getByRole('button').click();
  await expect(page.getByLabel('Position, row 1', { exact: true })).toHaveValue(
    'Coupling between stages',
  );
  await expect(page.getByLabel('Position, row 2', { exact: true })).toHaveValue('');
  await expect(page.getByLabel('Position, row 4', { exact: true })).not.toHaveValue('');
  // One of a type is open beside it, and was not touched.
  await expect(page.getByLabel('Type, row 3', { exact: true })).toHaveValue('');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByLabel('Position, row 1', { exact: true })).toHaveValue('');
  await expect(page.getByLabel('Position, row 4', { exact: true })).toHaveValue('');
});

test('a demonstration is offered until a job is begun', async ({ page }) => {
  await page.goto('/job/');
  const demos = page.getByRole('button', { name: /^Demonstration/u });
  await expect(demos.first()).toBeVisible();
  await page.getByLabel('Marking, row 1', { exact: true }).fill('104K 100V');
  await expect(demos).toHaveCount(0);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(demos.first()).toBeVisible();
});

test('questions with long names to choose from are no wider than a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/job/');
  await paste(page, 'C2,C3\t470µ/25 axial\nC4\t0.047/630 paper', FIRST);
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.locator('.question select').first()).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
});

test('on a phone a row shows what is written in it, and all of it once gone into', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/job/');
  const field = (name: string, row: number) =>
    page.getByLabel(`${name}, row ${String(row)}`, { exact: true });
  await expect(field('Kind', 1)).toBeHidden();
  await paste(page, 'C1\t22n 100V MKT\nC2\t470n 100V MKT', FIRST);
  await page.getByRole('button', { name: 'Add these rows' }).click();
  for (const row of [1, 2]) {
    await expect(field('Designators', row)).toBeVisible();
    await expect(field('Marking', row)).toBeVisible();
  }
  await expect(field('Tolerance', 2)).toBeHidden();
  await field('Designators', 2).focus();
  await page.keyboard.press('Tab');
  await expect(field('Kind', 2)).toBeFocused();
  await field('Tolerance', 2).fill('5 %');
  await field('Marking', 1).focus();
  // What was gone into stays as it is, so that nothing moves below a finger.
  await expect(field('Note', 2)).toBeVisible();
  await page.reload();
  await expect(field('Tolerance', 2)).toHaveValue('5 %');
  await expect(field('Tolerance', 2)).toBeVisible();
  await expect(field('Note', 2)).toBeHidden();
  await page.setViewportSize({ width: 1280, height: 900 });
  await expect(field('Note', 2)).toBeVisible();
});

test('a column of kinds is taken as such, whatever heads it', async ({ page }) => {
  await page.goto('/job/');
  const table = [
    'Position;Part;Value',
    'C1, C2;Elko;4,7 µF',
    'R1;resistor;4k7',
    'U1;op amp;TL072',
    'C3;polyster;22 nF',
  ].join('\n');
  await paste(page, table, FIRST);
  const place = page.locator('#table-in');
  await expect(place.getByLabel('Column 1', { exact: false })).toHaveValue('designators');
  await expect(place.getByLabel('Column 2', { exact: false })).toHaveValue('kind');
  await place.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.getByLabel('Kind, row 3', { exact: true })).toHaveValue('op amp');
});

test('quotes, line breaks and scripts in cells stay text', async ({ page }) => {
  await page.goto('/job/');
  await paste(
    page,
    `Ref\tValue\tNote\nC1\t10 µF\t"two\nlines, ""quoted"""\nC2\t22 nF\t${HOSTILE}\n`,
  );
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.locator('#part-rows tr')).toHaveCount(2);
  await expect(page.getByLabel('Note, row 2', { exact: true })).toHaveValue(HOSTILE);
  await expect(page.getByLabel('Note, row 1', { exact: true })).toHaveValue(/two.*"quoted"/su);
  await expect(page.locator('#job-page img')).toHaveCount(0);
});

const BOM = '\uFEFF';
const files: readonly [string, Buffer][] = [
  ['with a mark and CRLF', Buffer.from(`${BOM}Ref,Value\r\nC1,10 µF\r\n`)],
  ['in UTF-16', Buffer.from(`${BOM}Ref\tValue\r\nC1\t10 µF\r\n`, 'utf16le')],
  ['in Windows-1252', Buffer.from('Ref;Value\r\nC1;10 \u00B5F\r\n', 'latin1')],
];
for (const [how, bytes] of files) {
  test(`a table saved ${how} is read`, async ({ page }) => {
    await page.goto('/job/');
    await giveTable(page, bytes);
    await page.getByRole('button', { name: 'Add these rows' }).click();
    await expect(page.getByLabel(FIRST, { exact: true })).toHaveValue('C1');
    await expect(page.getByLabel('Value, row 1', { exact: true })).toHaveValue('10 µF');
  });
}

test('a table over 50 MB is refused, and what is there stays', async ({ page }) => {
  await page.goto('/job/');
  await page.getByLabel(FIRST, { exact: true }).fill('C7');
  // The browser is only told of a size: nothing of it may be read.
  await page.locator('#table-file').evaluate((input: HTMLInputElement) => {
    const large = new File([new Uint8Array(50_000_001)], 'large.csv');
    const given = new DataTransfer();
    given.items.add(large);
    input.files = given.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await expect(page.locator('#job-said')).toContainText('larger than 50 MB');
  await expect(page.getByLabel(FIRST, { exact: true })).toHaveValue('C7');
});

test('keys of prototypes in a table do no harm', async ({ page }) => {
  await page.goto('/job/');
  await giveTable(page, 'Ref,__proto__,constructor\nC1,a,b\n');
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.getByLabel(FIRST, { exact: true })).toHaveValue('C1');
  expect(await page.evaluate(() => Object.hasOwn(Object.prototype, 'a'))).toBe(false);
});

test('a worn marking is asked about, and the answer settles it', async ({ page }) => {
  await page.goto('/job/');
  await paste(page, 'Ref\tKind\tMarking\nC1\tcap\t100\nC2\tcap\t100\nC3\tcap\t104K 100V\n');
  await page.getByRole('button', { name: 'Add these rows' }).click();
  const ask = page.locator('.question', { hasText: 'may be read in several ways' });
  await expect(ask).toHaveCount(1);
  await expect(ask).toContainText('C1, C2');
  await ask.locator('summary').click();
  await ask.getByRole('checkbox', { name: 'C2' }).uncheck();
  await ask.getByRole('button', { name: /100 pF/u }).click();
  await expect(page.getByLabel('Value, row 1', { exact: true })).toHaveValue('100p');
  await expect(page.getByLabel('Value, row 2', { exact: true })).toHaveValue('');
  // A marking that reads one way fills nothing in that is seen as typed, and is not asked about.
  await expect(page.getByLabel('Value, row 3', { exact: true })).toHaveValue('');
});

test('a designator in two rows is said, and counted as such in the order', async ({ page }) => {
  await page.goto('/job/');
  const same = 'capacitor\t\tal-electrolytic-wet\t10 µF\t20 %\t25 V\tinterstage-coupling\t';
  await paste(page, `C1-C3\t${same}\nC3\t${same}`, FIRST);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const lines = page.locator('.plan-line');
  await expect(lines.first()).toContainText('C3 is in another row too');
  await page.getByLabel('Only what wants attention').check();
  await expect(lines.first()).toBeVisible();
});

test('a working voltage for many rows at once, and for one in the plan', async ({ page }) => {
  await openDemo(page);
  for (const row of ['6', '7']) await page.getByLabel(`Select row ${row}`, { exact: true }).check();
  await expect(page.locator('#planning')).toHaveText('');
  const box = page.locator('#selected-fields');
  await box.locator('summary').click();
  await expect(box).toContainText('2 rows selected');
  await expect(box.getByLabel(/^DC voltage across it/u)).toBeVisible();
  await box.getByLabel(/^DC voltage across it/u).fill('18 V');
  await box.getByRole('button', { name: 'Set for these rows' }).click();
  await expect(page.locator('#selected-said')).toContainText('Set in 2 rows');
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const line = page.locator('.plan-line', { hasText: 'C15, C16' });
  await line.locator('summary').first().click();
  await line.locator('[data-fields] > summary').click();
  const field = line.getByLabel(/^DC voltage across it/u);
  await expect(field).toHaveValue('18 V');
  await field.fill('24 V');
  await field.press('Tab');
  // What is chosen follows, and the fields stay open.
  await expect(line.getByLabel(/^DC voltage across it/u)).toHaveValue('24 V');
  await expect(line.getByRole('link', { name: /All findings/u })).toHaveAttribute(
    'href',
    /vdc=24/u,
  );
});

test('the filter leaves what somebody has to look at, with the reason', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await expect(page.locator('.plan-line .verdict').first()).toBeVisible();
  const all = await page.locator('.plan-line').count();
  await page.getByLabel('Only what wants attention').check();
  const left = page.locator('.plan-line');
  expect(await left.count()).toBeLessThan(all);
  await expect(left.filter({ hasText: 'C19' })).toContainText('several ways');
  await expect(left.filter({ hasText: 'C3, C4' })).toContainText(/It may stay, but even new/u);
  for (const line of await left.all()) await expect(line.locator('.remark').first()).toBeVisible();
});

test('a reason may be typed and a button pressed at once', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const line = page.locator('.plan-line').first();
  await expect(line.locator('.verdict')).toBeVisible();
  await line.locator('summary').first().click();
  await line.getByLabel('Reason', { exact: true }).pressSequentially('as found');
  const button = line.getByRole('button', { name: 'Take this' }).nth(1);
  const box = await button.boundingBox();
  if (box === null) throw new Error('no button');
  // As slowly as a hand: the list may not be drawn between press and release.
  await page.mouse.move(box.x + 5, box.y + 5);
  await page.mouse.down();
  await page.waitForTimeout(400);
  await page.mouse.up();
  await expect(line).toContainText('Chosen by you');
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('the plan and the order of the invented board stand on the page', async ({ page }) => {
    await page.goto('/job/');
    await expect(page.getByRole('region', { name: 'Plan of the invented board' })).toContainText(
      /C1, C2/u,
    );
    await expect(page.getByRole('region', { name: 'What to buy' })).toContainText('spare');
  });
});

test('bands named in a marking are read, by what is fetched for them', async ({ page }) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(new URL(request.url()).pathname));
  const hasColours = () => fetched.some((path) => path.endsWith('/catalogue/colours.json'));
  await page.goto('/job/');
  await paste(page, 'Ref\tKind\tMarking\nC1\tcapacitor\t104K 100V\n', FIRST);
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.locator('.question').first()).toBeVisible();
  expect(hasColours()).toBe(false);
  await paste(page, 'Ref\tKind\tMarking\tValue\nR1\tresistor\tbrown black orange gold\t1k\n');
  await page.getByRole('button', { name: 'Add these rows' }).click();
  const ask = page.locator('.question', { hasText: 'the marking reads as 10' });
  await expect(ask).toContainText('R1');
  expect(hasColours()).toBe(true);
  await ask.getByRole('button', { name: /10.kΩ|Take this/u }).click();
  await expect(page.getByLabel('Value, row 2', { exact: true })).toHaveValue('10k');
});

test('a list as people type it becomes lines', async ({ page }) => {
  await page.goto('/job/');
  await paste(page, 'C1 10uF 25V electrolytic\nR2, R3 4,7k\nU1 TL072', FIRST);
  const place = page.locator('#table-in');
  await expect(place).toContainText('3 rows to add, 0 not understood');
  await place.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.getByLabel('Designators, row 2', { exact: true })).toHaveValue('R2, R3');
  await expect(page.getByLabel('Marking, row 1', { exact: true })).toHaveValue(
    '10uF 25V electrolytic',
  );
});
