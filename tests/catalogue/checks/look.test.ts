import { drawings } from '../../../src/catalogue/checks/drawings.ts';
import { lookAnswers } from '../../../src/catalogue/checks/look-answers.ts';
import { lookComplete } from '../../../src/catalogue/checks/look-complete.ts';
import { lookOwners } from '../../../src/catalogue/checks/look-owners.ts';
import { lookQuestions } from '../../../src/catalogue/checks/look-questions.ts';
import { lookUnits } from '../../../src/catalogue/checks/look-units.ts';
import { testRule } from './made-tables.ts';

testRule('look-owner', lookOwners, [
  {
    what: 'of a style or of a kind; of both, and of neither',
    tables: {
      'look/features.csv': ['kind,style', 'mica,', ',dipped', 'mica,dipped', ','],
      'look/ranges.csv': ['kind,style', 'mica,', ',', ',dipped', 'mica,dipped'],
    },
    faults: [
      { at: 'look/features.csv:4:style', says: ['a style and a kind', 'one of the two'] },
      { at: 'look/features.csv:5:style', says: ['neither a style nor a kind'] },
      'look/ranges.csv:3:style',
      'look/ranges.csv:5:style',
    ],
  },
]);

const ASKED = 'id,kind,unit,scale,sign,lowest,highest,near';

testRule('look-question', lookQuestions, [
  {
    what: 'numbers with all that places them, and answers that need none of it',
    tables: {
      'look/questions.csv': [
        ASKED,
        'year,range,grade,linear,positive,1900,2035,6',
        'warm,range,%,linear,signed,-60,60,0.05',
        'loss,range,%,log,positive,0.001,1000,1.3',
        'wear,score,grade,linear,positive,-0.5,2.5,0.3',
        'shape,one,,,,,,',
        'marks,any,,,,,,',
      ],
    },
    faults: [],
  },
  {
    what: 'a number without its unit, its scale, its sign, an end of it, or how near is near',
    tables: {
      'look/questions.csv': [
        ASKED,
        'a,range,,linear,positive,1,2,1',
        'b,range,%,,positive,1,2,1',
        'c,range,%,linear,,1,2,1',
        'd,score,grade,linear,positive,,2,1',
        'e,range,%,linear,positive,1,,1',
        'f,range,%,linear,positive,1,2,',
      ],
    },
    faults: [
      { at: 'look/questions.csv:2:unit', says: ['without its unit'] },
      'look/questions.csv:3:scale',
      'look/questions.csv:4:sign',
      { at: 'look/questions.csv:5:lowest', says: ['of kind score'] },
      'look/questions.csv:6:highest',
      'look/questions.csv:7:near',
    ],
  },
  {
    what: 'a logarithmic scale from nought, and a factor of one on it',
    tables: {
      'look/questions.csv': [
        ASKED,
        'a,range,%,log,positive,0,2,1.5',
        'b,range,%,log,positive,-1,2,1.5',
        'c,range,%,log,positive,1,2,1',
      ],
    },
    faults: [
      { at: 'look/questions.csv:2:lowest', says: ['not on a logarithmic scale', 'above zero'] },
      'look/questions.csv:3:lowest',
      { at: 'look/questions.csv:4:near', says: ['above one'] },
    ],
  },
]);

testRule('look-answer', lookAnswers, [
  {
    what: 'answers that the question has, that another has, and none',
    tables: {
      'look/questions.csv': ['id,kind', 'shape,one', 'marks,any'],
      'look/answers.csv': ['question,id', 'shape,round', 'shape,flat', 'marks,dots'],
      'look/features.csv': [
        'question,answers',
        'shape,round;flat',
        'shape,round;dots',
        'marks,',
        'unheard,round',
      ],
    },
    faults: [
      {
        at: 'look/features.csv:3:answers',
        got: 'dots',
        says: ['shape has no such', 'some of round, flat'],
      },
      { at: 'look/features.csv:4:answers', says: ['no answer', 'some of dots'] },
      { at: 'look/features.csv:5:answers', got: 'round' },
    ],
  },
  {
    what: 'ranges of what takes a number, and of what has fixed answers',
    tables: {
      'look/questions.csv': ['id,kind', 'shape,one', 'marks,any', 'year,range', 'wear,score'],
      'look/ranges.csv': [
        'style,question',
        'can,year',
        'can,wear',
        'can,unheard',
        'can,shape',
        'can,marks',
      ],
    },
    faults: [
      { at: 'look/ranges.csv:5:question', says: ['fixed answers', 'takes a number'] },
      'look/ranges.csv:6:question',
    ],
  },
]);

