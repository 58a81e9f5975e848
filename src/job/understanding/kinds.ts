import type { Catalogue } from '../../engine/index.ts';
import type { BesideKindWordRow, DesignatorLetterRow, KindWordRow } from '../../schemas/job.ts';
import { capital } from '../../text/words.ts';
import type { Ask } from './ask.ts';

const tidy = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/gu, ' ');

/** Words by their text, made once for each table. */
const known = new WeakMap<readonly KindWordRow[], ReadonlyMap<string, KindWordRow>>();

const wordsOf = ({ job: { kindWords } }: Catalogue): ReadonlyMap<string, KindWordRow> => {
  const made = known.get(kindWords) ?? new Map(kindWords.map((row) => [row.word, row]));
  known.set(kindWords, made);
  return made;
};

/** The row of a word that people write for a kind of part, such as `elko`; nothing for others. */
export const kindWord = (catalogue: Catalogue, text: string): KindWordRow | undefined =>
  wordsOf(catalogue).get(tidy(text));

/** Words of the name of a kind, at most, and the fewest letters of one that stands among others. */
const MOST_WORDS = 3;
const FEWEST_LETTERS = 3;

/** Words beside the name of a kind, as they are looked for. */
interface BesideKind {
  /** One of those that a place follows. */
  beforePlace: RegExp;
  surroundings: ReadonlySet<string>;
}

/** The same, made once for each table. */
const besideBefore = new WeakMap<readonly BesideKindWordRow[], BesideKind>();

const besideKindOf = ({ job: { besideKindWords } }: Catalogue): BesideKind => {
  const before = besideBefore.get(besideKindWords);
  if (before !== undefined) return before;
  const telling = (what: BesideKindWordRow['tells']): string[] =>
    besideKindWords.filter(({ tells }) => tells === what).map(({ word }) => word);
  // Letters that figures follow at once are a name, such as TO-92. Words are letters alone.
  const places = telling('place').join('|') || '(?!)';
  const made = {
    beforePlace: new RegExp(String.raw`(?<!\p{L})(?:${places})(?!\p{L}|-?\d)`, 'iu'),
    surroundings: new Set(telling('surroundings')),
  };
  besideBefore.set(besideKindWords, made);
  return made;
};

/** Words of a list without those that tell a place: `output` of `output of the regulator`. */
export const withoutPlace = (catalogue: Catalogue, text: string): string =>
  text.split(besideKindOf(catalogue).beforePlace)[0] ?? '';

/** A word, or words that belong together, that stand for a kind of part. */
interface NamedKind {
  /** How many words it takes; one where none is known. */
  length: number;
  row: KindWordRow | undefined;
}

/** The longest name of a kind that begins at a word. */
const namedAt = (
  known: ReadonlyMap<string, KindWordRow>,
  words: readonly string[],
  at: number,
): NamedKind => {
  const lengths = Array.from({ length: MOST_WORDS }, (_, less) => MOST_WORDS - less);
  for (const length of lengths) {
    const name = words.slice(at, at + length).join(' ');
    const row = name.length < FEWEST_LETTERS ? undefined : known.get(name);
    if (row !== undefined) return { length, row };
  }
  return { length: 1, row: undefined };
};

/**
 * The kind of part that words among others name, as in `10k trimmer` and `Capacitor, polyester`; nothing
 * where they name several. Of words that belong together the longest name counts, and what parts are made
 * of gives way to the name of one: a wirewound trimmer is a trimmer.
 */
export const kindInWords = (catalogue: Catalogue, text: string): string | undefined => {
  const known = wordsOf(catalogue);
  const { surroundings } = besideKindOf(catalogue);
  const words = text.toLowerCase().match(/\p{L}[\p{L}-]*/gu) ?? [];
  const kinds = { named: new Set<string>(), madeOf: new Set<string>() };
  for (let at = 0; at < words.length;) {
    const { length, row } = namedAt(known, words, at);
    at += length;
    if (row === undefined) continue;
    // A trimmer may be named before its place; nobody calls a bias by its transistor.
    const isPassive = row.kind === 'capacitor' || Object.hasOwn(catalogue.kinds, row.kind);
    if (isPassive || !surroundings.has(words[at] ?? ''))
      kinds[row.made_of ? 'madeOf' : 'named'].add(row.kind);
  }
  const [only, ...others] = kinds.named.size > 0 ? kinds.named : kinds.madeOf;
  return others.length === 0 ? only : undefined;
};

/** Whether some capacitors are called by the name of a kind as well, as `trimmer capacitor` says. */
export const namesCapacitorsToo = ({ job: { kindWords } }: Catalogue, name: string): boolean =>
  kindWords.some(({ word, kind }) => kind === 'capacitor' && word.startsWith(`${name} `));

/** The kind of part that a text means; what is not known stays as it was typed. */
export const kindMeant = (catalogue: Catalogue, text: string): string =>
  kindWord(catalogue, text)?.kind ?? text.trim();

/** How a kind is written within a sentence; what has two letters is an abbreviation. */
export const kindName = (kind: string): string =>
  kind.length <= 2 ? kind.toUpperCase() : kind.replaceAll('-', ' ');

/** A kind as the name of a thing to buy. */
export const kindTitle = (kind: string): string => capital(kindName(kind));

/** Whether a kind is one that is fitted in its turn. */
export const isKnownKind = ({ job: { fittingOrder } }: Catalogue, kind: string): boolean =>
  fittingOrder.some(({ kinds }) => kinds.includes(kind));

const lettersOf = ([first = '']: readonly string[]): string =>
  /^\p{L}+/u.exec(first)?.[0].toUpperCase() ?? '';

/** Letters of designators that stand for a kind of part. */
const lettersOfKinds = ({ job: { designatorLetters } }: Catalogue): DesignatorLetterRow[] =>
  designatorLetters.filter(({ kind }) => kind !== '');

/** The kind that the letters of designators usually stand for; nothing for letters that are not known. */
export const usualKind = (
  catalogue: Catalogue,
  designators: readonly string[],
): string | undefined =>
  lettersOfKinds(catalogue).find(({ letters }) => letters === lettersOf(designators))?.kind;

/** Offers the kind that the letters of designators usually stand for. */
export const askKind = (catalogue: Catalogue, designators: readonly string[], said = ''): Ask => {
  const usual = usualKind(catalogue, designators);
  const kinds = [...new Set(lettersOfKinds(catalogue).map(({ kind }) => kind))];
  const ordered = usual === undefined ? kinds : [usual, ...kinds.filter((kind) => kind !== usual)];
  return {
    about: 'kind',
    question: [
      said === '' ? [] : [`“${said}” is not a kind that is known here.`],
      'What kind of part is it?',
      usual === undefined
        ? []
        : [`${lettersOf(designators)} usually stands for this: ${kindName(usual)}.`],
    ]
      .flat()
      .join(' '),
    choices: ordered.map((kind) => ({ label: kindName(kind), set: { kind } })),
    isFirstLikely: usual !== undefined,
  };
};
