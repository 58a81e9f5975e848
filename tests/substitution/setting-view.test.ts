import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findKindStandIns, kindCircumstances, type Range } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { settingMarkup } from '../../src/substitution/setting-view.ts';

/** What is said of a setting that is carried over to a new trimmer, in its first words. */

const catalogue = loadCatalogue();
const ohms = (typ: number): Range => ({ min: typ, typ, max: typ });

const said = (position: string, setting: number, total: number): string => {
  const request = {
    original: { type: 'carbon-preset', value: ohms(total) },
    position,
    conditions: { 'old-setting': ohms(setting), 'old-total': ohms(total) },
  };
  const assessments = findKindStandIns(catalogue, request);
  const circumstances = kindCircumstances(catalogue, request);
  const [first] = settingMarkup({ catalogue, assessments, cited: [] } as never, circumstances);
  return first === undefined ? '' : toHtml(first).replaceAll('\u00A0', ' ');
};

test.each([
  ['bias-trim', 500, 1000, /^<p>The old one reads 500 Ω .* the ohms are carried over/u],
  ['level-preset', 500, 1000, /a ratio of 50 %\. .* the ratio is carried over/u],
  // A reading beyond the total is a mistake in one of the two: nothing is carried over from it.
  ['bias-trim', 1200, 1000, /said to read 1\.2 kΩ of 1 kΩ .* no trimmer does/u],
  ['level-preset', 1200, 1000, /said to read 1\.2 kΩ of 1 kΩ .* no trimmer does/u],
  ['bias-trim', 1000, 1000, /^<p>The old one reads 1 kΩ/u],
])('at %s, %d of %d Ω', (position, setting, total, words) => {
  expect(said(position, setting, total)).toMatch(words);
});