const UNITS = [
  'unit,si,factor',
  'ohm,ohm,1',
  'kohm,ohm,1000',
  's,s,1',
  'a,s,31557600',
  'mm,m,0.001',
];
const QUESTIONS = [
  'id,unit,lowest,highest,scale',
  'esr,ohm,0.1,100,log',
  'length,mm,1,200,linear',
  'leak,kohm,,,linear',
  'odd,furlong,1,2,linear',
];

testRule('look-unit', lookUnits, [
  {
    what: 'units of the kind, up to what can be read, and a resistance times the capacitance',
    tables: {
      'units.csv': UNITS,
      'look/questions.csv': QUESTIONS,
      'look/ranges.csv': [
        'question,unit,low,high',
        'esr,ohm,0.1,100',
        'esr,kohm,,0.1',
        'esr,ohm,,',
        // A logarithmic scale that starts above the least of a range shows it at its end.
        'esr,ohm,0.01,1',
        'esr,s,1,1e9',
        'length,mm,1,200',
        'leak,ohm,-1e9,1e9',
        'odd,ohm,7,9',
        'unheard,ohm,1e9,1e9',
        'esr,furlong,1e9,1e9',
      ],
    },
    faults: [],
  },
  {
    what: 'units of another kind, and numbers beyond what can be read',
    tables: {
      'units.csv': UNITS,
      'look/questions.csv': QUESTIONS,
      'look/ranges.csv': [
        'question,unit,low,high',
        'esr,mm,1,2',
        'length,s,1,2',
        'esr,kohm,,0.11',
        'length,mm,0.5,201',
        'length,mm,0.5,200',
      ],
    },
    faults: [
      { at: 'look/ranges.csv:2:unit', says: ['than esr has', 'like ohm'] },
      { at: 'look/ranges.csv:3:unit', says: ['than length has', 'like mm'] },
      { at: 'look/ranges.csv:4:high', says: ['0.1 to 100 ohm'] },
      { at: 'look/ranges.csv:5:high', says: ['1 to 200 mm'] },
      'look/ranges.csv:6:low',
    ],
  },
]);

/** All weights, so that none is missed. */
const WEIGHTS = [
  'id',
  'usual',
  'sometimes',
  'seldom',
  'mark-usual',
  'mark-sometimes',
  'mark-seldom',
  'mark-stray',
  'common',
  'met',
  'rare',
  'next-kind',
  'wrong',
  'edge',
  'foreign',
];

