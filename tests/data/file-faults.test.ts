import { describe, expect, test } from 'vitest';
import { checkFolder, DataFaults, loadCatalogue } from '../../src/catalogue/index.ts';
import { printFault } from '../../src/catalogue/fault.ts';
import {
  cellsOf,
  findRow,
  newFaults,
  onCopy,
  placeOf,
  realBytes,
  realText,
  type CellsOfRow,
  type Pick,
} from './broken-copy.ts';

const linesOf = (file: string): string[] => realText(file).split('\n').slice(0, -1);

const joined = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

const cellOf = (row: CellsOfRow, column: string) => {
  const cell = row[column];
  if (cell === undefined) throw new Error(`no column ${column}`);
  return cell;
};

/** The row without a line feed, by where it stands. */
const lineOf = (row: CellsOfRow): number => Object.values(row)[0]?.line ?? 0;

/** A file with one of its rows replaced by any number of lines. */
const withRow = (file: string, pick: Pick, change: (line: string) => string[]): string => {
  const lines = linesOf(file);
  const at = lineOf(findRow(realText(file), pick)) - 1;
  return joined([...lines.slice(0, at), ...change(lines[at] ?? ''), ...lines.slice(at + 1)]);
};

/** A file without the rows that are picked. */
const without = (file: string, pick: Pick): string => {
  const rows = cellsOf(realText(file));
  const texts = rows.map((row) =>
    Object.fromEntries(Object.entries(row).map(([column, cell]) => [column, cell.text])),
  );
  const gone = new Set(
    rows.flatMap((row, at) => (pick(texts[at] ?? {}, texts) ? [lineOf(row)] : [])),
  );
  if (gone.size === 0) throw new Error('nothing to take out');
  return joined(linesOf(file).filter((_, at) => !gone.has(at + 1)));
};

const withHeader = (file: string, header: string): string =>
  joined([header, ...linesOf(file).slice(1)]);

const headerOf = (file: string): string => linesOf(file)[0] ?? '';

describe('the shape of a file', () => {
  test('a missing file', () => {
    expect(newFaults({ 'voltages.csv': null })).toContain('voltages.csv:1:1: missing-table');
  });

  test('a missing column, at the column that stands in its place', () => {
    const header = headerOf('units.csv');
    expect(header).toBe('unit,si,factor,name');
    const lines = linesOf('units.csv').map((line) =>
      line.split(',').slice(0, 1).concat(line.split(',').slice(2)).join(','),
    );
    expect(newFaults({ 'units.csv': joined(lines) })).toContain('units.csv:1:6: missing-column');
  });

  test('a missing last column, after the end of the header', () => {
    const lines = linesOf('verdict-rules.csv');
    const header = (lines[0] ?? '').replace(/,meaning$/, '');
    expect(newFaults({ 'verdict-rules.csv': withHeader('verdict-rules.csv', header) })).toContain(
      `verdict-rules.csv:1:${header.length + 1}: missing-column`,
    );
  });

  test('a column more', () => {
    const lines = linesOf('guidelines.csv').map(
      (line, at) => `${line},${at === 0 ? 'extra' : 'x'}`,
    );
    expect(newFaults({ 'guidelines.csv': joined(lines) })).toContain(
      `guidelines.csv:1:${headerOf('guidelines.csv').length + 2}: extra-column`,
    );
  });

  test('columns in another order', () => {
    const header = headerOf('market.csv').replace('c_min,c_max', 'c_max,c_min');
    expect(newFaults({ 'market.csv': withHeader('market.csv', header) })).toEqual([
      `market.csv:1:${header.indexOf('c_max') + 1}: column-order`,
    ]);
  });

  test('a byte order mark', () => {
    expect(newFaults({ 'cautions.csv': `\uFEFF${realText('cautions.csv')}` })).toEqual([
      'cautions.csv:1:1: byte-order-mark',
    ]);
  });

  test('carriage returns, once a file', () => {
    const text = realText('voltages.csv').replaceAll('\n', '\r\n');
    expect(newFaults({ 'voltages.csv': text })).toEqual([
      `voltages.csv:1:${headerOf('voltages.csv').length + 1}: line-ending`,
    ]);
  });

  test('no line feed at the end', () => {
    const lines = linesOf('positions.csv');
    const end = [...(lines.at(-1) ?? '')].length + 1;
    expect(newFaults({ 'positions.csv': realText('positions.csv').slice(0, -1) })).toEqual([
      `positions.csv:${lines.length}:${end}: end-of-file`,
    ]);
  });

  test('bytes that are not UTF-8', () => {
    const text = realText('guidelines.csv');
    const { from, line, column } = cellOf(
      findRow(text, (row) => row['id'] === 'maker'),
      'name',
    );
    const before = new TextEncoder().encode(text.slice(0, from));
    const bytes = Uint8Array.from(realBytes('guidelines.csv'));
    bytes[before.length + 2] = 0xe9;
    expect(newFaults({ 'guidelines.csv': bytes })).toEqual([
      `guidelines.csv:${line}:${column}: utf-8`,
    ]);
  });

  const figure: Pick = (row) => row['conditions'] === '25 degC' && row['note'] === '';
  const line = () => lineOf(findRow(realText('figures.csv'), figure));

  test('a blank line', () => {
    const lines = linesOf('units.csv');
    const text = joined([...lines, '']);
    expect(newFaults({ 'units.csv': text })).toEqual([
      `units.csv:${lines.length + 1}:1: blank-line`,
    ]);
  });

  test('a cell too few, at the end of the row', () => {
    let end = 0;
    const text = withRow('figures.csv', figure, (row) => {
      end = row.length - 1;
      return [row.slice(0, -1)];
    });
    expect(newFaults({ 'figures.csv': text })).toEqual([
      `figures.csv:${line()}:${end + 1}: cell-count`,
    ]);
  });

  test('a cell too many, where it starts', () => {
    let start = 0;
    const text = withRow('figures.csv', figure, (row) => {
      start = row.length + 2;
      return [`${row},more`];
    });
    expect(newFaults({ 'figures.csv': text })).toEqual([
      `figures.csv:${line()}:${start}: cell-count`,
    ]);
  });

  test('a quote that is never closed', () => {
    const text = realText('figures.csv');
    const { from, line: at, column } = cellOf(findRow(text, figure), 'conditions');
    const broken = `${text.slice(0, from)}"${text.slice(from)}`;
    expect(newFaults({ 'figures.csv': broken })).toEqual([`figures.csv:${at}:${column}: quotes`]);
  });
});

