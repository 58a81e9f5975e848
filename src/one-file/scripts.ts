/** The scripts of pages, by the paths of those on the site. */
const scripts: readonly (readonly [RegExp, () => Promise<unknown>])[] = [
  [/^\/$/, () => import('../browser/home.ts')],
  [/^\/read\/$/, () => import('../browser/read.ts')],
  [/^\/read\/colours\/$/, () => import('../browser/colours.ts')],
  [/^\/read\/printed\/$/, () => import('../browser/printed.ts')],
  [/^\/look\/$/, () => import('../browser/look.ts')],
  [/^\/values\/$/, () => import('../browser/values.ts')],
  [/^\/job\/$/, () => import('../browser/job.ts')],
  [/^\/sums\/[^/]+\/$/, () => import('../browser/sum.ts')],
  [/^\/devices\/[^/]+\/in\/[^/]+\/$/, () => import('../browser/device.ts')],
  [
    /^\/(?:replace|types|resistors|trimmers|pots)\/[^/]+\/$/,
    () => import('../browser/carry-query.ts'),
  ],
  [/^\/replace\/[^/]+\/in\/[^/]+\/$/, () => import('../browser/substitution.ts')],
  // Kinds of part besides capacitors, by the plural that each goes by.
  [/^\/[^/]+\/[^/]+\/in\/[^/]+\/$/, () => import('../browser/kind.ts')],
];

/** What brings a page to life; nothing where it needs no script. */
export const scriptOf = (path: string): (() => Promise<unknown>) | undefined =>
  scripts.find(([pattern]) => pattern.test(path))?.[1];
