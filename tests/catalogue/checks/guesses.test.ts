import { describe, expect, test } from 'vitest';
import { checks, checkTables } from '../../../src/catalogue/checks/index.ts';
import { ladders } from '../../../src/catalogue/checks/ladders.ts';
import { plausible } from '../../../src/catalogue/checks/plausible.ts';
import { madeTables, testRule, withoutTable, type MadeTables } from './made-tables.ts';

testRule('plausible', plausible, [
  {
    what: 'one number, several or none, up to both ends',
    tables: {
      'plausible.csv': ['file,column,lowest,highest', 'market.csv,voltages,6,630'],
      'market.csv': ['voltages', '6;630', '63', ''],
    },
    faults: [],
  },
  {
    what: 'one of several below or above',
    tables: {
      'plausible.csv': ['file,column,lowest,highest', 'market.csv,voltages,6,630'],
      'market.csv': ['type,voltages', 'a,5;63', 'b,63;631', '!c,9999'],
    },
    faults: [
      {
        at: 'market.csv:2:voltages',
        says: ['every other voltages', '6 to 630', 'row of plausible.csv'],
      },
      'market.csv:3:voltages',
    ],
  },
  {
    what: 'bounds for the rows that say something in another column',
    tables: {
      'plausible.csv': [
        'file,column,by,is,lowest,highest',
        'figures.csv,typ,unit,V,1,10',
        'figures.csv,typ,unit,ohm,100,1000',
      ],
      'figures.csv': ['unit,typ', 'V,5', 'ohm,500', 'V,500', 'ohm,5', 'degC,99999'],
    },
    faults: ['figures.csv:4:typ', 'figures.csv:5:typ'],
  },
  {
    what: 'bounds of no numbers guard nothing',
    tables: {
      'plausible.csv': [
        'file,column,by,is,lowest,highest',
        'figures.csv,unit,,,1,10',
        'figures.csv,typ,unit,kohm,1,10',
        'tables.csv,typ,,,1,10',
        'units.csv,factor,,,1,10',
      ],
      'figures.csv': ['unit,typ', 'V,5'],
    },
    faults: [
      { at: 'plausible.csv:2:column', says: ['figures.csv has no such numbers'] },
      'plausible.csv:3:column',
      { at: 'plausible.csv:4:column', says: ['tables.csv has no such numbers'] },
      'plausible.csv:5:column',
    ],
  },
  {
    what: 'bounds up to a hundred times beyond their numbers, on either side of nought, and nought',
    tables: {
      'plausible.csv': [
        'file,column,by,is,lowest,highest',
        'figures.csv,typ,unit,V,0.1,2000',
        'figures.csv,typ,unit,A,-2000,-0.1',
        'figures.csv,typ,unit,K,-500,700',
        'figures.csv,typ,unit,ohm,0,0',
        'figures.csv,typ,unit,F,0.001,1000',
      ],
      'figures.csv': [
        'unit,typ',
        ...['V,10', 'V,11', 'V,12', 'V,20', 'A,-10', 'A,-11', 'A,-12', 'A,-20'],
        ...['K,-5', 'K,1', 'K,2', 'K,7', 'ohm,0', 'ohm,0', 'ohm,0', 'ohm,0'],
        // Three are too few to tell.
        ...['F,1', 'F,2', 'F,3'],
      ],
    },
    faults: [],
  },
  {
    what: 'bounds further beyond them, but not where a number lies outside',
    tables: {
      'plausible.csv': [
        'file,column,by,is,lowest,highest',
        'figures.csv,typ,unit,V,0.09,2001',
        'figures.csv,typ,unit,A,-2001,-0.09',
        'figures.csv,typ,unit,ohm,6,99999',
      ],
      'figures.csv': [
        'unit,typ',
        'ohm,5',
        ...['V,10', 'V,11', 'V,12', 'V,20', 'A,-10', 'A,-11', 'A,-12', 'A,-20'],
        ...['ohm,6', 'ohm,7', 'ohm,8'],
      ],
    },
    faults: [
      'figures.csv:2:typ',
      { at: 'plausible.csv:2:lowest', says: ['100 times beyond 10'] },
      { at: 'plausible.csv:2:highest', says: ['100 times beyond 20'] },
      { at: 'plausible.csv:3:lowest', says: ['beyond -20'] },
      { at: 'plausible.csv:3:highest', says: ['beyond -10'] },
    ],
  },
]);

