import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readMarking, type Reading } from '../../../src/engine/markings/index.ts';
import { lexiconOf } from '../../../src/engine/markings/ways/lexicon-of.ts';
import type { Lexicon } from '../../../src/engine/markings/lexicon/lexicon.ts';
import { KEPT_AT_LEAST, MOST_STEPS, parsesOf } from '../../../src/engine/markings/ways/parse.ts';
import { LONGEST_TWICE } from '../../../src/engine/markings/read-marking.ts';
import { scanOf } from '../../../src/engine/markings/lexicon/scan.ts';
import { isSeparator, markingOf } from '../../../src/engine/markings/text/text.ts';
import { tokensAt } from '../../../src/engine/markings/ways/tokens.ts';
import { mixedMarkings } from '../../../scripts/bench/mixed-markings.ts';
import { catalogue } from './tables.ts';

/** Strings that look like markings: their letters, figures and signs, and pieces of real ones. */
const pieces = fc.constantFrom(
  '104',
  '473',
  '1H',
  '2A',
  'K',
  'J',
  'M',
  'Z',
  'Z5U',
  'X7R',
  'NP0',
  '250V',
  '16V',
  'KV',
  'mfd',
  'uF',
  'nF',
  'pF',
  'MKP',
  'X2',
  '~',
  '-',
  '+',
  '.',
  ',',
  '/',
  ' ',
  '\n',
  'n',
  'u',
  'R',
  '4n7',
  'П',
  'М',
  '8923',
  '±10%',
);
const markingLike = fc
  .array(fc.oneof(pieces, fc.string({ minLength: 1, maxLength: 2 })), { maxLength: 60 })
  .map((parts) => parts.join('').slice(0, 200));
/** The same with characters that cannot be read, or that are taken for others. */
const wornLike = fc
  .array(fc.oneof(pieces, fc.constantFrom('?', '_', '▯', '…', 'O', 'l', 'S', 'B', 'Z', 'О')), {
    maxLength: 14,
  })
  .map((parts) => parts.join(''));
const figures = fc.stringMatching(/^[0-9.,?]{0,200}$/);
/** Pieces that much can be made of, over and over. */
const heavy = [
  '104K',
  '.1K',
  '47 ',
  '1,',
  '10 000 ',
  'MKP ',
  '4?7K ',
  '?',
  '1?',
  '??1 ',
  'l0 ',
  '16+',
];

const mostTokens = (text: string, lexicon: Lexicon): number => {
  const scan = scanOf(lexicon, markingOf(text, lexicon.lookAlikes(undefined)));
  return Math.max(0, ...Array.from(text, (__, at) => tokensAt(scan, at).length));
};

const anyText = fc.oneof(
  fc.string({ maxLength: 200, unit: 'binary' }),
  fc.string({ maxLength: 200, unit: 'grapheme' }),
  markingLike,
);

/** Puts a marking together again from a reading; nothing but separators may be left over. */
const leftOver = (text: string, reading: Reading): string => {
  let rest = '';
  let at = 0;
  for (const { text: taken, at: start } of reading.evidence) {
    expect(start).toBeGreaterThanOrEqual(at);
    expect(text.slice(start, start + taken.length)).toBe(taken);
    rest += `${text.slice(at, start)}\u0000`;
    at = start + taken.length;
  }
  rest += text.slice(at);
  let from = 0;
  for (const lost of reading.notUnderstood) {
    const found = rest.indexOf(lost, from);
    expect(found).toBeGreaterThanOrEqual(from);
    rest = `${rest.slice(0, found)}\u0000${rest.slice(found + lost.length)}`;
    from = found + 1;
  }
  return rest.replaceAll('\u0000', '');
};

