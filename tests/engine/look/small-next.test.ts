import { describe, expect, test } from 'vitest';
import { lookKey, type LookAnswers } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { LookTables } from '../../../src/schemas/look.ts';
import { answersTo, feature, kind, question, small, span, style } from './small-tables.ts';

/** Bits that are open between shares (Shannon). */
const entropy = (...shares: number[]): number => {
  const all = shares.reduce((sum, share) => sum + share, 0);
  return shares.reduce((sum, share) => sum - (share / all) * Math.log2(share / all), 0);
};

const two = (more: Partial<LookTables>) =>
  small({
    styles: [style('left', ['l'], 'common'), style('right', ['r'], 'common')],
    kinds: [kind('l'), kind('r')],
    ...more,
  });

/** A question that two styles answer differently, one in ten of them wrongly to either side. */
const parting = (id: string, one: string, other: string) => [
  feature('left', id, [one], 'usual'),
  feature('right', id, [other], 'usual'),
];

const yesOrNo = (...ids: string[]) => ids.flatMap((id) => answersTo(id, 'yes', 'no'));

describe('what a question is worth, by hand', () => {
  const tables = two({
    questions: [
      question('plain', 'one'),
      question('hard', 'one', { effort: 4 }),
      question('half', 'one', { counts: 0.5 }),
      question('same', 'one'),
      question('unknown', 'one'),
      question('year', 'range', { lowest: 1900, highest: 2000, near: 10, scale: 'linear' }),
      question('poorer', 'one', { unless: 'plain' }),
    ],
    answers: yesOrNo('plain', 'hard', 'half', 'same', 'unknown', 'poorer'),
    features: [
      ...['plain', 'hard', 'half', 'poorer'].flatMap((id) => parting(id, 'yes', 'no')),
      ...parting('same', 'yes', 'yes'),
    ],
    ranges: [
      span('left', 'year', { low: 1950, high: 1960 }),
      span('right', 'year', { low: 1980, high: 1990 }),
    ],
  });
  const worthOf = (id: string, answers: LookAnswers = {}) =>
    lookKey(tables, answers).next.find((one) => one.question === id);

  // A symmetric binary channel that is wrong in one of twenty carries 1 - H(0.05) bits (Shannon).
  test.each<[id: string, bits: number, effort: number]>([
    ['plain', 1 - entropy(0.95, 0.05), 1],
    ['hard', 1 - entropy(0.95, 0.05), 4],
    ['half', 1 - entropy(0.95 ** 0.5, 0.05 ** 0.5), 1],
    ['same', 0, 1],
    ['unknown', 0, 1],
    // In the middle of one range; outside of the other only by mistake.
    ['year', 1 - entropy(0.9 / 20 + 0.001, 0.001), 1],
  ])('%s', (id, bits, effort) => {
    expect(worthOf(id)?.worth).toBeCloseTo(bits / effort, 9);
  });

  test('the best for its effort comes first', () => {
    const ids = lookKey(tables, {}).next.map((one) => one.question);
    expect(ids.slice(0, 5)).toEqual(['year', 'plain', 'poorer', 'half', 'hard']);
  });

  test('less is open, and less is learnt, once one answer is known', () => {
    // Answers agree with 0.95² + 0.05², and leave nothing open to speak of; or they cancel out.
    const [agree, cancel] = [0.95 ** 2 + 0.05 ** 2, 2 * 0.95 * 0.05];
    const left = agree * entropy(0.95 ** 2, 0.05 ** 2) + cancel;
    // With an effort of four.
    const found = worthOf('hard', { chosen: { plain: ['yes'] } });
    expect(found?.worth).toBeCloseTo((entropy(0.95, 0.05) - left) / 4, 9);
  });

  test('what is answered, or said better already, is not asked', () => {
    const ids = lookKey(tables, { chosen: { plain: ['no'] } }).next.map((one) => one.question);
    expect(ids).not.toContain('plain');
    expect(ids).not.toContain('poorer');
    const other = lookKey(tables, { numbers: { year: exactly(1955) } }).next;
    expect(other.map((one) => one.question)).not.toContain('year');
  });

  test('of parts without a range nothing is learnt by a number', () => {
    const three = small({
      styles: ['left', 'right', 'none'].map((id) => style(id, [id], 'common')),
      kinds: ['left', 'right', 'none'].map((id) => kind(id)),
      questions: [
        question('year', 'range', { lowest: 1900, highest: 2000, near: 10, scale: 'linear' }),
      ],
      ranges: [
        span('left', 'year', { low: 1950, high: 1960 }),
        span('right', 'year', { low: 1980, high: 1990 }),
      ],
    });
    const [inside, outside] = [0.9 / 20 + 0.001, 0.001];
    const left = entropy(inside, outside, (inside + outside) / 2);
    expect(lookKey(three, {}).next[0]?.worth).toBeCloseTo((2 / 3) * (Math.log2(3) - left), 9);
  });

  test('only leading parts count: 98 in a hundred, 30 at most', () => {
    const kinds = Array.from({ length: 7 }, (_, i) => kind(`inside-${i + 1}`));
    const halving = small({
      // Each half as likely as the one before: the first six are 126 of 127.
      styles: [
        style(
          'one',
          kinds.map(({ id }) => id),
          'common',
        ),
      ],
      kinds,
      questions: [question('sixth', 'one'), question('seventh', 'one')],
      answers: yesOrNo('sixth', 'seventh'),
      features: kinds.flatMap(({ id }, i) => [
        feature({ kind: id }, 'sixth', [i === 5 ? 'yes' : 'no'], 'usual'),
        feature({ kind: id }, 'seventh', [i === 6 ? 'yes' : 'no'], 'usual'),
      ]),
    });
    const worth = Object.fromEntries(
      lookKey(halving, {}).next.map((one) => [one.question, one.worth]),
    );
    expect(worth['sixth']).toBeGreaterThan(0.01);
    expect(worth['seventh']).toBeCloseTo(0, 12);

    const ids = Array.from({ length: 32 }, (_, i) => `part-${i + 1}`);
    const many = small({
      styles: ids.map((id) => style(id, [id], 'common')),
      kinds: ids.map((id) => kind(id)),
      questions: [question('thirtieth', 'one'), question('next', 'one')],
      answers: yesOrNo('thirtieth', 'next'),
      features: ids.flatMap((id, i) => [
        feature(id, 'thirtieth', [i === 29 ? 'yes' : 'no'], 'usual'),
        feature(id, 'next', [i === 30 ? 'yes' : 'no'], 'usual'),
      ]),
    });
    const [first, second] = lookKey(many, {}).next;
    expect([first?.question, second?.question]).toEqual(['thirtieth', 'next']);
    expect(second?.worth).toBeCloseTo(0, 12);
  });
});

