import { absorptionTest } from '../../../src/catalogue/checks/absorption-test.ts';
import { disagreement } from '../../../src/catalogue/checks/disagreement.ts';
import { figureStatus } from '../../../src/catalogue/checks/figure-status.ts';
import { figuresComplete } from '../../../src/catalogue/checks/figures-complete.ts';
import { kindFiguresComplete } from '../../../src/catalogue/checks/kinds.ts';
import { unions } from '../../../src/catalogue/checks/unions.ts';
import { testRule } from './made-tables.ts';

testRule('absorption-test', absorptionTest, [
  {
    what: 'a known absorption figure with its test, one not known, and other figures',
    tables: {
      'figures.csv': [
        'property,status,test',
        'dielectric-absorption,known,one-minute',
        'dielectric-absorption,unknown,',
        'dielectric-absorption,unknown,one-minute',
        'loss,known,',
      ],
    },
    faults: [],
  },
  {
    what: 'one without its test, and a test of something else',
    tables: {
      'figures.csv': [
        'property,status,test',
        'dielectric-absorption,known,',
        'loss,known,one-minute',
      ],
    },
    faults: [
      { at: 'figures.csv:2:test', says: ['an absorption figure without'] },
      { at: 'figures.csv:3:test', says: ['a test of something else', 'nothing'] },
    ],
  },
]);

testRule('figure-status', figureStatus, [
  {
    what: 'any one number makes a figure known',
    tables: {
      'figures.csv': [
        'type,property,status,use,min,typ,max',
        'a,loss,known,used,1,,',
        'a,loss,known,used,,1,',
        'a,loss,known,used,,,1',
        'a,drift,unknown,used,,,',
        'b,drift,not-applicable,used,,,',
      ],
    },
    faults: [],
  },
  {
    what: 'known without a number, and a number of what is not known',
    tables: {
      'figures.csv': [
        'type,property,status,use,typ',
        'a,loss,known,used,',
        'b,loss,unknown,used,3',
        'c,loss,not-applicable,used,0',
      ],
    },
    faults: [
      { at: 'figures.csv:2:status', says: ['known, without', 'min, typ or max'] },
      { at: 'figures.csv:3:status', says: ['not known, with'] },
      'figures.csv:4:status',
    ],
  },
  {
    what: 'rows of one thing that contradict the first of them',
    tables: {
      'figures.csv': [
        'type,property,status,use,typ',
        'a,loss,unknown,used,',
        'b,loss,known,used,3',
        'a,loss,known,used,3',
        'a,loss,not-applicable,used,',
      ],
    },
    faults: [
      { at: 'figures.csv:4:status', says: ['line 2 says unknown', 'unknown'] },
      { at: 'figures.csv:5:status', says: ['line 2 says unknown'] },
    ],
  },
  {
    what: 'a figure that is only shown says nothing against one that is not known',
    tables: {
      'figures.csv': [
        'type,property,status,use,typ',
        'a,loss,known,shown,3',
        'a,loss,unknown,shown,',
        'a,loss,unknown,used,',
      ],
    },
    faults: [],
  },
]);

testRule('missing-figure', figuresComplete, [
  {
    what: 'a type that nothing is said of, but for what does not decide, and a union',
    tables: {
      'properties.csv': ['id,decisive', 'loss,yes', 'colour,no', 'drift,yes'],
      'types.csv': ['id,union_of', 'a,', 'b,', 'ab,a;b'],
      'figures.csv': ['type,property', 'a,loss', '!a,drift', 'b,colour', 'b,drift'],
    },
    faults: [{ at: 'types.csv:3:id', says: ['about loss', 'a row b,loss in', '"unknown"'] }],
  },
]);

