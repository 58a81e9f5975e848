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

/** The budget of a kind of page. */
export const budgetOf = (kind: string): Budget =>
  CALCULATORS.includes(kind) ? CALCULATOR : REFERENCE;

/** What of a page is heavier than its kind may be. */
export const tooHeavy = (kind: string, weight: Weight): Budgeted[] => {
  const budget = budgetOf(kind);
  return (['html', 'css', 'script'] as const).filter((of) => weight[of] > budget[of]);
};