testRule('look-complete', lookComplete, [
  {
    what: 'a style that says what is usual, by answers, by a range, or in a row with a fault',
    tables: {
      'look/questions.csv': [
        'id,kind,part',
        'shape,one,',
        'year,range,',
        'wear,score,',
        // Measured, and asked of capacitors alone: no style need say.
        'esr,range,',
        'gain,range,',
        'charge,one,capacitor',
      ],
      'look/styles.csv': ['id,kinds', 'can,electrolytic', 'drop,'],
      'look/features.csv': [
        'style,kind,question,how',
        'can,,shape,usual',
        'can,,wear,usual',
        ',electrolytic,gain,seldom',
        '!drop,,shape,',
        'drop,,wear,sometimes',
        'drop,,wear,usual',
      ],
      'look/ranges.csv': ['style,kind,question', 'can,,year', '!drop,,year', ',electrolytic,esr'],
    },
    faults: [],
  },
  {
    what: 'what a style does not say, or says only is met sometimes',
    tables: {
      'look/questions.csv': ['id,kind,part', 'shape,one,', 'year,range,', 'wear,any,'],
      'look/styles.csv': ['name,id', 'A can,can', 'A drop,drop'],
      'look/features.csv': [
        'style,question,how',
        'can,shape,usual',
        'can,year,usual',
        'drop,shape,sometimes',
        'drop,wear,usual',
      ],
      'look/ranges.csv': ['style,question', 'drop,year', 'can,wear'],
    },
    faults: [
      { at: 'look/styles.csv:2:id', says: ['usual said of its year', 'a row for year'] },
      { at: 'look/styles.csv:2:id', says: ['usual said of its wear'] },
      { at: 'look/styles.csv:3:id', says: ['usual said of its shape'] },
    ],
  },
  {
    what: 'types that a style shows, that only a kind is of, that none is, and a union',
    tables: {
      'types.csv': ['name,id,union_of', 'A,a,', 'B,b,', 'C,c,', 'AB,ab,a;b'],
      'look/kinds.csv': ['id,type', 'in-can,a', 'in-nothing,b'],
      'look/styles.csv': ['id,kinds', 'can,in-can'],
    },
    faults: [
      { at: 'types.csv:3:id', says: ['no style shows', 'inside a style'] },
      'types.csv:4:id',
    ],
  },
  {
    what: 'every weight',
    tables: { 'look/weights.csv': WEIGHTS },
    faults: [],
  },
  {
    what: 'two weights that are missed, at the first row that is there',
    tables: {
      'look/weights.csv': [
        'value,id',
        ...WEIGHTS.slice(1)
          .filter((id) => id !== 'edge' && id !== 'usual')
          .map((id) => `0.5,${id}`),
      ],
    },
    faults: [
      { at: 'look/weights.csv:2:id', got: '', says: ['no weight usual', 'a row for usual'] },
      { at: 'look/weights.csv:2:id', got: '', says: ['no weight edge'] },
    ],
  },
]);

testRule('drawing', drawings, [
  {
    what: 'forms that there are, and every type and style drawn',
    tables: {
      'types.csv': ['id', 'foil', '!odd'],
      'market.csv': ['type,style', 'foil,box', 'foil,disc'],
      'type-looks.csv': ['type,style,form', 'foil,box,box', 'foil,disc,disc'],
      'bodies.csv': ['type,style', 'foil,box', 'foil,disc', 'foil,never-offered'],
      'look/drawings.csv': ['style,form', 'can,can'],
      'job/part-outlines.csv': ['form', 'dip'],
    },
    faults: [],
  },
  {
    what: 'looks that are drawn, if only by a row with a fault, and one that is not',
    tables: {
      'look/styles.csv': ['id', 'can', 'odd', 'bead'],
      'look/drawings.csv': ['style,form', 'can,can', '!odd,can'],
    },
    faults: [{ at: 'look/styles.csv:4:id', says: ['is drawn', 'a row bead in look/drawings.csv'] }],
  },
  {
    what: 'forms that are not drawn',
    tables: {
      'type-looks.csv': ['type,form', 'foil,sphere'],
      'look/drawings.csv': ['style,form', 'can,cone'],
      'job/part-outlines.csv': ['id,form', 'x,pyramid'],
      'job/package-looks.csv': ['id,form', 'narrow,dip', 'wide,slab'],
      'markings/colour-forms.csv': ['id,form', 'rod,resistor', 'flat,slab'],
    },
    faults: [
      'job/package-looks.csv:3:form',
      { at: 'job/part-outlines.csv:2:form', says: ['disc, plate, dipped'] },
      'look/drawings.csv:2:form',
      'markings/colour-forms.csv:3:form',
      'type-looks.csv:2:form',
    ],
  },
  {
    what: 'a type without a look, and a style of another type, said once however many sizes it has',
    tables: {
      'types.csv': ['name,id', 'Foil,foil', 'Mica,mica', 'Oil,oil'],
      'market.csv': ['type,style', 'foil,box', 'mica,box', 'mica,dipped'],
      'type-looks.csv': ['type,style,form', 'foil,box,box', '!oil,,', 'mica,dipped,dipped'],
      'bodies.csv': ['type,style', 'foil,box', 'mica,box', 'mica,box', 'mica,dipped'],
    },
    faults: [{ at: 'bodies.csv:4:style', says: ['style of mica', 'a row in type-looks.csv'] }],
  },
  {
    what: 'a type without a look at all',
    tables: {
      'types.csv': ['name,id', 'Foil,foil', 'Mica,mica'],
      'type-looks.csv': ['type,form', 'foil,box'],
    },
    faults: [{ at: 'types.csv:3:id', says: ['a row in type-looks.csv'] }],
  },
]);
