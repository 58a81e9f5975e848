import { describe, expect, test } from 'vitest';
import { changes } from '../../../src/catalogue/checks/changes.ts';
import { doubleSpaces } from '../../../src/catalogue/checks/double-spaces.ts';
import { nearest } from '../../../src/catalogue/checks/nearest.ts';
import { references } from '../../../src/catalogue/checks/references.ts';
import { repeatedItems } from '../../../src/catalogue/checks/repeated-items.ts';
import { uniqueKeys } from '../../../src/catalogue/checks/unique-keys.ts';
import { testRule } from './made-tables.ts';

testRule('reference', references, [
  {
    what: 'a name that is there, or none',
    tables: {
      'units.csv': ['unit', 'V', 'ohm'],
      'properties.csv': ['id,unit', 'leak,ohm', 'rating,V', 'nothing-yet,'],
    },
    faults: [],
  },
  {
    what: 'a name that is not there, with the one that is near',
    tables: {
      'units.csv': ['unit', 'V', 'ohm', 'uF'],
      'properties.csv': ['id,unit', 'leak,ohn'],
    },
    faults: [
      { at: 'properties.csv:2:unit', says: ['unit names', '3 names in units.csv', 'mean ohm?'] },
    ],
  },
  {
    what: 'one that is near nothing',
    tables: { 'units.csv': ['unit', 'V'], 'properties.csv': ['id,unit', 'leak,furlongs'] },
    faults: ['properties.csv:2:unit'],
  },
  {
    what: 'a list of which one is not there, with spaces about',
    tables: { 'types.csv': ['id,union_of', 'a,', 'b,', 'ab,a; b', 'xyz,b; paper ;a'] },
    faults: [{ at: 'types.csv:5:union_of', got: 'paper', says: ['types.csv does not have'] }],
  },
  {
    what: 'a row with another fault still bears its name',
    tables: { 'types.csv': ['id,union_of', '!a,', 'b,', 'ab,a;b'] },
    faults: [],
  },
  {
    what: 'no list where the column holds one name, and no name that is near',
    tables: {
      'units.csv': ['unit', 'V', 'ohm'],
      'properties.csv': ['id,unit', 'leak,V;ohm'],
    },
    faults: [{ at: 'properties.csv:2:unit', got: 'V;ohm', says: ['in units.csv; '] }],
  },
  {
    what: 'a name in either of two tables, or in neither',
    tables: {
      'types.csv': ['id', 'mica'],
      'kinds/types.csv': ['id', 'carbon-film'],
      'unlikely-pairs.csv': ['type', 'mica', 'carbon-film', 'graphene'],
    },
    faults: [
      { at: 'unlikely-pairs.csv:4:type', says: ['types.csv or kinds/types.csv', '2 names'] },
    ],
  },
]);

describe('the name that was meant', () => {
  test.each([
    ['one letter another', 'paper', ['glass', 'papor'], 'papor'],
    ['one letter left out', 'papr', ['paper'], 'paper'],
    ['one letter too many', 'papper', ['paper'], 'paper'],
    ['two letters changed about', 'paepr', ['paper'], 'paper'],
    ['three changes are a slip still', 'pXXXr', ['paper'], 'paper'],
    ['four are another name', 'pXXXX', ['paper'], undefined],
    ['a tail of four letters', 'paper', ['paper-can'], undefined],
    ['a head of four letters', 'oil-paper', ['paper'], undefined],
    ['letters before it count as those within', 'paper', ['x-paper', 'papers'], 'papers'],
    ['so do letters behind it', 'paper', ['paperxx', 'papor'], 'papor'],
    ['the nearest of several, wherever it stands', 'paper', ['pap', 'papers', 'caper'], 'papers'],
    ['the nearer that comes later', 'paper', ['pap', 'pape'], 'pape'],
    ['the first of two that are as near', 'paper', ['caper', 'taper'], 'caper'],
    ['no names at all', 'paper', [], undefined],
    ['letters beyond the plane that most are in', '𝛍F', ['𝛀F'], '𝛀F'],
  ])('%s', (_what, name, names, meant) => {
    expect(nearest(name, names)).toBe(meant);
  });
});

