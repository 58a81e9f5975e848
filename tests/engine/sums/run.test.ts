import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import type { Habit } from '../../../src/engine/quantities/index.ts';
import { chanceOf } from '../../../src/engine/sums/chance.ts';
import { readInputs, readSeed } from '../../../src/engine/sums/read-inputs.ts';
import { headlineOf, resultOf, runSumOf } from '../../../src/engine/sums/run-sum.ts';
import { noteIf, quantity, type Sum } from '../../../src/engine/sums/sum.ts';
import { exact, facts, given, line, spec } from './made-up.ts';

const COMMA: Habit = { decimal: 'comma' };

describe('all that a sum comes to', () => {
  const wide = { ...given(10, { min: 2, typ: 3, max: 4 }), x: { min: 9, typ: 10, max: 12 } };

  test('with its notes, tables and draws, by values, facts and habit', () => {
    const result = resultOf(line, wide, facts, { habit: COMMA, seed: 7 });
    expect(result).toMatchObject({
      sum: 'line',
      inputs: wide,
      equations: ['y = a*x'],
      seed: 7,
      tables: [{ caption: 'comma', rows: [['10']] }],
      notes: [{ kind: 'remark', text: '10, 28 and 2.' }],
      plots: [],
    });
    expect(result.outputs).toEqual({
      y: { min: 18, typ: 30, max: 48 },
      z: { min: 16, typ: 28, max: 46 },
    });
    expect(Object.hasOwn(result, 'answer')).toBe(false);
    expect(result.chances.map(({ output }) => output)).toEqual(['y']);
    expect(result.chances[0]?.chance.drawn).toEqual(chanceOf(line, wide, facts, 'y', 7)?.drawn);
  });

  test('tells what is a caution or a limit somewhere in a range, once, cautions first', () => {
    const sum: Sum = {
      ...line,
      notes: ({ x }, { y = 0 }) => [
        { kind: 'remark', text: `at ${String(x)}` },
        ...noteIf(y > 34, 'limit', 'above 34'),
        ...noteIf(y < 20, 'caution', 'below 20'),
        ...noteIf(y > 29, 'limit', 'above 29'),
        ...noteIf(Number(x) === 10, 'caution', 'at ten'),
      ],
    };
    // From 9 times 2 to 12 times 4.
    expect(resultOf(sum, wide, facts).notes).toEqual([
      { kind: 'caution', text: 'at ten' },
      { kind: 'caution', text: 'below 20', atEnds: true },
      { kind: 'limit', text: 'above 34', atEnds: true },
      { kind: 'remark', text: 'at 10' },
      { kind: 'limit', text: 'above 29' },
    ]);
    const typical = { ...sum, laborious: true } as const;
    expect(resultOf(typical, wide, facts).notes.map(({ text }) => text)).toEqual([
      'at 10',
      'above 29',
      'at ten',
    ]);
  });

  test('draws what the sum says, or nothing where that takes too long', () => {
    const drawn = (changed: Partial<Sum>) =>
      resultOf({ ...line, ...changed }, wide, facts).chances.map(({ output }) => output);
    expect(drawn({ drawn: ['z', 'y', 'never'] })).toEqual(['z', 'y']);
    expect(drawn({ laborious: true })).toEqual([]);
    expect(resultOf(line, given(10), facts).chances).toEqual([]);
    expect(resultOf(line, wide, facts).seed).toBe(1);
  });

  test('with its curves, its pictures and its answer, and the equations that hold', () => {
    const picture = {
      title: 'P',
      x: { label: 'x', unit: 'V', scale: 'log' },
      y: { label: 'y', unit: 'V', scale: 'log' },
      curves: [],
      points: [],
      limits: [],
    } as const;
    const sum: Sum = {
      ...line,
      plots: [spec, { ...spec, y: ['never'] }],
      pictures: () => [picture],
      answer: ({ x }, own, habit) =>
        `${String(x)} ${String((own as typeof facts).shift)} ${habit?.decimal ?? ''}`,
      equationsFor: ({ way }) => [`y = ${String(way)}`],
    };
    const result = resultOf(sum, wide, facts, { habit: COMMA });
    expect(result.plots.map(({ title }) => title)).toEqual(['Line', 'P']);
    expect(result.answer).toBe('10 2 comma');
    expect(result.equations).toEqual(['y = up']);
  });

  test('a sum that judges tells what it answers at an end of a range, each answer once', () => {
    const sum: Sum = {
      ...line,
      judges: true,
      answer: ({ x, a }) => {
        const height = Number(x) * Number(a);
        if (height > 34) return 'Too high.';
        return height < 20 ? 'Too low.' : 'It fits.';
      },
    };
    expect(resultOf(sum, wide, facts).answer).toBe(
      'It fits. At an end of a range: Too low. Too high.',
    );
    expect(resultOf(sum, given(10), facts).answer).toBe('It fits.');
    const plain: Sum = { ...line, answer: () => 'It fits.' };
    expect(resultOf(plain, wide, facts).answer).toBe('It fits.');
  });

  test('a sum without an answer of its own is a mistake', () => {
    expect(headlineOf(line)).toBe('y');
    const none = { ...line, outputs: { z: { label: 'Lower', unit: 'V' as const } } };
    expect(() => headlineOf(none)).toThrow(/line/);
  });
});

