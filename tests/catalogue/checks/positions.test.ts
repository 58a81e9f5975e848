import { conditionsComplete } from '../../../src/catalogue/checks/conditions-complete.ts';
import { conditionsUsed } from '../../../src/catalogue/checks/conditions-used.ts';
import { demandsComplete } from '../../../src/catalogue/checks/demands-complete.ts';
import { findingsKnown } from '../../../src/catalogue/checks/findings-known.ts';
import { noteFigures } from '../../../src/catalogue/checks/note-figures.ts';
import { notesComplete } from '../../../src/catalogue/checks/notes-complete.ts';
import { basisRules } from '../../../src/catalogue/checks/basis-rules.ts';
import { sourcesCited } from '../../../src/catalogue/checks/sources-cited.ts';
import { sumsKnown } from '../../../src/catalogue/checks/sums-known.ts';
import { testRule } from './made-tables.ts';

testRule('missing-demand', demandsComplete, [
  {
    what: 'places that ask something, if only by a row with a fault',
    tables: {
      'positions.csv': ['id', 'timing', '!odd'],
      'kinds/positions.csv': ['id', 'feedback'],
      'devices/uses.csv': ['id', 'buffer'],
      'demands.csv': ['position,finding', 'timing,drift', '!odd,drift', 'feedback,noise'],
      'devices/demands.csv': ['position,finding', 'buffer,speed'],
    },
    faults: [],
  },
  {
    what: 'places that ask nothing, whatever others of their name do elsewhere',
    tables: {
      'positions.csv': ['name,id', 'Timing,timing', 'Hold,hold'],
      'kinds/positions.csv': ['id', 'feedback'],
      'devices/uses.csv': ['id', 'hold', 'buffer'],
      'demands.csv': ['position,finding', 'timing,drift'],
      'devices/demands.csv': ['position,finding', 'hold,speed'],
    },
    faults: [
      'devices/uses.csv:3:id',
      { at: 'kinds/positions.csv:2:id', says: ['asks nothing', 'rows feedback in demands.csv'] },
      { at: 'positions.csv:3:id', got: 'hold' },
    ],
  },
]);

testRule('missing-condition', conditionsComplete, [
  {
    what: 'conditions of the finding and of the limit, each once',
    tables: {
      'findings.csv': ['id,conditions', 'leak,heat;across', 'level,'],
      'demands.csv': [
        'position,finding,limit_of',
        'timing,leak,heat',
        'hold,leak,across',
        'hold,level,load',
        'hold,unheard,',
        'hold,unheard,gain',
      ],
      'conditions.csv': ['position,condition', 'timing,heat', '!timing,across', 'hold,heat'],
    },
    faults: [
      { at: 'demands.csv:3:finding', says: ['hold has no condition across', 'a row hold,across'] },
      { at: 'demands.csv:4:limit_of', says: ['no condition load'] },
      { at: 'demands.csv:6:limit_of', says: ['no condition gain'] },
    ],
  },
]);

testRule('unused-condition', conditionsUsed, [
  {
    what: 'needed, only told, a limit, and none of these at this position',
    tables: {
      'findings.csv': ['id,conditions,told', 'leak,heat;across,age', '!level,load,'],
      'demands.csv': [
        'position,finding,limit_of',
        'timing,leak,gain',
        '!hold,level,',
        'hold,unheard,',
      ],
      'conditions.csv': [
        'position,condition',
        'timing,heat',
        'timing,across',
        'timing,age',
        'timing,gain',
        'timing,load',
        'hold,load',
        'hold,heat',
      ],
    },
    faults: [
      { at: 'conditions.csv:6:condition', says: ['on timing'] },
      { at: 'conditions.csv:8:condition', says: ['on hold'] },
    ],
  },
]);

