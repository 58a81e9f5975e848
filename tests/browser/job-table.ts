import { expect, type Page } from '@playwright/test';

/** Pastes a text as a spreadsheet's clipboard would: onto a cell, else onto the page itself. */
export const paste = async (page: Page, text: string, cell?: string): Promise<void> => {
  const target = cell === undefined ? page.locator('body') : page.getByLabel(cell, { exact: true });
  await target.evaluate((element, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    element.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    );
  }, text);
};

/** Gives a table as a file. */
export const giveTable = async (page: Page, text: string | Buffer): Promise<void> => {
  await page.locator('#table-file').setInputFiles({
    name: 'parts.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(text as string),
  });
};

/** Gives a job as a file. */
export const giveJob = async (page: Page, text: string | Buffer): Promise<void> => {
  await page.locator('#job-file').setInputFiles({
    name: 'job.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text as string),
  });
};

/** Waits until the plan of the open job is there; a slow machine takes its time. */
export const planned = async (page: Page): Promise<void> => {
  await expect(page.locator('#planning')).toHaveText(/^$/u, { timeout: 30_000 });
};

/** Opens one of the demonstrations and waits until it is planned. */
export const openDemo = async (page: Page, at = 0): Promise<void> => {
  await page.goto('/job/');
  await page
    .getByRole('button', { name: /^Demonstration/u })
    .nth(at)
    .click();
  await page.locator('#invented:not(:empty)').waitFor();
  await planned(page);
};
