import type { Page, Route } from '@playwright/test';
import { planned } from './job-table.ts';
import { expect, test } from './watched.ts';

/** What plans a job is fetched apart from the list that is typed in. */

const PLANNER = '**/_astro/planner.*.js';

const fill = (page: Page, field: string, text: string): Promise<void> =>
  page.getByLabel(`${field}, row 1`, { exact: true }).fill(text);

const showPlan = async (page: Page): Promise<void> => {
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await expect(page.locator('.plan-line')).toHaveCount(1);
  await expect(page.locator('.plan-line')).toContainText('C1');
};

test('the list can be typed in while that is on its way, and is planned then', async ({ page }) => {
  const held: Route[] = [];
  await page.route(PLANNER, (route) => {
    held.push(route);
  });
  await page.goto('/job/');
  await fill(page, 'Designators', '');
  await page.waitForLoadState('networkidle');
  // An empty job needs no plan.
  expect(held).toEqual([]);
  await fill(page, 'Designators', 'C1');
  await fill(page, 'Marking', '473K 400V');
  await expect.poll(() => held.length).toBe(1);
  await expect(page.locator('#planning')).toHaveText('Planning …');
  await held[0]?.continue();
  await planned(page);
  await showPlan(page);
});

test('where that cannot be fetched the next change tries again', async ({ page, faults }) => {
  await page.route(PLANNER, (route) => route.abort());
  await page.goto('/job/');
  await fill(page, 'Designators', 'C1');
  await expect(page.locator('#planning')).toHaveText(/^What plans the job could not be fetched/);
  await page.unroute(PLANNER);
  await fill(page, 'Marking', '473K 400V');
  await planned(page);
  await showPlan(page);
  // The browser reports by itself what it could not fetch.
  faults.length = 0;
});