/** A column of values beside a voltage, for each type by itself. */
const ladder = (goes: string, step: number): string[] => [
  'file,among,by,column,goes,step',
  `market.csv,type,c_min,c_max,${goes},${String(step)}`,
];
const rungs = (...pairs: [string, number, number][]): string[] => [
  'type,c_min,c_max',
  ...pairs.map((pair) => pair.join(',')),
];

testRule('out-of-step', ladders, [
  {
    what: 'numbers that rise with the others, in whatever order their rows stand',
    tables: {
      'ladders.csv': ladder('up', 3),
      'market.csv': rungs(['a', 3, 12], ['a', 1, 4], ['b', 2, 400], ['a', 2, 4]),
    },
    faults: [],
  },
  {
    what: 'one that stands out between two that follow each other',
    tables: {
      'ladders.csv': ladder('up', 3),
      'market.csv': rungs(['a', 1, 4], ['a', 2, 50], ['a', 3, 6], ['a', 4, 8]),
    },
    faults: [
      {
        at: 'market.csv:3:c_max',
        says: ['c_max beside', 'next c_min', 'not falling as c_min rises', 'a factor of 3'],
      },
    ],
  },
  {
    // Without 4 there would still be 50 beside 6.
    what: 'the second of them does not make the first one wrong, nor the last but one the last',
    tables: {
      'ladders.csv': ladder('up', 3),
      'market.csv': rungs(
        ['a', 1, 4],
        ['a', 2, 50],
        ['a', 3, 6],
        ['b', 1, 4],
        ['b', 2, 1],
        ['b', 3, 6],
      ),
    },
    faults: ['market.csv:3:c_max', 'market.csv:6:c_max'],
  },
  {
    what: 'the first or the last of them',
    tables: {
      'ladders.csv': ladder('up', 3),
      'market.csv': rungs(
        ['a', 1, 40],
        ['a', 2, 5],
        ['a', 3, 6],
        ['b', 1, 5],
        ['b', 2, 6],
        ['b', 3, 60],
      ),
    },
    faults: ['market.csv:2:c_max', 'market.csv:7:c_max'],
  },
  {
    // Without the first or without the second the rest would do: neither can be told from the other.
    what: 'two that cannot be told apart',
    tables: { 'ladders.csv': ladder('up', 3), 'market.csv': rungs(['a', 1, 40], ['a', 2, 5]) },
    faults: ['market.csv:2:c_max', 'market.csv:3:c_max'],
  },
  {
    // 4 to 5 follow, 50 to 60 follow, 5 to 50 do not: leaving out one row mends nothing.
    what: 'a gap between two halves blames both sides of it',
    tables: {
      'ladders.csv': ladder('up', 3),
      'market.csv': rungs(['a', 1, 4], ['a', 2, 5], ['a', 3, 50], ['a', 4, 60]),
    },
    faults: ['market.csv:3:c_max', 'market.csv:4:c_max'],
  },
  {
    what: 'a step of just the factor, up, down, or near',
    tables: {
      'ladders.csv': ladder('near', 3),
      'market.csv': rungs(['a', 1, 4], ['a', 2, 12], ['a', 3, 4]),
    },
    faults: [],
  },
  {
    what: 'numbers that fall with the others',
    tables: {
      'ladders.csv': ladder('down', 3),
      'market.csv': rungs(['a', 1, 9], ['a', 2, 9], ['a', 3, 4], ['b', 1, 4], ['b', 2, 5]),
    },
    faults: [{ at: 'market.csv:5:c_max', says: ['not rising'] }, 'market.csv:6:c_max'],
  },
  {
    what: 'too large a step down where they only have to be near',
    tables: { 'ladders.csv': ladder('near', 3), 'market.csv': rungs(['a', 1, 13], ['a', 2, 4]) },
    faults: [{ at: 'market.csv:2:c_max', says: ['near it'] }, 'market.csv:3:c_max'],
  },
  {
    what: 'rows beside one number need be no more than near each other',
    tables: {
      'ladders.csv': ladder('up', 3),
      'market.csv': rungs(['a', 1, 5], ['a', 1, 4], ['b', 1, 5], ['b', 1, 1]),
    },
    faults: ['market.csv:4:c_max', 'market.csv:5:c_max'],
  },
]);