testRule('missing-figure-of-kind', kindFiguresComplete, [
  {
    what: 'a type that nothing is said of, by what decides of its kind',
    tables: {
      'kinds/properties.csv': [
        'id,kinds,decisive',
        'noise,resistor;trimmer,yes',
        'turns,trimmer,yes',
        'colour,resistor,no',
      ],
      'kinds/types.csv': ['kind,id', 'resistor,carbon', 'trimmer,cermet', 'resistor,metal'],
      'figures.csv': ['type,property', 'carbon,noise', 'cermet,noise', '!metal,colour'],
    },
    faults: [
      { at: 'kinds/types.csv:3:id', says: ['about turns', 'a row cermet,turns', '"unknown"'] },
      { at: 'kinds/types.csv:4:id', says: ['about noise', 'a row metal,noise'] },
    ],
  },
]);

/** A property in decades whose sources may be a factor of 3 apart, and one over a span of 200 ppm/K. */
const PROPERTIES = [
  'id,scale,unit,lowest,highest,spread',
  'esr,log,ohm,0.001,1000,3',
  'drift,linear,ppm/K,-100,100,3',
  'loss,linear,kohm,0,1,3',
];
const UNITS = ['unit,si,factor', 'ohm,ohm,1', 'kohm,ohm,1000', 'ppm/K,1/K,1e-6'];
const FIGURES = 'type,property,unit,status,use,min,typ,max,disagreement';

const explained = (...rows: string[]) => ({
  'properties.csv': PROPERTIES,
  'units.csv': UNITS,
  'figures.csv': [FIGURES, ...rows],
});

