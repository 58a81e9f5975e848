import { describe, expect, test } from 'vitest';
import type { Token } from '../../../../src/engine/markings/meanings/token.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import {
  expected,
  inShort,
  saying,
  scanFor,
  scanWithLookAlikes,
  wordsOf,
  wordTokensAt,
  type Short,
} from '../scans.ts';

const { word, safety, otherCase, mark, symbol, worn } = weights;

const MKP: Short = [3, 'metallised film, polypropylene', word.usual];
const CMR: Short = [5, 'mica', word.usual];
const K73: Short = [6, 'polyester, metallised', word.usual];
const M39014: Short = [14, 'ceramic, general purpose', word.usual];

describe('what says of what a part is made', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['MKP', 0, [MKP]],
    // The letters of a series too, with its figures.
    ['MKP473', 0, [MKP, [6, MKP[1], word.other]]],
    ['104 MKP', 4, [[7, MKP[1], MKP[2]]]],
    // Letters that no list that was seen has.
    ['MKF', 0, []],
    // Short letters are taken as they are printed, and as a word of their own.
    ['XMKP', 1, []],
    ['104MKP', 3, [[6, 'metallised film, polypropylene', word.usual]]],
    ['104mkp', 3, []],
    ['104VMKP', 4, [[7, 'metallised film, polypropylene', word.usual]]],
    ['104VMKPX', 4, []],
    ['MKPX', 0, []],
    // Longer words in any letters, and behind figures.
    ['Mylar', 0, [[5, 'polyester (polyethylene terephthalate)', word.usual]]],
    ['104mylar', 3, [[8, 'polyester (polyethylene terephthalate)', word.usual]]],
    ['4mylar7', 1, [[6, 'polyester (polyethylene terephthalate)', word.usual]]],
    ['mylars', 0, []],
    ['xmylar', 1, []],
    // Letters of a style with figures behind them, and one letter at most.
    ['CMR06', 0, [CMR]],
    ['CMR06-104', 0, [CMR]],
    ['CMR06F', 0, [[6, CMR[1], CMR[2]]]],
    ['CMR06FD', 0, []],
    ['CMR', 0, []],
    ['CMR123456', 0, []],
    ['CMR1234', 0, [[7, CMR[1], CMR[2]]]],
    ['cmr06', 0, [[5, CMR[1], CMR[2] + otherCase]]],
    ['cm05', 0, []],
    ['XCMR06', 1, []],
    // Of the military with letters and the value in the same word.
    ['CM05FD101J', 0, [[6, 'mica', word.usual]]],
    ['CM05101', 0, [[4, 'mica', word.usual]]],
    ['CM05FD1015', 0, []],
    ['CM05FDX101', 0, []],
    ['К73-17', 0, [K73]],
    ['К73-17В 0,1', 0, [[7, K73[1], K73[2]]]],
    // The number of a specification with those of its sheet and line.
    ['M39014/01-1553', 0, [M39014]],
    ['M39014/01-1553V', 0, [[15, M39014[1], M39014[2]]]],
    ['M39014/01–1553', 0, [M39014]],
    ['M39014/01-1553VV', 0, []],
    ['M39014/01-155', 0, []],
    ['M39014/', 0, []],
    ['XM39014/01-1553', 1, []],
    // Three letters in small ones too, by themselves.
    ['mkp 0.1', 0, [[3, 'metallised film, polypropylene', word.usual + otherCase]]],
    [
      'mkp10',
      0,
      [
        [3, 'metallised film, polypropylene', word.usual + otherCase],
        [5, 'metallised film, polypropylene', word.other + otherCase],
      ],
    ],
    ['xmkp', 1, []],
    ['kp 0.1', 0, []],
  ])('%s at %d', (text, at, found) => {
    expect(inShort(wordsOf(scanFor(text), at, 'dielectric'))).toEqual(expected(found));
  });

  test('a specification is none where a character of it was taken for another', () => {
    expect(wordsOf(scanWithLookAlikes('M390I4/01-1553'), 0, 'dielectric')).toEqual([]);
    expect(wordsOf(scanWithLookAlikes('MКP'), 0, 'dielectric').map(({ weight }) => weight)).toEqual(
      [word.usual - 0.3],
    );
  });

  test.each<[text: string, style: boolean, types: string[], bodies: string[], origins: string[]]>([
    ['MKP', false, ['pp-metallized'], ['film'], []],
    ['CMR06', true, ['silvered-mica'], ['mica'], ['american']],
    ['К73-17', true, ['pet-metallized'], ['film'], ['soviet']],
    ['M39003/01-2020', false, ['ta-mno2-solid'], ['tantalum'], ['american']],
  ])('%s suggests types', (text, style, types, bodies, origins) => {
    const scan = scanFor(text);
    const [found] = saying(wordsOf(scan, 0, 'dielectric'), 'types');
    expect(found?.content).toEqual({ says: 'types', style });
    expect(found?.token).toMatchObject({ at: 0, needs: [], assumed: [], meaning: { types } });
    expect(found?.token.meaning.bodies).toBe(scan.lexicon.bodies.bitsOf(bodies));
    expect(found?.token.meaning.origins).toBe(scan.lexicon.origins.bitsOf(origins));
  });
});

