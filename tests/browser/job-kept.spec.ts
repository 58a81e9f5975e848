import { readFile } from 'node:fs/promises';
import { giveJob, openDemo, paste, planned } from './job-table.ts';
import { expect, test } from './watched.ts';

/** What may happen to a job: tabs, files, links, paper. */

const title = { name: 'Title' };

test('the other tab’s version is shown without leaving a copy', async ({ page, context }) => {
  await page.goto('/job/');
  await page.getByRole('textbox', title).fill('Ours');
  await expect(page.locator('#keeping')).toContainText('Kept');
  const other = await context.newPage();
  await other.goto('/job/');
  await other.getByRole('textbox', title).fill('Theirs');
  await expect(other.locator('#keeping')).toContainText('Kept');
  await page.getByRole('button', { name: 'Show the other tab' }).click();
  await expect(page.getByRole('textbox', title)).toHaveValue('Theirs');
  await expect(page.locator('#elsewhere')).toBeHidden();
  await expect(page.locator('#jobs option')).toHaveCount(1);
});

test('a tab that is killed loses at most its last change', async ({ page, context }) => {
  await page.goto('/job/');
  const cell = page.getByLabel('Designators, row 1', { exact: true });
  const kept = page.locator('#keeping');
  for (const text of ['C1', 'C1, C2', 'C1, C2, C3']) {
    await cell.fill(text);
    await expect(kept).toHaveText('Kept in this browser.');
  }
  await cell.fill('C1, C2, C3, C4');
  // Not even the events of a page that is left are sent to one that is killed.
  const session = await context.newCDPSession(page);
  void session.send('Page.crash').catch(() => undefined);
  await page.waitForEvent('crash');
  const again = await context.newPage();
  await again.goto('/job/');
  await expect(again.getByLabel('Designators, row 1', { exact: true })).toHaveValue(
    /^C1, C2, C3(?:, C4)?$/u,
  );
});

test('what is typed right before the page is left is there on the next', async ({ page }) => {
  await page.goto('/job/');
  await expect(page.locator('#keeping')).toHaveText('Kept in this browser.');
  for (const text of ['C1', 'C1, C2']) {
    // In one go, so that nothing can be written in between.
    await page.evaluate((typed) => {
      const cell = document.querySelector<HTMLInputElement>('[data-field="designators"]');
      if (cell === null) throw new Error('no cell');
      cell.value = typed;
      cell.dispatchEvent(new Event('input', { bubbles: true }));
      location.reload();
    }, text);
    await expect(page.getByLabel('Designators, row 1', { exact: true })).toHaveValue(text);
    await expect(page.locator('#jobs option')).toHaveCount(1);
  }
  const left = await page.evaluate(() => Object.keys(localStorage));
  expect(left.filter((key) => key.startsWith('unkept'))).toEqual([]);
});

test('a change is written at once where none was written just before', async ({ page }) => {
  await page.goto('/job/');
  await expect(page.locator('#keeping')).toHaveText('Kept in this browser.');
  await page.waitForTimeout(300);
  // By the clock of the page: a timer that had to run out first would come before the writing.
  const order = await page.evaluate(
    () =>
      new Promise<string[]>((resolve) => {
        const said: string[] = [];
        const { put } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given) {
          said.push('written');
          return put.apply(this, given);
        };
        const input = document.querySelector<HTMLInputElement>('#job-title');
        if (input === null) return;
        input.value = 'Ours';
        input.dispatchEvent(new Event('input', { bubbles: true }));
        setTimeout(() => {
          said.push('waited');
          resolve(said);
        }, 140);
      }),
  );
  expect(order).toEqual(['written', 'waited']);
});

