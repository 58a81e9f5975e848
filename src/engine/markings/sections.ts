import type { TypeId } from '../catalogue.ts';
import type { Scan } from './scan.ts';
import { unitsFoundAt, writtenAt } from './scan.ts';
import { say } from './say.ts';
import { isFigure, isLetter, skipBlanks } from './text.ts';
import type { Token, Use } from './token.ts';
import { figuresWeight, times } from './value-token.ts';
import { weightOf, weights } from './weights.ts';

/** A section of a list: its number, and the sign before it, where there is one. */
interface Section {
  value: number;
  figures: string;
  symbol?: string | undefined;
  /** Whether a nought stands before it, as in dates. */
  padded?: boolean;
  end: number;
}

/** The numbers of a list of sections, with what stands between them. */
interface List {
  numbers: Omit<Section, 'end'>[];
  /** `+`, `x`, or a sign that may as well mean something else. */
  sign: '+' | 'x' | 'stroke';
  end: number;
}

/** Sections of one can. */
const MOST_SECTIONS = 6;

const PLUS = '+&';
const STROKES = '/-–';
const TIMES = 'xX×';

/** A unit behind sections, in full or as a letter, and where it ends. */
interface FoundUnit {
  factor: number;
  name: string;
  use: Use;
  bodies: number;
  origins: number;
  source: string;
  end: number;
}

/** A unit in full; the longest where several begin alike. */
const fullUnitAt = (scan: Scan, at: number): FoundUnit[] => {
  const units = unitsFoundAt(scan, at).flatMap(({ item, end, sameCase, assumed }) =>
    item.row.quantity === 'capacitance' &&
    assumed.length === 0 &&
    (sameCase || !item.row.exact_case) &&
    !isLetter(scan.marking.text.charAt(end))
      ? [
          {
            ...item.row,
            name: ` (${item.row.name})`,
            bodies: item.bodies,
            origins: item.origins,
            end,
          },
        ]
      : [],
  );
  const longest = Math.max(...units.map(({ end }) => end));
  return units.filter(({ end }) => end === longest);
};

/** A letter for the unit, as in `50µ+50µ`. */
const letterUnitAt = ({ lexicon, marking: { text } }: Scan, at: number): FoundUnit[] => {
  if (isLetter(text.charAt(at + 1)) || isFigure(text.charAt(at + 1))) return [];
  const rows = lexicon.values.points.get(text.charAt(at)) ?? [];
  // Thousands behind several numbers are the ohms of potentiometers on one shaft.
  const isOfOhms = rows.some(
    ({ quantity, factor }) => quantity === 'resistance' && factor === 1000,
  );
  if (isOfOhms) return [];
  return rows
    .filter(
      ({ quantity, use, places }) =>
        quantity === 'capacitance' && use === 'usual' && places.includes('end'),
    )
    .map((row) => ({
      ...row,
      name: '',
      bodies: row.bodyBits,
      origins: row.originBits,
      end: at + 1,
    }));
};

const unitAt = (scan: Scan, at: number): FoundUnit[] => {
  const full = fullUnitAt(scan, at);
  return full.length > 0 ? full : letterUnitAt(scan, at);
};

/** Index after a unit of capacitance, or the same index where there is none. */
const behindUnit = (scan: Scan, at: number): number => {
  const start = skipBlanks(scan.marking, at);
  return unitAt(scan, start)[0]?.end ?? at;
};

const plainNumberAt = (scan: Scan, at: number) =>
  writtenAt(scan, at).findLast(
    ({ grouped, assumed, figures }) => !grouped && assumed.length === 0 && figures !== '',
  );

/** The drawn sign of a section at an index, such as `▲`; its name in letters is a word by itself. */
const symbolAt = ({ lexicon, marking }: Scan, at: number): string | undefined => {
  const character = marking.text.charAt(at);
  // No letter or figure is a drawn sign.
  if (character <= '\u007f') return undefined;
  return lexicon.tables.sectionSymbols.find(({ sign }) => sign === character)?.symbol;
};