const X2: Short = [2, 'class X2: across the line, pulses to 2.5 kV', safety.usual];

describe('a mark of mains duty', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['X2', 0, [X2]],
    ['104X2', 3, [[5, X2[1], X2[2]]]],
    ['X2 275V', 0, [X2]],
    ['X2-', 0, [X2]],
    ['x2', 0, [[2, X2[1], safety.usual + otherCase]]],
    ['KX2', 1, []],
    ['X2K', 0, []],
    ['X25', 0, []],
    [
      'X1/Y2',
      0,
      [
        [2, 'class X1: across the line, pulses to 4 kV', safety.usual],
        [5, 'class X1/Y2: approved across the line and from line to earth', safety.usual],
      ],
    ],
  ])('%s at %d', (text, at, found) => {
    expect(inShort(wordsOf(scanFor(text), at, 'safety'))).toEqual(expected(found));
  });

  test.each([
    ['X1', 'X1'],
    ['Y3', 'Y3'],
    ['X1Y1', 'X1/Y1'],
  ])('%s tells its class, and the bodies that are made for it', (text, told) => {
    const scan = scanFor(text);
    const [found] = saying(wordsOf(scan, 0, 'safety'), 'safety');
    expect(found?.content).toStrictEqual({ says: 'safety', class: told });
    expect(found?.token.meaning.bodies).toBe(
      scan.lexicon.bodies.bitsOf(['film', 'paper', 'ceramic']),
    );
  });
});

describe('other words', () => {
  const others = (text: string, at: number): Token[] =>
    wordTokensAt(scanFor(text), at).filter(
      ({ needs, meaning: { content } }) =>
        needs.length === 0 && ['polarity', 'remark', 'symbol'].includes(content.says),
    );

  test.each<[text: string, at: number, found: Short[]]>([
    ['BP 10', 0, [[2, 'bipolar: no polarity', mark.usual]]],
    ['85C', 0, [[3, 'highest working temperature 85 degC', mark.usual]]],
    ['LL', 0, [[2, 'low leakage', mark.other]]],
    ['ll', 0, []],
    ['+ 47µ', 0, [[1, 'the lead beside it is positive', mark.usual]]],
    ['47µ+', 3, [[4, 'the lead beside it is positive', mark.usual]]],
    ['47+', 2, [[3, 'the lead beside it is positive', mark.usual]]],
    ['+47', 0, [[1, 'the lead beside it is positive', mark.usual]]],
    // A plus between figures joins the sections of a can.
    ['16+16', 2, []],
    ['▲40', 0, [[1, 'the section with the sign triangle', symbol]]],
    ['half moon 20', 0, [[9, 'the section with the sign half moon', symbol]]],
    ['halfmoons', 0, []],
    // What is seen on a part but not printed is no word.
    ['groove at one end', 0, []],
  ])('%j at %d', (text, at, found) => {
    expect(inShort(others(text, at))).toEqual(expected(found));
  });

  test.each<[text: string, content: object, bodies: string[]]>([
    ['BP', { says: 'polarity', polarity: 'none' }, ['aluminium']],
    [
      '+',
      { says: 'polarity', polarity: 'beside the plus sign: positive' },
      ['aluminium', 'tantalum'],
    ],
    ['85C', { says: 'remark' }, []],
    ['■', { says: 'symbol', symbol: 'square' }, ['aluminium']],
  ])('%s says what it stands for', (text, content, bodies) => {
    const scan = scanFor(text);
    const [found] = others(text, 0);
    expect(found?.meaning.content).toEqual(content);
    expect(found?.meaning.bodies).toBe(scan.lexicon.bodies.bitsOf(bodies));
    expect(found?.meaning.origins).toBe(scan.lexicon.origins.all);
    expect(found?.meaning.slot).toBeUndefined();
  });
});

const { temperatureLetter, failureRate } = weights;

