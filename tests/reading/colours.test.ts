import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceColours } from '../../src/catalogue/slices/slice-reading.ts';
import { readColours, type Catalogue } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { offered } from '../../src/reading/colours/controls.ts';
import { entryDrawing } from '../../src/reading/colours/entry-drawing.ts';
import { schemeTable } from '../../src/reading/colours/scheme-table.ts';
import {
  emptyState,
  searchOf,
  stateFrom,
  turnedRound,
  usualLayout,
  withLayout,
  type ColourState,
} from '../../src/reading/colours/state.ts';
import { colourTyped } from '../../src/reading/colours/typed.ts';

const catalogue = loadCatalogue();
const tables = catalogue.markings;

describe('colours that are typed', () => {
  const resistor = ['yellow', 'violet', 'red', 'gold'];
  test.each([
    ['yellow violet red gold', resistor],
    ['YELLOW, Violet; red / gold', resistor],
    ['YE VT RD GD', resistor],
    ['472 gold', resistor],
    ['4 7 2 gold', resistor],
    ['47 red gol', resistor],
    ['4?2 gold', ['yellow', undefined, 'red', 'gold']],
    ['? ? red gold', [undefined, undefined, 'red', 'gold']],
    ['gray light grey light-blue', ['grey', 'light-grey', 'light-blue']],
    ['no mark', undefined],
    ['', []],
  ])('%s', (text, marks) => {
    const typed = colourTyped(tables, text);
    if (marks === undefined) expect(typed.unknown).not.toEqual([]);
    else expect(typed).toEqual({ marks, unknown: [] });
  });

  test('a beginning that fits several colours, or none, is not taken', () => {
    expect(colourTyped(tables, 'b gr mauve')).toEqual({ marks: [], unknown: ['b', 'gr', 'mauve'] });
  });

  test('colours of bodies alone are not offered', () => {
    expect(colourTyped(tables, 'p')).toEqual({ marks: ['pink'], unknown: [] });
  });

  test('nothing that is typed makes it throw', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), (text) => {
        const { marks } = colourTyped(tables, text);
        const known = tables.colours.map(({ id }) => id);
        for (const mark of marks) if (mark !== undefined) expect(known).toContain(mark);
      }),
    );
  });
});

const state: fc.Arbitrary<ColourState> = fc
  .constantFrom(...tables.colourLayouts)
  .chain((layout) =>
    fc.record({
      marks: fc.array(fc.constantFrom(undefined, ...tables.colours.map(({ id }) => id)), {
        minLength: layout.labels.length,
        maxLength: layout.labels.length,
      }),
      apart: fc.constantFrom(undefined, 'first' as const, 'last' as const),
      layout: fc.constant(layout),
    }),
  )
  .map(({ layout, marks, apart }) => ({
    ...emptyState(tables, layout.id),
    marks,
    ...(apart !== undefined && layout.turn ? { apart } : {}),
  }));

describe('the address', () => {
  test('holds all that is set', () => {
    fc.assert(
      fc.property(state, (one) => {
        expect(stateFrom(tables, searchOf(one))).toEqual(one);
      }),
    );
  });

  test.each([
    ['?s=resistor-4&b=yellow,violet,red,gold', '?s=resistor-4&b=yellow,violet,red,gold'],
    ['?b=red', '?s=resistor-4&b=red,,,'],
    ['?s=no-such&b=red,mauve,__proto__,,,,,,gold', '?s=resistor-4&b=red,,,'],
    ['?s=moulded-block-6&apart=first', '?s=moulded-block-6'],
    ['?s=<script>&b=<b>', ''],
    ['', ''],
  ])('%s is %s', (given, kept) => {
    expect(searchOf(stateFrom(tables, given))).toBe(kept);
  });
});

test('turning twice changes nothing', () => {
  fc.assert(
    fc.property(state, (one) => {
      expect(turnedRound(turnedRound(one))).toEqual(one);
    }),
  );
});

test('another layout keeps the colours that there is room for', () => {
  const four = { ...emptyState(tables), marks: ['red', 'green', undefined, 'gold'] };
  expect(withLayout(tables, four, 'resistor-5').marks).toEqual([
    'red',
    'green',
    undefined,
    'gold',
    undefined,
  ]);
  expect(withLayout(tables, four, 'resistor-3').marks).toEqual(['red', 'green', undefined]);
});

test.each([
  ['resistor', 'resistor-4'],
  ['ceramic-tube', 'ceramic-tube-5'],
  ['tantalum-bead', 'tantalum-bead-4'],
  ['moulded-block', 'moulded-block-6'],
  ['ceramic-body', 'ceramic-body-1'],
  ['resistor-painted', 'resistor-painted-3'],
])('a %s usually has %s', (form, layout) => {
  expect(usualLayout(tables, form)).toBe(layout);
});

describe('the drawing', () => {
  test.each(tables.colourLayouts.map(({ id }) => id))('%s shows and names every place', (id) => {
    const empty = emptyState(tables, id);
    const set = { ...empty, marks: empty.marks.map(() => 'violet') };
    const html = entryDrawing(catalogue, set, 0).map(toHtml).join('');
    for (const at of set.marks.keys()) expect(html).toContain(`data-mark="${at}"`);
    expect(html.match(/>violet</g)).toHaveLength(set.marks.length);
    const open = entryDrawing(catalogue, empty, 0).map(toHtml).join('');
    expect(open.match(/>\?</g)).toHaveLength(empty.marks.length);
    expect(open).not.toContain('NaN');
  });
});

test('shades and bare places are offered only where they mean something', () => {
  const ids = (layout: string) =>
    offered(catalogue, emptyState(tables, layout)).map(({ id }) => id);
  expect(ids('resistor-4')).not.toContain('dark-green');
  expect(ids('resistor-4')).not.toContain('none');
  expect(ids('ceramic-tube-5')).toContain('dark-green');
  expect(ids('resistor-painted-3')).toContain('none');
  expect(ids('moulded-block-6')).toContain('none');
  expect(ids('resistor-4')).not.toContain('tan');
});

test.each(tables.colourSchemes.map((scheme) => [scheme.id, scheme] as const))(
  'the table of %s has a meaning in every column and row',
  (_, scheme) => {
    const { columns, rows } = schemeTable(tables, scheme);
    expect(rows.length).toBeGreaterThan(0);
    for (const at of columns.keys())
      expect(rows.some(({ cells }) => (cells[at] ?? []).length > 0)).toBe(true);
    for (const { colours, cells } of rows) {
      expect(colours.length).toBeGreaterThan(0);
      expect(cells.flat().length).toBeGreaterThan(0);
    }
  },
);

test('a browser reads from its slice as the build does from everything', () => {
  const slice = JSON.parse(JSON.stringify(sliceColours(catalogue))) as Catalogue;
  fc.assert(
    fc.property(state, ({ layout, marks, apart }) => {
      const request = { form: layout.form, colours: marks, apart };
      expect(readColours(slice, request)).toEqual(readColours(catalogue, request));
    }),
  );
});
