import { describe, expect, test } from 'vitest';
import { lookKey, type LookAnswers } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { answersTo, feature, kind, question, small, span, style } from './small-tables.ts';

// A key of three invented styles, so small that its likelihoods can be worked out by hand by Bayes'
// rule: share before times likelihood, over the sum of all.

const shapes = answersTo('shape', 'round', 'square', 'flat');
const marks = answersTo('marks', 'dot', 'ring');
const feel = answersTo('feel', '0', '1', '2');

const tables = small({
  styles: [
    style('alpha', ['one', 'two'], 'common'),
    style('beta', ['three'], 'met'),
    style('gamma', ['stone'], 'rare'),
  ],
  kinds: [kind('one'), kind('two'), kind('three'), kind('stone', 'resistor')],
  questions: [
    question('shape', 'one'),
    question('marks', 'any'),
    question('year', 'range', { lowest: 1900, highest: 2000, near: 10, scale: 'linear' }),
    question('loss', 'range', {
      ...{ lowest: 0.001, highest: 1, near: 10, scale: 'log', part: 'capacitor' },
    }),
    question('feel', 'score', { lowest: 0, highest: 2, near: 1, scale: 'linear' }),
    question('rough-loss', 'one', { unless: 'loss' }),
    question('half-shape', 'one', { counts: 0.5 }),
  ],
  answers: [
    ...shapes,
    ...marks,
    ...feel,
    ...answersTo('rough-loss', 'low', 'high'),
    ...answersTo('half-shape', 'long', 'short'),
  ],
  features: [
    feature('alpha', 'shape', ['round'], 'usual'),
    feature('alpha', 'shape', ['square'], 'sometimes'),
    feature('beta', 'shape', ['square'], 'usual'),
    feature('beta', 'shape', ['flat'], 'seldom'),
    feature('alpha', 'marks', ['dot'], 'usual'),
    feature({ kind: 'two' }, 'marks', ['dot'], 'sometimes'),
    feature('beta', 'rough-loss', ['high'], 'usual'),
    feature('alpha', 'half-shape', ['long'], 'usual'),
    feature('beta', 'half-shape', ['short'], 'usual'),
    feature('gamma', 'half-shape', ['short', 'long'], 'usual'),
  ],
  ranges: [
    span('alpha', 'year', { low: 1950, usual_low: 1960, usual_high: 1970, high: 1980 }),
    span('beta', 'year', { usual_low: 1980, usual_high: 1990 }),
    span('gamma', 'year', { low: 1950 }),
    span({ kind: 'one' }, 'loss', { low: 0.01, high: 0.1 }),
    span({ kind: 'two' }, 'loss', { low: 0.1, high: 1 }),
    span({ kind: 'three' }, 'loss', { low: 0.01, high: 0.1 }),
    span('alpha', 'feel', { low: 0, high: 1 }),
    span('beta', 'feel', { low: 1, high: 2 }),
  ],
});

/** Shares before anything is known: 2/3 and 1/3 of a common style, half and a quarter as often met. */
const before = { one: 8 / 21, two: 4 / 21, three: 2 / 7, stone: 1 / 7 };

const sharesOf = (answers: LookAnswers): Record<string, number> =>
  Object.fromEntries(lookKey(tables, answers).kinds.map(({ id, likelihood }) => [id, likelihood]));

/** By Bayes' rule. */
const after = (likelihood: typeof before): Record<string, number> => {
  const joint = Object.entries(before).map(([id, share]): [string, number] => [
    id,
    share * likelihood[id as keyof typeof before],
  ]);
  const all = joint.reduce((sum, [, share]) => sum + share, 0);
  return Object.fromEntries(joint.map(([id, share]) => [id, share / all]));
};

const expectShares = (answers: LookAnswers, wanted: Record<string, number>): void => {
  const found = sharesOf(answers);
  for (const [id, share] of Object.entries(wanted)) expect(found[id], id).toBeCloseTo(share, 9);
};

/** One wrong answer in ten, spread evenly over three answers. */
const share = (odds: number, all: number, answers = 3): number =>
  (0.9 * odds) / all + 0.1 / answers;