/** A number, with the sign of its section before it. */
const sectionAt = (scan: Scan, at: number): Section | undefined => {
  const symbol = symbolAt(scan, at);
  const from = symbol === undefined ? at : skipBlanks(scan.marking, at + 1);
  const number = plainNumberAt(scan, from);
  return number && { ...number, symbol };
};

/** `2x50`: as many sections as the first number says. */
const timesAt = (scan: Scan, at: number): List | undefined => {
  const { text } = scan.marking;
  const count = Number(text.charAt(at));
  const sign = skipBlanks(scan.marking, at + 1);
  if (!(count >= 2 && count <= MOST_SECTIONS) || !TIMES.includes(text.charAt(sign) || ' '))
    return undefined;
  const number = plainNumberAt(scan, skipBlanks(scan.marking, sign + 1));
  if (number === undefined) return undefined;
  const { value, figures, end } = number;
  return { numbers: Array.from({ length: count }, () => ({ value, figures })), sign: 'x', end };
};

interface Joint {
  sign: List['sign'];
  /** The stroke itself. */
  stroke?: string | undefined;
  end: number;
}

/** The sign that joins sections behind an index, and where it ends. */
const signBehind = (scan: Scan, at: number): Joint | undefined => {
  const { text } = scan.marking;
  const touching = text.charAt(at) || ' ';
  if (STROKES.includes(touching)) return { sign: 'stroke', stroke: touching, end: at + 1 };
  const spaced = skipBlanks(scan.marking, at);
  return PLUS.includes(text.charAt(spaced) || ' ')
    ? { sign: '+', end: skipBlanks(scan.marking, spaced + 1) }
    : undefined;
};

/**
 * `16+16+8`, `40/40`, `16 µF + 16 µF`, `▲40-■20`; where strokes join them, the last may be the
 * voltage, as in `8-8-450`, so that they stand without it as well.
 */
const joinedAt = (scan: Scan, at: number): List[] => {
  const first = sectionAt(scan, at);
  if (first === undefined) return [];
  const numbers = [first];
  let sign: List['sign'] = '+';
  let stroke: string | undefined;
  for (;;) {
    const joint = signBehind(scan, behindUnit(scan, numbers.at(-1)?.end ?? at));
    const next = joint === undefined ? undefined : sectionAt(scan, joint.end);
    if (joint === undefined || next === undefined || numbers.length >= MOST_SECTIONS) break;
    // Behind values with a plus, or with another stroke, a stroke parts the voltage from them.
    if (numbers.length > 1 && (joint.sign !== sign || joint.stroke !== stroke)) break;
    ({ sign, stroke } = joint);
    numbers.push(next);
  }
  const list = (some: Section[]): List => ({ numbers: some, sign, end: some.at(-1)?.end ?? at });
  const shorter = sign === 'stroke' && numbers.length > 2 ? [list(numbers.slice(0, -1))] : [];
  return numbers.length > 1 ? [list(numbers), ...shorter] : [];
};

/**
 * How well the values of a list are ones that were made, on average. What a stroke parts may be
 * something else than sections, so its values are not believed for their unit alone.
 */
const listWeight = (scan: Scan, list: List, withUnit: boolean): number => {
  const written = withUnit && list.sign !== 'stroke' ? 'unit' : 'bare';
  const sum = list.numbers.reduce(
    (total, { figures }) => total + (figuresWeight(scan, figures, written, []) ?? 0),
    0,
  );
  return sum / list.numbers.length;
};

/** A unit of sections, with how readily the list with it is believed. */
interface Unit extends Omit<FoundUnit, 'use'> {
  weight: number;
}

