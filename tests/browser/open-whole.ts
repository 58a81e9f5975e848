import type { Page, Request } from '@playwright/test';

/** How long a page must have asked for nothing, ms. */
const QUIET = 300;
const LOOKS_EVERY = 50;

/**
 * Opens a page and waits until all that it asks for by itself is there. Playwright's own waiting for
 * an idle network now and then misses the end of it on the longest page, and then waits for ever.
 */
export const openWhole = async (page: Page, address: string): Promise<void> => {
  const asked = new Set<Request>();
  let lastAt = Date.now();
  const begin = (request: Request): void => {
    asked.add(request);
  };
  const end = (request: Request): void => {
    asked.delete(request);
    lastAt = Date.now();
  };
  page.on('request', begin).on('requestfinished', end).on('requestfailed', end);
  await page.goto(address);
  while (asked.size > 0 || Date.now() - lastAt < QUIET) await page.waitForTimeout(LOOKS_EVERY);
  page.off('request', begin).off('requestfinished', end).off('requestfailed', end);
};
