import { describe, expect, test } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';
import { cellsOf, newFaults, realText, type Pick } from './broken-copy.ts';

const idIs =
  (id: string): Pick =>
  (row) =>
    row['id'] === id;

const typeIs =
  (type: string): Pick =>
  (row) =>
    row['type'] === type;

const cells: BrokenCell[] = [
  {
    what: 'a kind that there is not',
    file: 'kinds/types.csv',
    pick: idIs('carbon-film'),
    column: 'kind',
    to: 'resistance',
    rule: 'reference',
  },
  {
    what: 'made from more than it goes up to',
    file: 'kinds/types.csv',
    pick: idIs('plastic-pot'),
    column: 'old_max',
    to: '600',
    rule: 'number-order',
  },
  {
    what: 'a market in a word of its own',
    file: 'kinds/types.csv',
    pick: idIs('carbon-film'),
    column: 'market',
    to: 'plenty',
    rule: 'cell',
  },
  {
    what: 'cannot be bought, yet it is offered',
    file: 'kinds/types.csv',
    pick: idIs('carbon-film'),
    column: 'market',
    to: 'none',
    rule: 'missing-offer-of-kind',
  },
  {
    what: 'a kind that there is not',
    file: 'kinds/positions.csv',
    pick: idIs('grid-stopper'),
    column: 'kind',
    to: 'valve',
    rule: 'reference',
  },
  {
    what: 'usual values the wrong way round',
    file: 'kinds/positions.csv',
    pick: idIs('grid-stopper'),
    column: 'usual_max',
    to: '500',
    rule: 'number-order',
  },
  {
    what: 'an offer of a type that there is not',
    file: 'kinds/offers.csv',
    pick: (row, rows) => rows.filter(({ type }) => type === row['type']).length > 1,
    column: 'type',
    to: 'carbon-flim',
    rule: 'reference',
  },
  {
    what: 'an offer in a series that there is not',
    file: 'kinds/offers.csv',
    pick: typeIs('metal-film'),
    column: 'series',
    to: 'E97',
    rule: 'preferred-value',
  },
  {
    what: 'an offer from more than it goes up to',
    file: 'kinds/offers.csv',
    pick: typeIs('high-voltage-glaze'),
    column: 'value_max',
    to: '9e4',
    rule: 'number-order',
  },
  {
    what: 'a property that there is not',
    file: 'kinds/figures-by-value.csv',
    pick: typeIs('carbon-film'),
    column: 'property',
    to: 'resistance-tk',
    rule: 'reference',
  },
  {
    what: 'a unit of another kind',
    file: 'kinds/figures-by-value.csv',
    pick: (row) => row['unit'] === 'V',
    column: 'unit',
    to: 'ohm',
    rule: 'unit-kind',
  },
  {
    what: 'a figure out of all bounds',
    file: 'kinds/figures-by-value.csv',
    pick: (row) => row['property'] === 'resistance-tc' && row['max'] === '350',
    column: 'max',
    to: '99999',
    rule: 'out-of-bounds',
  },
  {
    what: 'a kind of which the property is not',
    file: 'kinds/properties.csv',
    pick: idIs('noise-index'),
    column: 'kinds',
    to: 'resistors',
    rule: 'reference',
  },
  {
    what: 'a sum that there is not',
    file: 'kinds/kinds.csv',
    pick: idIs('trimmer'),
    column: 'sums',
    to: 'trimmer-presetting',
    rule: 'sum',
  },
  {
    what: 'nothing as the least value',
    file: 'kinds/kinds.csv',
    pick: idIs('resistor'),
    column: 'lowest',
    to: '0',
    rule: 'cell',
  },
  {
    what: 'a property by wiring that there is not',
    file: 'sum-inputs.csv',
    pick: (row) => row['takes'] === 'by-wiring',
    column: 'of',
    to: 'adjust-rheostat;adjust-potentiometer',
    rule: 'sum',
  },
  {
    what: 'a pair of a resistor and a position of trimmers',
    file: 'unlikely-pairs.csv',
    pick: (row) => row['type'] === 'carbon-composition',
    column: 'position',
    to: 'gain-trim',
    rule: 'kind-of-pair',
  },
];

describe('every rule about kinds of part finds its fault at its place', () => {
  testBrokenCells(cells);
});

/** A table without the rows that are picked. */
const without = (file: string, picked: (row: Record<string, string>) => boolean): string => {
  const text = realText(file);
  const lines = text.split('\n');
  const gone = new Set(
    cellsOf(text)
      .filter((row) =>
        picked(Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, cell.text]))),
      )
      .map((row) => (Object.values(row)[0]?.line ?? 0) - 1),
  );
  return lines.filter((_line, at) => !gone.has(at)).join('\n');
};

describe('what is missing about a kind is found', () => {
  test.each([
    {
      what: 'a decisive figure of a type',
      file: 'figures.csv',
      picked: (row: Record<string, string>) =>
        row['type'] === 'cermet-preset' && row['property'] === 'setting-stability',
      found: /^kinds\/types\.csv:\d+:1: missing-figure-of-kind$/,
    },
    {
      what: 'every offer of a type',
      file: 'kinds/offers.csv',
      picked: (row: Record<string, string>) => row['type'] === 'carbon-composition',
      found: /^kinds\/types\.csv:\d+:\d+: missing-offer-of-kind$/,
    },
    {
      what: 'the trap of a position',
      file: 'position-notes.csv',
      picked: (row: Record<string, string>) =>
        row['position'] === 'grid-stopper' && row['kind'] === 'trap',
      found: /^kinds\/positions\.csv:\d+:1: missing-note$/,
    },
    {
      what: 'a condition that a finding needs',
      file: 'conditions.csv',
      picked: (row: Record<string, string>) =>
        row['position'] === 'gain-trim' && row['condition'] === 'old-total',
      found: /^demands\.csv:\d+:\d+: missing-condition$/,
    },
  ])('$what', ({ file, picked, found }) => {
    const faults = newFaults({ [file]: without(file, picked) });
    expect(faults.length).toBeGreaterThan(0);
    for (const fault of faults) expect(fault).toMatch(found);
  });

  test.each([
    ['kinds/types.csv', 'types.csv', 'carbon-preset'],
    ['kinds/positions.csv', 'positions.csv', 'level-preset'],
    ['kinds/properties.csv', 'properties.csv', 'shelf-change'],
  ])('a name in %s that %s has taken', (file, other, id) => {
    const taken = cellsOf(realText(other))[0]?.['id']?.text ?? '';
    const text = realText(file);
    const row = text.split('\n').find((line) => line.startsWith(`${id},`)) ?? '';
    const line = text.trimEnd().split('\n').length + 1;
    const faults = newFaults({ [file]: `${text.trimEnd()}\n${row.replace(id, taken)}\n` });
    expect(faults).toContain(`${file}:${line}:1: id-taken`);
  });
});
