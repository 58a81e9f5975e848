import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** What axe finds on a page, with no more work than it takes. */

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What of them a narrow window or other colours may change; the rest reads the same elements. */
const SEEN_RULES = [
  'color-contrast',
  'link-in-text-block',
  'scrollable-region-focusable',
  'target-size',
];

/** Colours do not depend on the width, so two views hold all four. */
export const VIEWS = [
  { width: 1280, colorScheme: 'light', seenOnly: false },
  { width: 390, colorScheme: 'dark', seenOnly: true },
] as const;

/** axe puts its own script into the page, which the policy would stop. */
export const forAxe = { bypassCSP: true };

/** Rows and parts after these are made by the same code as those before and only take time. */
const REPEATED = [
  ...['tbody', 'ul', 'ol', 'dl'].map((list) => `${list} > *:nth-child(n + 9)`),
  'main > .part:nth-child(n + 9)',
];

/** Takes away what is there many times over; the page is not to be used after it. */
export const dropRepeated = (page: Page): Promise<void> =>
  page.evaluate((rows) => {
    for (const row of document.querySelectorAll(rows)) row.remove();
  }, REPEATED.join());

/** Rules that a page breaks, with the first places. */
export const broken = async (page: Page, seenOnly = false) => {
  // What is right need not be named, and what is wrong is named by its HTML.
  const all = new AxeBuilder({ page }).options({ resultTypes: ['violations'], selectors: false });
  const asked = seenOnly ? all.withRules(SEEN_RULES) : all.withTags(RULES);
  // Without frames there is nothing to gather in a page of its own, which takes half of the time.
  const { violations } = await asked.setLegacyMode().analyze();
  return violations.map(({ id, nodes }) => ({
    id,
    at: nodes.slice(0, 3).map(({ html }) => html.slice(0, 160)),
  }));
};
