import { htmlOf, kindOf, leadsOn, pagePaths, SITE } from '../../tests/browser/site.ts';
import { scale, type Weight } from './measure.ts';

/** It stands among the code tables, but works something out. */
const PRINTED = '/read/printed/';

/** One page with what it weighs. */
export interface Weighed {
  path: string;
  weight: Weight;
}

/** All pages of the built site by kind, each with what it weighs; pages that only lead on are left out. */
export const weighedPages = (): Map<string, Weighed[]> => {
  const weigh = scale(SITE, (process.env['BASE'] ?? '').replace(/\/$/, ''));
  const all = pagePaths.flatMap((path) => {
    const html = htmlOf(path);
    return leadsOn(html) ? [] : [{ path, weight: weigh(path, html) }];
  });
  return Map.groupBy(all, ({ path }) => (path === PRINTED ? path : kindOf(path)));
};
