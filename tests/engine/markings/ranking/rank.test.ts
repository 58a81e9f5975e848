import { describe, expect, test } from 'vitest';
import type { Scored } from '../../../../src/engine/markings/ranking/candidate.ts';
import type { Parse } from '../../../../src/engine/markings/ways/parse.ts';
import { ranked } from '../../../../src/engine/markings/ranking/rank.ts';
import type {
  Evidence,
  Reading,
  Tolerance,
} from '../../../../src/engine/markings/meanings/reading.ts';
import type { Assumed } from '../../../../src/engine/markings/text/text.ts';
import type { Content, Token } from '../../../../src/engine/markings/meanings/token.ts';
import { exactly } from '../../../../src/engine/quantities/range.ts';

/** A way of invented marks: its score, its capacitance in pF, and what else there is of it. */
interface Way {
  score: number;
  pF?: number;
  /** Instead, those of several sections. */
  sections?: number[];
  /** Per cent each way. */
  tolerance?: number;
  volts?: number;
  /** What is understood and what is left of the marking. */
  text?: string;
  left?: string[];
  assumed?: Assumed['why'];
  /** What would tell a taper, where there is one. */
  taper?: string;
}

const token = (content: Content, slot: Token['meaning']['slot'], assumed: Assumed[]): Token => ({
  at: 0,
  end: 3,
  meaning: {
    ...(slot === undefined ? {} : { slot }),
    content,
    bodies: 1,
    origins: 1,
    types: [],
    means: () => '-',
    source: 'trade',
  },
  weight: 0,
  needs: [],
  assumed,
});

const toleranceOf = (percent: number): Tolerance => ({
  minus: percent / 100,
  plus: percent / 100,
  unit: 'fraction',
});

const assumedOf = ({ assumed }: Way): Assumed[] =>
  assumed === undefined ? [] : [{ at: 0, as: '1', why: assumed }];

const tokensOf = (way: Way): Token[] => {
  const { pF, sections, tolerance, volts, taper } = way;
  const one: Content | undefined =
    pF === undefined
      ? undefined
      : { says: 'capacitance', value: pF * 1e-12, figures: '1', withUnit: true };
  const value: Content | undefined =
    sections === undefined ? one : { says: 'sections', values: sections, symbols: [] };
  return [
    ...(value === undefined ? [] : [token(value, 'value', assumedOf(way))]),
    ...(tolerance === undefined
      ? []
      : [token({ says: 'tolerance', tolerance: toleranceOf(tolerance) }, 'tolerance', [])]),
    ...(volts === undefined
      ? []
      : [token({ says: 'voltage', volts: exactly(volts), rated: true }, 'voltage', [])]),
    ...(taper === undefined
      ? []
      : [
          token(
            {
              says: 'taper',
              taper: 'linear',
              settle: taper,
            },
            'taper',
            [],
          ),
        ]),
  ];
};

const readingOf = (way: Way): Reading => {
  const { pF, sections, tolerance, volts, text = '104', left = [] } = way;
  const assumed = assumedOf(way);
  const evidence: Evidence = { text, at: 0, means: '-', source: 'trade' };
  return {
    kind: 'capacitor',
    ...(pF === undefined ? {} : { capacitance: exactly(pF * 1e-12) }),
    ...(sections === undefined
      ? {}
      : { sections: sections.map((each) => ({ capacitance: exactly(each) })) }),
    ...(tolerance === undefined ? {} : { tolerance: toleranceOf(tolerance) }),
    ...(volts === undefined ? {} : { ratedVoltage: exactly(volts) }),
    types: [],
    sure: 'possible',
    evidence: [assumed.length === 0 ? evidence : { ...evidence, assumed }],
    notUnderstood: left,
    settleBy: [],
  };
};

const METERING = { unmarkedTolerance: 0.2, largestAt1kHz: 1e-6 };

