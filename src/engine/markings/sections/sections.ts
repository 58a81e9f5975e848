import { listsAt, plainNumberAt, type NumberList } from './number-lists.ts';
import { bareRangeAt, rangeToken } from './ranges.ts';
import { say } from '../meanings/say.ts';
import type { Scan } from '../lexicon/scan.ts';
import { skipBlanks } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { unitAt, type BelievedUnit } from './unit-behind.ts';
import { figuresWeight, times } from '../values/value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

/**
 * How well the values of a list are ones that were made, on average. What a stroke parts may be
 * something else than sections, so its values are not believed for their unit alone.
 */
const listWeight = (scan: Scan, list: NumberList, withUnit: boolean): number => {
  const written = withUnit && list.sign !== 'stroke' ? 'unit' : 'bare';
  const sum = list.numbers.reduce(
    (total, { figures }) => total + (figuresWeight(scan, figures, written, []) ?? 0),
    0,
  );
  return sum / list.numbers.length;
};

const listToken = (
  at: number,
  list: NumberList,
  unit: BelievedUnit,
  voltsBeside = false,
): Token => {
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

/** Sections without a unit that strokes part, which are not all alike. */
const LEAST_UNLIKE = 3;

/**
 * Whether the volts of a can stand behind a gap, or behind a stroke where dashes join the sections: they are
 * no value beside those before them.
 */
const areVoltsOfCanBehind = (scan: Scan, from: number, end: number): boolean => {
  const { text } = scan.marking;
  const isParted = text.charAt(end) === '/' && text.slice(from, end).includes('-');
  const at = isParted ? end + 1 : skipBlanks(scan.marking, end);
  const value = at > end ? (plainNumberAt(scan, at)?.value ?? 0) : 0;
  return value >= scan.lexicon.trade.lowestOfCan && scan.lexicon.usualVolts.has(value);
};

/** Whether microfarads are fewer than one, as those of paper in one can are. */
const isFraction = (value: number): boolean => value < 1;

/**
 * Whether a list may do without a unit: with a plus if all are whole, with strokes if all are alike, as
 * `32-32`, or three or more, or if the volts of a can follow, as in `50/30 350` and `8-16/500`.
 */
const mayBeBare = (scan: Scan, at: number, { sign, numbers, end }: NumberList): boolean => {
  if (sign === 'x') return true;
  if (numbers.every(({ value }) => value === numbers[0]?.value)) return true;
  if (sign === '+')
    return [Number.isInteger, isFraction].some((is) => numbers.every(({ value }) => is(value)));
  const isCan = numbers.length >= LEAST_UNLIKE || areVoltsOfCanBehind(scan, at, end);
  return isCan && numbers.every(({ padded }) => padded !== true);
};

/** Lists without a unit, in the form that the table has for them. */
const bareListsAt = (scan: Scan, at: number, list: NumberList): Token[] =>
  scan.lexicon.values.forms.sections
    .filter(() => mayBeBare(scan, at, list))
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

/** Picofarads with a stroke between are the ends of a trimmer's range. */
const SMALL_UNIT = 1e-9;

/** Several sections in one can, such as `16+16+8 µF`, `2x50 µF` or `32+32`; of picofarads, a range. */
export const sectionsAt = (scan: Scan, at: number): Token[] =>
  listsAt(scan, at).flatMap((list) => {
    const units = unitAt(scan, skipBlanks(scan.marking, list.end));
    if (units.length === 0) return [...bareListsAt(scan, at, list), ...bareRangeAt(scan, at, list)];
    return units.flatMap((found): Token[] => {
      const unit: BelievedUnit = {
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
