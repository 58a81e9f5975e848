import { say } from '../meanings/say.ts';
import { unitsFoundAt, voltsFoundAt, type Scan } from '../lexicon/scan.ts';
import { significant } from '../lexicon/numbers.ts';
import { isFigure, skipBlanks, wordBegins, wordEnds } from '../text/text.ts';
import type { Token, Use } from '../meanings/token.ts';
import { figuresWeight, times } from '../values/value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

/** Sections of one can, each with its voltage, and where they end. */
interface Rated {
  values: number[];
  volts: number[];
  end: number;
}

const LIST = String.raw`[1-9]\d{0,3}(?:[+\-][1-9]\d{0,3})*`;
const VOLTS = String.raw`[1-9]\d{0,2}`;
const GROUP = String.raw`${LIST}\/${VOLTS}(?:[/,]${VOLTS})*`;
/** `40-40/450-50/25`, `20+20/350 40/50`, `20-20-20/450/450/25`. */
const STROKES_BEFORE_VOLTS = new RegExp(
  String.raw`${GROUP}(?:(?:\s?[-+]\s?|[,;]?\s)${GROUP})*(?![\d./]|[-+]\d)`,
  'y',
);
/** `8-450/8-350`. */
const STROKES_BETWEEN_GROUPS = new RegExp(
  String.raw`[1-9]\d{0,3}-${VOLTS}(?:\/[1-9]\d{0,3}-${VOLTS})+(?![\d./]|-\d)`,
  'y',
);
/** `8-8-8` and `40/20/20`, with its unit and the voltages behind. */
const WITH_UNIT = /[1-9]\d{0,3}(?:[+\-/][1-9]\d{0,3})*/y;
/** `40/20/20/20`, with a gap and the voltage of each behind. */
const WITHOUT_UNIT = /[1-9]\d{0,3}(?:[+\-/][1-9]\d{0,3})+(?=\s)/y;
const VOLTS_OF_EACH = new RegExp(
  String.raw`${VOLTS}(?:[-/]${VOLTS})+(?!\d)|${VOLTS}(?:\s${VOLTS}){2,}(?!\d)`,
  'y',
);

const numbersIn = (text: string): number[] => text.split(/[^\d]+/).map(Number);

const matchAt = (pattern: RegExp, text: string, at: number): string | undefined => {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
};

/** The values and voltages of a group: one voltage for all of its sections, or one for each. */
const groupOf = (text: string): Omit<Rated, 'end'> | undefined => {
  const [list = '', ...rest] = text.split(/[/,]/);
  const values = numbersIn(list);
  const volts = rest.map(Number);
  const [only = 0] = volts;
  if (volts.length === 1) return { values, volts: values.map(() => only) };
  return volts.length === values.length ? { values, volts } : undefined;
};

const GROUPS = new RegExp(GROUP, 'g');

/** Groups of sections without a unit, each with a stroke before its voltage. */
const groupsAt = ({ marking: { text } }: Scan, at: number): Rated | undefined => {
  const found = matchAt(STROKES_BEFORE_VOLTS, text, at);
  const groups = (found?.match(GROUPS) ?? []).map(groupOf).filter((group) => group !== undefined);
  const hasSeveralVolts = groups.some(({ volts }) => new Set(volts).size > 1);
  if (found === undefined || (groups.length < 2 && !hasSeveralVolts)) return undefined;
  return {
    values: groups.flatMap(({ values }) => values),
    volts: groups.flatMap(({ volts }) => volts),
    end: at + found.length,
  };
};

/** The same with the strokes the other way round. */
const pairsAt = ({ marking: { text } }: Scan, at: number): Rated | undefined => {
  const found = matchAt(STROKES_BETWEEN_GROUPS, text, at);
  if (found === undefined) return undefined;
  const numbers = numbersIn(found);
  return {
    values: numbers.filter((_, index) => index % 2 === 0),
    volts: numbers.filter((_, index) => index % 2 === 1),
    end: at + found.length,
  };
};

/** Whether two voltages are a rating and its surge voltage, as in `350/385 V`. */
const isSurge = (
  { lexicon: { trade } }: Scan,
  [first = 0, second = 0, ...others]: readonly number[],
): boolean => others.length === 0 && second > first && second <= first * trade.highestSurge;