testRule('duplicate-key', uniqueKeys, [
  {
    what: 'the same name twice',
    tables: { 'units.csv': ['unit,factor', 'V,1', 'mV,0.001', 'V,1000'] },
    faults: [{ at: 'units.csv:4:unit', says: ['the same unit as line 2'] }],
  },
  {
    what: 'a third one is blamed for the first as well',
    tables: { 'units.csv': ['factor,unit', '1,V', '2,V', '3,V'] },
    faults: [
      { at: 'units.csv:3:unit', says: ['line 2'] },
      { at: 'units.csv:4:unit', says: ['line 2'] },
    ],
  },
  {
    what: 'rows that differ in one column of the key, and two that differ in none',
    tables: {
      'unlikely-pairs.csv': ['type,position,why', 'a,b,one', 'a,c,two', 'ab,,three', 'a,b,four'],
    },
    faults: [
      { at: 'unlikely-pairs.csv:5:type', got: 'a, b', says: ['the same type, position as line 2'] },
    ],
  },
  {
    what: 'what the columns of a key hold is not run together',
    tables: { 'unlikely-pairs.csv': ['type,position', 'ab,c', 'a,bc'] },
    faults: [],
  },
]);

testRule('repeated-item', repeatedItems, [
  {
    what: 'one type named twice',
    tables: { 'types.csv': ['id,union_of', 'ab,a;b', 'aa,a;b; a'] },
    faults: [{ at: 'types.csv:3:union_of', got: 'a', says: ['union_of'] }],
  },
  {
    what: 'the same word twice in a text that is no list of names, or in the name of one thing',
    tables: {
      'types.csv': ['id,also_called', 'a,tin;tin'],
      'properties.csv': ['id,unit', 'a,V;V'],
    },
    faults: [],
  },
  {
    what: 'nothing between two semicolons is no name',
    tables: { 'types.csv': ['id,union_of', '!ab,a;;b;', 'none,'] },
    faults: [],
  },
  {
    what: 'colours of bands, whose order says something',
    tables: { 'look/drawings.csv': ['style,bands', 'a,red;red'] },
    faults: [],
  },
]);

testRule('double-space', doubleSpaces, [
  {
    what: 'two spaces in one cell of two',
    tables: { 'types.csv': ['id,name,summary', 'a,one two,three  four', 'b,five  six,seven'] },
    faults: ['types.csv:2:summary', 'types.csv:3:name'],
  },
]);

testRule('changes', changes, [
  {
    what: 'days in order, and two on one day',
    tables: {
      'changes.csv': [
        'date,tables',
        '2024-03-01,types.csv',
        '2024-02-29,types.csv; units.csv',
        '2024-02-29,kinds/kinds.csv',
      ],
    },
    faults: [],
  },
  {
    what: 'days that the calendar does not have',
    tables: {
      'changes.csv': ['tables,date', 'types.csv,2023-02-29', 'types.csv,2023-02-31'],
    },
    faults: ['changes.csv:2:date', 'changes.csv:3:date'],
  },
  {
    what: 'what is no day at all',
    tables: { 'changes.csv': ['date,tables', '!yesterday,types.csv'] },
    faults: ['changes.csv:2:date'],
  },
  {
    what: 'a newer one below an older',
    tables: { 'changes.csv': ['date,tables', '2024-01-01,types.csv', '2024-01-02,types.csv'] },
    faults: [{ at: 'changes.csv:3:date', says: ['2024-01-01 or before'] }],
  },
  {
    what: 'a table that there is not, among those that there are',
    tables: { 'changes.csv': ['date,tables', '2024-01-01,types.csv;tips.csv;units.csv'] },
    faults: [{ at: 'changes.csv:2:tables', got: 'tips.csv' }],
  },
]);
