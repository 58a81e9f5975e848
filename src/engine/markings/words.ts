import type { Lexicon } from './lexicon.ts';
import type { Marking } from './text.ts';
import { cutsRun, isFigure, isLetter, wordAt, wordBegins } from './text.ts';
import type { Token } from './token.ts';
import { weightOf, weights } from './weights.ts';

/** Codes as short as this are taken only as printed, in capitals, and as a word of their own. */
const SHORT = 3;

const isShort = (word: string): boolean => word.length <= SHORT && /^\p{L}+$/u.test(word);

/** Where a word of a table ends, if it stands here without cutting a longer one. */
const freeWordAt = (marking: Marking, at: number, word: string): number | undefined => {
  const found = wordAt(marking, at, word, isShort(word));
  if (found === undefined || cutsRun(marking, at) || cutsRun(marking, found.end)) return undefined;
  return isShort(word) && !wordBegins(marking, at) ? undefined : found.end;
};

const STYLE = /\d{1,4}[A-Za-zА-Яа-я]?(?![\p{L}\d])/uy;

/** Where a style such as `CM15` or `К73-17` ends: letters of the table, then figures. */
const styleEnd = (marking: Marking, at: number, prefix: string): number | undefined => {
  if (!wordBegins(marking, at) || !marking.text.startsWith(prefix, at)) return undefined;
  STYLE.lastIndex = at + prefix.length;
  const figures = STYLE.exec(marking.text)?.[0];
  return figures === undefined ? undefined : at + prefix.length + figures.length;
};

/** Letters and words that say what the part is made of. */
const dielectricsAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  lexicon.tables.dielectricCodes.flatMap((row): Token[] => {
    const end =
      row.form === 'word' ? freeWordAt(marking, at, row.code) : styleEnd(marking, at, row.code);
    if (end === undefined) return [];
    return [
      {
        at,
        end,
        slot: 'dielectric',
        content: { says: 'types' },
        weight: weightOf(weights.word, row.use),
        needs: [],
        bodies: row.bodies,
        origins: row.origins,
        types: row.types,
        means: row.construction === '' ? row.dielectric : `${row.construction}, ${row.dielectric}`,
        source: row.source,
      },
    ];
  });

/** Marks of mains duty. */
const safetyAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  lexicon.tables.safetyClasses.flatMap((row): Token[] => {
    const found = wordAt(marking, at, row.mark);
    if (found === undefined || cutsRun(marking, at)) return [];
    const next = marking.text.charAt(found.end);
    if (isLetter(next) || isFigure(next)) return [];
    return [
      {
        at,
        end: found.end,
        slot: 'safety',
        content: {
          says: 'safety',
          class: row.class,
          ...(row.peak_in_service_v === undefined ? {} : { peakInService: row.peak_in_service_v }),
          ...(row.impulse_test_v === undefined ? {} : { impulseTest: row.impulse_test_v }),
        },
        weight: weightOf(weights.safety, row.use) + (found.sameCase ? 0 : weights.otherCase),
        needs: [],
        bodies: row.bodies,
        origins: row.origins,
        types: row.types,
        means: `class ${row.class}: ${row.meaning}`,
        source: row.source,
      },
    ];
  });

/** Polarity, outer foil, approvals and other words. */
const marksAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  lexicon.tables.bodyMarks
    .filter((row) => row.printed)
    .flatMap((row): Token[] => {
      const end = freeWordAt(marking, at, row.mark);
      if (end === undefined) return [];
      return [
        {
          at,
          end,
          content:
            row.polarity === '' ? { says: 'remark' } : { says: 'polarity', polarity: row.polarity },
          weight: weightOf(weights.mark, row.use),
          needs: [],
          bodies: row.bodies,
          origins: row.origins,
          types: row.types,
          means: row.meaning,
          source: row.source,
        },
      ];
    });

/** Every word of the tables that can be seen at an index. */
export const wordsAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] => [
  ...dielectricsAt(lexicon, marking, at),
  ...safetyAt(lexicon, marking, at),
  ...marksAt(lexicon, marking, at),
];