describe('any string', () => {
  test('never throws, and every character is accounted for once', () => {
    fc.assert(
      fc.property(
        anyText.filter((text) => !text.includes('\u0000')),
        (text) => {
          for (const reading of readMarking(catalogue, text)) {
            expect([...leftOver(text, reading)].every(isSeparator)).toBe(true);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test('is never sure without a value', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const without = readMarking(catalogue, text).filter(
          ({ sure, capacitance, resistance, sections }) =>
            sure !== 'possible' && (capacitance ?? resistance ?? sections) === undefined,
        );
        expect(without).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test('is never sure where there is no figure', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 200 }).map((text) => text.replace(/\d/g, 'x')),
        (text) => {
          expect(readMarking(catalogue, text).filter(({ sure }) => sure === 'sure')).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('is JSON-able, with ranges in order and positive magnitudes', () => {
    fc.assert(
      fc.property(markingLike, (text) => {
        for (const reading of readMarking(catalogue, text)) {
          expect(JSON.parse(JSON.stringify(reading))).toEqual(reading);
          const { capacitance, ratedVoltage, tolerance, capacitanceOverTemperature } = reading;
          for (const range of [capacitance, ratedVoltage, capacitanceOverTemperature]) {
            if (range === undefined) continue;
            expect(range.min).toBeLessThanOrEqual(range.typ);
            expect(range.typ).toBeLessThanOrEqual(range.max);
            expect(range.min).toBeGreaterThanOrEqual(0);
          }
          expect(tolerance?.minus ?? 0).toBeGreaterThanOrEqual(0);
          expect(tolerance?.plus ?? 0).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('is never sure where a character cannot be read or was taken for another', () => {
    fc.assert(
      fc.property(wornLike, (text) => {
        for (const reading of readMarking(catalogue, text)) {
          const assumed = reading.evidence.flatMap((each) => each.assumed ?? []);
          const unread = reading.notUnderstood.some((lost) => /[?_#▯…]/.test(lost));
          if (assumed.length > 0 || unread) expect(reading.sure).not.toBe('sure');
          for (const { at, why } of assumed) {
            expect(reading.evidence.some((each) => at >= each.at)).toBe(true);
            if (why === 'worn') expect('?_#▯\uFFFD').toContain(text.charAt(at));
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test('takes no more steps than its bound, whatever the text', () => {
    const lexicon = lexiconOf(catalogue, {});
    const atMost = (text: string): number =>
      MOST_STEPS + text.length * KEPT_AT_LEAST * (mostTokens(text, lexicon) + 1);
    const check = (text: string): void => {
      for (const lookAlikes of [undefined, lexicon.lookAlikes(undefined)]) {
        const { steps } = parsesOf(lexicon, markingOf(text, lookAlikes));
        expect(steps).toBeLessThanOrEqual(atMost(text));
      }
    };
    fc.assert(
      fc.property(fc.oneof(anyText, wornLike, figures), (text) => {
        check(text);
      }),
      { numRuns: 200 },
    );
    for (const piece of heavy) check(piece.repeat(200).slice(0, 200));
  });
});

describe('how much work a marking makes', () => {
  /** Steps of both passes that a reading may make, as plain text and with look-alikes. */
  const stepsOf = (lexicon: Lexicon, text: string): number =>
    [undefined, lexicon.lookAlikes(undefined)].reduce(
      (sum, lookAlikes) => sum + parsesOf(lexicon, markingOf(text, lookAlikes)).steps,
      0,
    );

  // The most that was measured is 3,449 steps and 981 tokens, in 1.7 ms.
  test('is bounded, for strings of mixed kinds to 200 characters', () => {
    const lexicon = lexiconOf(catalogue, {});
    for (const text of mixedMarkings(600)) {
      const scan = scanOf(lexicon, markingOf(text));
      const tokens = Array.from(text, (__, at) => tokensAt(scan, at).length);
      expect(
        tokens.reduce((sum, many) => sum + many, 0),
        text,
      ).toBeLessThanOrEqual(1000);
      const steps =
        text.length <= LONGEST_TWICE
          ? stepsOf(lexicon, text)
          : parsesOf(lexicon, markingOf(text)).steps;
      expect(steps, text).toBeLessThanOrEqual(3600);
    }
  });
});

describe('noise', () => {
  /** The same texts on every run: a linear congruential generator. */
  const noise = (count: number, alphabet: string, longest: number): string[] => {
    let seed = 20250101;
    const next = (below: number): number => {
      seed = (seed * 1664525 + 1013904223) % 2 ** 32;
      return Math.floor((seed / 2 ** 32) * below);
    };
    return Array.from({ length: count }, () =>
      Array.from({ length: 8 + next(longest - 8) }, () =>
        alphabet.charAt(next(alphabet.length)),
      ).join(''),
    );
  };

  test.each([
    ['letters', 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ '],
    ['letters and figures', 'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 '],
    ['figures', '0123456789'],
    ['signs', '!"§$%&/()=?*+~#-_.:,;<>|0123456789'],
    ['signs for what cannot be read', '??_#▯… 01AK'],
  ])('of %s is never sure', (_, alphabet) => {
    const sure = noise(400, alphabet, 60).filter((text) =>
      readMarking(catalogue, text).some((reading) => reading.sure === 'sure'),
    );
    expect(sure).toEqual([]);
  });
});

const preferred = [
  ...new Set(catalogue.series.filter((row) => row.series === 'E24').map((row) => row.value)),
];
const letters: [string, number][] = [
  ['p', 1e-12],
  ['n', 1e-9],
  ['u', 1e-6],
];

describe('a value that was written comes back', () => {
  const codes = preferred.flatMap((value) =>
    [0, 1, 2, 3, 4, 5, 6].map((zeros): [string, number] => {
      const two = Math.round(value * 10);
      return [`${two}${zeros}`, two * 10 ** zeros * 1e-12];
    }),
  );

  test.each(codes)('three figures: %s', (code, value) => {
    const [best] = readMarking(catalogue, `${code}K`);
    expect((best?.capacitance?.typ ?? NaN) / value).toBeCloseTo(1, 9);
    expect(best?.tolerance).toEqual({ minus: 0.1, plus: 0.1, unit: 'fraction' });
  });

  const withLetter = preferred.flatMap((value) =>
    letters.flatMap(([letter, unit]): [string, number][] => {
      const [whole = '', fraction = '0'] = String(value).split('.');
      return [
        [`${whole}${letter}${fraction}`, value * unit],
        [`${letter}${whole}${fraction}`, (value / 10) * unit],
        [`${whole}${fraction}${letter}`, value * 10 * unit],
      ];
    }),
  );

  test.each(withLetter)('a letter for the point: %s', (code, value) => {
    const [best] = readMarking(catalogue, code);
    expect((best?.capacitance?.typ ?? NaN) / value).toBeCloseTo(1, 9);
  });
});
