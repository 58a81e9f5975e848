import type { PropertyId } from '../../catalogue.ts';
import { powerShare } from '../../equations/resistor.ts';
import { wiperCurrent } from '../../equations/trimmer.ts';
import { conditionOf, rangeOf, type Outcome } from '../../findings/model.ts';
import type { Range } from '../../quantities/range.ts';
import type { KindCircumstances, KindModel, KindPart } from '../part.ts';

/** Marked value (SI) of a part of a kind that has one; nothing reckoned with it is a number else. */
export const valueOf = ({ value }: KindPart): number => value ?? NaN;

/** The value (SI) that a part may have by its mark and tolerance. */
export const spreadOf = ({ value = NaN, tolerance }: KindPart): Range => ({
  min: value * (1 - (tolerance?.minus ?? 0)),
  typ: value,
  max: value * (1 + (tolerance?.plus ?? 0)),
});

/** Ranges of properties, as far as all are known. */
export type Known<Names extends PropertyId> = Readonly<Record<Names, Range>>;

/**
 * A finding that rests on properties, each of which must be known.
 * @param names properties that it needs
 * @param reckon what it comes to, from their ranges
 * @param words the working of what it comes to
 */
export const fromProperties = <Names extends PropertyId>(
  names: readonly Names[],
  reckon: (known: Known<Names>, part: KindPart, circumstances: KindCircumstances) => Range,
  words: (
    known: Known<Names>,
    part: KindPart,
    circumstances: KindCircumstances,
    value: Range,
  ) => string,
): KindModel => {
  const lookUp = (part: KindPart, circumstances: KindCircumstances) =>
    names.map((name) => [name, rangeOf(circumstances, part, name)] as const);
  const asKnown = (found: ReturnType<typeof lookUp>): Known<Names> =>
    // Only asked once none is missing.
    Object.fromEntries(found) as Known<Names>;
  return {
    measure: (part, circumstances): Outcome => {
      const found = lookUp(part, circumstances);
      const missing = found.flatMap(([name, range]) => (range === undefined ? [name] : []));
      return missing.length > 0
        ? { status: 'unknown', missing }
        : {
            status: 'known',
            value: reckon(asKnown(found), part, circumstances),
            properties: [...names],
          };
    },
    working: (part, circumstances, value) =>
      words(asKnown(lookUp(part, circumstances)), part, circumstances, value),
  };
};

/** Steady and AC voltage across the part together, as the heat in it goes (V). */
export const rmsVoltage = (circumstances: KindCircumstances): number =>
  Math.hypot(conditionOf(circumstances, 'vdc').max, circumstances.conditions['vac']?.max ?? 0);

/** From the coldest to the warmest (K). */
export const warmingSpan = (circumstances: KindCircumstances): number =>
  conditionOf(circumstances, 't-max').max - conditionOf(circumstances, 't-min').min;

/** What the element and, where its sheet says so, its contact carry when warm (A). */
export const carried = (
  part: KindPart,
  total: number,
  circumstances: KindCircumstances,
): number => {
  const knee = rangeOf(circumstances, part, 'full-power-to')?.typ ?? NaN;
  const end = rangeOf(circumstances, part, 'no-power-from')?.typ ?? NaN;
  const left = powerShare(knee, end, conditionOf(circumstances, 't-max').max) ?? 0;
  const contact = rangeOf(circumstances, part, 'wiper-limit')?.typ ?? Infinity;
  return Math.min(wiperCurrent((part.rating ?? 0) * left, total), contact);
};
