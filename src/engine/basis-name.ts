import type { Basis } from './catalogue.ts';

const NAMES: Readonly<Record<Basis, string>> = {
  published: 'published',
  'common-practice': 'common practice',
  memory: 'from memory',
};

/** How a figure is known, in the words that every page uses. */
export const basisName = (basis: Basis): string => NAMES[basis];
