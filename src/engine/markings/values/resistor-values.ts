import { significant, type WrittenNumber } from '../lexicon/numbers.ts';
import type {
  Eia96MultiplierRow,
  ResistorCodeRow,
  ResistorForm,
} from '../lexicon/resistor-rows.ts';
import { figuresAt, writtenAt, type Scan } from '../lexicon/scan.ts';
import { isFigure, isLetter, othersAt, wordBegins, type Assumed } from '../text/text.ts';
import type { Need, Token } from '../meanings/token.ts';
import { figuresWeight, times, valueToken } from './value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

/** The value of figures in a form, ohm. */
const valueIn = (form: ResistorForm, { digits, value }: WrittenNumber): number =>
  form.shape === 'multiplier'
    ? times(Number(digits.slice(0, -1)), 10 ** Number(digits.at(-1)))
    : value;

const WHOLE_WORD: readonly Need[] = ['whole-word'];

const LETTER_NEXT = /^(\p{L})|^\s+(\p{L})(?![\p{L}\d])/u;

/** Whether a letter that may be the unit of plain ohms stands at an index or behind a gap. */
const hasLetterNext = ({ lexicon, marking: { text } }: Scan, end: number): boolean => {
  const [all, touching, apart] = LETTER_NEXT.exec(text.slice(end, end + 6)) ?? [];
  const letter = touching ?? apart ?? '';
  const isUnit = lexicon.values.points.get(letter)?.some(({ places }) => places.includes('end'));
  return all !== undefined && (isUnit === true || isLetter(text.charAt(end + all.length)));
};

/** Whether figures count zeros; of plain ones nothing is said where a letter that may be their unit follows. */
const countsZeros = (scan: Scan, { shape }: ResistorForm, end: number) => {
  if (shape === 'multiplier') return true;
  return shape === 'link' || hasLetterNext(scan, end) ? undefined : false;
};

const inForm = (scan: Scan, at: number, form: ResistorForm, number: WrittenNumber): Token[] => {
  const { digits, assumed } = number;
  if (digits.length < form.figures_min || digits.length > form.figures_max) return [];
  if (form.shape === 'link' ? number.figures !== '' : number.padded) return [];
  const value = valueIn(form, number);
  if (value < form.value_min * (1 - 1e-9) || value > form.value_max * (1 + 1e-9)) return [];
  const figures = form.shape === 'multiplier' ? significant(digits.slice(0, -1)) : number.figures;
  const written = digits.length > 3 ? 'precise' : 'bare';
  const added = form.shape === 'link' ? 0 : figuresWeight(scan, figures, written, assumed);
  if (added === undefined) return [];
  return [
    valueToken({
      at,
      end: number.end,
      quantity: 'resistance',
      value,
      figures,
      weight: weightOf(weights.value, form.use) + added + number.cost,
      countsZeros: countsZeros(scan, form, number.end),
      needs: form.shape === 'link' ? WHOLE_WORD : [],
      bodies: form.bodyBits,
      origins: form.originBits,
      source: form.source,
      settle: form.settle,
      ...(form.underlined_percent === undefined
        ? {}
        : { underlinedPercent: form.underlined_percent }),
      ...(form.percent_min === undefined ? {} : { toleranceFrom: form.percent_min / 100 }),
      ...(form.percent_max === undefined ? {} : { toleranceUpTo: form.percent_max / 100 }),
      assumed,
    }),
  ];
};

const LINK_WITH_LETTER = /(?:0R0?|R0{1,3}|0\s?(?:[ΩΩ]|ohms?))(?![\p{L}\d.,])/iuy;

/** A link of no resistance with the letter or the word of a resistance: `0R0`, `0 ohm`. */
const linksAt = (scan: Scan, at: number): Token[] => {
  LINK_WITH_LETTER.lastIndex = at;
  const written = wordBegins(scan.marking, at) && LINK_WITH_LETTER.exec(scan.marking.text)?.[0];
  if (written === false || written === undefined) return [];
  return scan.lexicon.resistors.forms
    .filter(({ shape }) => shape === 'link')
    .map((form) =>
      valueToken({
        at,
        end: at + written.length,
        quantity: 'resistance',
        value: 0,
        figures: '',
        weight: weightOf(weights.value, form.use),
        needs: WHOLE_WORD,
        bodies: form.bodyBits,
        origins: form.originBits,
        source: form.source,
        settle: form.settle,
        tellsKind: true,
        assumed: [],
      }),
    );
};