describe('likelihoods by hand', () => {
  test('before anything is known they are how often parts are met', () => {
    expectShares({}, before);
    const { styles } = lookKey(tables, {});
    expect(styles.map(({ id, kinds }) => [id, kinds.map((inside) => inside.id)])).toEqual([
      ['alpha', ['one', 'two']],
      ['beta', ['three']],
      ['gamma', ['stone']],
    ]);
  });

  // Of gamma nothing is said, so it takes the mean of the others: two parts alpha to one beta.
  test.each<[ticked: string[], alpha: number, beta: number]>([
    [['round'], share(1, 1.5), share(0, 1.25)],
    [['square'], share(0.5, 1.5), share(1, 1.25)],
    [['flat'], share(0, 1.5), share(0.25, 1.25)],
    [['round', 'flat'], share(1, 1.5) + share(0, 1.5), share(0, 1.25) + share(0.25, 1.25)],
  ])('one answer of several, %j', (ticked, alpha, beta) => {
    const stone = (2 * alpha + beta) / 3;
    expectShares(
      { chosen: { shape: ticked } },
      after({ one: alpha, two: alpha, three: beta, stone }),
    );
  });

  // A mark that style and kind may both bring is missing only where both leave it out.
  test.each<[ticked: string[], one: number, two: number, other: number]>([
    [['dot'], 0.8, 1 - 0.2 * 0.6, 0.02],
    [['ring'], 0.02, 0.02, 0.02],
    [['dot', 'ring'], 0.8 * 0.02, 0.88 * 0.02, 0.02 ** 2],
  ])('marks, %j', (ticked, one, two, other) => {
    expectShares({ chosen: { marks: ticked } }, after({ one, two, three: other, stone: other }));
  });

  // The area under a range: 10 years usual, two fringes of 10 at three quarters on average, and two
  // of 10 beyond, from a half down to nothing. Without a fringe the fall beyond begins at one.
  const alphaYear = (fit: number): number => (0.9 * fit) / (10 + 15 + 5) + 0.1 / 100;
  const betaYear = (fit: number): number => (0.9 * fit) / (10 + 10) + 0.1 / 100;
  // Open towards later years: usual as far as the scale goes.
  const gammaYear = (fit: number): number => (0.9 * fit) / (50 + 10) + 0.1 / 100;
  test.each<[min: number, max: number, alpha: number, beta: number, gamma: number]>([
    [1965, 1965, 1, 0, 1],
    [1955, 1955, 0.75, 0, 1],
    [1950, 1950, 0.5, 0, 1],
    [1945, 1945, 0.25, 0, 0.5],
    [1930, 1930, 0, 0, 0],
    [1985, 1985, 0.25, 1, 1],
    [1976, 1976, 0.7, 0.6, 1],
    [1994, 1994, 0, 0.6, 1],
    // At five places from 1955 to 1965.
    [1955, 1965, (0.75 + 0.875 + 3) / 5, 0, 1],
    // Beyond the scale is its end.
    [1850, 1850, 0, 0, 0],
    [2050, 2050, 0, 0, 1],
  ])('a year from %i to %i', (min, max, alpha, beta, gamma) => {
    expectShares(
      { numbers: { year: { min, typ: (min + max) / 2, max } } },
      after({
        one: alphaYear(alpha),
        two: alphaYear(alpha),
        three: betaYear(beta),
        stone: gammaYear(gamma),
      }),
    );
  });

  // A decade wide, and half a decade of fall on either side, on a scale of three decades.
  const loss = (fit: number): number => (0.9 * fit) / (1 + 1) + 0.1 / 3;
  test.each<[loss: number, low: number, high: number]>([
    [0.03, 1, 1 - Math.log10(0.1 / 0.03)],
    [0.1, 1, 1],
    [0.3, 1 - Math.log10(3), 1],
    [0.001, 0, 0],
  ])('a loss of %d, which makes no sense for a resistor', (number, low, high) => {
    const [one, two] = [loss(low), loss(high)];
    // A tenth of the mean of the capacitors: 8, 4 and 6 parts of 18.
    const stone = 0.1 * ((14 * one + 4 * two) / 18);
    expectShares({ numbers: { loss: exactly(number) } }, after({ one, two, three: one, stone }));
  });

  // One step wide, and a fall of one step on either side, on a scale of two.
  const step = (fit: number): number => (0.9 * fit) / 2 + 0.1 / 2;
  test.each<[ticked: string[], alpha: number, beta: number]>([
    [['0'], 1, 0],
    [['1'], 1, 1],
    [['2'], 0, 1],
    // At 0, a half, 1, one and a half and 2.
    [['0', '2'], 3.5 / 5, 3.5 / 5],
    [['2', '0'], 3.5 / 5, 3.5 / 5],
  ])('steps of a score, %j', (ticked, alpha, beta) => {
    const stone = (2 * step(alpha) + step(beta)) / 3;
    expectShares(
      { chosen: { feel: ticked } },
      after({ one: step(alpha), two: step(alpha), three: step(beta), stone }),
    );
  });

  test('answers to two questions multiply', () => {
    const [alpha, beta] = [share(0.5, 1.5), share(1, 1.25)];
    expectShares(
      { chosen: { shape: ['square'], marks: ['dot'] } },
      after({
        one: alpha * 0.8,
        two: alpha * 0.88,
        three: beta * 0.02,
        stone: ((2 * alpha + beta) / 3) * 0.02,
      }),
    );
  });

  test('a question that says half counts with the root', () => {
    const [long, short] = [Math.sqrt(0.95), Math.sqrt(0.05)];
    expectShares(
      { chosen: { 'half-shape': ['long'] } },
      after({ one: long, two: long, three: short, stone: Math.sqrt(0.5) }),
    );
  });

  test('a question is not counted where a better one is answered', () => {
    const numbers = { loss: exactly(0.03) };
    expectShares({ numbers, chosen: { 'rough-loss': ['high'] } }, sharesOf({ numbers }));
    expect(sharesOf({ chosen: { 'rough-loss': ['low'] } })).not.toEqual(sharesOf({}));
  });
});

