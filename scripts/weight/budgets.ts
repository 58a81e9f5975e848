import type { Weight } from './measure.ts';

/** What pages may weigh at most: bytes on the way to a browser, packed by gzip at level 9. */

export type Budgeted = 'html' | 'css' | 'script';
export type Budget = Readonly<Record<Budgeted, number>>;

/** A page that one reads, and that shows its answer without being asked. */
const REFERENCE: Budget = { html: 14_000, css: 10_000, script: 15_000 };
/** A page that one opens to have something worked out. */
const CALCULATOR: Budget = { ...REFERENCE, script: 40_000 };

/** Kinds of pages that work something out. */
export const CALCULATORS: readonly string[] = [
  '/',
  '/colours/',
  '/job/',
  '/look/',
  '/read/',
  '/read/printed/',
  '/sums/*/',
  '/values/',
];

/** A budget that a kind of page cannot keep: what it is held to instead, and why. */
export interface Exception {
  kind: string;
  of: Budgeted;
  bytes: number;
  because: string;
}

export const exceptions: readonly Exception[] = [
  {
    kind: '/types/*/',
    of: 'html',
    bytes: 17_000,
    because:
      'one page of 59, that of usual electrolytics, has more figures, sources and looks than any other',
  },
];

/** The budget of a kind of page as it should be. */
export const wantedOf = (kind: string): Budget =>
  CALCULATORS.includes(kind) ? CALCULATOR : REFERENCE;

/** The budget that a kind of page is held to. */
export const heldOf = (kind: string): Budget => {
  const own = exceptions.filter((one) => one.kind === kind);
  return {
    ...wantedOf(kind),
    ...Object.fromEntries(own.map(({ of, bytes }) => [of, bytes])),
  };
};

/** What of a page is heavier than its kind may be. */
export const tooHeavy = (kind: string, weight: Weight): Budgeted[] => {
  const held = heldOf(kind);
  return (['html', 'css', 'script'] as const).filter((of) => weight[of] > held[of]);
};