const figuresInFormsAt = (scan: Scan, at: number): Token[] =>
  writtenAt(scan, at).flatMap((number) =>
    scan.lexicon.resistors.forms
      // Thousands that are parted are no code.
      .filter(({ shape }) => !number.grouped || shape === 'plain')
      .filter(({ shape }) => (shape === 'decimal') === number.decimal)
      .flatMap((form) => inForm(scan, at, form, number)),
  );

/** Resistances written in figures alone, and links of none. */
export const resistorFiguresAt = (scan: Scan, at: number): Token[] => [
  ...linksAt(scan, at),
  ...figuresInFormsAt(scan, at),
];

interface Multiplier {
  row: Eia96MultiplierRow;
  assumed: readonly Assumed[];
  cost: number;
}

/** What the character at an index multiplies by, or may. */
const multipliersAt = ({ lexicon, marking }: Scan, at: number): Multiplier[] => {
  const { multipliers } = lexicon.resistors;
  if (marking.worn[at])
    return [...multipliers.entries()].flatMap(([as, rows]) =>
      rows
        .filter((row) => row.use !== 'rare')
        .map((row) => ({ row, assumed: [{ at, as, why: 'worn' }], cost: weights.worn })),
    );
  const rows = multipliers.get(marking.text.charAt(at)) ?? [];
  const others = othersAt(marking, at).flatMap(({ as, cost }) =>
    (multipliers.get(as) ?? []).map((row): Multiplier => ({
      row,
      assumed: [{ at, as, why: 'look-alike' }],
      cost,
    })),
  );
  return [...rows.map((row) => ({ row, assumed: [], cost: 0 })), ...others];
};

/** Whether nothing else is printed. */
const isAlone = ({ marking }: Scan, at: number, end: number): boolean =>
  at === 0 && end === marking.text.length;

/** The figures of a code and the letter that multiplies them, as they were found. */
interface ChipCode {
  row: ResistorCodeRow;
  figures: ReturnType<typeof figuresAt>[number];
  multiplier: Multiplier;
  end: number;
  /** What the order of the two adds. */
  weight: number;
}

/** A code as a token; none with more than one character made up, since figures and letter are all there is. */
const chipToken = (
  { lexicon: { origins, hints } }: Scan,
  at: number,
  { row, figures, multiplier, end, weight }: ChipCode,
): Token[] => {
  const assumed = [...figures.assumed, ...multiplier.assumed];
  if (assumed.length > 1) return [];
  const { factor, use, bodies, bodyBits, source, settle } = multiplier.row;
  const share = row.tolerance_percent / 100;
  return [
    valueToken({
      at,
      end,
      quantity: 'resistance',
      value: times(row.significand, factor),
      figures: significant(String(row.significand)),
      weight:
        weightOf(weights.mantissaLetter, use) +
        weight +
        (bodies.includes(hints.body ?? '') ? weights.chipKnown : 0) +
        multiplier.cost +
        figures.cost,
      needs: WHOLE_WORD,
      bodies: bodyBits,
      origins: origins.all,
      source: use === 'usual' ? row.source : source,
      settle,
      implies: { minus: share, plus: share, unit: 'fraction' },
      assumed,
    }),
  ];
};

/** Two figures and the letter behind them. */
const figuresFirst = (scan: Scan, at: number): ChipCode[] =>
  figuresAt(scan, at, 2).flatMap((figures) => {
    const row = scan.lexicon.resistors.eia96.get(figures.digits);
    if (row === undefined) return [];
    const end = figures.end + 1;
    return multipliersAt(scan, figures.end).map((multiplier) => {
      const isPlain = multiplier.row.use === 'usual' && isAlone(scan, at, end);
      const weight = weights.chipCode + (isPlain ? weights.chipCodeAlone : 0);
      return { row, figures, multiplier, end, weight };
    });
  });

/** A letter and two figures behind it. */
const letterFirst = (scan: Scan, at: number): ChipCode[] => {
  const found = isFigure(scan.marking.text.charAt(at)) ? [] : figuresAt(scan, at + 1, 2);
  if (found.length === 0) return [];
  return multipliersAt(scan, at).flatMap((multiplier) =>
    found.flatMap((figures): ChipCode[] => {
      const row = scan.lexicon.resistors.letterFirst.get(figures.digits);
      const { end } = figures;
      return row === undefined
        ? []
        : [{ row, figures, multiplier, end, weight: weights.letterFirstCode }];
    }),
  );
};

/** Two figures and a letter, or a letter and two figures, of small chips. */
export const chipResistorsAt = (scan: Scan, at: number): Token[] =>
  wordBegins(scan.marking, at)
    ? [...figuresFirst(scan, at), ...letterFirst(scan, at)].flatMap((code) =>
        chipToken(scan, at, code),
      )
    : [];
