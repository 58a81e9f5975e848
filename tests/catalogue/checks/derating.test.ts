import { deratingSpans } from '../../../src/catalogue/checks/derating-spans.ts';
import { testRule } from './made-tables.ts';

const SPAN = 'guideline,types,from_c,to_c,above_v,up_to_v,share,end_share';

testRule('derating', deratingSpans, [
  {
    what: 'spans and ratings that meet at their ends, of other types, of other guidelines',
    tables: {
      'derating.csv': [
        SPAN,
        'one,a;b,85,125,,,0.8,0.5',
        'one,a;b,-55,85,,,1,1.1',
        'one,c,-55,125,,35,0.8,0.5',
        'one,c,-55,125,35,63,0.8,0.5',
        'one,c,-55,125,63,,0.7,0.5',
        'one,d,-55,125,63,,0.7,0.5',
        'one,d,-55,125,,63,0.8,0.5',
        'two,a,-55,125,,,0.8,0.5',
      ],
    },
    faults: [],
  },
  {
    what: 'shares of more than a maker lets pass at low temperature',
    tables: { 'derating.csv': [SPAN, 'one,a,-55,85,,,1.2,80', 'one,b,-55,85,,,0.8,1.11'] },
    faults: [
      { at: 'derating.csv:2:share', says: ['a share up to 1.1'] },
      'derating.csv:2:end_share',
      'derating.csv:3:end_share',
    ],
  },
  {
    what: 'the span that starts later is blamed, for the first that it runs into',
    tables: {
      'derating.csv': [
        SPAN,
        'one,a,80,125,,,0.8,0.5',
        'one,b;a,-55,85,,,0.8,0.8',
        'one,b,84,125,,,0.8,0.5',
      ],
    },
    faults: [
      { at: 'derating.csv:2:from_c', says: ['overlaps line 3 for a', 'from 85 degC on'] },
      { at: 'derating.csv:4:from_c', says: ['overlaps line 3 for b'] },
    ],
  },
  {
    what: 'one that starts in the first and not in the one between',
    tables: {
      'derating.csv': [
        SPAN,
        'one,a,0,100,,,0.8,0.5',
        'one,a,10,20,100,,0.8,0.8',
        'one,a,50,125,,50,0.8,0.5',
        'one,a,60,125,50,100,0.8,0.5',
      ],
    },
    faults: [
      { at: 'derating.csv:3:from_c', says: ['line 2'] },
      { at: 'derating.csv:4:from_c', says: ['line 2'] },
      { at: 'derating.csv:5:from_c', says: ['line 2', 'from 100 degC'] },
    ],
  },
  {
    what: 'ratings that overlap: a rest above, a rest below',
    tables: {
      'derating.csv': [
        SPAN,
        'one,a,0,100,,50,0.8,0.5',
        'one,a,0,100,40,,0.8,0.8',
        'one,b,0,100,50,,0.8,0.5',
        'one,b,0,100,,51,0.8,0.8',
      ],
    },
    faults: ['derating.csv:3:from_c', 'derating.csv:5:from_c'],
  },
]);