/** Readings of invented ways in their order, each as its value in pF, tolerance and sureness. */
const shown = (ways: readonly Way[]): [pF: number, percent: number, sure: string][] => {
  const readings = new Map<Parse, Reading>();
  const scored = ways.map((way): Scored => {
    const taken = tokensOf(way);
    const value = taken.find(({ meaning }) => meaning.slot === 'value');
    const parse: Parse = { score: 0, value, taken, skipped: [], bodies: 1, origins: 1 };
    readings.set(parse, readingOf(way));
    return { parse, score: way.score };
  });
  const found = ranked(METERING, scored, (parse) => readings.get(parse) ?? readingOf({ score: 0 }));
  return found.map(({ capacitance, tolerance, sure }) => [
    Math.round((capacitance?.typ ?? 0) * 1e12),
    Math.round((tolerance?.plus ?? 0) * 100),
    sure,
  ]);
};

describe('how far a single reading is trusted', () => {
  test.each<[says: string, way: Way, sure: Reading['sure']]>([
    ['far above what is needed', { score: 9, pF: 1 }, 'sure'],
    ['just enough', { score: 5, pF: 1 }, 'sure'],
    ['not quite enough', { score: 4.9, pF: 1 }, 'likely'],
    ['enough to be likely', { score: 2.5, pF: 1 }, 'likely'],
    ['too little', { score: 2.4, pF: 1 }, 'possible'],
    ['no value', { score: 9 }, 'possible'],
    // Three of five letters understood are enough, three of six are not.
    ['most is understood', { score: 9, pF: 1, left: ['AB'] }, 'sure'],
    ['half is left', { score: 9, pF: 1, left: ['AB', 'C'] }, 'likely'],
    ['signs are no letters', { score: 9, pF: 1, left: ['-+=%'] }, 'sure'],
    // Figures that are left might have been the value.
    ['figures are left', { score: 9, pF: 1, left: ['A1'] }, 'likely'],
    ['much begins with figures', { score: 9, pF: 1, left: ['12'] }, 'possible'],
    ['little begins with figures', { score: 9, pF: 1, text: '104K50V', left: ['12'] }, 'likely'],
    ['something was made up', { score: 9, pF: 1, assumed: 'worn' }, 'likely'],
    ['something was taken for another', { score: 9, pF: 1, assumed: 'look-alike' }, 'likely'],
    ['something could not be read', { score: 9, pF: 1, left: ['?'] }, 'likely'],
    ['makers differ about a taper', { score: 9, pF: 1, taper: 'measure' }, 'likely'],
    ['a taper in words', { score: 9, pF: 1, taper: '' }, 'sure'],
  ])('%s', (_, way, sure) => {
    expect(shown([way]).map((each) => each[2])).toEqual([sure]);
  });

  test('there is none of nothing', () => {
    expect(shown([])).toEqual([]);
  });
});

