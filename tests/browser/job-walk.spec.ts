import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { giveJob, giveTable, planned } from './job-table.ts';
import { expect, test } from './watched.ts';

/** From an empty job to its record, by somebody who has a spreadsheet from a colleague abroad. */

/** Kinds of all sorts; the column “Bauteil” holds kinds, and one note has a line break in it. */
const LIST = [
  'Bez.;Stk;Bauteil;Aufdruck;Wert;Toleranz;Spannung;Bemerkung',
  'C1–C4;4;Elko;;100 µF;20 %;25 V;Netzteil',
  'C5, C6;2;Elko;;4,7 µF;;63 V;"Kopplung, zwei\nZeilen"',
  'C7;1;Folie;.1K100;;;;',
  'C8-C10;3;Keramik;104;;;50 V;',
  'C11;1;Styroflex;;470 pF;2,5 %;63 V;',
  'C12;1;Tantal;22/16;22 µF;20 %;16 V;an der Schiene',
  'C13;1;Kondensator;2n2;;;;',
  'C14;1;cap;;1.000 µF;20 %;40 V;',
  'C15;1;cap;;0,1µ;;275 V~;X2 am Netz',
  'C16;1;cap;"?22";;;;"sagt ""nix"""',
  'R1..R3;3;Widerstand;;4,7k;5 %;0,25 W;',
  'R4;1;Widerstand;;2R2;10 %;;Sicherung?',
  'RV1;1;Trimmer;;10k;20 %;;Pegel',
  'RV2;1;Poti;;47k;;;',
  'Q1, Q2;2;Transistor;BC109C;;;;Kanal',
  'Q3;1;Transistor;BC179;;;;',
  'D1-D4;4;Diode;1N4004;;;;',
  'IC1;1;IC;TL072;;;;im Sockel',
  'IC2;1;IC;7815;;;;',
  'XU1;1;Sockel;;8 pins;;;',
  'J1;1;Stecker;;22-polig;;;',
  'F1;1;Sicherung;;0,315 A;;250 V;',
  'T1;1;Trafo;;2 x 18 V;;;',
  'C20-R9;1;cap;;10 n;;;kaputt',
  '=1+1;1;cap;;10 n;;;',
  'C21;1;cap;;10;n;;;;zu viel',
].join('\r\n');

const cell = (page: Page, field: string, row: number) =>
  page.getByLabel(`${field}, row ${String(row)}`, { exact: true });
const to = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();

const pick = async (page: Page, rows: readonly number[]): Promise<void> => {
  for (const row of rows)
    await page.getByLabel(`Select row ${String(row)}`, { exact: true }).click();
};

const setIn = async (page: Page, rows: readonly number[], field: string, text: string) => {
  await pick(page, rows);
  await page.locator('#set-field').selectOption(field);
  await page.locator('#set-text').fill(text);
  await page.locator('#set-rows').getByRole('button', { name: 'Set', exact: true }).click();
  await pick(page, rows);
};

const lineOf = (page: Page, designators: string) =>
  page.locator('.plan-line', {
    has: page.locator('summary strong', { hasText: new RegExp(`^${designators}$`, 'u') }),
  });

