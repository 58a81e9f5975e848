import type { MarkingTables } from '../../schemas/markings.ts';
import type { Catalogue } from '../catalogue.ts';
import type { Names } from './names.ts';
import { namesFrom } from './names.ts';
import type { Hints } from './reading.ts';
import type { Item } from './scan.ts';
import type { SeriesPlaces } from './series-places.ts';
import { seriesPlacesOf } from './series-places.ts';
import type { TemperatureCodes } from './temperature-tokens.ts';
import { temperatureCodesOf, temperatureItems } from './temperature-tokens.ts';
import { toleranceItems } from './tolerances.ts';
import type { ValueRows } from './value-rows.ts';
import { valueRowsOf } from './value-rows.ts';
import { voltageCodeItems } from './voltage-codes.ts';
import type { WordTree } from './word-tree.ts';
import { addWord, emptyTree } from './word-tree.ts';
import { wordItems } from './words.ts';

/** What the tables come to for the tokenizer; the same for every marking. */
interface Compiled {
  tables: MarkingTables;
  types: Catalogue['types'];
  bodies: Names;
  origins: Names;
  places: SeriesPlaces;
  values: ValueRows;
  words: WordTree<Item>;
  temperatureCodes: TemperatureCodes;
  /** Voltages that parts are usually made for, V. */
  usualVolts: ReadonlySet<number>;
  /** Letters that are a unit wherever they stand. */
  unitLetters: ReadonlySet<string>;
}

/** What the tokenizer looks things up in. */
export interface Lexicon extends Compiled {
  hints: Hints;
}

type Tables = Pick<Catalogue, 'markings' | 'series' | 'types'>;

const originsOf = (tables: MarkingTables): string[] =>
  Object.values(tables).flatMap((rows: readonly object[]) =>
    rows.flatMap((row) => ('origins' in row ? (row.origins as string[]) : [])),
  );

const unitAndVoltItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] => {
  const bits = (row: { bodies: string[]; origins: string[] }) => ({
    bodies: bodies.bitsOf(row.bodies),
    origins: origins.bitsOf(row.origins),
  });
  return [
    ...tables.unitWords.map((row): [string, Item] => [
      row.word,
      { kind: 'unit', row, ...bits(row) },
    ]),
    ...tables.voltageWords.map((row): [string, Item] => [
      row.word,
      { kind: 'volts', row, ...bits(row) },
    ]),
  ];
};

const unitLettersOf = (tables: MarkingTables): Set<string> =>
  new Set(
    tables.pointLetters
      .filter(
        (row) =>
          row.use === 'usual' &&
          row.bodies.length === 0 &&
          (row.origins.length === 0 || row.origins.includes('international')),
      )
      .map((row) => row.letter),
  );

const compile = ({ markings: tables, series, types }: Tables): Compiled => {
  const bodies = namesFrom(tables.bodies.map((row) => row.id));
  const origins = namesFrom(originsOf(tables));
  const words = emptyTree<Item>();
  const items = [unitAndVoltItems, voltageCodeItems, toleranceItems, temperatureItems, wordItems];
  for (const [word, item] of items.flatMap((itemsOf) => itemsOf(tables, bodies, origins)))
    addWord(words, word, item);
  return {
    tables,
    types,
    bodies,
    origins,
    places: seriesPlacesOf(series, tables.oldMantissas),
    values: valueRowsOf(tables, bodies, origins),
    words,
    temperatureCodes: temperatureCodesOf(tables, bodies, origins),
    usualVolts: new Set(
      tables.voltageCodes.filter((row) => row.scheme === 'figures').map((row) => row.volts_min),
    ),
    unitLetters: unitLettersOf(tables),
  };
};

const compiled = new WeakMap<MarkingTables, Compiled>();

/** Puts together what the tokenizer needs of the tables; once for each catalogue. */
export const lexiconOf = (catalogue: Tables, hints: Hints): Lexicon => {
  const known = compiled.get(catalogue.markings) ?? compile(catalogue);
  compiled.set(catalogue.markings, known);
  const family = known.types[hints.type ?? '']?.family;
  const body = hints.body ?? known.tables.bodies.find((row) => row.family === family)?.id;
  return { ...known, hints: body === undefined ? hints : { ...hints, body } };
};
