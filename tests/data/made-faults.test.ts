import { describe, expect, test } from 'vitest';
import { found, type Found } from './made-faults/found.ts';
import type { MadeFault } from './made-faults/file-slips.ts';
import { madeFaults } from './made-faults/made-faults.ts';

/** Some in every table of every kind that makes sense there. */
const SEED = 1;

const tried = madeFaults(SEED).map((made) => ({ made, how: found(made) }));

const shareOf = (kinds: RegExp, hows: readonly Found[]): number => {
  const asked = tried.filter(({ made }) => kinds.test(made.kind));
  return asked.filter(({ how }) => hows.includes(how)).length / asked.length;
};

const name = ({ kind, file, line, what }: MadeFault): string =>
  `${file}:${String(line)}: ${kind}: ${what}`;

describe('faults made in the tables', () => {
  test('are many, and no two alike', () => {
    expect(tried.length).toBeGreaterThan(500);
    const texts = new Set(tried.map(({ made }) => `${made.file}|${made.text}`));
    expect(texts.size).toBe(tried.length);
  });

  test('are found where they are, but for one in fifty', () => {
    const missed = tried.filter(({ how }) => how === 'elsewhere' || how === 'not');
    expect(
      missed.length / tried.length,
      missed.map(({ made }) => name(made)).join('\n'),
    ).toBeLessThanOrEqual(0.02);
  });

  // What the tables say of themselves, without seals: this is what guards a row that is new.
  // Shares as measured, rounded down; a table that gains figures without bounds lowers them.
  test.each([
    ['shape', /mark|carriage|column|row twice|cell (missing|too many)|empty line/, 1],
    ['characters', /space|quote|control|stray/, 1],
    ['names and bases', /dangling|basis|published/, 1],
    ['ends of a range swapped', /swapped/, 1],
    ['letters and commas in numbers', /letter O|decimal comma/, 0.9],
    ['signs', /^sign$/, 0.9],
    ['a thousand times too much or too little', /thousand/, 0.75],
    ['ten times too much or too little', /ten times|a tenth/, 0.5],
    ['digits transposed', /transposed/, 0.35],
  ])('are found without seals: %s', (_what, kinds, least) => {
    expect(shareOf(kinds, ['by sense'])).toBeGreaterThanOrEqual(least);
  });
});
