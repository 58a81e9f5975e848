import { describe, expect, it, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import {
  coloursOf,
  forms,
  partDrawing,
  scaleFor,
  USUAL_SCALE,
  type DrawingOptions,
  type FormId,
  type PartSpec,
} from '../../src/drawing/index.ts';
import type { Element, Markup } from '../../src/markup/node.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { placesIn, readPath } from './path-places.ts';

const colours = coloursOf(loadCatalogue());

const elementsOf = (markup: Markup): Element[] =>
  typeof markup === 'string' ? [] : [markup, ...markup.children.flatMap(elementsOf)];

const wordsOf = (markup: Markup): string =>
  typeof markup === 'string' ? markup : markup.children.map(wordsOf).join('');

const draw = (spec: PartSpec, options: DrawingOptions = {}): Element => {
  const drawing = partDrawing(spec, { colours, ...options });
  if (typeof drawing === 'string') throw new Error('expected an element');
  return drawing;
};

/** Sizes that each kind of form comes in: small, usual, large. */
const SIZES: Record<string, readonly [number, number, number][]> = {
  upright: [
    [4, 4, 7],
    [10, 10, 20],
    [35, 35, 60],
  ],
  lying: [
    [4, 2, 2],
    [20, 8, 8],
    [60, 30, 30],
  ],
  facing: [
    [4, 2, 5],
    [10, 4, 12],
    [19, 7, 21],
  ],
  sides: [
    [4, 2.5, 4],
    [13, 5, 11],
    [41.5, 20, 30],
  ],
};

const cases = (Object.keys(forms) as FormId[]).flatMap((form) => {
  const { round }: { round?: string } = forms[form];
  return (SIZES[round ?? 'sides'] ?? []).map(([length, width, height]) => ({
    form,
    spec: { form, length, width, height } satisfies PartSpec,
    size: `${length} by ${width} by ${height} mm`,
  }));
});

/** Places of a drawing in its own units, with the shifts of the groups that they stand in. */
const placesOf = (markup: Markup, shift = 0): [number, number][] => {
  if (typeof markup === 'string') return [];
  const { attributes, children } = markup;
  const moved =
    shift + Number(/translate\((-?[\d.]+)/.exec(attributes['transform'] ?? '')?.[1] ?? 0);
  const d = attributes['d'] ?? '';
  const own = placesIn(d).map(([x, y]): [number, number] => [x + moved, y]);
  return [...own, ...children.flatMap((child) => placesOf(child, moved))];
};

describe.each(cases)('$form of $size', ({ spec }) => {
  const drawing = draw({ ...spec, marking: ['103', 'M 1KV'], bands: ['red', 'violet', 'gold'] });
  const [left, top, width, height] = (drawing.attributes['viewBox'] ?? '')
    .split(' ')
    .map(Number) as [number, number, number, number];

  it('keeps within its frame', () => {
    for (const [x, y] of placesOf(drawing)) {
      expect(x).toBeGreaterThanOrEqual(left);
      expect(x).toBeLessThanOrEqual(left + width);
      expect(y).toBeGreaterThanOrEqual(top);
      expect(y).toBeLessThanOrEqual(top + height);
    }
  });

  it('has no style of its own and no number that is none', () => {
    for (const { attributes } of elementsOf(drawing)) {
      expect(attributes).not.toHaveProperty('style');
      for (const value of Object.values(attributes))
        expect(value).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it('says its longest side', () => {
    expect(drawing.attributes['aria-label']).toContain(`${spec.length} `);
  });
});

/** Where the rule has its long strokes, one every ten millimetres, and what is written below them. */
const ruleOf = (drawing: Element): { tens: number[]; numbers: string[] } => {
  const parts = elementsOf(drawing)
    .filter(({ attributes }) => attributes['class'] === 'pd-rule')
    .flatMap(elementsOf);
  const d = parts.find(({ tag }) => tag === 'path')?.attributes['d'] ?? '';
  return {
    tens: readPath(d).flatMap(({ command, places: [to] }, index, strokes) => {
      const from = strokes[index - 1]?.places.at(-1);
      const isLong = command === 'v' && to !== undefined && to[1] - (from?.[1] ?? NaN) === 8;
      return isLong ? [to[0]] : [];
    }),
    numbers: parts.filter(({ tag }) => tag === 'text').map(wordsOf),
  };
};

describe('the rule', () => {
  const spec: PartSpec = { form: 'box', length: 20, width: 5, height: 11 };

  it.each([undefined, 4, 16])('shows 20 mm as long as the body of 20 mm at scale %s', (pxPerMm) => {
    const drawing = draw(spec, pxPerMm === undefined ? {} : { pxPerMm });
    const [zero = NaN, ten = NaN, twenty = NaN] = ruleOf(drawing).tens;
    expect(ten - zero).toBeCloseTo(10 * (pxPerMm ?? USUAL_SCALE), 5);
    expect(twenty - zero).toBeCloseTo(20 * (pxPerMm ?? USUAL_SCALE), 5);
    const xs = placesOf(drawing)
      .map(([x]) => x)
      .filter((x) => Math.abs(x - zero) < 0.2 || Math.abs(x - twenty) < 0.2);
    expect(xs.length).toBeGreaterThan(2);
  });

  it('has a number every ten millimetres, the last with its unit', () => {
    expect(ruleOf(draw(spec)).numbers).toEqual(['0', '10', '20\u00A0mm']);
  });

  it('says where the scale is another than the usual one', () => {
    expect(wordsOf(draw(spec))).not.toMatch(/large/);
    expect(wordsOf(draw(spec, { pageScale: 4 }))).not.toMatch(/large/);
    expect(wordsOf(draw(spec, { pxPerMm: 4 }))).toMatch(/drawn 1\/2 as large/);
    expect(draw(spec, { pxPerMm: 16 }).attributes['aria-label']).toMatch(/2 times as large/);
  });

  it.each([
    [6, 8, '3/4 as large'],
    [4, 8, '1/2 as large'],
    [3, 8, '3/8 as large'],
    [8, 4, '2 times as large'],
    [6, 4, '1.5 times as large'],
  ])('says how %s compares with %s', (pxPerMm, pageScale, words) => {
    expect(wordsOf(draw(spec, { pxPerMm, pageScale }))).toContain(words);
  });

  it('may be left out', () => {
    expect(ruleOf(draw(spec, { rule: false }))).toEqual({ tens: [], numbers: [] });
  });
});

describe('the scale that is chosen', () => {
  test.each([
    ['a small part', { form: 'box', length: 7.2, width: 2.5, height: 6.5 }, 8],
    ['a can', { form: 'can', length: 10, width: 10, height: 20 }, 8],
    ['a large can', { form: 'screw-can', length: 50, width: 50, height: 90 }, 3],
  ] satisfies [string, PartSpec, number][])('of %s', (_, spec, expected) => {
    expect(scaleFor([{ spec }])).toBe(expected);
  });

  test.each(cases)('leaves $form of $size whole on a phone, or is the smallest', ({ spec }) => {
    const scale = scaleFor([{ spec }]);
    const width = Number(draw(spec, { pageScale: scale }).attributes['width']);
    expect(scale === 2 || width <= 352).toBe(true);
  });
});

describe('what is printed', () => {
  const spec: PartSpec = { form: 'disc', length: 10, width: 4, height: 12, colour: 'brown' };

  it('stays text, whatever is written', () => {
    const html = toHtml(draw({ ...spec, marking: ['<script>alert(1)</script>', '"&'] }));
    expect(html).not.toContain('<script');
    expect(html).toContain('&lt;script&gt;');
  });

  it('is printed line by line where it fits', () => {
    expect(wordsOf(draw({ ...spec, marking: ['103', 'M 1KV'] }))).toContain('103M 1KV');
  });

  it.each([
    ['a small part', { ...spec, length: 4, width: 2, height: 5, marking: ['100 nF 50 V'] }],
    ['a long word', { ...spec, marking: ['ABCDEFGHIJKLMNOPQRSTUVWXYZ'.repeat(4)] }],
    ['many lines', { ...spec, marking: Array.from({ length: 40 }, (_, i) => `line ${String(i)}`) }],
  ] satisfies [string, PartSpec][])('is led out to the side of the body: %s', (_, wordy) => {
    const drawing = draw(wordy);
    const leaders = elementsOf(drawing).filter(
      ({ attributes }) => attributes['class'] === 'pd-leader',
    );
    expect(leaders).toHaveLength(1);
    expect(Number(drawing.attributes['width'])).toBeLessThan(400);
    expect(Number(drawing.attributes['height'])).toBeLessThan(300);
    expect(drawing.attributes['aria-label']).toContain(wordy.marking[0]);
  });
});

describe('signs beside the body', () => {
  const spec: PartSpec = {
    form: 'can',
    length: 10,
    width: 10,
    height: 20,
    polarity: 'stripe-minus',
  };

  it('say which lead is plus and which is minus', () => {
    expect(wordsOf(draw(spec, { rule: false }))).toBe('+−');
  });

  it('may be left out where they would be larger than the part', () => {
    expect(wordsOf(draw(spec, { rule: false, notes: false }))).toBe('');
  });

  it('number the first and the last pin of each row', () => {
    const dip: PartSpec = { form: 'dip', length: 19.8, width: 6.35, height: 3.5, pins: 16 };
    expect(wordsOf(draw(dip, { rule: false }))).toBe('18916');
  });
});

describe('coloured places', () => {
  const spec: PartSpec = { form: 'resistor', length: 6.5, width: 2.5, height: 2.5, colour: 'tan' };
  const placesIn = (bands: string[]) =>
    elementsOf(draw({ ...spec, bands })).flatMap(({ attributes }) =>
      attributes['data-place'] === undefined
        ? []
        : [[attributes['data-place'], attributes['fill'] ?? attributes['class'] ?? 'none']],
    );

  it('have the paint of their colours, in their order', () => {
    const red = colours('red')?.fill;
    expect(placesIn(['red', 'gold'])).toEqual([
      ['bands-0', red],
      ['bands-1', colours('gold')?.fill],
    ]);
  });

  it('are left open where the colour is not known, and bare where there is none', () => {
    expect(placesIn(['', 'none'])).toEqual([
      ['bands-0', 'pd-open'],
      ['bands-1', 'none'],
    ]);
  });
});

describe('for those who listen', () => {
  const spec: PartSpec = {
    form: 'resistor',
    length: 6.5,
    width: 2.5,
    height: 2.5,
    bands: ['yellow', 'violet', 'dark-red', 'gold'],
  };

  it('names form, size and colours', () => {
    expect(draw(spec).attributes['aria-label']).toBe(
      'Resistor, 6.5 mm long and 2.5 mm across, bands yellow, violet, dark red and gold.',
    );
  });

  it('is silent where words beside it say the same', () => {
    const { attributes } = draw(spec, { decorative: true });
    expect(attributes['aria-hidden']).toBe('true');
    expect(attributes).not.toHaveProperty('role');
  });
});

test('what is printed on a clear body is in the ink of the page, which shows through it', () => {
  const spec: PartSpec = {
    form: 'box',
    length: 20,
    width: 10,
    height: 16,
    colour: 'honey',
    finish: 'clear',
    marking: ['0.1 uF'],
  };
  const [, text = ''] = /<text([^>]*)>0\.1 uF/.exec(toHtml(partDrawing(spec, { colours }))) ?? [];
  expect(text).toContain('pd-print');
  expect(text).not.toContain('fill=');
});