testRule('out-of-step', ladders, [
  {
    what: 'each ladder of its own table, and rows of one only where all that sets them apart is alike',
    tables: {
      'ladders.csv': [
        'file,among,by,column,goes,step',
        'market.csv,type;style,c_min,c_max,up,3',
        'bodies.csv,type,c_min,c_max,up,100',
      ],
      'market.csv': ['type,style,c_min,c_max', 'a,bc,1,4', 'ab,c,2,50', 'a,b,3,900', 'b,,4,2'],
      'bodies.csv': ['type,c_min,c_max', 'a,1,4', 'a,2,50', 'b,1,4', 'b,2,3'],
    },
    faults: ['bodies.csv:4:c_max', 'bodies.csv:5:c_max'],
  },
  {
    what: 'numbers that fall by no more than rounding are level',
    tables: {
      'ladders.csv': ladder('up', 3),
      'market.csv': rungs(['a', 1, 4], ['a', 2, 3.9999999999], ['b', 1, 4], ['b', 2, 3.999]),
    },
    faults: ['market.csv:4:c_max', 'market.csv:5:c_max'],
  },
]);

/** The same of numbers that may be zero or below. */
const drifts = (...values: (number | string)[]): string[] => [
  'type,min,typ',
  ...values.map((value, at) => `a,${String(at)},${String(value)}`),
];
const SIGNED = ['file,among,by,column,goes,step', 'figures.csv,type,min,typ,near,3'];

testRule('out-of-step', ladders, [
  {
    what: 'numbers below zero go with others below zero, zeros with zeros',
    tables: { 'ladders.csv': SIGNED, 'figures.csv': drifts(-1, -50, '', -2) },
    faults: [],
  },
  {
    what: 'zeros with zeros',
    tables: { 'ladders.csv': SIGNED, 'figures.csv': drifts(0, 0) },
    faults: [],
  },
  {
    what: 'a sign that changes',
    tables: { 'ladders.csv': SIGNED, 'figures.csv': drifts(-1, 1) },
    faults: ['figures.csv:2:typ', 'figures.csv:3:typ'],
  },
  {
    what: 'a zero beside a number',
    tables: { 'ladders.csv': SIGNED, 'figures.csv': drifts(2, 0) },
    faults: ['figures.csv:2:typ', 'figures.csv:3:typ'],
  },
]);

describe('all rules together', () => {
  const rulesAt = (made: MadeTables, line: string): string[] =>
    checkTables(madeTables(made))
      .filter((fault) => `${fault.file}:${String(fault.line)}` === line)
      .map(({ rule }) => rule);

  const PLAUSIBLE = ['file,column,lowest,highest', 'market.csv,c_max,1e-12,1e-3'];

  test('find what only looks wrong', () => {
    const made = { 'plausible.csv': PLAUSIBLE, 'market.csv': ['c_max', '0.1'] };
    expect(rulesAt(made, 'market.csv:2')).toEqual(['plausible']);
  });

  test('keep a guess to themselves where a firm rule speaks of the line, and only there', () => {
    const made = {
      'plausible.csv': PLAUSIBLE,
      'styles.csv': ['style', 'can', 'box'],
      'market.csv': ['style,c_max', 'can,20', 'box,0.1'],
    };
    expect(rulesAt(made, 'market.csv:2')).toEqual(['out-of-bounds']);
    expect(rulesAt(made, 'market.csv:3')).toEqual(['plausible']);
  });

  test('do so for both rules that guess', () => {
    const ladder = ['file,among,by,column,goes,step', 'market.csv,,c_min,c_max,up,3'];
    const made = { 'ladders.csv': ladder, 'market.csv': ['c_min,c_max', '1e-9,1e-9', '2e-9,20'] };
    expect(rulesAt(made, 'market.csv:2')).toEqual(['out-of-step']);
    expect(rulesAt(made, 'market.csv:3')).toEqual(['out-of-bounds']);
  });

  test('are not asked where a table that they need cannot be read', () => {
    const tables = madeTables({ 'types.csv': ['id,market', 'mica,common'] });
    const found = (of: typeof tables) => checkTables(of).map(({ rule }) => rule);
    expect(found(tables)).toContain('market-complete');
    expect(found(withoutTable(tables, 'market.csv'))).not.toContain('market-complete');
  });

  test('say what they ask, and needs only tables that there are', () => {
    const tables = madeTables({});
    for (const { id, about, needs } of checks) {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(about).toMatch(/\.$/);
      for (const file of needs) expect(tables).toHaveProperty([file]);
    }
  });
});
