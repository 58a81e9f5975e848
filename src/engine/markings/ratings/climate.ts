import type { MarkingTables } from '../../../schemas/markings.ts';
import { filledIn, sayFigures } from '../text/filled-in.ts';
import type { Scan } from '../lexicon/scan.ts';
import { sayNumber } from '../meanings/say.ts';
import { isFigure, wordBegins } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { weights } from '../meanings/weights.ts';

/** Climatic category: temperature limits in degC, and days of damp heat where they are marked. */
export interface Climate {
  tMin: number;
  tMax: number;
  dampDays?: number;
}

/** The letter of how it burns may follow: `40/110/56/B`. */
const FIGURES = /(\d{2})\/(\d{2,3})\/(\d{2})(?:\/([ABC])(?![\p{L}\d])|(?![\d/]))/uy;
const LETTERS = /\p{Lu}{3}(?![\p{L}\d])/uy;

const row = (tables: MarkingTables, place: string, letter: string) =>
  tables.climateLetters.find((each) => each.place === place && each.letter === letter);

const sayClimate = (tMin: number, tMax: number, dampDays?: number): string =>
  `${sayNumber(tMin)} to ${sayNumber(tMax)} °C${
    dampDays === undefined ? '' : `, ${dampDays} days of damp heat`
  }`;

/**
 * The climatic category at the start of a text: `40/085/21`, or the three letters of the older
 * German standard, such as `FKF`.
 */
export const readClimate = (
  tables: MarkingTables,
  text: string,
  at = 0,
): { end: number; climate: Climate; means: string; source: string } | undefined => {
  if (isFigure(text.charAt(at))) {
    FIGURES.lastIndex = at;
    const figures = FIGURES.exec(text);
    const form = figures && tables.climateLetters.find((each) => each.place === 'figures');
    if (figures === null || !form) return undefined;
    const climate = {
      tMin: -Number(figures[1]) + 0,
      tMax: Number(figures[2]),
      dampDays: Number(figures[3]),
    };
    return {
      end: at + figures[0].length,
      climate,
      means: `${sayClimate(climate.tMin, climate.tMax, climate.dampDays)}${
        figures[4] === undefined ? '' : `, passive flammability class ${figures[4]}`
      }`,
      source: form.source,
    };
  }
  LETTERS.lastIndex = at;
  const letters = LETTERS.exec(text)?.[0];
  if (letters === undefined) return undefined;
  const low = row(tables, 'low', letters.charAt(0));
  const high = row(tables, 'high', letters.charAt(1));
  const humidity = row(tables, 'humidity', letters.charAt(2));
  if (low?.degc === undefined || high?.degc === undefined || humidity === undefined)
    return undefined;
  const climate = { tMin: low.degc, tMax: high.degc };
  return {
    end: at + letters.length,
    climate,
    means: `${sayClimate(climate.tMin, climate.tMax)}; ${humidity.meaning}`,
    source: low.source,
  };
};

/** Characters of the longest category in figures, and values that are named one by one. */
const LONGEST = 9;
const MOST_NAMED = 4;

/** Whether both temperatures are among those of the table. */
const isUsual = (tables: MarkingTables, { tMin, tMax }: Climate): boolean => {
  const has = (place: string, degc: number | undefined): boolean =>
    tables.climateLetters.some((each) => each.place === place && each.degc === degc);
  return has('low', tMin) && has('high', tMax);
};

/** Different values of a place in words: `85`, `65 or 75 or 85`, `20 to 29`. */
const sayAll = (values: readonly number[]): string => {
  const rising = [...new Set(values)].sort((a, b) => a - b).map(sayNumber);
  return rising.length > MOST_NAMED ? `${rising[0]} to ${rising.at(-1)}` : rising.join(' or ');
};

type Found = NonNullable<ReturnType<typeof readClimate>>;

/** Categories that differ in one place: all are named. */
const joined = (all: readonly Found[]): Found | undefined => {
  const [first] = all;
  if (first === undefined) return undefined;
  const lows = all.map(({ climate }) => climate.tMin);
  const highs = all.map(({ climate }) => climate.tMax);
  const days = all.map(({ climate }) => climate.dampDays ?? 0);
  return {
    ...first,
    means: `${sayAll(lows)} to ${sayAll(highs)} °C, ${sayAll(days)} days of damp heat`,
  };
};

/** The category in figures one of which is worn. */
const wornClimateAt = ({ lexicon, marking }: Scan, at: number) => {
  const usual = filledIn(marking, at, LONGEST).flatMap(({ text, at: worn, as }) => {
    const found = readClimate(lexicon.tables, text, at);
    return found?.climate.dampDays !== undefined &&
      found.end > worn &&
      isUsual(lexicon.tables, found.climate)
      ? [{ found, assumed: { at: worn, as, why: 'worn' as const } }]
      : [];
  });
  const found = joined(usual.map((each) => each.found));
  const [first] = usual;
  if (found === undefined || first === undefined) return {};
  const as = sayFigures(usual.map(({ assumed }) => assumed.as));
  return { found, assumed: [{ ...first.assumed, as }] };
};

/** The climatic category as a token. */
export const climateAt = (scan: Scan, at: number): Token[] => {
  const { lexicon, marking } = scan;
  if (!wordBegins(marking, at)) return [];
  const plain = readClimate(lexicon.tables, marking.text, at);
  const { found, assumed } =
    plain === undefined ? wornClimateAt(scan, at) : { found: plain, assumed: [] };
  if (found === undefined) return [];
  const inFigures = found.climate.dampDays !== undefined;
  return [
    {
      at,
      end: found.end,
      meaning: {
        slot: 'climate',
        content: { says: 'climate' },
        bodies: lexicon.bodies.all,
        origins: lexicon.origins.all,
        types: [],
        means: () => found.means,
        source: found.source,
      },
      weight: inFigures ? weights.climate : weights.climateLetters,
      needs: inFigures ? [] : ['value-before'],
      assumed: assumed ?? [],
    },
  ];
};