const listToken = (at: number, list: List, unit: Unit, voltsBeside = false): Token => {
  const values = list.numbers.map(({ value }) => times(value, unit.factor));
  const symbols = list.numbers.map(({ symbol }) => symbol);
  const named = values.map((value, index) => {
    const symbol = symbols[index];
    return symbol === undefined ? say(value, 'F') : `${say(value, 'F')} (${symbol})`;
  });
  return {
    at,
    end: unit.end,
    meaning: {
      slot: 'value',
      content: { says: 'sections', values, symbols },
      bodies: unit.bodies,
      origins: unit.origins,
      types: [],
      means: () => `${values.length} sections: ${named.join(' and ')}${unit.name}`,
      source: unit.source,
      voltsBeside,
    },
    weight: unit.weight,
    needs: [],
    assumed: [],
  };
};

/** Picofarads with a stroke between are the ends of a trimmer's range. */
const SMALL_UNIT = 1e-9;

/** Types of parts that bear a range. */
const typesOfRanges = ({ lexicon }: Scan): TypeId[] =>
  lexicon.values.forms.range.flatMap(({ types }) => types);

/** Bodies of parts that bear a range, with its unit or without. */
const bodiesOfRanges = ({ lexicon }: Scan): number =>
  lexicon.values.forms.range.reduce((bits, { bodyBits }) => bits | bodyBits, 0);

const rangeToken = (scan: Scan, at: number, list: List, unit: Unit): Token[] => {
  const [low, high] = list.numbers.map(({ value }) => times(value, unit.factor));
  if (list.sign !== 'stroke' || list.numbers.length !== 2) return [];
  if (low === undefined || high === undefined || high <= low) return [];
  return [
    {
      at,
      end: unit.end,
      meaning: {
        slot: 'value',
        content: { says: 'capacitance', value: high, from: low, figures: '', withUnit: true },
        bodies: bodiesOfRanges(scan),
        origins: unit.origins,
        types: typesOfRanges(scan),
        means: () => `adjustable from ${say(low, 'F')} to ${say(high, 'F')}`,
        source: unit.source,
      },
      weight: unit.weight,
      needs: [],
      assumed: [],
    },
  ];
};

/** How far the ends of what one part may have are apart at least and at most, as a ratio. */
const SPAN = { least: 1.1 - 1e-9, most: 1.3 + 1e-9 };

const DASHES = '-–';

/**
 * `88-108 MFD`: between which values a part is, in the forms that the table has for its unit. The lower
 * end counts as its value, and the upper as its tolerance.
 */
export const spansAt = (scan: Scan, at: number): Token[] => {
  const { marking } = scan;
  const low = plainNumberAt(scan, at);
  const dash = skipBlanks(marking, behindUnit(scan, low?.end ?? at));
  if (low === undefined || !DASHES.includes(marking.text.charAt(dash) || ' ')) return [];
  const high = plainNumberAt(scan, skipBlanks(marking, dash + 1));
  const ratio = (high?.value ?? 0) / low.value;
  if (high === undefined || !(ratio >= SPAN.least && ratio <= SPAN.most)) return [];
  return unitAt(scan, skipBlanks(marking, high.end)).flatMap((unit) =>
    scan.lexicon.values.forms.span.flatMap((form): Token[] => {
      const [value, most] = [times(low.value, unit.factor), times(high.value, unit.factor)];
      if (form.unit_f !== unit.factor || value < form.value_min || most > form.value_max) return [];
      return [
        {
          at,
          end: unit.end,
          meaning: {
            slot: 'value',
            content: { says: 'capacitance', value, span: true, figures: '', withUnit: true },
            bodies: unit.bodies,
            origins: unit.origins,
            types: form.types,
            means: () => `from ${say(value, 'F')} to ${say(most, 'F')}${unit.name}`,
            implies: { minus: 0, plus: ratio - 1, unit: 'fraction' },
            source: form.source,
          },
          weight: weightOf(weights.valueWithUnit, unit.use) + weights.span,
          needs: [],
          assumed: [],
        },
      ];
    }),
  );
};

/** Sections without a unit that strokes part, which are not all alike. */
const LEAST_UNLIKE = 3;

/** Volts of a can, which are no value beside those before them. */
const LEAST_OF_CAN = 100;

