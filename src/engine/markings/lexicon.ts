import type { MarkingTables } from '../../schemas/markings.ts';
import type { Catalogue } from '../catalogue.ts';
import { namesFrom, namesWithin, type Names } from './names.ts';
import { otherShapesOf, otherUnitItems, type OtherShapes } from './other-marks.ts';
import type { Hints, ReadingKind } from './reading.ts';
import { resistorRowsOf, type ResistorRows } from './resistor-values.ts';
import { resistorItems } from './resistor-words.ts';
import type { Item } from './scan.ts';
import { seriesPlacesOf, type SeriesPlaces } from './series-places.ts';
import { taperItems } from './tapers.ts';
import {
  temperatureCodesOf,
  temperatureItems,
  type TemperatureCodes,
} from './temperature-tokens.ts';
import { isCyrillic, type LookAlikes } from './text.ts';
import { toleranceItems } from './tolerances.ts';
import { tradeOf, type Trade } from './trade.ts';
import { valueRowsOf, type ValueRows } from './value-rows.ts';
import { voltageCodeItems, voltageCodesThat } from './voltage-codes.ts';
import { addWord, emptyTree, type WordTree } from './word-tree.ts';
import { wordItems } from './words.ts';

/** What the tables come to for the tokenizer; the same for every marking. */
interface Compiled {
  tables: MarkingTables;
  types: Catalogue['types'];
  trade: Trade;
  bodies: Names;
  /** Bits of the bodies of each kind. */
  bodiesOfKind: Record<ReadingKind, number>;
  origins: Names;
  places: SeriesPlaces;
  values: ValueRows;
  resistors: ResistorRows;
  words: WordTree<Item>;
  temperatureCodes: TemperatureCodes;
  otherShapes: OtherShapes;
  /** Characters that are taken for others, by the origin that is known, or none. */
  lookAlikes: (origin: string | undefined) => LookAlikes;
  /** Voltages that parts are usually made for, V. */
  usualVolts: ReadonlySet<number>;
  /** Class 1 codes as they look in Latin letters, such as the `M750` that is Cyrillic. */
  slopesInLatin: ReadonlySet<string>;
  /** Letters that are a unit wherever they stand. */
  unitLetters: ReadonlySet<string>;
}

/** What the tokenizer looks things up in. */
export interface Lexicon extends Compiled {
  hints: Hints;
}

/** What reading a marking needs of the catalogue. */
export type MarkingCatalogue = Pick<Catalogue, 'markings' | 'series' | 'types' | 'rulesOfThumb'>;

const originsOf = (tables: MarkingTables): string[] =>
  Object.values(tables).flatMap((rows: readonly object[]) =>
    rows.flatMap((row) => ('origins' in row ? (row.origins as string[]) : [])),
  );

/** Bodies by what a table without bodies of its own is about. */
export interface BodyNames {
  any: Names;
  capacitor: Names;
  resistor: Names;
}

const bodyNamesOf = (tables: MarkingTables): BodyNames => {
  const any = namesFrom(tables.bodies.map((row) => row.id));
  const ofKind = (kind: ReadingKind): string[] =>
    tables.bodies.filter((row) => row.kind === kind).map((row) => row.id);
  return {
    any,
    capacitor: namesWithin(any, ofKind('capacitor')),
    resistor: namesWithin(any, ofKind('resistor')),
  };
};

const unitItems = (tables: MarkingTables, bodies: BodyNames, origins: Names) =>
  tables.unitWords.map((row): [string, Item] => {
    const { quantity } = row;
    const own = quantity === 'capacitance' ? 'capacitor' : 'resistor';
    const names = bodies[quantity === 'fraction' ? 'any' : own];
    const item = {
      bodies: names.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
    };
    return [row.word, { kind: 'unit', row, ...item }];
  });

const voltItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.voltageWords.map((row): [string, Item] => {
    const bits = { bodies: bodies.bitsOf(row.bodies), origins: origins.bitsOf(row.origins) };
    return [row.word, { kind: 'volts', row, ...bits }];
  });

