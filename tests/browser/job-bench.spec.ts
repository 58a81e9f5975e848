import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './watched.ts';

/** The bench sheet and the record of a job, on a tablet, by keyboard and on paper. */

const openSheet = async (page: Page, demo = 0): Promise<void> => {
  await page.goto('/job/');
  await page
    .getByRole('button', { name: /^Demonstration/u })
    .nth(demo)
    .click();
  await expect(page.locator('#invented')).toContainText('invented');
  await page.getByRole('link', { name: 'Bench sheet' }).click();
  await expect(page.locator('#bench-cautions')).toContainText('Before you begin');
  await expect(page.locator('#planning')).toHaveText('');
};

const steps = (page: Page): Locator => page.locator('#bench-steps .bench-step');

/** Opens a part or a check by the beginning of its title. */
const goTo = async (page: Page, title: string): Promise<Locator> => {
  const chooser = page.locator('#bench-go');
  const begins = new RegExp(`^\\s*(?:✓ )?${title}`, 'u');
  const option = chooser.locator('option', { hasText: begins }).first();
  await chooser.selectOption(await option.getAttribute('value'));
  const step = page.locator('.bench-step:visible');
  await expect(step).toContainText(title);
  return step;
};

test('one part at a time, by finger and by keyboard', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  await openSheet(page);
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(steps(page)).toHaveCount(1);
  await expect(page.locator('#bench-said')).toContainText(/Part 1 of \d+/u);
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('#bench-said')).toContainText('Part 2 of');
  await page.keyboard.press('ArrowLeft');
  await expect(page.locator('#bench-said')).toContainText('Part 1 of');
  const tick = steps(page).getByLabel('Tested');
  await tick.focus();
  await page.keyboard.press('Space');
  await expect(page.locator('#bench-said')).toContainText('1 done');
  await expect(steps(page)).toContainText('Ticked');
  await expect(tick).toBeFocused();
  await expect(page.locator('#bench-progress')).toHaveJSProperty('value', 1);
  const small = await page
    .locator('#sheet')
    .locator('button:visible, select:visible, input:visible:not([type=checkbox]), .bench-tick')
    .evaluateAll((all) =>
      all.flatMap((one) => {
        const { width, height } = one.getBoundingClientRect();
        return width < 44 || height < 44 ? [`${one.outerHTML} ${String(width)}`] : [];
      }),
    );
  expect(small).toEqual([]);
});

test('a capacitor is drawn old beside new, with its polarity, and read with a comma', async ({
  page,
}) => {
  await openSheet(page);
  const step = await goTo(page, 'C10');
  const drawing = step.locator('svg.part-drawing');
  await expect(drawing).toHaveAttribute('aria-label', /old part.*minus.*stand-in.*minus/iu);
  await step.getByLabel('Capacitance, after').fill('46,8 u');
  await expect(step.locator('[data-live="capacitance after"]')).toHaveText('= 46.8\u00A0µF');
  await step.getByLabel('ESR, after').fill('wobbly');
  await expect(step.locator('[data-live="esr after"]')).not.toHaveText('');
  await step.getByLabel('ESR, after').fill('');
  await step.getByLabel('Note').fill('=1+1');
  await page.getByRole('link', { name: 'Record' }).click();
  await expect(page.locator('#record-list')).toContainText('Capacitance 46.8\u00A0µF');
});

test('a trimmer is set by what is typed, as it is typed', async ({ page }) => {
  await openSheet(page);
  const step = await goTo(page, 'RV1');
  const said = step.locator('[data-live="preset"]');
  await expect(said).toContainText('Set it to 2.687\u00A0kΩ');
  await expect(said).toContainText('4.68 turns towards less resistance');
  const supplied = step.getByLabel('New as supplied');
  await supplied.fill('2,187 k');
  await expect(said).toContainText('1.25 turns towards more resistance');
  await expect(supplied).toBeFocused();
  await page.getByRole('link', { name: 'Record' }).click();
  await expect(page.locator('#record-list')).toContainText('1.25 turns towards more resistance');
});

test('readings of one of several parts judge that one, and the plan takes it', async ({ page }) => {
  await openSheet(page);
  const step = await goTo(page, 'C7');
  await step.getByLabel('Capacitance, before').fill('2,2 µF');
  await expect(step.locator('[data-live="judged"]')).toContainText('replace');
  await step.getByRole('button', { name: 'Judge C7 by itself' }).click();
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const line = page.locator('.plan-line', { hasText: /^\s*C7\b(?!,)/u });
  await expect(line).toContainText('Replace');
  await page.getByRole('link', { name: 'Order list' }).click();
  await expect(page.locator('#order-list')).toContainText('C7');
});

