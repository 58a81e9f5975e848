import { describe, expect, test } from 'vitest';
import { readMarking, type Hints, type Reading } from '../../../src/engine/markings/index.ts';
import { LONGEST_MARKING } from '../../../src/engine/markings/ways/parse.ts';
import { LONGEST_TWICE } from '../../../src/engine/markings/read-marking.ts';
import { catalogue } from './tables.ts';

const bestOf = (text: string, hints?: Hints): Reading | undefined =>
  readMarking(catalogue, text, hints)[0];

/** What was assumed of the best reading, as `1 as 0`: its place and what it was taken for. */
const assumedOf = (text: string, hints?: Hints): string[] =>
  (bestOf(text, hints)?.evidence ?? []).flatMap(({ assumed }) =>
    (assumed ?? []).map(({ at, as, why }) => `${why} ${at} as ${as}`),
  );

describe('characters are taken for others', () => {
  test.each<[text: string, assumed: string[], hints?: Hints]>([
    // Where the reading as written is poor.
    ['1O4K', ['look-alike 1 as 0']],
    ['XSR104K', ['look-alike 1 as 5']],
    ['QQX XSR104K', ['look-alike 5 as 5']],
    // Where it leaves figures, however good it is.
    ['104K 5OV', ['look-alike 6 as 0']],
    ['104K 50V', []],
    // Words of letters, such as a maker's, make no reading poor; C1G would be a temperature code.
    ['CIG 47n ABC', []],
    ['47n CIG ABC', []],
    // A style alone is not poor.
    ['DM15', []],
    ['CMR06', []],
    ['CK05 XSR', ['look-alike 6 as 5']],
    // Latin letters for those of an origin's own script, be it that some of that are there.
    ['3H3', ['look-alike 1 as Н'], { origin: 'soviet' }],
    ['3H3', [], { origin: 'german' }],
    ['3Н3С', [], { origin: 'soviet' }],
    ['К73-17 3Н3', []],
    // 3.3 nF, rather than 3 µF of ±3 % for 3 V.
    ['К73-17 3H3', ['look-alike 8 as Н']],
    ['К73-17 3H3', ['look-alike 8 as Н'], { origin: 'soviet' }],
    // With one character missing others may be misread, with two no more is made of it.
    ['1O4? 50V', ['look-alike 1 as 0', 'worn 3 as J']],
  ])('%s: %j with %j', (text, assumed, hints) => {
    expect(assumedOf(text, hints)).toEqual(assumed);
  });

  test('but not beside two that cannot be read', () => {
    const all = readMarking(catalogue, '1O4? 5?V').flatMap(({ evidence }) =>
      evidence.flatMap(({ assumed }) => assumed ?? []),
    );
    expect(all.filter(({ why }) => why === 'look-alike')).toEqual([]);
  });

  test.each([
    [LONGEST_TWICE, true],
    [LONGEST_TWICE + 1, false],
  ])('in %d characters: %s', (length, is) => {
    const text = '1O4K '.padEnd(length, 'ABC ');
    expect(text).toHaveLength(length);
    const made = readMarking(catalogue, text).some(({ evidence }) =>
      evidence.some(({ assumed }) => assumed !== undefined),
    );
    expect(made).toBe(is);
  });

  test('says so with the stretch', () => {
    expect(bestOf('1O4K')?.evidence[0]).toMatchObject({
      text: '1O4',
      at: 0,
      means: '100 nF; read O as 0',
      assumed: [{ at: 1, as: '0', why: 'look-alike' }],
    });
    expect(bestOf('4?3K')?.evidence[0]).toMatchObject({
      means: '47 nF; ? made up as 7',
      assumed: [{ at: 1, as: '7', why: 'worn' }],
    });
  });

  test('Cyrillic letters are made up beside others, or where the part is Soviet', () => {
    const made = (text: string, hints?: Hints): string =>
      readMarking(catalogue, text, hints)
        .flatMap(({ evidence }) => evidence.flatMap(({ assumed }) => assumed ?? []))
        .map(({ as }) => as)
        .join('');
    expect(made('33?5')).not.toMatch(/\p{Script=Cyrillic}/u);
    expect(made('33?', { origin: 'british' })).not.toMatch(/\p{Script=Cyrillic}/u);
    expect(made('33?', { origin: 'soviet' })).toMatch(/\p{Script=Cyrillic}/u);
    expect(made('3Н3?')).toMatch(/\p{Script=Cyrillic}/u);
  });
});

describe('a long marking', () => {
  const head = '104K 50V'.padEnd(LONGEST_MARKING, ' ');

  test('is read as far as bodies reach, and the rest is left', () => {
    expect(bestOf(head)).toMatchObject({ notUnderstood: [] });
    expect(bestOf(`${head}63V QQX`)).toMatchObject({
      notUnderstood: ['63V QQX'],
      ratedVoltage: { typ: 50 },
      kind: 'capacitor',
    });
  });
});

describe('a line under a value with something behind it', () => {
  test('stands behind the value in what is told', () => {
    const found = bestOf('104 K', { underlined: true });
    expect(found?.evidence.map(({ at, text }) => [at, text])).toEqual([
      [0, '104'],
      [3, ''],
      [4, 'K'],
    ]);
  });
});
