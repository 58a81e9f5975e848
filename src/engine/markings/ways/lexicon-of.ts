import type { MarkingTables } from '../../../schemas/markings.ts';
import type { Compiled, Lexicon, MarkingCatalogue } from '../lexicon/lexicon.ts';
import { namesFrom, namesWithin, type BodyNames, type Names } from '../lexicon/names.ts';
import { otherUnitItems } from '../beside/other-marks.ts';
import { otherShapesOf } from '../lexicon/other-shapes.ts';
import type { Hints, ReadingKind } from '../meanings/reading.ts';
import { resistorRowsOf } from '../lexicon/resistor-rows.ts';
import { resistorItems } from '../beside/resistor-words.ts';
import type { Item } from '../lexicon/scan.ts';
import { seriesPlacesOf } from '../lexicon/series-places.ts';
import { taperItems } from '../beside/tapers.ts';
import { temperatureCodesOf } from '../lexicon/temperature-codes.ts';
import { temperatureItems } from '../ratings/temperature-tokens.ts';
import { isCyrillic, type LookAlikes } from '../text/text.ts';
import { toleranceItems } from '../ratings/tolerances.ts';
import { tradeOf } from '../lexicon/trade.ts';
import { valueRowsOf } from '../lexicon/value-rows.ts';
import { voltageCodeItems, voltageCodesThat } from '../ratings/voltage-codes.ts';
import { addWord, emptyTree } from '../lexicon/word-tree.ts';
import { wordItems } from '../beside/words.ts';

const originsOf = (tables: MarkingTables): string[] =>
  Object.values(tables).flatMap((rows: readonly object[]) =>
    rows.flatMap((row) => ('origins' in row ? (row.origins as string[]) : [])),
  );

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
    usualWatts: new Set(tables.resistorStyles.flatMap(({ watts }) => watts ?? [])),
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