const allItems = (
  tables: MarkingTables,
  bodies: BodyNames,
  origins: Names,
): [word: string, item: Item][] => [
  ...unitItems(tables, bodies, origins),
  ...voltItems(tables, bodies.capacitor, origins),
  ...voltageCodeItems(tables, bodies.capacitor, origins),
  ...toleranceItems(tables, bodies.capacitor, origins),
  ...temperatureItems(tables, bodies.capacitor, origins),
  ...resistorItems(tables, bodies.resistor, origins),
  ...taperItems(tables, bodies.resistor, origins),
  ...wordItems(tables, bodies.any, origins),
  ...otherUnitItems(tables),
];

const unitLettersOf = (tables: MarkingTables): Set<string> =>
  new Set(
    tables.pointLetters
      .filter(
        (row) =>
          row.quantity === 'capacitance' &&
          row.use === 'usual' &&
          row.bodies.length === 0 &&
          (row.origins.length === 0 || row.origins.includes('international')),
      )
      .map((row) => row.letter),
  );

/** Looks up what each character may be taken for, once for each origin. */
const lookAlikesOf = ({ lookAlikes: rows }: MarkingTables): Compiled['lookAlikes'] => {
  const known = new Map<string, LookAlikes>();
  return (origin = '') => {
    const met = rows.filter((row) => row.origins.length === 0 || row.origins.includes(origin));
    const made: LookAlikes =
      known.get(origin) ??
      new Map(
        [...Map.groupBy(met, (row) => row.written)].map(([written, others]) => [
          written,
          others.map((row) => ({ as: row.taken_as, cost: -row.cost })),
        ]),
      );
    known.set(origin, made);
    return made;
  };
};

/** The codes of class 1 with each Cyrillic letter as one types it who has none. */
const slopesInLatin = ({ class1Codes, lookAlikes }: MarkingTables): ReadonlySet<string> => {
  const latin = new Map(
    lookAlikes
      .filter(({ written, taken_as: as }) => isCyrillic(as) && !isCyrillic(written))
      .map(({ written, taken_as: as }) => [as, written]),
  );
  return new Set(
    class1Codes.map(({ code }) => [...code].map((one) => latin.get(one) ?? one).join('')),
  );
};

const compile = ({ markings: tables, series, types, rulesOfThumb }: MarkingCatalogue): Compiled => {
  const bodies = bodyNamesOf(tables);
  const origins = namesFrom(originsOf(tables));
  const words = emptyTree<Item>();
  for (const [word, item] of allItems(tables, bodies, origins)) addWord(words, word, item);
  return {
    tables,
    types,
    trade: tradeOf({ rulesOfThumb }),
    bodies: bodies.any,
    bodiesOfKind: {
      capacitor: bodies.capacitor.bitsOf([]),
      resistor: bodies.resistor.bitsOf([]),
    },
    origins,
    places: seriesPlacesOf(series, tables.oldMantissas),
    values: valueRowsOf(tables, bodies, origins),
    resistors: resistorRowsOf(tables, bodies.resistor, origins),
    words,
    temperatureCodes: temperatureCodesOf(tables, bodies.capacitor, origins),
    otherShapes: otherShapesOf(tables),
    lookAlikes: lookAlikesOf(tables),
    usualVolts: new Set(voltageCodesThat(tables, 'behind-value').map((row) => row.volts_min)),
    slopesInLatin: slopesInLatin(tables),
    unitLetters: unitLettersOf(tables),
  };
};

const compiled = new WeakMap<MarkingTables, Compiled>();

/** Puts together what the tokenizer needs of the tables; once for each catalogue. */
export const lexiconOf = (catalogue: MarkingCatalogue, hints: Hints): Lexicon => {
  const known = compiled.get(catalogue.markings) ?? compile(catalogue);
  compiled.set(catalogue.markings, known);
  const family = known.types[hints.type ?? '']?.family;
  const body = hints.body ?? known.tables.bodies.find((row) => row.family === family)?.id;
  return { ...known, hints: body === undefined ? hints : { ...hints, body } };
};
