import type { MarkingTables } from '../../schemas/markings.ts';
import type { Climate } from './reading.ts';
import type { Scan } from './scan.ts';
import { sayNumber } from './say.ts';
import { wordBegins } from './text.ts';
import type { Token } from './token.ts';
import { weights } from './weights.ts';

const FIGURES = /(\d{2})\/(\d{2,3})\/(\d{2})(?![\d/])/y;
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
  FIGURES.lastIndex = at;
  const figures = FIGURES.exec(text);
  const form = tables.climateLetters.find((each) => each.place === 'figures');
  if (figures !== null && form !== undefined) {
    const climate = {
      tMin: -Number(figures[1]) + 0,
      tMax: Number(figures[2]),
      dampDays: Number(figures[3]),
    };
    return {
      end: at + figures[0].length,
      climate,
      means: sayClimate(climate.tMin, climate.tMax, climate.dampDays),
      source: form.source,
    };
  }
  LETTERS.lastIndex = at;
  const letters = LETTERS.exec(text)?.[0] ?? '';
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

/** The climatic category as a token. */
export const climateAt = ({ lexicon, marking }: Scan, at: number): Token[] => {
  if (!wordBegins(marking, at)) return [];
  const found = readClimate(lexicon.tables, marking.text, at);
  if (found === undefined) return [];
  const inFigures = found.climate.dampDays !== undefined;
  return [
    {
      at,
      end: found.end,
      meaning: {
        slot: 'climate',
        content: { says: 'climate', climate: found.climate },
        bodies: lexicon.bodies.all,
        origins: lexicon.origins.all,
        types: [],
        means: () => found.means,
        source: found.source,
      },
      weight: inFigures ? weights.climate : weights.climateLetters,
      needs: inFigures ? [] : ['value-before'],
      assumed: [],
    },
  ];
};
