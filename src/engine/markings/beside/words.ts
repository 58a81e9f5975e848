import type { MarkingTables } from '../../../schemas/markings.ts';
import type { Names } from '../lexicon/names.ts';
import type { Item, Scan } from '../lexicon/scan.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';
import type { Content, Meaning, Token } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import { cutsRun, isFigure, isLetter, wordBegins } from '../text/text.ts';
import { freeWord, tokenOf, wordForms } from './word-forms.ts';

/** Letters and the number of a series with a gap between them, as in `MKT 1822`. */
const SERIES_NUMBER = /\p{L} \d+$/u;

/** Letters and words that say what the part is made of. */
const dielectricItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.dielectricCodes.map((row) => {
    const meaning: Meaning = {
      slot: 'dielectric',
      content: { says: 'types', style: row.form === 'prefix' },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: row.types,
      countsZeros: row.counts_zeros,
      means: () =>
        row.construction === '' ? row.dielectric : `${row.construction}, ${row.dielectric}`,
      source: row.source,
    };
    const weight =
      weightOf(weights.word, row.use) + (SERIES_NUMBER.test(row.code) ? weights.seriesNumber : 0);
    return wordForms[row.form](row.code, meaning, weight);
  });

/** The unit of a capacitance at once before a mark of mains duty, as in `100nX2`. */
const UNIT_BEFORE = /\d(?:[pnuµμ]F?)$/u;

/** Marks of mains duty. */
const safetyItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.safetyClasses.map((row): [string, Item] => {
    const meaning: Meaning = {
      slot: 'safety',
      content: { says: 'safety', class: row.class },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: row.types,
      means: () => `class ${row.class}: ${row.meaning}`,
      source: row.source,
    };
    const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
      const next = marking.text.charAt(found.end);
      const isBehindUnit = UNIT_BEFORE.test(marking.text.slice(Math.max(0, at - 4), at));
      if ((cutsRun(marking, at) && !isBehindUnit) || isLetter(next) || isFigure(next))
        return undefined;
      // A letter at once behind figures is a tolerance, and a small one is no class.
      const isLetterAlone = row.mark.length === 1;
      if (isLetterAlone && !(found.sameCase && wordBegins(marking, at))) return undefined;
      const weight = weightOf(weights.safety, row.use) + (found.sameCase ? 0 : weights.otherCase);
      return tokenOf(at, found.end, meaning, weight, found);
    };
    return [row.mark, { kind: 'word', take }];
  });

type MarkRow = MarkingTables['bodyMarks'][number];

type GroupRow = MarkingTables['markGroups'][number];

/** Words for numbers that the meaning of a mark without a figure begins with. */
const NUMBER_WORDS = ['', 'one', 'two', 'three', 'four', 'five', 'six'];

/** How many a mark says are on one shaft: its figure, else what its meaning begins with. */
const countOf = (mark: string, meaning: string): number => {
  const figure = /\d/.exec(mark)?.[0];
  return figure === undefined
    ? NUMBER_WORDS.indexOf(/^\w+/.exec(meaning)?.[0] ?? '')
    : Number(figure);
};

/** What a mark says beside its meaning in words, by the names that `mark-groups.csv` uses for it. */
const saidBy: Record<GroupRow['says'], (row: MarkRow) => Content> = {
  remark: ({ polarity }) => (polarity === '' ? { says: 'remark' } : { says: 'polarity', polarity }),
  size: () => ({ says: 'size' }),
  material: () => ({ says: 'material' }),
  designator: () => ({ says: 'designator' }),
  'other-designator': () => ({ says: 'designator', ofOther: true }),
  gangs: ({ mark, meaning }) => ({ says: 'gangs', count: countOf(mark, meaning) }),
};

/** Polarity, outer foil, approvals and other words. */
const markItems = (tables: MarkingTables, bodies: Names, origins: Names) => {
  const groups = new Map(tables.markGroups.map((group) => [group.id, group]));
  return tables.bodyMarks.flatMap((row): [string, Item][] => {
    const group = groups.get(row.group);
    if (!row.printed || group === undefined) return [];
    const meaning: Meaning = {
      content: saidBy[group.says](row),
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: row.types,
      means: () => row.meaning,
      source: row.source,
    };
    return [wordForms[group.form](row.mark, meaning, weightOf(weights.mark, row.use))];
  });
};

/** Signs of the sections of a can. */
const symbolItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.sectionSymbols.map((row) =>
    freeWord(
      row.sign,
      {
        content: { says: 'symbol', symbol: row.symbol },
        bodies: bodies.bitsOf(row.bodies),
        origins: origins.all,
        types: [],
        means: () => `the section with the sign ${row.symbol}`,
        source: row.source,
      },
      weights.symbol,
    ),
  );

/** Words of the tables that say something by themselves, to be found. */
export const wordItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] => [
  ...dielectricItems(tables, bodies, origins),
  ...safetyItems(tables, bodies, origins),
  ...markItems(tables, bodies, origins),
  ...symbolItems(tables, bodies, origins),
];