testRule('disagreement', disagreement, [
  {
    // From 2 to 5.9 is less than a factor of 3, from 1.9 to 5.9 more.
    what: 'ends that face each other within the factor',
    tables: explained('a,esr,ohm,known,used,1,1.5,2,', 'a,esr,ohm,known,used,5.9,,20,'),
    faults: [],
  },
  {
    what: 'and further apart, whichever comes first',
    tables: explained(
      'a,esr,ohm,known,used,1,1.5,1.9,',
      'a,esr,ohm,known,used,5.9,,20,',
      'b,esr,ohm,known,used,5.9,,20,',
      'b,esr,ohm,known,used,1,1.5,1.9,',
    ),
    // 5.9 over 1.9 is 3.1.
    faults: [
      { at: 'figures.csv:3:disagreement', says: ['3.1 times away from line 2', 'within 3 times'] },
      { at: 'figures.csv:5:disagreement', says: ['3.1 times away from line 4'] },
    ],
  },
  {
    what: 'in units of one kind: half an ohm and five kiloohm, and two that are one',
    tables: explained(
      'a,esr,ohm,known,used,,0.5,,',
      'a,esr,kohm,known,used,,5,,',
      'b,esr,ohm,known,used,,500,,',
      'b,esr,kohm,known,used,,0.5,,',
    ),
    faults: [{ at: 'figures.csv:3:disagreement', says: ['times away from line 2'] }],
  },
  {
    what: 'ranges that meet or lie inside each other agree',
    tables: explained(
      'a,esr,ohm,known,used,1,,10,',
      'a,esr,ohm,known,used,10,,99,',
      'b,esr,ohm,known,used,1,,1000,',
      'b,esr,ohm,known,used,,30,,',
    ),
    faults: [],
  },
  {
    what: 'what is explained in either row, what is only shown in both, what is of another thing',
    tables: explained(
      'a,esr,ohm,known,used,,1,,',
      'a,esr,ohm,known,used,,9,,another make',
      'b,esr,ohm,known,used,,1,,another make',
      'b,esr,ohm,known,used,,9,,',
      'c,esr,ohm,known,shown,,1,,',
      'c,esr,ohm,known,shown,,9,,',
      'd,esr,ohm,known,used,,1,,',
      'e,esr,ohm,known,used,,9,,',
      'e,loss,ohm,known,used,,900,,',
      'e,unheard,ohm,known,used,,1,,',
      'e,unheard,ohm,known,used,,9,,',
      'f,esr,ohm,unknown,used,,1,,',
      'f,esr,ohm,unknown,used,,9,,',
    ),
    faults: [],
  },
  {
    what: 'one of the two is used, whichever it is',
    tables: explained(
      'a,esr,ohm,known,used,,1,,',
      'a,esr,ohm,known,shown,,9,,',
      'b,esr,ohm,known,shown,,1,,',
      'b,esr,ohm,known,used,,9,,',
    ),
    faults: ['figures.csv:3:disagreement', 'figures.csv:5:disagreement'],
  },
  {
    what: 'a third row is blamed for the first that it does not agree with, once',
    tables: explained(
      'a,esr,ohm,known,used,,9,,',
      'a,esr,ohm,known,used,,8,,',
      'a,esr,ohm,known,used,,1,,',
      'a,esr,ohm,known,used,,3,,',
    ),
    faults: [{ at: 'figures.csv:4:disagreement', says: ['9.0 times away from line 2'] }],
  },
  {
    // A thousandth of the span of 200 ppm/K is 0.2: 0.01 and 0.51 are 1 + 0.5 / 0.2 = 3.5 apart,
    // 0.01 and 0.4 only 1 + 0.39 / 0.2 = 2.95; -10 and 10 are 1 + 20 / 10 = 3 apart, -10 and 11 more.
    what: 'near zero, and on both sides of it',
    tables: explained(
      'a,drift,ppm/K,known,used,,0.01,,',
      'a,drift,ppm/K,known,used,,0.4,,',
      'b,drift,ppm/K,known,used,,0.01,,',
      'b,drift,ppm/K,known,used,,0.51,,',
      'c,drift,ppm/K,known,used,,-10,,',
      'c,drift,ppm/K,known,used,,10,,',
      'd,drift,ppm/K,known,used,,-10,,',
      'd,drift,ppm/K,known,used,,11,,',
      'e,drift,ppm/K,known,used,,-40,,',
      'e,drift,ppm/K,known,used,,-10,,',
    ),
    // From -10 to 11: 1 + 21 / 10; from -40 to -10: 1 + 30 / 10.
    faults: [
      { at: 'figures.csv:5:disagreement', says: ['3.5 times'] },
      { at: 'figures.csv:9:disagreement', says: ['3.1 times'] },
      { at: 'figures.csv:11:disagreement', says: ['4.0 times'] },
    ],
  },
  {
    // A thousandth of its span would be an ohm, beside which both are next to nothing.
    what: 'near zero of a property that is drawn in decades',
    tables: explained('a,esr,ohm,known,used,,0.01,,', 'a,esr,ohm,known,used,,0.1,,'),
    faults: [{ at: 'figures.csv:3:disagreement', says: ['10 times away'] }],
  },
  {
    // A thousandth of a kiloohm is 1 ohm: 0.1 and 2 ohm are 1 + 1.9 / 1 = 2.9 apart.
    what: 'near zero of a property that is in another unit than SI',
    tables: explained('a,loss,ohm,known,used,,0.1,,', 'a,loss,ohm,known,used,,2,,'),
    faults: [],
  },
]);

testRule('union', unions, [
  {
    what: 'of two types or more, and a figure of a member',
    tables: {
      'types.csv': ['id,union_of', 'a,', 'b,', 'ab,a;b'],
      'figures.csv': ['type,use', 'a,used', 'ab,shown', 'unheard,used'],
    },
    faults: [],
  },
  {
    what: 'of one, of another union, and of what is not there',
    tables: {
      'types.csv': ['id,union_of', 'a,', 'b,', 'ab,a;b', 'one,a', 'abb,ab;b', 'odd,a;unheard'],
    },
    faults: [
      { at: 'types.csv:5:union_of', says: ['a union of one'] },
      { at: 'types.csv:6:union_of', got: 'ab', says: ['a member of a union'] },
    ],
  },
  {
    what: 'with a figure of its own',
    tables: {
      'types.csv': ['id,union_of', 'a,', 'b,', 'ab,a;b'],
      'figures.csv': ['use,type', 'used,ab'],
    },
    faults: [{ at: 'figures.csv:2:type', says: ['a used figure of a union'] }],
  },
]);