describe('what tells two parts apart, by hand', () => {
  test.each<[what: string, styles: LookTables['styles'], pair: string[] | undefined]>([
    [
      'another style with something else in it',
      [style('one', ['x', 'y'], 'common'), style('two', ['z'], 'rare')],
      ['one x', 'two z'],
    ],
    [
      'something else in the same style rather than the same in another',
      [style('one', ['x', 'y'], 'common'), style('two', ['x'], 'rare')],
      ['one x', 'one y'],
    ],
    [
      'the same in another style where there is nothing else',
      [style('one', ['x'], 'common'), style('two', ['x'], 'rare')],
      ['one x', 'two x'],
    ],
    ['nothing where one stands alone', [style('one', ['x'], 'common')], undefined],
  ])('%s', (_what, styles, pair) => {
    const { apart } = lookKey(small({ styles, kinds: ['x', 'y', 'z'].map((id) => kind(id)) }), {});
    expect(apart && [apart.first, apart.second].map((one) => `${one.style} ${one.kind}`)).toEqual(
      pair,
    );
  });

  const questions = ['a', 'b', 'c', 'd'].map((id, i) => question(id, 'one', { effort: i + 1 }));
  const tables = two({
    questions: [
      ...questions.toReversed(),
      question('feeble', 'one', { counts: 0.1, effort: 0.01 }),
      question('poorer', 'one', { unless: 'a', effort: 0.1 }),
    ],
    answers: yesOrNo('a', 'b', 'c', 'd', 'feeble', 'poorer'),
    features: ['a', 'b', 'c', 'd', 'feeble', 'poorer'].flatMap((id) => parting(id, 'yes', 'no')),
    disguises: [
      { style: 'left', other: 'right', words: '', settled_by: 'both', source: 'trade' },
      { style: 'right', other: 'left', words: '', settled_by: 'turned', source: 'trade' },
      { style: 'left', other: 'third', words: '', settled_by: 'a third', source: 'trade' },
      { style: 'third', other: 'right', words: '', settled_by: 'a third too', source: 'trade' },
      { style: 'left', other: 'left', words: '', settled_by: 'itself', source: 'trade' },
    ].map((row) => ({ ...row, locator: '', basis: 'common-practice', note: '' })),
  });
  const apartBy = (answers: LookAnswers) => lookKey(tables, answers).apart;

  test('the best three open questions, by bits for their effort', () => {
    // Relative entropy of the answers of one to those of the other (Kullback and Leibler).
    const bits = 0.95 * Math.log2(19) + 0.05 * Math.log2(1 / 19);
    const found = apartBy({ chosen: { a: ['yes'] } })?.tellings ?? [];
    expect(found.map((one) => one.question)).toEqual(['b', 'c', 'd']);
    expect(found.map((one) => one.worth)).toEqual(
      [2, 3, 4].map((effort): unknown => expect.closeTo(bits / effort, 9)),
    );
    expect(found[0]).toMatchObject({ first: { answer: 'yes' }, second: { answer: 'no' } });
    const open = apartBy({})?.tellings.map((one) => one.question);
    expect(open).toEqual(['poorer', 'a', 'b']);
  });

  test('the likelier part is the first', () => {
    expect(apartBy({ chosen: { a: ['no'] } })).toMatchObject({
      first: { style: 'right' },
      second: { style: 'left' },
    });
  });

  test('nothing once the second is out of the running', () => {
    // Nineteen times as likely by each answer: 1 in 19, then 1 in 361.
    expect(apartBy({ chosen: { a: ['yes'] } })?.second.style).toBe('right');
    expect(apartBy({ chosen: { a: ['yes'], b: ['yes'] } })).toBeUndefined();
  });

  test('what the tables say of the two by name', () => {
    expect(apartBy({})?.disguises.map((row) => row.settled_by)).toEqual(['both', 'turned']);
  });

  test('a number by the middle of what is usual of each', () => {
    const years = two({
      questions: [
        question('year', 'range', {
          ...{ lowest: 1900, highest: 2000, near: 10, scale: 'linear', effort: 2 },
        }),
        question('size', 'range', { lowest: 0, highest: 100, near: 10, scale: 'linear' }),
      ],
      ranges: [
        span('left', 'year', { low: 1950, high: 1960 }),
        span('right', 'year', { low: 1980, high: 1990 }),
        span('left', 'size', { low: 10, high: 20 }),
      ],
    });
    const found = lookKey(years, {}).apart?.tellings;
    expect(found).toMatchObject([
      { question: 'year', first: { range: { low: 1950 } }, second: { range: { low: 1980 } } },
    ]);
    expect(found?.[0]?.worth).toBeCloseTo(Math.log2((0.9 / 20 + 0.001) / 0.001) / 2, 9);
  });
});

