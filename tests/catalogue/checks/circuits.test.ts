import { circuits } from '../../../src/catalogue/checks/circuits.ts';
import { testRule } from './made-tables.ts';

testRule('circuit', circuits, [
  {
    what: 'positions of either table without a circuit, and without the part in question',
    tables: {
      'positions.csv': ['name,id', 'A,a', 'B,b', 'C,c'],
      'kinds/positions.csv': ['name,id', 'D,d', 'E,e'],
      'circuits.csv': ['position,width,height', 'a,9,9', '!b,9,9', 'd,9,9'],
      'circuit-symbols.csv': [
        'position,symbol,places',
        'a,the-capacitor,1 1;1 5',
        'b,capacitor,1 1;1 5',
        '!d,the-resistor,1 1',
      ],
    },
    faults: [
      { at: 'kinds/positions.csv:3:id', says: ['a position without', 'e in circuits.csv'] },
      { at: 'positions.csv:3:id', says: ['without the part', 'the-… of b'] },
      { at: 'positions.csv:4:id', says: ['c in circuits.csv'] },
    ],
  },
  {
    what: 'what a symbol does not take',
    tables: {
      'circuits.csv': ['position,width,height', 'a,9,9'],
      'circuit-symbols.csv': [
        'position,symbol,places,name,how',
        'a,resistor,1 1,R,',
        'a,resistor,1 1;1 5;2 3,R,',
        'a,wire,1 1;1 5;2 3,,',
        'a,wire,1 1;1 5,to,',
        'a,coil,1 1;1 5,L,polar',
        'a,lamp,1 1;1 5,L,other-side',
        'a,fuse,1 1;1 5,,zener',
      ],
    },
    faults: [
      { at: 'circuit-symbols.csv:2:places', says: ['of resistor', '2 of them'] },
      'circuit-symbols.csv:3:places',
      { at: 'circuit-symbols.csv:5:name', says: ['wire bears no name'] },
      { at: 'circuit-symbols.csv:6:how', says: ['coil', 'polar', 'other-side'] },
      { at: 'circuit-symbols.csv:8:how', says: ['fuse', 'nothing'] },
    ],
  },
  {
    what: 'places outside of the circuit',
    tables: {
      'circuits.csv': ['position,width,height', 'a,9,7'],
      'circuit-symbols.csv': [
        'position,symbol,places',
        'a,wire,0 0;9 7',
        'a,wire,0 0;9.1 7',
        'a,wire,0 7.1;9 7',
        'a,wire,-1 0;9 7',
        'b,wire,0 0;99 99',
      ],
    },
    faults: [
      { at: 'circuit-symbols.csv:3:places', says: ['9 by 7'] },
      'circuit-symbols.csv:4:places',
      'circuit-symbols.csv:5:places',
    ],
  },
]);