test('sockets, adjustments and checks come to the record, which opens again the same', async ({
  page,
}) => {
  await openSheet(page);
  const socket = await goTo(page, 'XU1');
  await expect(socket.locator('svg.part-drawing')).toBeVisible();
  await socket.getByLabel('Notch points').selectOption('left');
  await socket.getByLabel('Decoupling beside it').selectOption('fitted now');
  await socket.getByLabel('Done').check();
  const adjust = await goTo(page, 'Adjustments');
  await adjust.getByRole('button', { name: /^Earlier: RV2/u }).click();
  await expect(adjust.locator('li').first().getByLabel('What')).toHaveValue(/^RV2/u);
  await expect(adjust.getByRole('button', { name: /^Earlier: RV2/u })).toBeFocused();
  await adjust.locator('li').first().getByLabel('After').fill('0,775 V');
  const rails = await goTo(page, 'Rails');
  await rails.getByLabel('Each rail').fill('+15.02, -14.98');
  await rails.getByLabel('Done').check();
  await page.getByRole('link', { name: 'Record' }).click();
  const record = page.locator('#record-list');
  for (const text of ['Notch points left', 'fitted now', '0,775 V', '+15.02, -14.98'])
    await expect(record).toContainText(text);
  const before = await record.innerText();
  const [csv] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV' }).and(page.locator('#record-csv')).click(),
  ]);
  const table = await readFile(await csv.path(), 'utf8');
  expect(table).toContain('adjustment 1,RV2');
  expect(table).toContain('"\'+15.02, -14.98"');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as JSON' }).click(),
  ]);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(record).toContainText('Nothing to record yet');
  await page.locator('#job-file').setInputFiles(await file.path());
  await expect(record).toContainText('fitted now');
  expect(await record.innerText()).toBe(before);
});

test('only what this board can do is warned of, and each warning is open once', async ({
  page,
}) => {
  await openSheet(page);
  await page.getByLabel('Whole list').check();
  const titles = page.locator('#sheet details.caution[open] summary');
  const said = await titles.allTextContents();
  expect(new Set(said).size).toBe(said.length);
  expect(said.join()).not.toMatch(/flyback|picture|mains/iu);
});

for (const [format, width] of [
  ['A4', 680],
  ['Letter', 702],
] as const) {
  for (const demo of [0, 1]) {
    test(`sheet and record ${String(demo + 1)} on ${format}: nothing is cut, all is there`, async ({
      page,
    }) => {
      await openSheet(page, demo);
      for (const part of ['sheet', 'record', 'order']) {
        await page.locator(`#to-${part}`).click();
        await page.emulateMedia({ media: 'print' });
        // The paper's width within margins of 15 mm, at 96 px to the inch.
        await page.setViewportSize({ width, height: 1000 });
        await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
        await expect(page.locator('#paper-head')).not.toBeEmpty();
        await expect(page.locator('#printed-from')).toHaveText(/^Printed .* GMT from http/u);
        const wide = await page.locator(`#${part} *`).evaluateAll((all, most) => {
          const seen = all.filter((one) => !one.closest('svg') && !one.closest('.hidden-text'));
          return seen.flatMap((one) => {
            const { right, width: own } = one.getBoundingClientRect();
            return own > 1 && right > most + 1 ? [one.outerHTML.slice(0, 80)] : [];
          });
        }, width);
        expect(wide, part).toEqual([]);
        if (part === 'sheet') {
          const count = await page.locator('#bench-go option').count();
          await expect(page.locator('#sheet .bench-step')).toHaveCount(count);
        }
        await expect(page.locator('.job-bar:visible, .site-nav:visible')).toHaveCount(0);
        await page.evaluate(() => dispatchEvent(new Event('afterprint')));
        await page.emulateMedia({ media: 'screen' });
        await page.setViewportSize({ width: 1280, height: 800 });
      }
    });
  }
}

test('parts of every family go in with what is known of them', async ({ page }) => {
  await openSheet(page);
  const resistor = await goTo(page, 'R1');
  await expect(resistor).toContainText('Metal film resistor, 47\u00A0kΩ ±1\u00A0%');
  await resistor.getByLabel('Resistance, after').fill('49 k');
  await expect(resistor.locator('[data-live="resistance after"]')).toContainText(
    'Outside its tolerance',
  );
  const socket = await goTo(page, 'XU1');
  await socket.getByLabel('Notch points').selectOption('up');
  await expect(socket.locator('.bench-drawing')).toContainText('its notch up');
  await page.getByRole('link', { name: 'Record' }).click();
  await expect(page.locator('#record-list')).toContainText('outside its tolerance: 47\u00A0kΩ');
  await page.getByRole('link', { name: 'Order list' }).click();
  await expect(page.locator('#order-list')).toContainText('ppm/K');
});
