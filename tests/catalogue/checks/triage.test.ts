import { triageComplete, triageOfLikes } from '../../../src/catalogue/checks/triage-complete.ts';
import { testRule } from './made-tables.ts';

testRule('no-standing-rule', triageComplete, [
  {
    what: 'types of which no rule speaks whatever was read, and where it sits',
    tables: {
      'types.csv': ['name,id', 'A,a', 'B,b', 'C,c', 'D,d', 'E,e', '!F,f'],
      'triage.csv': [
        'types,positions,v_from,v_to,reading',
        'a;b,,,,none',
        'c,hold,,,none',
        'd,,,,age',
        'e,,100,,none',
        'e,,,100,none',
      ],
    },
    faults: [
      { at: 'types.csv:4:id', says: ['nothing is known', 'c in a row of triage.csv'] },
      'types.csv:5:id',
      'types.csv:6:id',
    ],
  },
  {
    what: 'a rule with a fault of its own is there all the same',
    tables: { 'types.csv': ['id', 'a'], 'triage.csv': ['types,reading', '!a,none'] },
    faults: [],
  },
]);

testRule('no-rule-for-its-like', triageOfLikes, [
  {
    what: 'kinds and families of which no rule speaks',
    tables: {
      'kinds/kinds.csv': ['id', 'resistor', 'trimmer'],
      'kinds/triage.csv': ['kinds,types', 'resistor,', ',trimmer'],
      'devices/families.csv': ['id', 'diode', 'logic', 'socket'],
      'devices/triage.csv': ['families,functions', 'diode;logic,', ',socket'],
    },
    faults: [
      { at: 'devices/families.csv:4:id', says: ['socket among the families'] },
      { at: 'kinds/kinds.csv:3:id', says: ['an old one', 'trimmer among the kinds'] },
    ],
  },
]);
