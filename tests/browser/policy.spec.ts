import { openWhole } from './open-whole.ts';
import { htmlOf, pagePaths } from './site.ts';
import { expect, test } from './watched.ts';

/**
 * The content security policy holds, and nothing needs it loosened. That a page of each kind keeps to
 * it the watch sees wherever one is opened.
 */

const POLICY = /<meta http-equiv="content-security-policy" content="([^"]*)"/;

test('every page has the policy', () => {
  const policies = Map.groupBy(pagePaths, (path) => POLICY.exec(htmlOf(path))?.[1] ?? '');
  for (const [policy, [path = '']] of policies) {
    expect.soft(policy, path).toContain("default-src 'none'");
    expect.soft(policy, path).toMatch(/script-src [^;]*'self'/);
    expect.soft(policy, path).toContain("require-trusted-types-for 'script'");
    expect.soft(policy, path).not.toMatch(/unsafe-inline|(?<!wasm-)unsafe-eval|https?:|\*/);
  }
});

test('the policy stops a script and a style put into a page', async ({ page, faults }) => {
  await page.goto('/');
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.append('document.title = "broken into"');
    const style = document.createElement('style');
    style.textContent = 'body { display: none }';
    document.body.append(script, style);
  });
  await expect(page.locator('h1')).toBeVisible();
  await expect(page).not.toHaveTitle('broken into');
  const stopped = /An HTMLScriptElement .* will not be executed|policy: style-src-elem/;
  await expect.poll(() => faults.filter((fault) => stopped.test(fault)).length).toBe(2);
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

test('texts become neither pages nor scripts, where the browser can see to that', async ({
  page,
  faults,
}) => {
  await openWhole(page, '/');
  const made = await page.evaluate(() => {
    const { body } = document;
    const attempts: (() => void)[] = [
      () => {
        body.insertAdjacentHTML('beforeend', '<b>made</b>');
      },
      () => document.createElement('script').setAttribute('src', '/sw-stop.js'),
      () => new Worker('/sw-stop.js'),
      () => body.setAttribute('onclick', 'alert(1)'),
      () => setTimeout('document.title = "made"'),
      () => new DOMParser().parseFromString('<b>made</b>', 'text/html'),
    ];
    return attempts.map((attempt) => {
      try {
        attempt();
        return 'done';
      } catch (fault) {
        return (fault as Error).name;
      }
    });
  });
  expect(made).toEqual(made.map(() => 'TypeError'));
  faults.length = 0;
});

test('the search runs in a worker of its own', async ({ page }) => {
  const worker = page.waitForEvent('worker');
  await page.goto('/?q=microphonic');
  expect((await worker).url()).toContain('/pagefind/searcher.js');
  await expect(page.locator('#pages li').first()).toBeVisible();
});
