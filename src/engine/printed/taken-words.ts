import type { MarkingTables } from '../../schemas/markings.ts';

/** Words that have a meaning of their own wherever they stand. */
export interface TakenWords {
  /** Units, in small letters: 434V, 47nF and 4.7kV are taken so however they are written. */
  units: ReadonlySet<string>;
  /** Codes, as they are printed: the X2 of 473X2 is no tolerance and two volts. */
  codes: ReadonlySet<string>;
  /** Figures with a letter, as they are printed: 105C is a temperature, and no 1 µF of a quarter per cent. */
  marks: ReadonlySet<string>;
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
  marks: new Set(
    tables.bodyMarks.map((row) => row.mark).filter((mark) => /^\d+\p{L}$/u.test(mark)),
  ),
});

/** Whether a piece makes a word of the tables with the letters, or the figures, right before it. */
export const isTaken = (
  { units, codes, marks }: TakenWords,
  before: string,
  piece: string,
): boolean => {
  const figures = /(?<![\d\p{L}.,])\d+$/u.exec(before)?.[0] ?? '';
  if (marks.has(figures + piece)) return true;
  const letters = /\p{L}*$/u.exec(before)?.[0] ?? '';
  if (letters === '') return /^\p{L}$/u.test(piece) && units.has(piece.toLowerCase());
  const word = letters + piece;
  return units.has(word.toLowerCase()) || codes.has(word);
};