describe('words of resistors', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    // The style, with so many letters behind it, and the coefficient that the letter stands for.
    ['RN55C1002F', 0, [[5, 'metal film, 0.125 W, at most 200 V, within ±50 ppm/K', word.usual]]],
    ['RN55D 1002', 0, [[5, 'metal film, 0.125 W, at most 200 V, within ±100 ppm/K', word.usual]]],
    ['RN55X1002', 0, [[5, 'metal film, 0.125 W, at most 200 V', word.usual]]],
    // Such a letter says a coefficient behind a tolerance alone.
    ['RN55S1002', 0, [[5, 'metal film, 0.125 W, at most 200 V', word.usual]]],
    ['RN55 1002', 0, [[4, 'metal film, 0.125 W, at most 200 V', word.usual]]],
    ['RN55CC1002', 0, []],
    ['RN551002', 0, []],
    ['rn55C', 0, []],
    ['XRN55C', 1, []],
    // Two letters that tell no coefficient.
    ['RC07GF473J', 0, [[6, 'carbon composition, 0.25 W, at most 250 V', word.usual]]],
    ['RC07CF473J', 0, [[6, 'carbon composition, 0.25 W, at most 250 V', word.usual]]],
    ['RC07GFX', 0, []],
    ['RJ24FW103', 0, [[6, 'multi-turn trimmer, cermet as a rule', word.usual]]],
    ['3296W', 0, [[5, 'trimmer, cermet, 25 turns, 0.5 W', word.usual]]],
  ])('%s at %d', (text, at, found) => {
    expect(inShort(wordsOf(scanFor(text), at, 'dielectric'))).toEqual(expected(found));
  });

  test.each<[text: string, content: object, body?: string]>([
    [
      'RN55C',
      {
        construction: 'metal film',
        watts: 0.125,
        coefficient: { min: -50e-6, typ: 0, max: 50e-6 },
      },
    ],
    ['RN55', { construction: 'metal film', watts: 0.125 }],
    ['RJ24FW', { construction: 'multi-turn trimmer, cermet as a rule' }, 'trimmer'],
  ])('%s says what it is rated for', (text, content, body) => {
    const scan = scanFor(text);
    const [found] = saying(wordsOf(scan, 0, 'dielectric'), 'style');
    expect(found?.content).toStrictEqual({ says: 'style', ...content });
    const { bodies, bodiesOfKind } = scan.lexicon;
    expect(found?.token.meaning.bodies).toBe(
      body === undefined ? bodiesOfKind.resistor : bodies.bitsOf([body]),
    );
    expect(found?.token.meaning.types).toEqual([]);
    expect(found?.token.meaning.origins).toBe(scan.lexicon.origins.bitsOf(['american']));
  });

  test('a style may have a character that was made up', () => {
    const found = wordsOf(scanFor('RN5?C1002F'), 0, 'dielectric');
    expect(found.map(({ assumed }) => assumed)).toEqual([[{ at: 3, as: '5', why: 'worn' }]]);
    for (const { weight } of found) expect(weight).toBeCloseTo(word.usual + worn, 9);
  });

  /** Letters behind a tolerance letter that say a coefficient or how many fail. */
  const behind = (text: string, at: number): Token[] =>
    wordTokensAt(scanFor(text), at).filter(
      ({ needs, meaning: { content } }) =>
        needs.includes('touching-tolerance') && ['coefficient', 'remark'].includes(content.says),
    );

  test.each<[text: string, found: Short[]]>([
    [
      '1002FS',
      [
        [6, 'within ±100 ppm/K', temperatureLetter.rare, 'touching-tolerance resistor'],
        [6, 'failure rate 0.001 % in 1000 h', failureRate, 'touching-tolerance style-before'],
      ],
    ],
    ['1002FU', [[6, 'within ±250 ppm/K', temperatureLetter.rare, 'touching-tolerance resistor']]],
    ['1002FL', [[6, 'failure rate 2 % in 1000 h', failureRate, 'touching-tolerance style-before']]],
    // Small letters are others, one that cannot be read is none, and those of styles stand in styles.
    ['1002Fs', []],
    ['1002F?', []],
    ['1002FE', []],
  ])('%s', (text, found) => {
    expect(inShort(behind(text, 5))).toEqual(expected(found));
  });

  test('no figure is taken for such a letter', () => {
    const tokens = wordTokensAt(scanWithLookAlikes('1002F5'), 5);
    expect(tokens.filter(({ needs }) => needs.includes('touching-tolerance'))).toEqual([]);
  });

  test('a coefficient and a failure rate say so', () => {
    const scan = scanFor('1002FS');
    const [coefficient, failures] = behind('1002FS', 5);
    expect(coefficient?.meaning).toMatchObject({
      slot: 'temperature',
      content: { says: 'coefficient', coefficient: { min: -100e-6, typ: 0, max: 100e-6 } },
      bodies: scan.lexicon.bodiesOfKind.resistor,
      types: [],
    });
    expect(failures?.meaning).toMatchObject({
      content: { says: 'remark' },
      // Capacitors of the military bear it as well.
      bodies: scan.lexicon.bodies.all,
      origins: scan.lexicon.origins.bitsOf(['american']),
      types: [],
    });
    expect(failures?.meaning.slot).toBeUndefined();
  });
});
