import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

/** Where a Chromium is usually found, besides the one that Playwright installs for itself. */
const USUAL_PLACES = [
  // Opens a page in two thirds of the time that the browser with its windows takes.
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** Path of a Chromium on this machine: the one named in CHROMIUM_PATH, Playwright's, or a usual one. */
export const findBrowser = (): string | undefined =>
  [process.env['CHROMIUM_PATH'], chromium.executablePath(), ...USUAL_PLACES].find(
    (path) => path !== undefined && path !== '' && existsSync(path),
  );

/**
 * A Chromium for the browser tests, installed if there is none.
 * @returns its path, or a sentence that says what to do
 */
export const ensureBrowser = (): { path: string } | { advice: string } => {
  const found = findBrowser();
  if (found !== undefined) return { path: found };
  spawnSync('npx', ['--no-install', 'playwright', 'install', 'chromium'], { stdio: 'inherit' });
  const installed = findBrowser();
  return installed === undefined
    ? {
        advice:
          'No Chromium was found and none could be installed. Install one (on Debian: ' +
          'apt-get install chromium-headless-shell) or set CHROMIUM_PATH to its program file, then run the tests again.',
      }
    : { path: installed };
};
