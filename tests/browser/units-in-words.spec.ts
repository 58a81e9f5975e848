import { expect, test } from '@playwright/test';
import { htmlOf, pagePaths } from './site.ts';

/** Tables are plain ASCII; what is read has the signs of its units, and no stray spaces or huge numbers. */

/** Pages about the tables themselves, and about how units are printed. */
const ABOUT_SPELLING = ['/data/', '/read/', '/sources/', '/sums/'];

const pages = pagePaths.filter((path) => !ABOUT_SPELLING.some((start) => path.startsWith(start)));

const textOf = (path: string): string => {
  const main = /<main[\s\S]*<\/main>/u.exec(htmlOf(path))?.[0] ?? '';
  return main
    .replaceAll(/<(script|style|svg|math)[\s\S]*?<\/\1>/gu, '')
    .replaceAll(/<[^>]+>/gu, '')
    .replaceAll(/\s+/gu, ' ');
};

const wrong: readonly [string, RegExp][] = [
  ['a temperature as in tables', /.{20}\bdeg[CFK]\b.{10}/u],
  ['a unit as in tables', /.{20}\d (?:uF|[kM]?ohm)\b.{10}/u],
  ['a space before a comma', /.{20}[\w%] ,.{10}/u],
  ['a share of a thousand million per cent', /.{20}\d(?:\s\d{3}){3} %.{10}/u],
];

for (const [what, pattern] of wrong) {
  test(`no page has ${what}`, () => {
    const found = pages.flatMap((path) => {
      const at = pattern.exec(textOf(path));
      return at === null ? [] : [`${path}: ${at[0]}`];
    });
    expect(found).toEqual([]);
  });
}
