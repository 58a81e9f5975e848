import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawCard } from '../../src/pictures/card.ts';
import { inkOf, type Point } from '../../src/pictures/coverage.ts';
import { widthOf, write } from '../../src/pictures/lettering.ts';
import { blank, FULL, lay } from '../../src/pictures/picture.ts';
import { cardPath } from '../../src/pictures/pictured.ts';
import { wrapped } from '../../src/pictures/wrap.ts';

const square = (from: number, to: number): Point[] => [
  [from, from],
  [to, from],
  [to, to],
  [from, to],
];

describe('what outlines enclose', () => {
  test('is inked by the part of each pixel', () => {
    const { ink } = inkOf([square(1, 2.5)], 4, 4);
    const rows = [0, 1, 2, 3].map((y) =>
      [...ink.subarray(y * 4, y * 4 + 4)].map((one) => one / FULL),
    );
    expect(rows[1]).toEqual([0, 1, expect.closeTo(0.5, 1), 0]);
    // Five lines look at a pixel, so that its lower half counts as two or three of them.
    expect(rows[2]?.[1]).toBeCloseTo(0.5, 0);
    expect(rows[0]).toEqual([0, 0, 0, 0]);
    expect(rows[3]).toEqual([0, 0, 0, 0]);
  });

  test('has a hole where an outline runs the other way, and none where it runs along', () => {
    const hole = inkOf([square(0, 6), square(2, 4).toReversed()], 6, 6).ink;
    const none = inkOf([square(0, 6), square(2, 4)], 6, 6).ink;
    expect([hole[3 * 6 + 3], hole[0]]).toEqual([0, FULL]);
    expect(none[3 * 6 + 3]).toBe(FULL);
  });

  test('is cut off at the edge', () => {
    const picture = blank(3, 3);
    lay(inkOf([square(0, 4)], 4, 4), picture, -2, 1);
    expect([...picture.ink].map((one) => one / FULL)).toEqual([0, 0, 0, 1, 1, 0, 1, 1, 0]);
  });
});

describe('lines', () => {
  const length = (text: string): number => text.length;

  test.each<[string, number, number, string[]]>([
    ['one two three', 7, 3, ['one two', 'three']],
    ['one two three', 7, 1, ['one …']],
    ['one two three', 13, 1, ['one two three']],
    ['one two three four', 9, 2, ['one two', 'three …']],
    ['one two three', 9, 2, ['one two', 'three']],
    ['10\u00a0nF fits', 5, 3, ['10\u00a0nF', 'fits']],
    ['impossiblylong', 5, 2, ['impossiblylong']],
    ['', 5, 2, []],
  ])('of %j, %d wide and at most %d', (text, widest, most, lines) => {
    expect(wrapped(text, length, widest, most)).toEqual(lines);
  });

  test('hold whole words in their order, and say when some are left out', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { maxLength: 20 }),
        fc.integer({ min: 12, max: 40 }),
        fc.integer({ min: 1, max: 4 }),
        (words, widest, most) => {
          const lines = wrapped(words.join(' '), length, widest, most);
          expect(lines.length).toBeLessThanOrEqual(most);
          for (const line of lines) expect(line.length).toBeLessThanOrEqual(widest);
          const said = lines.join(' ');
          if (said.endsWith(' …'))
            expect(words.join(' ')).toMatch(new RegExp(`^${said.slice(0, -2)} `));
          else expect(said).toBe(words.join(' '));
        },
      ),
    );
  });
});

test('letters that pages need are drawn as themselves, others as a question mark', () => {
  const drawn = (letter: string): string => {
    const picture = blank(80, 80);
    write(letter, picture, { left: 10, top: 10, size: 40, weight: 400 });
    return [...picture.ink].join();
  };
  for (const letter of 'Cµ±Ω°×–−…’МП0\u00a0')
    expect.soft(drawn(letter), letter).not.toBe(drawn('?'));
  expect(drawn('漢')).toBe(drawn('?'));
  expect(widthOf('漢', 40, 400)).toBe(widthOf('?', 40, 400));
});

test('a longer text inks more of a card, and nothing is written beyond its edges', () => {
  const inked = (title: string, words: string): number =>
    drawCard(title, words).ink.reduce((sum, one) => sum + (one > 0 ? 1 : 0), 0);
  const short = inked('Short', 'few words');
  expect(inked('Short', 'few words and some more of them')).toBeGreaterThan(short);
  const { ink, width, height } = drawCard('word '.repeat(60), 'more words '.repeat(90));
  const border = [...ink.keys()].filter((at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    return x < 40 || y < 40 || x >= width - 40 || y >= height - 40;
  });
  expect(border.every((at) => ink[at] === 0)).toBe(true);
});

test.each<[string, string | undefined]>([
  ['/replace/film-x2/in/snubber/', '/pictures/replace/film-x2/in/snubber.png'],
  ['/devices/lm13700/in/comparator/', '/pictures/devices/lm13700/in/comparator.png'],
  ['/types/film-x2/', '/pictures/types/film-x2.png'],
  ['/sums/divider/', '/pictures/sums/divider.png'],
  ['/replace/film-x2/', undefined],
  ['/types/', undefined],
  ['/', undefined],
])('%s has the picture %s', (path, picture) => {
  expect(cardPath(path)).toBe(picture);
});
