import { say } from '../meanings/say.ts';
import { significant } from '../lexicon/numbers.ts';
import { unitsFoundAt, writtenAt, type Scan } from '../lexicon/scan.ts';
import {
  beforeThreeFigures,
  isFigure,
  isLetter,
  skipBlanks,
  wordBegins,
  wordEnds,
} from '../text/text.ts';
import type { Need, Token } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

const FRACTION = /(\d)\/(\d{1,2})(?!\d)/y;

/** Fractions that have a sign of their own. */
const signs: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '⅛': 0.125, '¾': 0.75 };

/** Whether a unit of power stands at an index, as the W of `2W` does, and ends at another where one is given. */
export const isUnitOfPower = (scan: Scan, at: number, end?: number): boolean =>
  unitsFoundAt(scan, at).some(
    (unit) =>
      unit.item.row.quantity === 'power' &&
      (end === undefined || unit.end === end) &&
      unit.assumed.length === 0,
  );

/** No part that is marked so takes more; `3296W` is a trimmer. */
const MOST_WATTS = 1000;

interface Size {
  end: number;
  value: number;
}

const plainNumbersAt = (scan: Scan, at: number): Size[] =>
  writtenAt(scan, at).filter(({ assumed }) => assumed.length === 0);

/** Numbers and fractions, such as `5`, `0.25`, `1/2`, `½`, at an index. */
const sizesAt = (scan: Scan, at: number): Size[] => {
  const { text } = scan.marking;
  const sign = signs[text.charAt(at)];
  if (sign !== undefined) return [{ end: at + 1, value: sign }];
  if (!isFigure(text.charAt(at + 2))) return plainNumbersAt(scan, at);
  FRACTION.lastIndex = at;
  const fraction = isFigure(text.charAt(at - 1)) ? null : FRACTION.exec(text);
  const quotient = Number(fraction?.[1]) / Number(fraction?.[2]);
  return [
    ...(fraction !== null && Number.isFinite(quotient)
      ? [{ end: at + fraction[0].length, value: quotient }]
      : []),
    ...plainNumbersAt(scan, at),
  ];
};

/** The power of a resistor without its unit, as in `4.7k 1/8`. */
const BARE_FRACTION = /1\/(?:2|3|4|8|10)(?![\p{L}\d/.,])(?!\s*[Ww])/uy;

const OF_RESISTOR: readonly Need[] = ['resistor'];
const OF_ANY: readonly Need[] = [];

/** Whether ohms with their letter stand behind a gap, as behind the watts of `1/4 4K7`. */
const OHMS_BEHIND = /\s+\d+(?:[.,]\d+)?[RKMk]\d*(?![\p{L}\d])/uy;

const areOhmsBehind = ({ marking: { text } }: Scan, at: number): boolean => {
  OHMS_BEHIND.lastIndex = at;
  return OHMS_BEHIND.test(text);
};

/** A power that is written without a gap or a word of its own for its unit. */
const wattsToken = (
  { lexicon }: Scan,
  { at, end, watts, needs }: Pick<Token, 'at' | 'end' | 'needs'> & { watts: number },
): Token[] =>
  lexicon.tables.unitWords
    .filter(({ quantity }) => quantity === 'power')
    .slice(0, 1)
    .map(({ source }) => ({
      at,
      end,
      meaning: {
        slot: 'power',
        content: { says: 'power', watts },
        bodies: lexicon.bodiesOfKind.resistor,
        origins: lexicon.origins.all,
        types: [],
        means: () => `rated ${say(watts, 'W')}`,
        source,
      },
      weight: weights.power.usual,
      needs,
      assumed: [],
    }));

const bareFractionsAt = (scan: Scan, at: number): Token[] => {
  BARE_FRACTION.lastIndex = at;
  const fraction = wordBegins(scan.marking, at) && BARE_FRACTION.exec(scan.marking.text)?.[0];
  if (fraction === false || fraction === undefined) return [];
  const end = at + fraction.length;
  const needs = areOhmsBehind(scan, end) ? OF_ANY : OF_RESISTOR;
  return wattsToken(scan, { at, end, watts: 1 / Number(fraction.slice(2)), needs });
};

/** Watts that resistors are made for, as they are printed without their unit behind a style or a stroke. */
const BARE_WATTS = /(?:0[.,](?:05|062|1|12|125|2|25|33|5)|[125]|10)(?![\p{L}\d/]|[.,]\d)/uy;

/** A style of resistors in Cyrillic before its watts: `УЛМ 0,12 56к`, `ВСа 0,25 47К`, `С2-29В 0,25 10,2к`. */
const STYLE_BEFORE = /(?:^|\s)[А-Я]{1,4}[а-я]?\d{0,2}(?:-\d{1,2}[А-Я]{0,2})?\s$/u;

/** Ohms with a letter before a stroke: `22k/0,5`. */
const OHMS_BEFORE = /\d[kKMRΩ]\d*\s?\/$/u;

