import { htmlOf, onePageOfEachKind, pagePaths } from './site.ts';
import { expect, test } from './watched.ts';

/** The content security policy holds, and nothing needs it loosened; faults fail by the watch. */

const POLICY = /<meta http-equiv="content-security-policy" content="([^"]*)"/;

test('every page has the policy', () => {
  for (const path of pagePaths) {
    const policy = POLICY.exec(htmlOf(path))?.[1] ?? '';
    expect.soft(policy, path).toContain("default-src 'none'");
    expect.soft(policy, path).toMatch(/script-src [^;]*'self'/);
    expect.soft(policy, path).not.toMatch(/unsafe-inline|(?<!wasm-)unsafe-eval|https?:|\*/);
  }
});

test('a page of each kind keeps to it', async ({ page }) => {
  for (const path of onePageOfEachKind) await page.goto(path, { waitUntil: 'networkidle' });
});

test('the policy stops a script and a style put into a page', async ({ page, faults }) => {
  await page.goto('/');
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "broken into"';
    const style = document.createElement('style');
    style.textContent = 'body { display: none }';
    document.body.append(script, style);
  });
  await expect(page.locator('h1')).toBeVisible();
  await expect(page).not.toHaveTitle('broken into');
  await expect.poll(() => faults.filter((fault) => fault.includes('policy:')).length).toBe(2);
  faults.length = 0;
});

test('words are searched for under the policy', async ({ page }) => {
  await page.goto('/');
  await page.locator('#box').fill('dielectric absorption');
  const hits = page.locator('#pages li');
  await expect(hits.first()).toContainText(/absorption/i);
  await hits.first().locator('a').click();
  await expect(page.locator('main')).toContainText(/absorption/i);
});

test('the address of the first page answers with pages too', async ({ page }) => {
  await page.goto('/?q=microphonic');
  await expect(page.locator('#pages li').first()).toBeVisible();
});