describe('a reading among rivals', () => {
  test.each<[says: string, ways: Way[], wanted: [pF: number, percent: number, sure: string][]]>([
    // Another value is shown up to 2.4 behind, and counts against the lead however far behind.
    [
      'far behind',
      [
        { score: 6, pF: 1 },
        { score: 3.2, pF: 2 },
      ],
      [[1, 0, 'sure']],
    ],
    [
      'not far enough to be sure',
      [
        { score: 6, pF: 1 },
        { score: 3.3, pF: 2 },
      ],
      [[1, 0, 'likely']],
    ],
    [
      'near enough to be shown',
      [
        { score: 6, pF: 1 },
        { score: 3.6, pF: 2 },
      ],
      [
        [1, 0, 'likely'],
        [2, 0, 'possible'],
      ],
    ],
    [
      'one and a half behind',
      [
        { score: 6, pF: 1 },
        { score: 4.5, pF: 2 },
      ],
      [
        [1, 0, 'likely'],
        [2, 0, 'possible'],
      ],
    ],
    [
      'close behind, in whatever order they come',
      [
        { score: 4.6, pF: 2 },
        { score: 6, pF: 1 },
      ],
      [
        [1, 0, 'possible'],
        [2, 0, 'possible'],
      ],
    ],
    [
      'too poor to be shown',
      [
        { score: 2.5, pF: 1 },
        { score: 0.4, pF: 2 },
        { score: 0.3, pF: 3 },
      ],
      [
        [1, 0, 'likely'],
        [2, 0, 'possible'],
      ],
    ],
    // Another tolerance of the same value is shown up to 1.25 behind its like.
    [
      'of the same value',
      [
        { score: 6, pF: 1, tolerance: 5 },
        { score: 4.75, pF: 1, tolerance: 10 },
        { score: 4.5, pF: 1, tolerance: 20 },
      ],
      [
        [1, 5, 'likely'],
        [1, 10, 'possible'],
      ],
    ],
    [
      'of the value of a rival',
      [
        { score: 6, pF: 1 },
        { score: 5, pF: 2, tolerance: 5 },
        { score: 3.75, pF: 2, tolerance: 10 },
        { score: 3.5, pF: 2, tolerance: 20 },
      ],
      [
        [1, 0, 'possible'],
        [2, 5, 'possible'],
        [2, 10, 'possible'],
      ],
    ],
    [
      'of the same value and another voltage',
      [
        { score: 6, pF: 1, volts: 16 },
        { score: 5, pF: 1, volts: 25 },
        { score: 5, pF: 1, volts: 16 },
      ],
      [
        [1, 0, 'likely'],
        [1, 0, 'possible'],
      ],
    ],
    // Of equals the tighter comes first, one without a tolerance last.
    [
      'as good',
      [
        { score: 6, pF: 1 },
        { score: 6, pF: 1, tolerance: 20 },
        { score: 6, pF: 1, tolerance: 5 },
      ],
      [
        [1, 5, 'likely'],
        [1, 20, 'possible'],
        [1, 0, 'possible'],
      ],
    ],
    // The same meaning twice is shown once, with its better score.
    [
      'of the same meaning',
      [
        { score: 4, pF: 1, tolerance: 5 },
        { score: 6, pF: 1, tolerance: 5 },
      ],
      [[1, 5, 'sure']],
    ],
    // What leaves more of the marking aside is no rival.
    [
      'of the same value that leaves more',
      [
        { score: 6, pF: 1, tolerance: 5 },
        { score: 5, pF: 1, left: ['K'] },
      ],
      [[1, 5, 'sure']],
    ],
    [
      'of another value that leaves more',
      [
        { score: 6, pF: 1 },
        { score: 5, pF: 2, left: ['K'] },
      ],
      [[1, 0, 'possible']],
    ],
    [
      'that leaves as much',
      [
        { score: 6, pF: 1, left: ['K'] },
        { score: 4, pF: 2, left: ['J'] },
        { score: 4, pF: 3, left: [] },
        { score: 3.9, pF: 3, tolerance: 5, left: ['J'] },
      ],
      [
        [1, 0, 'likely'],
        [2, 0, 'possible'],
        [3, 0, 'possible'],
      ],
    ],
    // Other sections are another value, and so are those beside one.
    [
      'of other sections',
      [
        { score: 6, sections: [8, 8] },
        { score: 4, sections: [8, 16] },
        { score: 4, pF: 16 },
      ],
      [
        [0, 0, 'likely'],
        [0, 0, 'possible'],
        [16, 0, 'possible'],
      ],
    ],
    // Where characters were made up, all that they may be is shown, and none is likely among rivals.
    [
      'that was made up',
      [
        { score: 4, pF: 1, assumed: 'worn' },
        { score: 2, pF: 2, assumed: 'worn' },
        { score: 1.5, pF: 3, assumed: 'worn' },
        { score: 2, pF: 1, tolerance: 5, assumed: 'worn' },
        { score: 1.9, pF: 1, tolerance: 10, assumed: 'worn' },
      ],
      [
        [1, 0, 'possible'],
        [1, 5, 'possible'],
        [2, 0, 'possible'],
      ],
    ],
    [
      'that was made up and is poor',
      [
        { score: 1, pF: 1, assumed: 'worn' },
        { score: -0.5, pF: 2, assumed: 'worn' },
        { score: -0.6, pF: 3, assumed: 'worn' },
      ],
      [
        [1, 0, 'possible'],
        [2, 0, 'possible'],
      ],
    ],
  ])('%s', (_, ways, wanted) => {
    expect(shown(ways)).toEqual(wanted);
  });

  const alike = (count: number, assumed?: Assumed['why']): Way[] =>
    Array.from({ length: count }, (_, index) => ({
      score: 6,
      pF: index + 1,
      ...(assumed && { assumed }),
    }));

  test('eight are shown at most, and twenty-four where something was made up', () => {
    expect(shown(alike(9))).toHaveLength(8);
    expect(shown(alike(25, 'worn'))).toHaveLength(24);
    expect(shown(alike(9, 'look-alike'))).toHaveLength(8);
  });
});
