import { writeJob } from '../../src/job/keeping/file.ts';
import { emptyJob, emptyLine } from '../../src/job/model/job.ts';
import { giveJob, planned } from './job-table.ts';
import { expect, test } from './watched.ts';

/** A resistor that is measured at the bench is judged by it, on the sheet and in the plan. */

const job = {
  ...emptyJob('measured', new Date(0)),
  title: 'Anode loads',
  lines: ['R1', 'R2, R3'].map((designators) => ({
    ...emptyLine(designators),
    designators,
    kind: 'resistor',
    type: 'carbon-composition',
    value: '100 kΩ',
    tolerance: '10 %',
    volts: '0.5 W',
    position: 'plate-load',
  })),
};

test('a carbon composition part of 100 kΩ that reads 128 kΩ is to go', async ({ page }) => {
  await page.goto('/job/');
  await giveJob(page, writeJob(job));
  await planned(page);
  await page.getByRole('link', { name: 'Bench sheet' }).click();
  await expect(page.locator('#planning')).toHaveText('');
  const chooser = page.locator('#bench-go');
  const step = page.locator('.bench-step:visible');
  // One of two parts of a line is judged by itself.
  await chooser.selectOption({ label: 'R2: test' });
  await step.getByLabel('Resistance, before').first().fill('104k');
  await expect(step).toContainText('By its own readings: leave.');
  await expect(step).toContainText('Within its tolerance');
  // One that has a line to itself is judged in the plan.
  await chooser.selectOption({ label: 'R1: test' });
  await step.getByLabel('Resistance, before').first().fill('128k');
  await expect(chooser.locator('option', { hasText: 'R1: replace' })).toHaveCount(1);
});