/** A list with its voltages, and its unit where that is printed. */
type Listed = Rated & { factor?: number; use: Use };

/** Fewest sections without a unit that are no date. */
const LEAST_BARE = 3;

/** The same without its unit: `40/20/20/20 475/450/450/25`. */
const bareListedAt = ({ marking, lexicon: { trade } }: Scan, at: number): Listed | undefined => {
  const list = matchAt(WITHOUT_UNIT, marking.text, at) ?? '';
  const from = skipBlanks(marking, at + list.length);
  const behind = matchAt(VOLTS_OF_EACH, marking.text, from) ?? '';
  const values = numbersIn(list);
  const volts = numbersIn(behind);
  const isCan = values.length >= LEAST_BARE && volts.length === values.length;
  return isCan && Math.max(...volts) >= trade.lowestOfCan
    ? { values, volts, end: from + behind.length, use: 'other' }
    : undefined;
};

/** A list with its unit, and as many voltages as values behind it: `8-8-8 MFD 475-450-25`. */
const listedAt = (scan: Scan, at: number): Listed | undefined => {
  const { text } = scan.marking;
  const list = matchAt(WITH_UNIT, text, at);
  if (list === undefined) return undefined;
  const unit = unitsFoundAt(scan, skipBlanks(scan.marking, at + list.length))
    .filter(({ item, assumed }) => item.row.quantity === 'capacitance' && assumed.length === 0)
    .at(-1);
  if (unit === undefined) return undefined;
  const from = skipBlanks(scan.marking, unit.end);
  const behind = matchAt(VOLTS_OF_EACH, text, from);
  const values = numbersIn(list);
  const volts = numbersIn(behind ?? '');
  if (behind === undefined || values.length < 2 || volts.length !== values.length) return undefined;
  if (isSurge(scan, volts)) return undefined;
  const end = from + behind.length;
  const word = voltsFoundAt(scan, skipBlanks(scan.marking, end))
    .filter(({ item, assumed }) => item.row.place === 'after' && assumed.length === 0)
    .filter(({ item, end: last }) => item.row.role === 'rated' && wordEnds(scan.marking, last))
    .at(-1);
  const { factor, use } = unit.item.row;
  return { values, volts, end: word?.end ?? end, factor, use };
};

const averageWeight = (scan: Scan, values: readonly number[]): number =>
  values.reduce(
    (sum, value) => sum + (figuresWeight(scan, significant(String(value)), 'bare', []) ?? 0),
    0,
  ) / values.length;

/** Sections of a can that stand with the voltage of each, for cans that are marked so. */
export const ratedSectionsAt = (scan: Scan, at: number): Token[] => {
  const { lexicon, marking } = scan;
  if (!isFigure(marking.text.charAt(at)) || !wordBegins(marking, at)) return [];
  const listed = listedAt(scan, at) ?? bareListedAt(scan, at);
  const found = listed ?? groupsAt(scan, at) ?? pairsAt(scan, at);
  if (found === undefined) return [];
  const { values, volts, end } = found;
  if (!wordEnds(marking, end)) return [];
  if (listed === undefined && !volts.every((each) => lexicon.usualVolts.has(each))) return [];
  return lexicon.values.forms.sections.flatMap((form): Token[] => {
    const farads = values.map((value) => times(value, listed?.factor ?? form.unit_f));
    const inSpan = farads.every((value) => value >= form.value_min && value <= form.value_max);
    if (!inSpan) return [];
    const named = farads.map((value, index) => `${say(value, 'F')} ${say(volts[index] ?? 0, 'V')}`);
    return [
      {
        at,
        end,
        meaning: {
          slot: 'value',
          content: { says: 'sections', values: farads, symbols: [], volts },
          bodies: form.bodyBits,
          origins: form.originBits,
          types: [],
          means: () => `${String(values.length)} sections: ${named.join(' and ')}`,
          source: form.source,
        },
        weight:
          (listed === undefined
            ? weightOf(weights.value, form.use)
            : weightOf(weights.valueWithUnit, listed.use)) +
          weights.voltageWithUnit.usual +
          weights.sections +
          averageWeight(scan, values),
        needs: [],
        assumed: [],
      },
    ];
  });
};
