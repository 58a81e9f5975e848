import type { MarkingTables } from '../../../schemas/markings.ts';
import type { Catalogue } from '../../catalogue.ts';
import type { Names } from './names.ts';
import type { OtherShapes } from './other-shapes.ts';
import type { Hints, ReadingKind } from '../meanings/reading.ts';
import type { ResistorRows } from './resistor-rows.ts';
import type { Item } from './scan.ts';
import type { SeriesPlaces } from './series-places.ts';
import type { TemperatureCodes } from './temperature-codes.ts';
import type { LookAlikes } from '../text/text.ts';
import type { Trade } from './trade.ts';
import type { ValueRows } from './value-rows.ts';
import type { WordTree } from './word-tree.ts';

/** What the tables come to for the tokenizer; the same for every marking. */
export interface Compiled {
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
  /** Powers that styles of resistors have, W. */
  usualWatts: ReadonlySet<number>;
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