test('a new job goes by the guideline that this reader likes', async ({ page }) => {
  await page.goto('/job/');
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const form = page.locator('#whole-board');
  await page.getByText('What holds for the whole board').click();
  const offered = await form.getByLabel('Guideline').locator('option').nth(2).getAttribute('value');
  await page.evaluate((id) => {
    localStorage.setItem('guideline', id ?? '');
  }, offered);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(form.getByLabel('Guideline')).toHaveValue(offered ?? '');
  // It may have been written by anybody.
  await page.evaluate(() => {
    localStorage.setItem('guideline', 'nonsense');
  });
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(form.getByLabel('Guideline')).toHaveValue('');
});

test('the list is saved as a table that opens here again', async ({ page }) => {
  await openDemo(page);
  const rows = await page.locator('#part-rows tr').count();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the list as CSV' }).click(),
  ]);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.locator('#table-file').setInputFiles(await saved.path());
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.locator('#part-rows tr')).toHaveCount(rows);
  await expect(page.getByLabel('Note, row 1', { exact: true })).toHaveValue(/^Bead whose plus/u);
});

test('going from job to job saves nothing that did not change', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('button', { name: 'Save as a file' }).click();
  await expect(page.locator('#reminder')).toBeHidden();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.locator('#jobs option')).toHaveCount(3);
  await page.locator('#jobs').selectOption({ label: 'Line amplifier and tone card' });
  await expect(page.getByRole('textbox', title)).toHaveValue('Line amplifier and tone card');
  // Saved as a file once, and not touched since.
  await expect(page.locator('#reminder')).toBeHidden();
});

test('after a copy was made for this tab, undo goes on in the copy', async ({ page, context }) => {
  await page.goto('/job/');
  await page.getByRole('textbox', title).fill('Ours');
  await expect(page.locator('#keeping')).toContainText('Kept');
  const other = await context.newPage();
  await other.goto('/job/');
  await other.getByRole('textbox', title).fill('Theirs');
  await expect(other.locator('#keeping')).toContainText('Kept');
  await page.getByRole('textbox', { name: 'Equipment' }).fill('Mine');
  await expect(page.locator('#jobs option')).toHaveCount(2);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('textbox', { name: 'Equipment' })).toHaveValue('');
  await expect(page.locator('#keeping')).toContainText('Kept');
  await expect(page.locator('#jobs option')).toHaveCount(2);
});

const job = (lines: string): string =>
  `{"format":"understudy-job","version":1,"id":"x","title":"T","lines":[${lines}]`;
const line = '{"id":"1","designators":"C1","value":"10 µF"}';

const broken: readonly [string, string | Buffer, RegExp, number][] = [
  ['breaks off', job(`${line},{"id":"2","desig`), /breaks off/u, 1],
  ['has keys of prototypes', `${job(line)},"__proto__":{"polluted":1}}`, /missing or broken/u, 1],
  ['holds a broken line', `${job(`${line},{"id":7}`)}}`, /Line 2 is broken/u, 1],
  [
    'is of a newer edition',
    `${job(line).replace('"version":1', '"version":9')}}`,
    /newer edition/u,
    0,
  ],
  ['is no JSON', '<!doctype html><script>alert(1)</script>', /not a job file/u, 0],
  ['is saved in UTF-16', Buffer.from(`\uFEFF${job(line)}}`, 'utf16le'), /Read as UTF-16/u, 1],
  ['is nested too deep', `${'['.repeat(100_000)}`, /nested deeper/u, 0],
];
for (const [how, text, said, opened] of broken) {
  test(`of a file that ${how}, what is sound is opened and the rest said`, async ({ page }) => {
    await page.goto('/job/');
    await page.getByRole('textbox', title).fill('Before');
    await page.getByRole('textbox', title).blur();
    await expect(page.locator('#keeping')).toContainText('Kept');
    await giveJob(page, text);
    await expect(page.locator('#job-said')).toContainText(said);
    if (opened === 0) await expect(page.getByRole('textbox', title)).toHaveValue('Before');
    else {
      await expect(page.getByRole('textbox', title)).toHaveValue('T');
      await expect(page.locator('#part-rows tr')).toHaveCount(opened);
    }
    // The job that was open before is kept in either case.
    await expect(page.locator('#jobs option', { hasText: 'Before' })).toHaveCount(1);
    expect(await page.evaluate(() => Object.hasOwn(Object.prototype, 'polluted'))).toBe(false);
  });
}

