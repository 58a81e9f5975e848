import type { MarkingTables } from '../../../schemas/markings.ts';
import type { Names } from './names.ts';
import {
  readTemperatureCharacteristic,
  sayCharacteristic,
  slopeLetters,
  type TemperatureMeaning,
} from './temperatures.ts';
import type { Meaning } from '../meanings/token.ts';

/** A temperature meaning, as a token has it beside what the table says. */
export interface TiedMeaning {
  meaning: Meaning;
  said: TemperatureMeaning;
}

/** Ties what a table says of a temperature code to bodies and origins. */
export const tieTemperature = (
  said: TemperatureMeaning,
  bodies: Names,
  origins: Names,
): TiedMeaning => ({
  said,
  meaning: {
    slot: 'temperature',
    content: { says: 'temperature', characteristic: said.characteristic },
    bodies: bodies.bitsOf(said.bodies),
    origins: origins.bitsOf(said.origins),
    types: said.types,
    means: () => sayCharacteristic(said.characteristic),
    source: said.source,
  },
});

/** Looks temperature codes up and keeps what it found. */
export interface TemperatureCodes {
  /** What a code of three places means by rule. */
  ruled: (code: string) => readonly TiedMeaning[];
  /** What a single letter behind a tolerance letter means. */
  slope: (letter: string) => readonly TiedMeaning[];
}

/** Looks temperature codes up in some tables. */
export const temperatureCodesOf = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): TemperatureCodes => {
  const kept = (find: (code: string) => TemperatureMeaning[]) => {
    const known = new Map<string, readonly TiedMeaning[]>();
    return (code: string): readonly TiedMeaning[] => {
      const found =
        known.get(code) ?? find(code).map((said) => tieTemperature(said, bodies, origins));
      known.set(code, found);
      return found;
    };
  };
  return {
    ruled: kept((code) =>
      readTemperatureCharacteristic(tables, code).filter((each) => each.byRule),
    ),
    slope: kept((letter) => slopeLetters(tables, letter)),
  };
};