/** Whether the volts of a can stand behind a gap. */
const areVoltsOfCanBehind = (scan: Scan, end: number): boolean => {
  const at = skipBlanks(scan.marking, end);
  const value = at > end ? (plainNumberAt(scan, at)?.value ?? 0) : 0;
  return value >= LEAST_OF_CAN && scan.lexicon.usualVolts.has(value);
};

/**
 * Whether a list may do without a unit: with a plus if all are whole, with strokes if all are alike, as
 * `32-32`, or three or more, or if the volts of a can follow, as in `50/30 350`.
 */
const mayBeBare = (scan: Scan, { sign, numbers, end }: List): boolean => {
  if (sign === 'x') return true;
  if (numbers.every(({ value }) => value === numbers[0]?.value)) return true;
  if (sign === '+') return numbers.every(({ value }) => Number.isInteger(value));
  const isCan = numbers.length >= LEAST_UNLIKE || areVoltsOfCanBehind(scan, end);
  return isCan && numbers.every(({ padded }) => padded !== true);
};

/** Lists without a unit, in the form that the table has for them. */
const bareListsAt = (scan: Scan, at: number, list: List): Token[] =>
  scan.lexicon.values.forms.sections
    .filter(() => mayBeBare(scan, list))
    .filter((form) =>
      list.numbers.every(({ value }) => {
        const farads = value * form.unit_f;
        return farads >= form.value_min * (1 - 1e-9) && farads <= form.value_max * (1 + 1e-9);
      }),
    )
    .map((form) => {
      // What a stroke parts is mostly something else, unless volts of its own stand beside it.
      const isStroke = list.sign === 'stroke';
      const unit = {
        factor: form.unit_f,
        name: '',
        end: list.end,
        weight:
          weightOf(weights.value, isStroke ? 'rare' : form.use) + listWeight(scan, list, false),
        bodies: form.bodyBits,
        origins: form.originBits,
        source: form.source,
      };
      return listToken(at, list, unit, isStroke);
    });

/** The range of a trimmer is as wide as this at least. */
const LEAST_RANGE = 2.5;

/** A range without its unit, such as `3-30`: the picofarads of a trimmer. */
const bareRangeAt = (scan: Scan, at: number, list: List): Token[] => {
  const [low = 0, high = 0] = list.numbers.map(({ value }) => times(value, 1e-12));
  if (scan.marking.text.slice(at, list.end).includes('/')) return [];
  if (list.numbers.some(({ padded }) => padded === true)) return [];
  if (high < low * LEAST_RANGE) return [];
  return scan.lexicon.values.forms.range
    .filter((form) => low >= form.value_min && high <= form.value_max)
    .flatMap((form) =>
      rangeToken(scan, at, list, {
        factor: form.unit_f,
        name: '',
        end: list.end,
        weight: weightOf(weights.value, form.use) + weights.range,
        bodies: form.bodyBits,
        origins: form.originBits,
        source: form.source,
      }).map((token) => ({ ...token, needs: ['whole-word'] as const })),
    );
};

/** Several sections in one can, such as `16+16+8 µF`, `2x50 µF` or `32+32`. */
export const sectionsAt = (scan: Scan, at: number): Token[] => {
  const many = timesAt(scan, at);
  const lists = [...(many === undefined ? [] : [many]), ...joinedAt(scan, at)];
  return lists.flatMap((list) => {
    const units = unitAt(scan, skipBlanks(scan.marking, list.end));
    if (units.length === 0) return [...bareListsAt(scan, at, list), ...bareRangeAt(scan, at, list)];
    return units.flatMap((found): Token[] => {
      const unit: Unit = {
        ...found,
        weight:
          weightOf(weights.valueWithUnit, found.use) +
          weights.sections +
          (found.factor < SMALL_UNIT ? weights.range : listWeight(scan, list, true)),
      };
      return found.factor < SMALL_UNIT && list.sign === 'stroke'
        ? rangeToken(scan, at, list, unit)
        : [listToken(at, list, unit)];
    });
  });
};