testRule('finding', findingsKnown, [
  {
    what: 'worked out and asked for, not worked out, not asked for, neither',
    tables: {
      'findings.csv': ['name,id', 'a,rated-voltage', 'b,charm', 'c,marked-value', 'd,colour'],
      'demands.csv': ['finding', 'rated-voltage', '!charm'],
    },
    faults: [
      {
        at: 'findings.csv:3:id',
        says: ['does not work this out', 'rated-voltage', 'marked-value,'],
      },
      { at: 'findings.csv:4:id', says: ['no demand asks for it'] },
      'findings.csv:5:id',
      'findings.csv:5:id',
    ],
  },
]);

testRule('note-figure', noteFigures, [
  {
    what: 'a figure with its unit, an equation that is one, and neither',
    tables: {
      'position-notes.csv': [
        'kind,equation,min,typ,max,unit',
        'limit,,1,,,V',
        'limit,,,1,,V',
        'limit,,,,1,V',
        'equation,V = I R,,,,',
        'trap,,,,,',
      ],
    },
    faults: [],
  },
  {
    what: 'a figure without a unit, a unit without a figure',
    tables: { 'position-notes.csv': ['kind,typ,unit', 'limit,1,', 'limit,,V'] },
    faults: [
      { at: 'position-notes.csv:2:unit', says: ['figure without', 'a unit in units.csv'] },
      { at: 'position-notes.csv:3:unit', says: ['unit without', 'nothing'] },
    ],
  },
  {
    what: 'no equation, and one where none belongs',
    tables: { 'position-notes.csv': ['kind,equation', 'equation,', 'trap,V = I R'] },
    faults: [
      { at: 'position-notes.csv:2:equation', says: ['no equation', 'in plain text'] },
      { at: 'position-notes.csv:3:equation', says: ['of kind trap', 'nothing'] },
    ],
  },
]);

testRule('missing-note', notesComplete, [
  {
    what: 'what a position of either table lacks',
    tables: {
      'positions.csv': ['name,id', 'A,a', 'B,b'],
      'kinds/positions.csv': ['name,id', 'C,c'],
      'position-notes.csv': [
        'position,kind',
        'a,equation',
        'a,usual-choice',
        '!a,symptom',
        'a,trap',
        'b,equation',
        'b,limit',
        'c,symptom',
        'c,trap',
        'c,equation',
      ],
    },
    faults: [
      { at: 'kinds/positions.csv:2:id', says: ['kind usual-choice', 'a row c,usual-choice'] },
      { at: 'positions.csv:3:id', says: ['kind usual-choice', 'a row b,usual-choice'] },
      { at: 'positions.csv:3:id', says: ['kind symptom'] },
      { at: 'positions.csv:3:id', says: ['kind trap'] },
    ],
  },
]);

