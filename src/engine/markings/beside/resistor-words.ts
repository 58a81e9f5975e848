import type { MarkingTables } from '../../../schemas/markings.ts';
import { between } from '../../quantities/range.ts';
import type { Names } from '../lexicon/names.ts';
import { say, sayNumber, sayTolerance } from '../meanings/say.ts';
import type { Item, Scan } from '../lexicon/scan.ts';
import { cutsRun, isFigure, isLetter, wordBegins, wordEnds } from '../text/text.ts';
import { letterItem } from '../ratings/tolerances.ts';
import type { Meaning, Need, Token } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';

const coefficientOf = (ppm: number) => between(-ppm / 1e6, ppm / 1e6, 0);

const sayCoefficient = (ppm: number): string => `within ±${sayNumber(ppm)} ppm/K`;

/** Letters for the tolerance of a resistor, as words to be found. */
const toleranceItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.resistorTolerances.map((row): [string, Item] => {
    const share = row.percent / 100;
    const meaning: Meaning = {
      slot: 'tolerance',
      content: {
        says: 'tolerance',
        of: 'resistance',
        tolerance: { minus: share, plus: share, unit: 'fraction' },
      },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: [],
      means: () => sayTolerance(row.percent, row.percent, '%'),
      source: row.source,
    };
    return letterItem(row, meaning);
  });

const BEHIND_TOLERANCE: readonly Need[] = ['touching-tolerance', 'resistor'];
const BEHIND_STYLE: readonly Need[] = ['touching-tolerance', 'style-before'];

const BESIDE_OHMS: readonly Need[] = ['resistor', 'whole-word'];

