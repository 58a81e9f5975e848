import type { Catalogue } from '../engine/index.ts';
import type { PositionRow } from '../schemas/positions.ts';
import type { TypeRow } from '../schemas/types.ts';
import { byUse } from './position-order.ts';
import { remembered } from './remembered.ts';

/** Words that say nothing about which type or position is meant. */
const EMPTY_WORDS = new Set(
  'a an and at by can cap capacitor capacitors caps for from in into is it me my of on or part replace replaced replacement replaces replacing stand stand-in substitute swap the to what which with'.split(
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

/** Words of the query found, weighed against how many words the name has besides. */
const score = (words: readonly string[], bag: ReadonlySet<string>): number => {
  const found = words.filter((word) => matches(word, bag)).length;
  return found === 0 ? 0 : found + 1 / (1 + bag.size);
};

const best = <Row>(
  rows: readonly Row[],
  words: readonly string[],
  bag: (row: Row) => Set<string>,
): Row[] => {
  const scored = rows
    .map((row) => ({ row, score: score(words, bag(row)) }))
    .filter((one) => one.score > 0)
    .toSorted((a, b) => b.score - a.score);
  const top = Math.floor(scored[0]?.score ?? 0);
  return scored.filter((one) => Math.floor(one.score) === top).map((one) => one.row);
};

/** As much of a type, and of a position, as it is named by; those of any kind of part have it. */
type NamedType = Pick<TypeRow, 'id' | 'name' | 'short_name'> & { family: string };
type NamedPosition = Pick<PositionRow, 'id' | 'name' | 'also_called'> & { group: string };

const typeWords = remembered((row: NamedType) =>
  bagOf([row.name, row.short_name, row.family, row.id]),
);

const positionWords = remembered((row: NamedPosition) =>
  bagOf([row.name, row.id, row.group, ...row.also_called]),
);

/** The types and positions that a text names, of those given. */
export const findNamesAmong = <T extends NamedType, P extends NamedPosition>(
  allTypes: readonly T[],
  allPositions: readonly P[],
  text: string,
): { types: T[]; positions: P[] } => {
  const words = tellingWords(text);
  const types = best(allTypes, words, typeWords);
  const named = types.map(typeWords);
  const others = words.filter((word) => !named.some((bag) => matches(word, bag)));
  const positions = best(allPositions, others.length > 0 ? others : words, positionWords);
  return { types, positions };
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
