import type { BrowserContext, Page } from '@playwright/test';

/** A phone that is slow and far from the mast. */

const SLOWER = 4;
const BITS_IN_BYTE = 8;
const NETWORK = {
  offline: false,
  latency: 150,
  downloadThroughput: 1.6e6 / BITS_IN_BYTE,
  uploadThroughput: 0.75e6 / BITS_IN_BYTE,
};

export const PHONE = { width: 390, height: 844 };

/** A page in a browser that has seen nothing yet, as slow as a phone. */
export const throttledPage = async (context: BrowserContext): Promise<Page> => {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
  await session.send('Network.emulateNetworkConditions', NETWORK);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  return page;
};