describe('what is asked of a sum by keys', () => {
  const catalogue = loadCatalogue();
  const run = (inputs: Parameters<typeof runSumOf>[2]) => runSumOf(line, catalogue, inputs);

  test('fills in what is left out, with the facts of the catalogue', () => {
    expect(run({}).outputs['z']).toEqual(exact(28));
    expect(run({ x: exact(20), way: 'down' }).outputs['z']).toEqual(exact(58));
    expect(run({ way: 'down' }).inputs).toMatchObject({ way: 'down', x: exact(10) });
    expect(run({ more: exact(2) }).inputs['more']).toEqual(exact(2));
  });

  test.each([
    ['a field that there is not', { other: exact(1) }, /no input other/],
    ['words for a number', { x: 'up' }, /input x .* is a quantity/],
    ['a number for a choice', { way: exact(1) }, /input way .* is a choice/],
  ])('refuses %s', (_what, inputs, said) => {
    expect(() => run(inputs)).toThrow(said);
    expect(() => run(inputs)).toThrow(RangeError);
  });
});

describe('fields as people fill them', () => {
  const read = (texts: Record<string, string | undefined>) => readInputs(line, facts, texts);

  test('empty ones are as they stand at first, or left out', () => {
    expect(read({ x: '  ', a: undefined })).toEqual({
      given: { x: exact(10), a: exact(3), way: 'up', more: undefined },
      faults: {},
    });
  });

  test.each([
    ['at its lower end', 'x', '1', exact(1)],
    ['at its upper end', 'x', ' 100 ', exact(100)],
    ['another choice', 'way', 'down', 'down'],
    ['an optional one', 'more', '2', exact(2)],
  ])('%s', (_what, key, text, value) => {
    const { given: all, faults } = read({ [key]: text });
    expect(all[key]).toEqual(value);
    expect(faults).toEqual({});
  });

  test.each([
    ['below its lower end', 'x', '0.5', exact(10), /from 1\sΩ to 100\sΩ\. Until then 10 is used/u],
    ['above its upper end', 'x', '99 to 101', exact(10), /from 1\sΩ/u],
    ['no number', 'x', 'ten', exact(10), /Until then 10 is used\.$/],
    ['an optional one', 'more', '6', undefined, /Until then it counts as left empty\.$/],
    ['a choice that there is not', 'way', 'sideways', 'up', /one of the list/],
    [
      'more than anybody writes',
      'x',
      `1${' '.repeat(50)}${'0'.repeat(60)}`,
      exact(10),
      /100 characters/,
    ],
  ])('%s says so, and is used as at first', (_what, key, text, value, said) => {
    const { given: all, faults } = read({ [key]: text });
    expect(all[key]).toEqual(value);
    expect(Object.keys(faults)).toEqual([key]);
    expect(faults[key]).toMatch(said);
  });

  test('as many characters as may be are read', () => {
    expect(read({ x: `${'0'.repeat(98)}20` }).faults).toEqual({});
  });

  test('a sum whose field starts with nonsense is a mistake', () => {
    const x = quantity({ label: 'Along', unit: 'ohm', usual: 'ten', lowest: 1, highest: 100 });
    expect(() => readInputs({ ...line, inputs: { x } }, facts, {})).toThrow(/Along/);
  });

  test.each([
    ['', 1, false],
    ['  ', 1, false],
    [' 7 ', 7, false],
    ['123456789', 123_456_789, false],
    ['1234567890', 1, true],
    ['7a', 1, true],
    ['a7', 1, true],
    ['-7', 1, true],
    ['1.5', 1, true],
  ])('a seed %o is %i', (text, seed, faulty) => {
    const read = readSeed(text);
    expect(read.seed).toBe(seed);
    expect(read.fault !== undefined).toBe(faulty);
  });
});