const WITH_STYLE: readonly Need[] = ['style-before', 'whole-word'];

/** The power of a resistor without its unit, behind its style and before its value, or behind a stroke. */
const bareWattsAt = (scan: Scan, at: number): Token[] => {
  const { text } = scan.marking;
  if (!isFigure(text.charAt(at)) || isFigure(text.charAt(at - 1))) return [];
  BARE_WATTS.lastIndex = at;
  const figures = BARE_WATTS.exec(text)?.[0];
  if (figures === undefined) return [];
  const before = text.slice(0, at);
  const made = { at, end: at + figures.length, watts: Number(figures.replace(',', '.')) };
  const isBeforeOhms = /^\s+\d/u.test(text.slice(made.end));
  if (STYLE_BEFORE.test(before) && isBeforeOhms)
    return wattsToken(scan, { ...made, needs: WITH_STYLE });
  return OHMS_BEFORE.test(before) && made.watts < 1
    ? wattsToken(scan, { ...made, needs: OF_RESISTOR })
    : [];
};

/** Up to here resistors and lamps are made for about every power, W. */
const EVERY_ONE_TO = 20;

/** Whether the figures of a power are those that were usual before there were series, as of 500 W. */
const isOldMantissa = ({ tables }: Scan['lexicon'], watts: number): boolean =>
  tables.oldMantissas.some(
    ({ value }) => significant(String(value * 100)) === significant(String(watts * 100)),
  );

/** What it costs that no resistor is made for a power, as for 67 W: rather a type number, or read wrongly. */
const unusualWatts = ({ lexicon, marking: { text } }: Scan, watts: number, end: number): number =>
  watts <= EVERY_ONE_TO ||
  lexicon.usualWatts.has(watts) ||
  isOldMantissa(lexicon, watts) ||
  !/\d/u.test(text.slice(end))
    ? 0
    : weights.unusualWatts;

const withUnitAt = (scan: Scan, at: number): Token[] =>
  sizesAt(scan, at)
    .filter(({ value }) => value > 0 && value <= MOST_WATTS)
    .flatMap((size) =>
      unitsFoundAt(scan, skipBlanks(scan.marking, size.end)).flatMap(
        ({ item, end, sameCase, assumed, cost }): Token[] => {
          if (item.row.quantity !== 'power') return [];
          const { row } = item;
          if (row.exact_case && !sameCase) return [];
          const mayRunOn = row.word.length === 1 && row.word === row.word.toUpperCase();
          if (!mayRunOn && isLetter(scan.marking.text.charAt(end))) return [];
          const watts = size.value * row.factor;
          return [
            {
              at,
              end,
              meaning: {
                slot: 'power',
                content: { says: 'power', watts },
                bodies: item.bodies,
                origins: item.origins,
                types: [],
                means: () => `rated ${say(watts, 'W')}`,
                source: row.source,
              },
              weight:
                weightOf(weights.power, row.use) +
                cost +
                unusualWatts(scan, watts, end) +
                (beforeThreeFigures(scan.marking, at, end) ? weights.powerBeforeThree : 0),
              needs: [],
              assumed,
              withUsualUnit: row.use === 'usual' && row.word.length > 1 && assumed.length === 0,
            },
          ];
        },
      ),
    );

/** Watts with their unit for the point, as in `2W5`. */
const WATTS_FOR_POINT = /[1-9]?\dW[1-9](?![\p{L}\d])/uy;

const unitForPointAt = (scan: Scan, at: number): Token[] => {
  WATTS_FOR_POINT.lastIndex = at;
  const found = wordBegins(scan.marking, at) ? WATTS_FOR_POINT.exec(scan.marking.text) : null;
  if (found === null) return [];
  const watts = Number(found[0].replace('W', '.'));
  return wattsToken(scan, { at, end: at + found[0].length, watts, needs: OF_ANY });
};

/** Watts behind their word, as labels have them: `WATTS 10`. */
const behindUnitAt = (scan: Scan, at: number): Token[] => {
  if (!isLetter(scan.marking.text.charAt(at)) || !wordBegins(scan.marking, at)) return [];
  return unitsFoundAt(scan, at)
    .filter(
      ({ item, word, assumed }) =>
        item.row.quantity === 'power' && word.length > 3 && assumed.length === 0,
    )
    .flatMap(({ end }) => plainNumbersAt(scan, skipBlanks(scan.marking, end)))
    .filter(({ value, end }) => value > 0 && value <= MOST_WATTS && wordEnds(scan.marking, end))
    .flatMap(({ value, end }) => wattsToken(scan, { at, end, watts: value, needs: OF_ANY }));
};

/** Rated power, such as `5W`, `1/4 W`, and of resistors `1/4` alone. */
export const powersAt = (scan: Scan, at: number): Token[] => [
  ...withUnitAt(scan, at),
  ...bareFractionsAt(scan, at),
  ...unitForPointAt(scan, at),
  ...bareWattsAt(scan, at),
  ...behindUnitAt(scan, at),
];
