import type { TypeId } from '../../catalogue.ts';
import { plainNumberAt, type NumberList } from './number-lists.ts';
import { say } from '../meanings/say.ts';
import type { Scan } from '../lexicon/scan.ts';
import { skipBlanks } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { behindUnit, unitAt, type BelievedUnit, type UnitBehind } from './unit-behind.ts';
import type { ValueForm } from '../lexicon/value-rows.ts';
import { times } from '../values/value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import { FLOAT_ERROR } from '../../quantities/within.ts';

/** Types of parts that bear a range. */
const typesOfRanges = ({ lexicon }: Scan): TypeId[] =>
  lexicon.values.forms.range.flatMap(({ types }) => types);

/** Bodies of parts that bear a range, with its unit or without. */
const bodiesOfRanges = ({ lexicon }: Scan): number =>
  lexicon.values.forms.range.reduce((bits, { bodyBits }) => bits | bodyBits, 0);

/** Whether two values, F, may be the ends of what is written in a form. */
const holds = (form: ValueForm, low: number, high: number): boolean =>
  low >= form.value_min &&
  high <= form.value_max &&
  high >= low * (form.ratio_min ?? 1) * (1 - FLOAT_ERROR) &&
  high <= low * (form.ratio_max ?? Infinity) * (1 + FLOAT_ERROR);

/** A range that a trimmer is set in, from the lower of two numbers to the higher. */
export const rangeToken = (
  scan: Scan,
  at: number,
  list: NumberList,
  unit: BelievedUnit,
): Token[] => {
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

/** A third number behind a second stroke, as that of a climatic category, which has three. */
const FURTHER = /^\/\d/u;

/** A range without its unit, such as `3-30`: the picofarads of a trimmer. */
export const bareRangeAt = (scan: Scan, at: number, list: NumberList): Token[] => {
  // Between strokes they are a value and its volts, save where a trimmer is named before: `КПК-М 4/15`.
  const { text } = scan.marking;
  const hasStroke = text.slice(at, list.end).includes('/');
  if (hasStroke && FURTHER.test(text.slice(list.end))) return [];
  if (list.numbers.some(({ padded }) => padded === true)) return [];
  return scan.lexicon.values.forms.range
    .filter((form) => {
      const [low = 0, high = 0] = list.numbers.map(({ value }) => times(value, form.unit_f));
      return holds(form, low, high);
    })
    .flatMap((form) =>
      rangeToken(scan, at, list, {
        factor: form.unit_f,
        name: '',
        end: list.end,
        weight: weightOf(weights.value, form.use) + weights.range,
        bodies: form.bodyBits,
        origins: form.originBits,
        source: form.source,
      }).map((token) => ({
        ...token,
        needs: hasStroke ? (['whole-word', 'type-before'] as const) : (['whole-word'] as const),
      })),
    );
};

const DASHES = '-–';

const AC_BEHIND = /\s+\d{3}\s?V?\s?(?:~|AC)/iuy;

/** The unit behind a span, or the one of its form where AC volts follow at once, as in `88-108 125VAC`. */
const unitOfSpan = (scan: Scan, end: number): UnitBehind[] => {
  const written = unitAt(scan, skipBlanks(scan.marking, end));
  AC_BEHIND.lastIndex = end;
  if (written.length > 0 || !AC_BEHIND.test(scan.marking.text)) return written;
  return scan.lexicon.values.forms.span.map((form) => ({
    factor: form.unit_f,
    name: '',
    use: 'other',
    bodies: form.bodyBits,
    origins: form.originBits,
    source: form.source,
    end,
  }));
};

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
  if (high === undefined) return [];
  return unitOfSpan(scan, high.end).flatMap((unit) =>
    scan.lexicon.values.forms.span.flatMap((form): Token[] => {
      const [value, most] = [times(low.value, unit.factor), times(high.value, unit.factor)];
      if (form.unit_f !== unit.factor || !holds(form, value, most)) return [];
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
            implies: { minus: 0, plus: high.value / low.value - 1, unit: 'fraction' },
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
