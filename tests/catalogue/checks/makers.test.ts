import { makerNames } from '../../../src/catalogue/checks/maker-names.ts';
import { repeatedSources } from '../../../src/catalogue/checks/repeated-sources.ts';
import { testRule } from './made-tables.ts';

/** Three publishers, invented; the last one is no maker. */
const SOURCES = [
  'id,kind,publisher',
  'one,data-sheet,Quillon Brightwater Components',
  'two,data-sheet,Zarn/Vexel (North Radio) - Um',
  'three,handbook,Plimpton',
];

testRule('maker-name', makerNames, [
  {
    what: 'whole names and each word of their own, as words',
    tables: {
      'sources.csv': SOURCES,
      'types.csv': [
        'id,name',
        'a,by Quillon',
        'b,a Brightwater part',
        'c,Zarn',
        'd,Vexel-made',
        'e,by North Radio',
        'f,Quillon Brightwater Components',
      ],
    },
    faults: [
      { at: 'types.csv:2:name', says: ['the maker Quillon'] },
      { at: 'types.csv:3:name', says: ['the maker Brightwater'] },
      { at: 'types.csv:4:name', says: ['the maker Zarn'] },
      { at: 'types.csv:5:name', says: ['the maker Vexel'] },
      { at: 'types.csv:6:name', says: ['the maker North Radio'] },
      { at: 'types.csv:7:name', says: ['the maker Quillon Brightwater Components'] },
    ],
  },
  {
    what: 'ordinary words, parts of words, small letters, short words, and who makes nothing',
    tables: {
      'sources.csv': SOURCES,
      'types.csv': [
        'id,name',
        'a,Components of the North; Radio',
        'b,Zarning; MacVexel; Zarn7',
        'c,zarn',
        'd,Um',
        'e,Plimpton',
      ],
    },
    faults: [],
  },
  {
    what: 'where a source is cited, a name may stand',
    tables: {
      'sources.csv': [...SOURCES, 'four,data-sheet,Zarn'],
      'types.csv': ['id,source,locator,note', 'a,,Zarn table 3,', 'b,,,as Zarn says'],
      'look/signs.csv': ['id,source', '!a,Zarn'],
    },
    faults: ['types.csv:3:note'],
  },
  {
    what: 'a name with signs that mean something in patterns',
    tables: {
      'sources.csv': ['kind,publisher', 'data-sheet,A.B+ Zorb'],
      'types.csv': ['id,name', 'a,AxB Zorn', 'b,Zorb', 'c,A.B+ Zorb'],
    },
    faults: ['types.csv:3:name', { at: 'types.csv:4:name', says: ['the maker A.B+ Zorb'] }],
  },
  {
    what: 'the longest name that fits is told, whichever was read first',
    tables: {
      'sources.csv': [
        'kind,publisher',
        'data-sheet,Zarn',
        'data-sheet,Zarn Vexel',
        'data-sheet,Abb',
      ],
      'types.csv': ['name', 'as Zarn Vexel has it', 'Abb'],
    },
    faults: [
      { at: 'types.csv:2:name', says: ['the maker Zarn Vexel;'] },
      { at: 'types.csv:3:name', says: ['the maker Abb;'] },
    ],
  },
  {
    what: 'a name with a hyphen is one word, with a digit too; between spaces a hyphen parts two',
    tables: {
      'sources.csv': [
        'kind,publisher',
        'data-sheet,Qualt-Bromm',
        'data-sheet,Krell7 - Ostra',
        'data-sheet,Drum  -  Vost',
      ],
      'types.csv': ['name', 'Bromm', 'Qualt-Bromm', 'Krell7', 'Ostra', 'Krell7 - Ostra', 'Vost'],
    },
    faults: [
      'types.csv:3:name',
      'types.csv:4:name',
      'types.csv:5:name',
      { at: 'types.csv:6:name', says: ['the maker Krell7;'] },
      'types.csv:7:name',
    ],
  },
  {
    what: 'a name of ordinary words is one as a whole; small words make it none',
    tables: {
      'sources.csv': [
        'kind,publisher',
        'data-sheet,General Radio Company',
        'data-sheet,Capacitors of the world',
        'data-sheet,Mica',
        'data-sheet,maKer dUbb',
      ],
      'types.csv': [
        'name',
        'General Radio Company',
        'General Radio',
        'Capacitors of the world',
        'Mica',
        'maKer',
        'MaKer',
      ],
    },
    faults: ['types.csv:2:name'],
  },
  {
    what: 'each word that is ordinary in our own texts',
    tables: {
      'sources.csv': [
        'kind,publisher',
        ...[
          'Advanced',
          'Chip',
          'Circuit',
          'Distributor',
          'Emission',
          'European',
          'Film',
          'Wire',
        ].map((word) => `data-sheet,${word}`),
      ],
      'types.csv': [
        'name',
        'Advanced Chip',
        'Circuit; Distributor',
        'Emission; European',
        'Film; Wire',
      ],
    },
    faults: [],
  },
  {
    what: 'no maker known, so none named',
    tables: { 'sources.csv': ['kind,publisher', 'handbook,Zarn'], 'types.csv': ['name', 'Zarn'] },
    faults: [],
  },
]);

testRule('repeated-source', repeatedSources, [
  {
    what: 'one page under two names, however its address is written',
    tables: {
      'sources.csv': [
        'id,publisher,url',
        'one,Zarn,https://zarn.example/sheet',
        'two,Vexel,http://zarn.example/sheet/',
        'three,Zarn,https://zarn.example/other',
      ],
    },
    faults: [{ at: 'sources.csv:3:url', says: ['page of one'] }],
  },
  {
    what: 'one publisher in two spellings',
    tables: {
      'sources.csv': [
        'id,publisher,url',
        'one,Zarn Inc,',
        'two,ZARN,',
        'three,Zarn Incorporated,',
        'four,Zarn Inc,',
        'five,Zarn Works,',
      ],
    },
    faults: [
      { at: 'sources.csv:3:publisher', says: ['Zarn Inc'] },
      { at: 'sources.csv:4:publisher', says: ['Zarn Inc'] },
    ],
  },
  {
    what: 'two works of one repository, sources that have no address, and no publisher',
    tables: {
      'sources.csv': [
        'id,publisher,url',
        'one,Zarn,https://github.com/zarn/models',
        'two,Vexel,https://github.com/zarn/models',
        'three,,',
        'four,,',
      ],
    },
    faults: [],
  },
]);
