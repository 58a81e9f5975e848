import { test as base, expect, type BrowserContext } from '@playwright/test';

/** Notes everything that may go wrong unseen while pages are open. */
export const watch = async (
  context: BrowserContext,
  origin: string,
  faults: string[],
): Promise<void> => {
  context.on('weberror', (fault) => faults.push(`page error: ${fault.error().message}`));
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  context.on('dialog', (dialog) => {
    faults.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (protocol.startsWith('http') && asked !== origin)
      faults.push(`request to another place: ${request.url()}`);
  });
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
      console.error(`policy: ${violatedDirective} stops ${blockedURI}`);
    });
  });
};

/** A test that fails where a page raises an error, breaks its policy or asks another site. */
export const test = base.extend<{ faults: string[] }>({
  faults: [
    async ({ context, baseURL }, use) => {
      const faults: string[] = [];
      await watch(context, new URL(baseURL ?? '').origin, faults);
      await use(faults);
      expect(faults).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