describe('rows that contradict or miss each other', () => {
  const lastLine = (file: string): number => linesOf(file).length;
  const added = (file: string, ...rows: string[]): string => joined([...linesOf(file), ...rows]);

  test('a row twice', () => {
    const file = 'conditions.csv';
    const row = linesOf(file)[1] ?? '';
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:1: duplicate-key`,
    ]);
  });

  test('a decisive property that a type has no row about, at the type', () => {
    const file = 'figures.csv';
    const pick: Pick = (row) => row['type'] === 'glass' && row['property'] === 'temperature-max';
    const type = cellOf(
      findRow(realText('types.csv'), (row) => row['id'] === 'glass'),
      'id',
    );
    expect(newFaults({ [file]: without(file, pick) })).toContain(
      `types.csv:${type.line}:${type.column}: missing-figure`,
    );
  });

  test('figures that lie far apart without a word about it', () => {
    const file = 'figures.csv';
    const row =
      'pet-metallized,insulation-rc,,5,,Mohm*uF,known,used,,far off,,trade,,common-practice,';
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:${row.indexOf(',trade') + 1}: disagreement`,
    ]);
    const explained = row.replace(',,trade', ',an invented part,trade');
    expect(newFaults({ [file]: added(file, explained) })).toEqual([]);
  });

  test('figures that lie far apart, one of them only shown', () => {
    const file = 'figures.csv';
    const row =
      'pet-metallized,insulation-rc,,5,,Mohm*uF,known,shown,,far off,,trade,,common-practice,';
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:${row.indexOf(',trade') + 1}: disagreement`,
    ]);
  });

  test('a figure beside a row that says "unknown"', () => {
    const file = 'figures.csv';
    const { type } = findRow(
      realText(file),
      (row) => row['property'] === 'dielectric-absorption' && row['status'] === 'unknown',
    );
    const row = `${type?.text},dielectric-absorption,,1,,%,known,used,not-stated,beside,,trade,,memory,`;
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:${row.indexOf('known') + 1}: figure-status`,
    ]);
  });

  test('a used figure of a union', () => {
    const file = 'figures.csv';
    const row = 'film-unknown,dvdt,,10,,V/us,known,used,,,,trade,,memory,';
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:1: union`,
    ]);
  });

  test('temperature spans that overlap', () => {
    const file = 'derating.csv';
    const row = 'maker,pet-metallized,,,1,80,84,1,trade,,common-practice,';
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:${'maker,pet-metallized,,,1,'.length + 1}: derating`,
    ]);
  });

  test('spans that overlap for ratings of one band, not those of another', () => {
    const file = 'derating.csv';
    const overlapping = 'maker,ta-wet,,10,1,-50,80,1,trade,,common-practice,';
    const apart = [
      'workshop,ta-polymer,10,,0.8,110,115,0.8,trade,,common-practice,',
      'workshop,ta-polymer,,10,0.8,110,115,0.8,trade,,common-practice,',
    ];
    expect(newFaults({ [file]: added(file, overlapping) })).toHaveLength(1);
    expect(newFaults({ [file]: added(file, ...apart) })).toEqual([]);
  });

  test('a condition that a demand needs and the position lacks, at the demand', () => {
    const file = 'conditions.csv';
    const pick: Pick = (row) => row['position'] === 'sample-hold' && row['condition'] === 'step';
    const demand = cellOf(
      findRow(
        realText('demands.csv'),
        (row) => row['position'] === 'sample-hold' && row['finding'] === 'absorption',
      ),
      'finding',
    );
    expect(newFaults({ [file]: without(file, pick) })).toContain(
      `demands.csv:${demand.line}:${demand.column}: missing-condition`,
    );
  });

  test('a condition that no demand needs', () => {
    const file = 'conditions.csv';
    const row = 'sample-hold,esr-min,,1,,,trade,,memory,';
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:${'sample-hold,'.length + 1}: unused-condition`,
    ]);
  });

  test('a finding that the engine does not work out and no demand asks for', () => {
    const file = 'findings.csv';
    const row = 'colour,Colour,grade,low,no,,,,C,Whether it looks nice,,trade,,memory,';
    const place = `${file}:${lastLine(file) + 1}:1: finding`;
    expect(newFaults({ [file]: added(file, row) })).toEqual([place, place]);
  });

  test('a type that is sold but not offered, at its market', () => {
    const type = cellOf(
      findRow(realText('types.csv'), (row) => row['id'] === 'ptfe'),
      'market',
    );
    expect(
      newFaults({ 'market.csv': without('market.csv', (row) => row['type'] === 'ptfe') }),
    ).toContain(`types.csv:${type.line}:${type.column}: market-complete`);
  });

  test('an offer of a type that is not sold', () => {
    const file = 'market.csv';
    const row = 'film-unknown,radial box,1e-9,1e-6,100,dc,10,E6,5,trade,,memory,';
    expect(newFaults({ [file]: added(file, row) })).toEqual([
      `${file}:${lastLine(file) + 1}:1: market-complete`,
    ]);
  });

  test('a value of a series left out, at the next', () => {
    const file = 'e-series.csv';
    const pick: Pick = (row) => row['series'] === 'E12' && row['value'] === '1.8';
    const { line } = cellOf(findRow(realText(file), pick), 'value');
    expect(newFaults({ [file]: without(file, pick) })).toContain(`${file}:${line}:5: e-series`);
  });

  test('a series left out', () => {
    const file = 'e-series.csv';
    expect(newFaults({ [file]: without(file, (row) => row['series'] === 'E3') })).toContain(
      `${file}:1:1: e-series`,
    );
  });

  test.each([
    ['a page of the web', 'web-page', 'full-text'],
    ['a document that nobody saw', 'data-sheet', 'not-seen'],
  ])('published in %s', (_, kind, seen) => {
    const source = `invented,Invented,,,${kind},,${seen}`;
    const row = 'sample-hold,film-unknown,seldom,invented,page 1,published,';
    const order = headerOf('unlikely-pairs.csv').startsWith('type')
      ? row.replace('sample-hold,film-unknown', 'film-unknown,sample-hold')
      : row;
    expect(
      newFaults({
        'sources.csv': added('sources.csv', source),
        'unlikely-pairs.csv': added('unlikely-pairs.csv', order),
      }),
    ).toEqual([
      `unlikely-pairs.csv:${lastLine('unlikely-pairs.csv') + 1}:${order.indexOf('published') + 1}: basis`,
    ]);
  });

  test('a source that nobody cites', () => {
    const file = 'sources.csv';
    expect(newFaults({ [file]: added(file, 'invented,Invented,,,trade,,not-seen') })).toEqual([
      `${file}:${lastLine(file) + 1}:1: uncited-source`,
    ]);
  });
});

describe('several faults', () => {
  const broken = {
    'units.csv': `\uFEFF${realText('units.csv')}`,
    'positions.csv': withRow(
      'positions.csv',
      (row) => row['id'] === 'sample-hold',
      (row) => [row.replace(',hold and integrate,', ',nowhere,')],
    ),
    'voltages.csv': joined([...linesOf('voltages.csv'), '', '1e3,dc,,no-such-source,,memory,']),
  };
  const group = cellOf(
    findRow(realText('positions.csv'), (row) => row['id'] === 'sample-hold'),
    'group',
  );
  const last = linesOf('voltages.csv').length;
  const expected = [
    `positions.csv:${group.line}:${group.column}: cell`,
    'units.csv:1:1: byte-order-mark',
    `voltages.csv:${last + 1}:1: blank-line`,
    `voltages.csv:${last + 2}:9: reference`,
  ];

  test('are all reported at once, file by file', () => {
    expect(newFaults(broken)).toEqual(expected);
  });

  test('are all in the error that loading ends in', () => {
    onCopy(broken, (folder) => {
      let thrown: unknown;
      try {
        loadCatalogue(folder);
      } catch (error) {
        thrown = error;
      }
      if (!(thrown instanceof DataFaults)) throw new Error('loading did not end in DataFaults');
      expect(thrown.faults.map(placeOf)).toEqual(expect.arrayContaining(expected));
      for (const fault of thrown.faults) expect(thrown.message).toContain(printFault(fault));
    });
  });

  test('print as one line each', () => {
    onCopy(broken, (folder) => {
      for (const fault of checkFolder(folder)) {
        expect(printFault(fault)).toMatch(
          /^[\w/.-]+\.csv:\d+:\d+: [a-z0-9-]+: .+; got ".*"; expected .+$/,
        );
      }
    });
  });
});