test('what is saved as a file is the same when it is opened and saved again', async ({ page }) => {
  await openDemo(page);
  const save = async (): Promise<Record<string, unknown>> => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    return JSON.parse(await readFile(await download.path(), 'utf8')) as Record<string, unknown>;
  };
  const first = await save();
  await giveJob(page, JSON.stringify(first));
  await expect(page.locator('#jobs option')).toHaveCount(3);
  const again = await save();
  // It is a job of its own from then on.
  const { id, created, changed } = again;
  expect(id).not.toBe(first['id']);
  expect(again).toEqual({ ...first, id, created, changed });
});

test('a job too long for a link says its size and offers the file', async ({ page }) => {
  await page.goto('/job/');
  const rows = Array.from({ length: 1500 }, (_, at) => {
    const odd = Math.sin(at).toString().slice(2, 12);
    return `C${String(at)}\t${odd}\tnote ${odd}${odd.split('').reverse().join('')}`;
  });
  await paste(page, `Ref\tMarking\tNote\n${rows.join('\n')}`);
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await page.getByRole('button', { name: 'Copy a link' }).click();
  const said = page.locator('#job-said');
  await expect(said).toContainText(/about [\d,]+ characters/u);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    said.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.json$/u);
});

test('a disk without room is said, and the job stays open', async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', 'QuotaExceededError');
    };
  });
  await page.goto('/job/');
  await page.getByRole('textbox', title).fill('Ours');
  await expect(page.locator('#job-said')).toContainText('no room left');
  await expect(page.getByRole('textbox', title)).toHaveValue('Ours');
});

test('the demonstration goes from paste to the printed record', async ({ page }) => {
  await openDemo(page);
  const rows = await page
    .locator('#part-rows tr')
    .evaluateAll((all) =>
      all.map((row) =>
        [...row.querySelectorAll<HTMLInputElement>('[data-field]')].map(({ value }) => value),
      ),
    );
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.locator('#part-rows tr')).toHaveCount(1);
  const head = [
    'Designators',
    'Kind',
    'Marking',
    'Type',
    'Value',
    'Tolerance',
    'Voltage',
    'Position',
    'Note',
  ];
  await paste(page, [head, ...rows].map((cells) => cells.join('\t')).join('\n'));
  await page.getByRole('button', { name: 'Add these rows' }).click();
  await expect(page.locator('#part-rows tr')).toHaveCount(rows.length);
  await planned(page);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  const first = page.locator('.plan-line').first();
  await expect(first.locator('.verdict')).toBeVisible();
  await first.locator('summary').first().click();
  await first.getByLabel('Decision').selectOption('replace');
  await page.getByRole('link', { name: 'Order list' }).click();
  await expect(page.locator('#order-list')).toContainText(/C1\W+C2/u);
  await page.getByRole('link', { name: 'Bench sheet' }).click();
  await page.getByLabel('Go to').selectOption({ index: 1 });
  await page
    .locator('#bench-steps')
    .getByRole('checkbox', { name: /^(?:Done|Tested)$/u })
    .first()
    .check();
  await page.getByRole('link', { name: 'Record' }).click();
  await expect(page.locator('#record-list')).toContainText('C1');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#record-list')).toBeVisible();
  await expect(page.locator('.job-bar').first()).toBeHidden();
  const paper = await page.pdf();
  expect(paper.length).toBeGreaterThan(1000);
});

test('the supply card brings up its cautions', async ({ page }) => {
  await openDemo(page, 1);
  await page.getByRole('link', { name: 'Bench sheet' }).click();
  await expect(page.locator('#bench-cautions')).toContainText(/mains/iu);
});
