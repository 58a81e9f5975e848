import type { Catalogue } from '../engine/index.ts';
import type { PositionRow } from '../schemas/positions.ts';
import type { TypeRow } from '../schemas/types.ts';
import { byUse } from './position-order.ts';
import { remembered } from './remembered.ts';

/** Words that say nothing about which type or position is meant. */
const EMPTY_WORDS = new Set(
  'a an and at best by can cap capacitor capacitors caps do for from good in into is it me my need of on or part replace replaced replacement replaces replacing should stand stand-in substitute swap the to use used using what which with'.split(
    ' ',
  ),
);

/** Lower-case words of a text that can tell something, without plural endings. */
export const tellingWords = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word.length > 1 && !EMPTY_WORDS.has(word))
    .map((word) => (word.length > 3 ? word.replace(/(?<!s)s$/, '') : word));

const bagOf = (texts: readonly string[]): Set<string> => new Set(texts.flatMap(tellingWords));

/** Shortest beginning of a word that is taken for it while someone types. */
const SHORTEST_STEM = 3;

const matches = (word: string, bag: ReadonlySet<string>): boolean =>
  bag.has(word) ||
  (word.length >= SHORTEST_STEM && [...bag].some((candidate) => candidate.startsWith(word)));

/** Words that a row is found by, and how many of them are its own name. */
interface Bag {
  words: ReadonlySet<string>;
  ofName: number;
}

/**
 * Words of the query found, weighed against how many words the name has besides; what else it is called,
 * in whatever language, makes nothing less likely.
 */
const score = (words: readonly string[], { words: bag, ofName }: Bag): number => {
  const found = words.filter((word) => matches(word, bag)).length;
  return found === 0 ? 0 : found + 1 / (1 + ofName);
};

const best = <Row>(
  rows: readonly Row[],
  words: readonly string[],
  bag: (row: Row) => Bag,
): Row[] => {
  const scored = rows
    .map((row) => ({ row, score: score(words, bag(row)) }))
    .filter((one) => one.score > 0)
    .toSorted((a, b) => b.score - a.score);
  const top = Math.floor(scored[0]?.score ?? 0);
  return scored.filter((one) => Math.floor(one.score) === top).map((one) => one.row);
};

/** As much of a type, and of a position, as it is named by; those of any kind of part have it. */
type NamedType = Pick<TypeRow, 'id' | 'name' | 'short_name' | 'also_called' | 'market'> & {
  family: string;
};
type NamedPosition = Pick<PositionRow, 'id' | 'name' | 'also_called'> & { group: string };

const bagWith = (name: readonly string[], others: readonly string[]): Bag => ({
  words: bagOf([...name, ...others]),
  ofName: bagOf(name).size,
});

const typeWords = remembered((row: NamedType) =>
  bagWith([row.name, row.short_name, row.family, row.id], row.also_called),
);

const positionWords = remembered((row: NamedPosition) =>
  bagWith([row.name, row.id, row.group], row.also_called),
);

/** Where a name says no more, what everybody has stands first, and what of such a part is not known. */
const MARKETS = [['common', 'none'], ['current'], ['niche'], ['old-stock']] as const;

const byMarket = (a: NamedType, b: NamedType): number => {
  const [first, second] = [a, b].map(({ market }) =>
    MARKETS.findIndex((some) => some.some((one) => one === market)),
  );
  return (first ?? 0) - (second ?? 0);
};

/** The types and positions that a text names, of those given. */
export const findNamesAmong = <T extends NamedType, P extends NamedPosition>(
  allTypes: readonly T[],
  allPositions: readonly P[],
  text: string,
): { types: T[]; positions: P[] } => {
  const words = tellingWords(text);
  const types = best(allTypes, words, typeWords).toSorted(byMarket);
  const named = types.map(typeWords);
  const others = words.filter((word) => !named.some((bag) => matches(word, bag.words)));
  const positions = best(allPositions, others.length > 0 ? others : words, positionWords);
  return { types, positions };
};

/**
 * The positions that every telling word of a place names, those first that most words of the whole
 * text name, and of these the ones whose names say the least besides.
 */
export const namingAll = <P extends NamedPosition>(
  positions: readonly P[],
  place: string,
  text: string,
): P[] => {
  const words = tellingWords(place);
  const all = tellingWords(text);
  return positions
    .filter((row) => words.every((word) => matches(word, positionWords(row).words)))
    .map((row) => ({ row, score: score(all, positionWords(row)) }))
    .toSorted((a, b) => b.score - a.score)
    .map(({ row }) => row);
};

/**
 * Share of the words of a text, those with figures aside, that name one of some types and positions.
 * @returns 0 to 1; 1 where the text has no such words
 */
export const shareNamed = (
  text: string,
  types: readonly NamedType[],
  positions: readonly NamedPosition[],
): number => {
  const words = tellingWords(text).filter((word) => !/\d/u.test(word));
  const bags = [...types.map(typeWords), ...positions.map(positionWords)];
  const named = words.filter((word) => bags.some((bag) => matches(word, bag.words)));
  return words.length === 0 ? 1 : named.length / words.length;
};

/**
 * Types and positions that a text names, those with most of its words first. A word that names the
 * type, such as the disc of "ceramic disc in audio path", is not looked for among the positions
 * unless the text has no others.
 */
export const findNames = (
  catalogue: Catalogue,
  text: string,
): { types: TypeRow[]; positions: PositionRow[] } => {
  const { types, positions } = findNamesAmong(
    Object.values(catalogue.types),
    Object.values(catalogue.positions),
    text,
  );
  return { types, positions: positions.toSorted(byUse) };
};