test('a list from abroad becomes a plan, an order, work at the bench and a record', async ({
  page,
  context,
}) => {
  test.setTimeout(240_000);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/job/');
  await giveTable(page, Buffer.from(`\uFEFF${LIST}`, 'utf16le'));
  const table = page.locator('#table-in');
  await expect(table).toContainText('25 rows to add, 1 not understood');
  await expect(table.getByLabel('Column 1', { exact: false })).toHaveValue('designators');
  await expect(table.getByLabel('Column 3', { exact: false })).toHaveValue('kind');
  await table.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.locator('#bad-rows')).toContainText('zu viel');
  await expect(cell(page, 'Note', 2)).toHaveValue('Kopplung, zwei Zeilen');
  await expect(cell(page, 'Value', 8)).toHaveValue('1000 µF');

  // Position, type and what stands across them, for many rows at once.
  await setIn(page, [1, 8], 'position', 'Bulk capacitor on a rail');
  await setIn(page, [2, 3], 'position', 'Coupling between stages');
  await setIn(page, [1, 2, 8], 'type', 'Aluminium electrolytic, general purpose');
  await setIn(page, [3], 'type', 'Metallized polyester film');
  await planned(page);
  await pick(page, [1, 8]);
  const box = page.locator('#selected-fields');
  await box.locator('summary').click();
  await box.getByLabel(/^Age/u).fill('45');
  await box.getByRole('button', { name: 'Set for these rows' }).click();
  await expect(page.locator('#selected-said')).toContainText('Set in 2 rows');

  await to(page, 'Plan');
  await planned(page);
  await expect(lineOf(page, 'C1-C4')).toContainText(/Replace.+electrolytic/su);
  await expect(lineOf(page, 'C20-R9')).toContainText('Designators');
  // Another stand-in, with a reason, kept whatever comes.
  const rail = lineOf(page, 'C1-C4');
  await rail.locator('summary').first().click();
  await rail.getByRole('button', { name: 'Take this' }).nth(1).click();
  await rail.getByLabel('Why this part').fill('it lies in the drawer');
  await rail.getByLabel('Why this part').press('Tab');
  await rail.getByLabel('Keep it whatever ranks first').check();
  await expect(rail).toContainText('Chosen by you');
  // A decision of one's own asks for its reason. By the keyboard, since lines move while the one above is drawn anew.
  const film = lineOf(page, 'C7');
  await film.locator('summary').first().press('Enter');
  await film.getByLabel('Decision').selectOption('replace');
  await expect(film).toContainText('give the reason');
  await film.getByLabel('Reason').fill('its lead is torn off');
  await film.getByLabel('Reason').press('Tab');
  await expect(film).not.toContainText('give the reason');

  await to(page, 'Order list');
  const order = page.locator('#order-list');
  await expect(order.locator('tr', { hasText: 'C1-C4' })).toContainText('5 (4 + 1 spare)');
  await expect(order.locator('tr', { hasText: 'C7' })).toContainText('100 nF');

  await to(page, 'Bench sheet');
  const chooser = page.locator('#bench-go');
  const step = await chooser.locator('option', { hasText: /^C1: replace/u }).getAttribute('value');
  await chooser.selectOption(step);
  const bench = page.locator('#bench-steps');
  await bench.locator('[data-id="capacitance"][data-time="before"]').fill('61,5 µF');
  await bench.locator('[data-id="capacitance"][data-time="after"]').fill('102 µF');
  await bench.getByLabel('Note', { exact: true }).fill('pad lifted, mended with wire');
  await bench.getByLabel('Done').check();

  await to(page, 'Record');
  const record = page.locator('#record-list');
  const done = record.locator('tr', { hasText: 'pad lifted' });
  for (const words of ['61.5', '102', '45 years', /it lies in the drawer/iu, 'UTC'])
    await expect(done).toContainText(words);
  await expect(record).toContainText('zu viel');
  const told = (await record.innerText()).replaceAll(/\s+/gu, ' ');

  // Opened again from its file and from its link, the record is the same word for word.
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  const file = await readFile(await download.path());
  await page.getByRole('button', { name: 'Copy a link' }).click();
  await expect(page.locator('#job-said')).toContainText(/link of \d+ characters/u);
  const address = await page.evaluate(() => navigator.clipboard.readText());
  const isTold = () =>
    expect
      .poll(async () => (await record.innerText()).replaceAll(/\s+/gu, ' '), { timeout: 30_000 })
      .toBe(told);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(record).toContainText('Nothing to record yet');
  await giveJob(page, file);
  await isTold();
  await page.goto('about:blank');
  await page.goto(address);
  await to(page, 'Record');
  await isTold();
});