testRule('sum', sumsKnown, [
  {
    what: 'sums that there are, with fields of theirs, filled with what there is',
    tables: {
      'findings.csv': [
        'id,sum',
        'edge,pulse-edge',
        'heat,',
        'leak,ripple-heating',
        'near,decoupling',
      ],
      'kinds/kinds.csv': ['id,sums', 'trimmer,pulse-edge;ripple-heating', 'resistor,'],
      'condition-definitions.csv': ['id', 'swing', '!time'],
      'properties.csv': ['id', 'dvdt'],
      'kinds/properties.csv': ['id', 'core'],
      'sum-inputs.csv': [
        'sum,input,takes,of',
        'pulse-edge,swing,condition,swing;time',
        'pulse-edge,time,highest,time',
        'pulse-edge,edge,property,dvdt;core',
        'pulse-edge,rating,words,1e3',
        'decoupling,parts,words,one',
        'ripple-heating,esr,property,core',
      ],
    },
    faults: [],
  },
  {
    what: 'a finding that leads to a sum without fields, and a kind to one that there is not',
    tables: {
      'findings.csv': ['id,sum', 'edge,pulse-edge'],
      'kinds/kinds.csv': ['id,sums', 'trimmer,ripple-heating;guesswork'],
      'sum-inputs.csv': ['sum,input'],
    },
    faults: [
      { at: 'findings.csv:2:sum', says: ['rows in sum-inputs.csv'] },
      { at: 'kinds/kinds.csv:2:sums', says: ['no such sum'] },
    ],
  },
  {
    what: 'a sum that there is not, one that nothing leads to, a field that it has not',
    tables: {
      'findings.csv': ['id,sum', 'edge,pulse-edge', 'guess,guesswork'],
      'sum-inputs.csv': [
        'input,sum,takes',
        'swing,guesswork,words',
        'esr,ripple-heating,words',
        'temper,pulse-edge,words',
      ],
    },
    faults: [
      { at: 'sum-inputs.csv:2:sum', says: ['there is no such sum'] },
      { at: 'sum-inputs.csv:3:sum', says: ['no finding leads to it'] },
      { at: 'sum-inputs.csv:4:input', says: ['no such field', 'edge, swing, time'] },
    ],
  },
  {
    what: 'words for a field that asks for a number',
    tables: {
      'findings.csv': ['id,sum', 'edge,pulse-edge'],
      'sum-inputs.csv': ['sum,input,takes,of', 'pulse-edge,rating,words,1o00'],
    },
    faults: [{ at: 'sum-inputs.csv:2:of', says: ['asks for a number'] }],
  },
  ...(
    [
      ['condition', 'condition-definitions.csv'],
      ['highest', 'condition-definitions.csv'],
      ['peak', 'condition-definitions.csv'],
      ['with-own-resistance', 'condition-definitions.csv'],
      ['with-surge-resistance', 'condition-definitions.csv'],
      ['property', 'properties.csv'],
      ['property-if-known', 'properties.csv'],
      ['by-wiring', 'properties.csv'],
    ] as const
  ).map(([takes, table]) => ({
    what: `what is taken as ${takes} is a name of ${table}, each of several`,
    tables: {
      'findings.csv': ['sum', 'pulse-edge'],
      'condition-definitions.csv': ['id', 'known', 'here'],
      'properties.csv': ['id', 'known', 'there'],
      'sum-inputs.csv': [
        'sum,input,takes,of',
        `pulse-edge,swing,${takes},known`,
        `pulse-edge,swing,${takes},known;${table === 'properties.csv' ? 'here' : 'there'}`,
      ],
    },
    faults: [{ at: 'sum-inputs.csv:3:of', says: [`not found in ${table}`] }],
  })),
]);

const SOURCES = [
  'id,kind,seen',
  'book,handbook,full-text',
  'blog,web-page,full-text',
  'lost,handbook,not-seen',
];

testRule('basis', basisRules, [
  {
    what: 'published and seen at a named place, and what is not called published',
    tables: {
      'sources.csv': SOURCES,
      'figures.csv': [
        'source,locator,basis',
        'book,table 3,published',
        'blog,,common-practice',
        'lost,,memory',
        'unheard,,published',
      ],
    },
    faults: [],
  },
  {
    what: 'published where no figure may come from, or where nobody looked',
    tables: {
      'sources.csv': SOURCES,
      'figures.csv': ['source,locator,basis', 'blog,table 3,published', '!lost,table 3,published'],
    },
    faults: [
      { at: 'figures.csv:2:basis', says: ['of kind web-page', 'common-practice or memory'] },
      { at: 'figures.csv:3:basis', says: ['nobody saw'] },
    ],
  },
]);

testRule('locator', basisRules, [
  {
    what: 'published, but not where',
    tables: { 'sources.csv': SOURCES, 'figures.csv': ['source,locator,basis', 'book,,published'] },
    faults: [{ at: 'figures.csv:2:locator', says: ['not where'] }],
  },
]);

testRule('uncited-source', sourcesCited, [
  {
    // wima-pulse stands behind the sum pulse-edge itself, winday-film behind a check of film-ac.
    what: 'cited by a row, by a sum, by the check of a sum, or by nothing',
    tables: {
      'sources.csv': ['title,id', 'A,one', 'B,wima-pulse', 'C,winday-film', 'D,idle', 'E,named'],
      'figures.csv': ['type,source,note', '!mica,one,idle', 'named,one,'],
    },
    faults: [
      { at: 'sources.csv:5:id', says: ['cites this source'] },
      { at: 'sources.csv:6:id', says: ['cites this source'] },
    ],
  },
]);