/** A letter behind the tolerance letter, or a word beside the value; nothing is made up there. */
const behindTolerance = (
  letter: string,
  meaning: Meaning,
  weight: number,
  needs: readonly Need[],
): [string, Item] => {
  const take = (_: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
    found.sameCase && found.assumed.length === 0
      ? { at, end: found.end, meaning, weight, needs, assumed: [] }
      : undefined;
  return [letter, { kind: 'word', take }];
};

const temperatureItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.resistorTemperatureLetters
    .filter((row) => row.place !== 'in-style')
    .map((row) =>
      behindTolerance(
        row.letter,
        {
          slot: 'temperature',
          content: { says: 'coefficient', coefficient: coefficientOf(row.ppm) },
          bodies: bodies.bitsOf(row.bodies),
          origins: origins.bitsOf(row.origins),
          types: [],
          means: () => sayCoefficient(row.ppm),
          source: row.source,
        },
        weightOf(weights.temperatureLetter, row.use),
        row.place === 'word' ? BESIDE_OHMS : BEHIND_TOLERANCE,
      ),
    );

const failureItems = (tables: MarkingTables, allBodies: number, origins: Names) =>
  tables.failureRates.map((row) =>
    behindTolerance(
      row.letter,
      {
        content: { says: 'remark' },
        bodies: allBodies,
        origins: origins.bitsOf(['american']),
        types: [],
        means: () => `failure rate ${sayNumber(row.percent_per_1000_h)} % in 1000 h`,
        source: row.source,
      },
      weights.failureRate,
      BEHIND_STYLE,
    ),
  );

type StyleRow = MarkingTables['resistorStyles'][number];

const sayStyle = (row: StyleRow, ppm: number | undefined): string =>
  [
    row.construction,
    row.watts === undefined ? '' : say(row.watts, 'W'),
    row.volts_max === undefined ? '' : `at most ${say(row.volts_max, 'V')}`,
    ppm === undefined ? '' : sayCoefficient(ppm),
  ]
    .filter((part) => part !== '')
    .join(', ');

/** Watts behind a dash, and figures with what would be their unit. */
const WATTS_LAST = /-\d+(?:[.,]\d+)?$|^\d+W$/u;

/** A style with a comma in its watts is printed with a point as well: `МЛТ-0.5`. */
const writtenWays = (row: StyleRow): StyleRow[] =>
  row.style.includes(',') ? [row, { ...row, style: row.style.replace(',', '.') }] : [row];

/** Two letters or more and a figure or a dash, which nobody writes for anything else in small letters. */
const TELLING = /^\p{Lu}{2,}-?\d/u;

/** What it costs that a style is written in small letters, as `rn55c`; nothing where it may not be so. */
const smallCost = (written: string, { word, sameCase, assumed }: FoundWord<Item>) => {
  if (sameCase) return 0;
  const isSmall = assumed.length === 0 && written === written.toLowerCase();
  return isSmall && TELLING.test(word) ? weights.otherCase : undefined;
};

/** The number of a model behind the dash of its style, as the `3В` of `СП5-3В`. */
const MODEL = /\d{1,3}\p{L}{0,3}(?:-\d{1,3}(?:[.,]\d{1,3})?)?(?![\p{L}\d])/uy;

/** Where a style ends, behind its letters or the number of its model; nothing where a word goes on. */
const endOfStyle = (text: string, { style, letters }: StyleRow, from: number) => {
  if (style.endsWith('-')) {
    MODEL.lastIndex = from;
    return MODEL.test(text) ? MODEL.lastIndex : undefined;
  }
  let end = from;
  while (end - from < letters && isLetter(text.charAt(end))) end += 1;
  const next = text.charAt(end);
  return isLetter(next) || (end === from && isFigure(next)) ? undefined : end;
};

/** A style with the letters behind it, such as `RN55C` or `RC07GF`, up to the value. */
const styleItem = (
  row: StyleRow,
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [string, Item] => {
  const meaningFor = (ppm: number | undefined): Meaning => ({
    slot: 'dielectric',
    content: {
      says: 'style',
      construction: row.construction,
      ...(row.watts === undefined ? {} : { watts: row.watts }),
      ...(ppm === undefined ? {} : { coefficient: coefficientOf(ppm) }),
    },
    bodies: bodies.bitsOf(row.bodies),
    origins: origins.bitsOf(row.origins),
    types: [],
    means: () => sayStyle(row, ppm),
    source: row.source,
  });
  const ppmOf = (letter: string): number | undefined =>
    row.letters === 1
      ? tables.resistorTemperatureLetters.find(
          (each) => each.place === 'in-style' && each.letter === letter.toUpperCase(),
        )?.ppm
      : undefined;
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    const { text } = marking;
    const end = endOfStyle(text, row, found.end);
    if (end === undefined || !wordBegins(marking, at)) return undefined;
    const inSmall = smallCost(text.slice(at, end), found);
    if (inSmall === undefined) return undefined;
    return {
      at,
      end,
      meaning: meaningFor(ppmOf(text.charAt(found.end))),
      weight:
        weightOf(weights.word, row.use) +
        (WATTS_LAST.test(row.style) ? weights.styleWithWatts : 0) +
        inSmall +
        found.cost,
      needs: [],
      assumed: found.assumed,
    };
  };
  return [row.style, { kind: 'word', take }];
};

const BEHIND_VALUE: readonly Need[] = ['after-value', 'resistor'];

/** The unit once more behind a value that has a letter for it, as in `4k7 ohm` and `4K7Ω`. */
const unitsAgain = (tables: MarkingTables, bodies: Names, origins: Names): [string, Item][] =>
  tables.unitWords
    .filter(({ quantity, factor }) => quantity === 'resistance' && factor === 1)
    .map((row) => {
      const meaning: Meaning = {
        content: { says: 'remark' },
        bodies: bodies.bitsOf([]),
        origins: origins.bitsOf(row.origins),
        types: [],
        means: () => `${row.name}, the unit of a resistance`,
        source: row.source,
      };
      const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
        found.assumed.length > 0 || !wordEnds(marking, found.end) || cutsRun(marking, at)
          ? undefined
          : {
              at,
              end: found.end,
              meaning,
              weight: weights.mark.usual,
              needs: BEHIND_VALUE,
              assumed: [],
            };
      return [row.word, { kind: 'word', take }];
    });

/** Words and letters that only resistors bear, to be found. */
export const resistorItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] => [
  ...toleranceItems(tables, bodies, origins),
  ...temperatureItems(tables, bodies, origins),
  ...failureItems(tables, bodies.all, origins),
  ...unitsAgain(tables, bodies, origins),
  ...tables.resistorStyles.flatMap((row) =>
    writtenWays(row).map((way) => styleItem(way, tables, bodies, origins)),
  ),
];