describe('marks that tell two parts apart', () => {
  const marked = (features: LookTables['features']) =>
    lookKey(
      two({
        questions: [question('marks', 'any')],
        answers: answersTo('marks', 'anchor', 'dot', 'ring'),
        features,
      }),
      {},
    ).apart?.tellings[0];

  test('are looked for on the part that has them', () => {
    const found = marked([
      feature('left', 'marks', ['dot'], 'usual'),
      feature('right', 'marks', ['ring'], 'usual'),
    ]);
    expect(found).toMatchObject({ first: { answer: 'dot' }, second: { answer: 'ring' } });
    expect(found?.worth).toBeCloseTo(0.8 * Math.log2(0.8 / 0.02), 9);
  });

  test.each<[what: string, features: LookTables['features']]>([
    ['has none of them', []],
    ['has one seldom', [feature('right', 'marks', ['ring'], 'seldom')]],
  ])('are not expected on one that %s', (_what, features) => {
    const found = marked([feature('left', 'marks', ['dot'], 'usual'), ...features]);
    expect(found).toMatchObject({ first: { answer: 'dot' }, second: { unmarked: true } });
  });

  test('are no help where both have the same, or none', () => {
    expect(marked([])).toBeUndefined();
    const same = ['left', 'right'].map((id) => feature(id, 'marks', ['dot'], 'usual'));
    expect(marked(same)).toBeUndefined();
  });
});

describe('what loss at two frequencies says', () => {
  const signs = [
    { id: 'falls', low: 0.1, high: 0.4, says: 'invented' },
    { id: 'steady', low: 0.5, high: 2, says: 'invented' },
  ].map((row) => ({
    ...row,
    ...({ source: 'trade', locator: '', basis: 'common-practice', note: '' } as const),
  }));
  const of = (numbers: NonNullable<LookAnswers['numbers']>) =>
    lookKey(two({ signs }), { numbers }).sign;

  test.each<[low: number, high: number, ratio: number, sign: string | undefined]>([
    [0.01, 0.02, 0.5, 'steady'],
    [0.04, 0.02, 2, 'steady'],
    [0.02, 0.1, 0.2, 'falls'],
    [0.045, 0.1, 0.45, undefined],
    [0.3, 0.1, 3, undefined],
  ])('%d at 120 Hz and %d at 1 kHz', (low, high, ratio, sign) => {
    const found = of({ 'd-120hz': exactly(low), 'd-1khz': exactly(high) });
    expect(found?.ratio).toBeCloseTo(ratio, 12);
    expect(found?.sign?.id).toBe(sign);
  });

  test.each<[what: string, numbers: NonNullable<LookAnswers['numbers']>]>([
    ['one is missing', { 'd-1khz': exactly(0.01) }],
    ['the other is missing', { 'd-120hz': exactly(0.01) }],
    ['one is nothing', { 'd-1khz': exactly(0.01), 'd-120hz': exactly(0) }],
    ['the other is nothing', { 'd-1khz': exactly(0), 'd-120hz': exactly(0.01) }],
  ])('nothing where %s', (_what, numbers) => {
    expect(of(numbers)).toBeUndefined();
  });
});
