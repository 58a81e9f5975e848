import { defineConfig } from '@playwright/test';
import { findBrowser } from './scripts/browser.ts';

const PORT = Number(process.env['PORT'] ?? 4377);

/** Flags that keep Chromium from calling home and let it run as root in a container. */
const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const executablePath = findBrowser();

export default defineConfig({
  testDir: 'tests/browser',
  snapshotPathTemplate: '{testDir}/photographs/{arg}{ext}',
  timeout: 60_000,
  workers: 2,
  // Where nobody watches, a failed test is tried once more; `scripts/test.ts` counts how many needed it.
  retries: process.env['CI'] === undefined ? 0 : 1,
  fullyParallel: true,
  reporter: [
    [process.env['CI'] ? 'dot' : 'list'],
    ['json', { outputFile: 'test-results/browser.json' }],
  ],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    // What is kept on the device has tests of its own; elsewhere the site itself is looked at.
    serviceWorkers: 'block',
    launchOptions: {
      args: QUIET,
      ...(executablePath === undefined ? {} : { executablePath }),
    },
  },
  webServer: {
    command: `npm run serve -- --port ${PORT} --host 127.0.0.1`,
    url: `http://127.0.0.1:${PORT}/`,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
