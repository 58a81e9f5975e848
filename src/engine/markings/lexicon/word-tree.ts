import { foldCharacter, isCyrillic, othersAt, type Assumed, type Marking } from '../text/text.ts';
import { weights } from '../meanings/weights.ts';

/** Words of the tables, letter by letter in small letters, with what each stands for at its end. */
export interface WordTree<Item> {
  next: Map<string, WordTree<Item>>;
  ends: { word: string; item: Item }[];
}

/** A word of the tables as it stands in a marking. */
export interface FoundWord<Item> {
  item: Item;
  word: string;
  end: number;
  /** Whether capital and small letters are as in the table. */
  sameCase: boolean;
  /** Characters that were made up or taken for others. */
  assumed: readonly Assumed[];
  /** What that costs. */
  cost: number;
}

/** A tree without words. */
export const emptyTree = <Item>(): WordTree<Item> => ({ next: new Map(), ends: [] });

/** Adds a word to a tree. */
export const addWord = <Item>(tree: WordTree<Item>, word: string, item: Item): void => {
  let node = tree;
  for (let index = 0; index < word.length; index += 1) {
    const letter = foldCharacter(word.charAt(index));
    const known = node.next.get(letter);
    const next = known ?? emptyTree<Item>();
    if (known === undefined) node.next.set(letter, next);
    node = next;
  }
  node.ends.push({ word, item });
};

/** Characters of one word that may be made up. */
const MOST_WORN_OF_WORD = 2;

interface Path {
  assumed: readonly Assumed[];
  cost: number;
  worn: number;
}

const straight: Path = { assumed: [], cost: 0, worn: 0 };

const assuming = (path: Path, assumed: Assumed, cost: number): Path => ({
  assumed: [...path.assumed, assumed],
  cost: path.cost + cost,
  worn: path.worn + (assumed.why === 'worn' ? 1 : 0),
});

const sameCaseAt = (text: string, at: number, word: string, path: Path): boolean =>
  text.startsWith(word, at) ||
  (path.assumed.length > 0 &&
    word
      .split('')
      .every(
        (letter, index) =>
          text.charAt(at + index) === letter || path.assumed.some((each) => each.at === at + index),
      ));

/** What was assumed, letter by letter as the table has it. */
const asInWord = (path: Path, start: number, word: string): readonly Assumed[] =>
  path.assumed.length === 0
    ? path.assumed
    : path.assumed.map((each) => ({ ...each, as: word.charAt(each.at - start) }));

/** Whether a character may be made up: a Cyrillic one only beside others. */
const mayBeMadeUp = ({ cyrillic }: Marking, character: string): boolean =>
  cyrillic || !isCyrillic(character);

/** Every word of a tree that stands in a marking at an index, the shortest first. */
export const wordsOfTree = <Item>(
  root: WordTree<Item>,
  marking: Marking,
  start: number,
): FoundWord<Item>[] => {
  const found: FoundWord<Item>[] = [];
  const { text } = marking;

  const walk = (tree: WordTree<Item>, at: number, path: Path): void => {
    for (const { word, item } of tree.ends) {
      found.push({
        item,
        word,
        end: at,
        sameCase: sameCaseAt(text, start, word, path),
        assumed: asInWord(path, start, word),
        cost: path.cost,
      });
    }
    if (at >= text.length) return;
    if (marking.worn[at]) {
      if (path.worn >= MOST_WORN_OF_WORD) return;
      for (const [as, next] of tree.next)
        if (mayBeMadeUp(marking, as))
          walk(next, at + 1, assuming(path, { at, as, why: 'worn' }, weights.worn));
      return;
    }
    const next = tree.next.get(foldCharacter(text.charAt(at)));
    if (next !== undefined) walk(next, at + 1, path);
    if (marking.plain) return;
    for (const { as, cost } of othersAt(marking, at)) {
      const other = tree.next.get(foldCharacter(as));
      if (other !== undefined)
        walk(other, at + 1, assuming(path, { at, as, why: 'look-alike' }, cost));
    }
  };

  walk(root, start, straight);
  return found;
};