describe('grounds by hand', () => {
  const grounds = (answers: LookAnswers, id: string) => {
    const found = lookKey(tables, answers).styles.find((one) => one.id === id);
    return [...(found?.for ?? []), ...(found?.against ?? [])];
  };

  test.each<[answers: LookAnswers, style: string, how: string[]]>([
    [{ chosen: { shape: ['round'] } }, 'beta', ['not-met']],
    [{ chosen: { shape: ['square'] } }, 'beta', ['usual']],
    [{ chosen: { shape: ['flat'] } }, 'beta', ['seldom']],
    [{ chosen: { shape: ['square'] } }, 'alpha', ['sometimes']],
    // Of one answer the best counts, of several marks the one that is least usual.
    [{ chosen: { shape: ['round', 'flat'] } }, 'beta', ['seldom']],
    [{ chosen: { marks: ['dot'] } }, 'alpha', ['usual']],
    [{ chosen: { marks: ['dot', 'ring'] } }, 'alpha', ['not-met']],
    [{ numbers: { year: exactly(1985) } }, 'beta', ['inside']],
    [{ numbers: { year: exactly(1955) } }, 'alpha', ['fringe']],
    [{ numbers: { year: exactly(1930) } }, 'gamma', []],
    [{ numbers: { year: exactly(1965) } }, 'beta', ['outside']],
    [{ numbers: { loss: exactly(0.03) } }, 'gamma', ['senseless']],
    [{ chosen: { feel: ['0'] } }, 'beta', ['outside']],
    [{ chosen: { feel: ['0'] } }, 'gamma', []],
    [{}, 'alpha', []],
  ])('%j says of %s %j', (answers, id, how) => {
    expect(grounds(answers, id).map((ground) => ground.how)).toEqual(how);
  });

  test('bits are the ratio to the average part', () => {
    const [alpha, beta] = [share(0.5, 1.5), share(1, 1.25)];
    // The mean over all: gamma, of which nothing is said, does not move it.
    const mean = (2 * alpha + beta) / 3;
    const [ground] = grounds({ chosen: { shape: ['square'] } }, 'beta');
    expect(ground?.bits).toBeCloseTo(Math.log2(beta / mean), 9);
    expect(ground).toMatchObject({ question: 'shape', ticked: ['square'] });
  });

  test('of a question that says half, half the bits', () => {
    const mean = (0.95 * 4 + 0.05 * 2 + 0.5) / 7;
    const [ground] = grounds({ chosen: { 'half-shape': ['short'] } }, 'beta');
    const other = (0.05 * 4 + 0.95 * 2 + 0.5) / 7;
    expect(ground?.bits).toBeCloseTo(Math.log2(0.95 / other) / 2, 9);
    const [long] = grounds({ chosen: { 'half-shape': ['long'] } }, 'beta');
    expect(long?.bits).toBeCloseTo(Math.log2(0.05 / mean) / 2, 9);
  });

  test('a number comes with the range that it was held against', () => {
    expect(grounds({ numbers: { year: exactly(1985) } }, 'beta')).toMatchObject([
      { number: exactly(1985), range: { style: 'beta', usual_low: 1980 } },
    ]);
  });
});
