import { describe, expect, test } from 'vitest';
import { rangeBar, scaleThatShows, type RangeBarLimit } from '../../src/components/range-bar.ts';
import { toHtml } from '../../src/markup/to-html.ts';

const range = { min: 2, typ: 4, max: 8 };

describe('the scale of a bar', () => {
  test.each<[min: number, limit: RangeBarLimit, scale: string]>([
    [2, {}, 'log'],
    [2, { high: 10 }, 'log'],
    [2, { low: 1, high: 10 }, 'log'],
    [0, { high: 10 }, 'linear'],
    [-2, {}, 'linear'],
    // At least nothing to spare, at most nothing lost.
    [2, { low: 0 }, 'linear'],
    [2, { high: 0 }, 'linear'],
  ])('from %d with %j is %s', (min, limit, scale) => {
    expect(scaleThatShows([{ range }, { range: { ...range, min } }], limit)).toBe(scale);
  });
});

describe('the unfavourable side of a limit', () => {
  const drawn = (limit: RangeBarLimit): string =>
    toHtml(
      rangeBar({
        title: 'Ripple',
        rows: [{ label: 'stand-in', range }],
        limit,
        scale: 'log',
        print: String,
      }),
    );
  const hatched = (limit: RangeBarLimit): [x: number, width: number][] =>
    [...drawn(limit).matchAll(/<svg class="rb-hatch" x="(\d+)" y="20" width="(\d+)"/g)].map(
      ([, x, width]) => [Number(x), Number(width)],
    );

  // The axis goes from 84 to 308 and from 1 to 10 or 100.
  test.each<[limit: RangeBarLimit, hatched: [number, number][]]>([
    [{ high: 10 }, []],
    [{ high: 100 }, []],
    [{ low: 1 }, []],
    [{ low: 10 ** 0.5, high: 10 }, [[84, 112]]],
    [{ high: 10 ** 0.5 }, [[196, 112]]],
  ])('of %j is hatched', (limit, places) => {
    expect(hatched(limit)).toEqual(places);
  });
});
