import { onePageOfEachKind } from './site.ts';
import { expect, test } from './watched.ts';

/** The content security policy holds, and nothing needs it loosened; faults fail by the watch. */

for (const path of onePageOfEachKind) {
  test(`${path} keeps to its policy`, async ({ page }) => {
    await page.goto(path, { waitUntil: 'networkidle' });
    const policy = await page
      .locator('meta[http-equiv="content-security-policy"]')
      .getAttribute('content');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(/script-src [^;]*'self'/);
    expect(policy).not.toMatch(/unsafe-inline|unsafe-eval(?<!wasm-unsafe-eval)|https?:|\*/);
  });
}

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
