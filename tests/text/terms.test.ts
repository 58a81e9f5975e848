import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

/**
 * What a reader sees, and what the code calls things, is said in the terms of the trade and its
 * standards: somebody at a bench looks for ESR and RMS, and knows no other word for them.
 */

/** What is said, and ways to say the same that nobody looks for. */
const TERMS: readonly (readonly [term: string, instead: RegExp, example: string])[] = [
  ['AC voltage, AC current', /\balternating (?:voltage|current|volts)\b/iu, 'Alternating voltage'],
  ['DC voltage, DC current', /\bdirect (?:voltage|current|volts)\b/iu, 'a direct voltage'],
  ['RMS', /\beffective (?:value|voltage|current)\b|, effective\b/iu, 'Ripple current, effective'],
  ['peak', /\bcrest\b/iu, 'the crest of the mains'],
  ['peak to peak', /\bfrom (?:crest|peak) to (?:trough|foot)\b/iu, 'from peak to trough'],
  ['self-heating', /\bown heat\b/iu, 'its own heat'],
  ['ambient temperature', /\btemperature a?round it\b/iu, 'Temperature round it'],
  ['dissipation factor', /\bloss factor\b/iu, 'Loss factor'],
  ['ESR', /\b(?:its|the|lower|higher) series resistance\b/iu, 'the series resistance of the part'],
  ['in series', /\bcapacitors (?:\w+ )?in a row\b/iu, 'two equal capacitors in a row'],
  ['in parallel', /\bcapacitors (?:\w+ )?side by side\b/iu, 'Two capacitors side by side'],
  ['a name beside its abbreviation', /\b(\w{2,}) \(\1\)/u, 'Equivalent ESR (ESR) at 100 kHz'],
];

/** Tables of what others write: citations, what was once announced, and words that people type. */
const AS_OTHERS_WRITE = /\/(?:sources|changes|bench-words|sought|sought-devices)\.csv$/u;

const tables = globSync('data/**/*.csv').filter((file) => !AS_OTHERS_WRITE.test(file));

/** Comments, which may explain what a circuit is made of at more length, are left out. */
const withoutComments = (source: string): string =>
  source.replace(/\/\*[\s\S]*?\*\//gu, '').replace(/^\s*\/\/.*$/gmu, '');

const sources = globSync('src/**/*.{ts,astro}');

const linesWith = (text: string, instead: RegExp): string[] =>
  text.split('\n').filter((line) => instead.test(line));

describe.each(TERMS)('“%s”', (_, instead, example) => {
  test(`would be found for “${example}”`, () => {
    expect(linesWith(`first\n${example}`, instead)).toEqual([example]);
  });

  test('is what the tables say', () => {
    expect(tables.length).toBeGreaterThan(100);
    expect(
      tables.flatMap((file) =>
        linesWith(readFileSync(file, 'utf8'), instead).map((line) => [file, line]),
      ),
    ).toEqual([]);
  });

  test('is what pages and sums say', () => {
    expect(sources.length).toBeGreaterThan(500);
    expect(
      sources.flatMap((file) =>
        linesWith(withoutComments(readFileSync(file, 'utf8')), instead).map((line) => [file, line]),
      ),
    ).toEqual([]);
  });
});
