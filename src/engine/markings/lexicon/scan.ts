import type { Lexicon } from './lexicon.ts';
import { numbersAt, runsAt, type FigureRun, type WrittenNumber } from './numbers.ts';
import { wordBegins, type Marking } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import type { MarkingTables } from '../../../schemas/markings.ts';
import { wordsOfTree, type FoundWord } from './word-tree.ts';

/** What a word of the tables is good for. */
export type Item =
  /** Taken by itself. */
  | {
      kind: 'word';
      take: (scan: Scan, at: number, found: FoundWord<Item>) => Token | undefined;
      /** Whether it may stand where nothing of it can be read; only where a letter is expected. */
      mayBeMadeUp?: true;
    }
  /** Taken behind a number, as its unit. */
  | { kind: 'unit'; row: MarkingTables['unitWords'][number]; bodies: number; origins: number }
  /** Taken behind a number, as the unit of what is not read. */
  | { kind: 'other'; row: MarkingTables['otherMarks'][number] }
  /** Taken behind or before a number, as its volts. */
  | { kind: 'volts'; row: MarkingTables['voltageWords'][number]; bodies: number; origins: number };

type ItemOf<Kind extends Item['kind']> = Extract<Item, { kind: Kind }>;

/** The words of the tables at an index, by what they are good for, the shortest first. */
interface FoundHere {
  words: readonly FoundWord<ItemOf<'word'>>[];
  units: readonly FoundWord<ItemOf<'unit'>>[];
  volts: readonly FoundWord<ItemOf<'volts'>>[];
  others: readonly FoundWord<ItemOf<'other'>>[];
}

/** A marking while it is read: what it is read with, and what was looked up in it already. */
export interface Scan {
  lexicon: Lexicon;
  marking: Marking;
  words: (FoundHere | undefined)[];
  numbers: (WrittenNumber[] | undefined)[];
  /** By the most figures of a run, then by index. */
  runs: (FigureRun[] | undefined)[][];
}

/** Opens a marking for reading. */
export const scanOf = (lexicon: Lexicon, marking: Marking): Scan => ({
  lexicon,
  marking,
  words: [],
  numbers: [],
  runs: [],
});

/** Whether enough of a word can be read: half of it at least, from its first character on unless a word begins there. */
const isSupported = ({ marking }: Scan, at: number, found: FoundWord<Item>): boolean => {
  const worn = found.assumed.filter(({ why }) => why === 'worn');
  if (worn.length === 0) return true;
  if (worn.length === found.word.length)
    return found.item.kind === 'word' && found.item.mayBeMadeUp === true && worn.length === 1;
  if (2 * worn.length > found.word.length) return false;
  return worn[0]?.at !== at || wordBegins(marking, at) || found.item.kind !== 'word';
};

const isOf =
  <Kind extends Item['kind']>(kind: Kind) =>
  (found: FoundWord<Item>): found is FoundWord<ItemOf<Kind>> =>
    found.item.kind === kind;

const isWord = isOf('word');
const isUnit = isOf('unit');
const isVolts = isOf('volts');
const isOther = isOf('other');

const NOTHING: FoundHere = { words: [], units: [], volts: [], others: [] };

const lookUp = (scan: Scan, at: number): FoundHere => {
  const { lexicon, marking } = scan;
  const all = wordsOfTree(lexicon.words, marking, at);
  if (all.length === 0) return NOTHING;
  const found = marking.plain ? all : all.filter((each) => isSupported(scan, at, each));
  return {
    words: found.filter(isWord),
    units: found.filter(isUnit),
    volts: found.filter(isVolts),
    others: found.filter(isOther),
  };
};

const foundAt = (scan: Scan, at: number): FoundHere => (scan.words[at] ??= lookUp(scan, at));

/** Every word at an index that is taken by itself. */
export const wordsFoundAt = (scan: Scan, at: number): FoundHere['words'] => foundAt(scan, at).words;

/** Every unit at an index. */
export const unitsFoundAt = (scan: Scan, at: number): FoundHere['units'] => foundAt(scan, at).units;

/** Every word or sign for volts at an index. */
export const voltsFoundAt = (scan: Scan, at: number): FoundHere['volts'] => foundAt(scan, at).volts;

/** Every unit of what is not read at an index. */
export const othersFoundAt = (scan: Scan, at: number): FoundHere['others'] =>
  foundAt(scan, at).others;

/** Every number at an index. */
export const writtenAt = (scan: Scan, at: number): WrittenNumber[] =>
  (scan.numbers[at] ??= numbersAt(scan.marking, at));

/** Every run of so many figures at most at an index. */
export const figuresAt = (scan: Scan, at: number, most: number): FigureRun[] =>
  ((scan.runs[most] ??= [])[at] ??= runsAt(scan.marking, at, most));
