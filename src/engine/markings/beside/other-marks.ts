import type { MarkingTables } from '../../../schemas/markings.ts';
import type { Lexicon } from '../lexicon/lexicon.ts';
import type { OtherShape } from '../lexicon/other-shapes.ts';
import { othersFoundAt, type Item, type Scan } from '../lexicon/scan.ts';
import { isFigure, isLetter, skipBlanks, wordEnds } from '../text/text.ts';
import type { Meaning, Token } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

type Row = MarkingTables['otherMarks'][number];

/** Units of what is not read, to be found behind numbers. */
export const otherUnitItems = (tables: MarkingTables): [word: string, item: Item][] =>
  tables.otherMarks
    .filter(({ form }) => form === 'unit')
    .map((row) => [row.written, { kind: 'other', row }]);

const NONE: readonly OtherShape[] = [];

/** The forms that may begin with a character. */
const shapesFrom = ({ otherShapes }: Lexicon, first: string): readonly OtherShape[] => {
  const own = otherShapes.get(first) ?? NONE;
  if (!isFigure(first)) return own;
  return own.concat(otherShapes.get('#') ?? NONE, otherShapes.get('~') ?? NONE);
};

/** Such marks stand on no capacitor or resistor, whatever its body and origin. */
const meaningOf = ({ is, meaning, source }: Row, { bodies, origins }: Lexicon): Meaning => ({
  content: { says: 'other', is },
  bodies: bodies.all,
  origins: origins.all,
  types: [],
  means: () => `${is}: ${meaning}`,
  source,
});

const NUMBER = /(?!0\d)\d{1,6}(?:[.,·R]\d{1,6})?/y;

/** The end of a number above zero at an index, with a point or an R for one. */
const numberEnd = ({ marking: { text } }: Scan, at: number): number | undefined => {
  if (!isFigure(text.charAt(at)) || /[\p{L}\d.,+\-−]/u.test(text.charAt(at - 1))) return undefined;
  NUMBER.lastIndex = at;
  const number = NUMBER.exec(text)?.[0];
  return number !== undefined && /[1-9]/.test(number) ? at + number.length : undefined;
};

/** Figures of the codes behind which one letter is rather of a capacitor, and of those of chips. */
const FIGURES_OF_CODE = 3;

/** How many figures stand alone, without a point; none where there is one. */
const figuresAlone = ({ marking: { text } }: Scan, at: number, end: number): number =>
  /^\d+$/.test(text.slice(at, end)) ? end - at : 0;

/** Whether what the part is was said. */
export const isKnown = ({ hints }: Lexicon): boolean =>
  hints.kind !== undefined || hints.body !== undefined;

/** A number with the unit of something that is not read, such as `47 µH` and `32.768 kHz`. */
export const otherUnitsAt = (scan: Scan, at: number): Token[] => {
  const end = numberEnd(scan, at);
  if (end === undefined) return [];
  const unit = skipBlanks(scan.marking, end);
  const alone = unit === end ? figuresAlone(scan, at, end) : 0;
  return othersFoundAt(scan, unit).flatMap(({ item, word, end: last, sameCase, assumed }) => {
    const { row } = item;
    const next = scan.marking.text.charAt(last);
    if (!sameCase || assumed.length > 0 || isLetter(next) || isFigure(next)) return [];
    if (word.length === 1 && alone >= FIGURES_OF_CODE) return [];
    return [
      {
        at,
        end: last,
        meaning: meaningOf(row, scan.lexicon),
        weight:
          weightOf(weights.otherUnit, row.use) +
          (word.length === 1 && alone > 0 ? weights.otherForCode : 0),
        needs: [],
        assumed: [],
        // Of a part that is known to be a capacitor or resistor, the letter may be a tolerance.
        withUsualUnit: row.use === 'usual' && !isKnown(scan.lexicon),
      },
    ];
  });
};

/** Figures, or a point, at once before something or before the letters there. */
const FIGURES_BEFORE = /[\d.]\p{L}*$/u;

/** A word of the form of another kind of part, such as `14D471K`; letters of a maker may be before it. */
export const otherShapesAt = (scan: Scan, at: number): Token[] => {
  const { marking, lexicon } = scan;
  if (FIGURES_BEFORE.test(marking.text.slice(0, at))) return [];
  return shapesFrom(lexicon, marking.text.charAt(at)).flatMap(({ row, pattern }): Token[] => {
    pattern.lastIndex = at;
    const found = pattern.exec(marking.text)?.[0];
    if (found === undefined || !wordEnds(marking, at + found.length)) return [];
    // Letters of a maker may run on before figures, but not before letters of the form.
    if (isLetter(found.charAt(0)) && isLetter(marking.text.charAt(at - 1))) return [];
    return [
      {
        at,
        end: at + found.length,
        meaning: meaningOf(row, lexicon),
        weight: weightOf(weights.otherShape, row.use),
        needs: [],
        assumed: [],
      },
    ];
  });
};
