import type { MarkingTables } from '../../schemas/markings.ts';

/** Words that have a meaning of their own wherever they stand. */
export interface TakenWords {
  /** Units, in small letters: 434V, 47nF and 4.7kV are taken so however they are written. */
  units: ReadonlySet<string>;
  /** Codes, as they are printed: the X2 of 473X2 is no tolerance and two volts. */
  codes: ReadonlySet<string>;
}

/** The words of the tables that what is put together must not spell. */
export const takenWords = (tables: MarkingTables): TakenWords => ({
  units: new Set(
    [...tables.unitWords, ...tables.voltageWords.filter((row) => row.place === 'after')]
      .filter((row) => row.use === 'usual')
      .map((row) => row.word.toLowerCase()),
  ),
  codes: new Set([
    ...tables.class1Codes.map((row) => row.code).filter((code) => code.length > 1),
    ...tables.class2Codes.filter((row) => row.alone).map((row) => row.code),
    ...tables.dielectricCodes.filter((row) => row.form === 'word').map((row) => row.code),
    ...tables.safetyClasses.map((row) => row.mark),
  ]),
});

/** Whether a piece makes a word of the tables with the letters right before it. */
export const isTaken = ({ units, codes }: TakenWords, before: string, piece: string): boolean => {
  const letters = /\p{L}*$/u.exec(before)?.[0] ?? '';
  if (letters === '') return /^\p{L}$/u.test(piece) && units.has(piece.toLowerCase());
  const word = letters + piece;
  return units.has(word.toLowerCase()) || codes.has(word);
};
