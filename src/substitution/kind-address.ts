import {
  formatValue,
  resolveKindSituation,
  type Catalogue,
  type Habit,
  type KindRequest,
  type PositionId,
  type TypeId,
  type Unit,
} from '../engine/index.ts';
import type { KindRow } from '../schemas/kinds.ts';
import { conditionFields, readConditions } from './condition-fields.ts';
import { fieldWith, saidOr, type Field } from './field.ts';
import { ratingPhrase } from './phrases.ts';
import { kindPartKeys } from './keys.ts';
import {
  printTolerance,
  readRange,
  readToleranceText,
  takerOf,
  withoutFraction,
  type Measure,
  type Rejected,
} from './typed-numbers.ts';

/** What an address asks for about such a part, and what in it could not be understood. */
export interface KindAsked {
  request: KindRequest;
  rejected: Record<string, Rejected>;
}

/** How the value of a kind is read. */
export const valueMeasure = ({ unit, lowest, highest }: KindRow): Measure => ({
  unit: unit as Unit,
  lowest: lowest ?? 0,
  highest: highest ?? Infinity,
});

/** How the rating of a kind is read. */
export const ratingMeasure = ({
  rating_unit,
  rating_lowest,
  rating_highest,
}: KindRow): Measure => ({
  unit: rating_unit as Unit,
  lowest: rating_lowest ?? 0,
  highest: rating_highest ?? Infinity,
});

/**
 * The request that an address makes of a type of some kind and a position. Unknown keys are passed
 * over; what cannot be understood leaves the default in place and is reported with its text.
 */
export const readKindAddress = (
  catalogue: Catalogue,
  type: TypeId,
  position: PositionId,
  query: URLSearchParams,
): KindAsked => {
  const { take, rejected } = takerOf(query);
  const kind = catalogue.kinds[catalogue.kindTypes[type]?.kind ?? ''];
  const measured = (key: string, measure: Measure | undefined) =>
    measure === undefined || (measure.unit as string) === ''
      ? undefined
      : take(key, (text) => readRange(withoutFraction(text), measure));
  const original = {
    type,
    value: measured(kindPartKeys.value, kind && valueMeasure(kind)),
    tolerance: take(kindPartKeys.tolerance, (text) => readToleranceText(text, { of: 'resistor' })),
    rating: measured(kindPartKeys.rating, kind && ratingMeasure(kind)),
  };
  const usual = () => resolveKindSituation(catalogue, { original, position }).conditions;
  return {
    request: {
      original,
      position,
      conditions: readConditions(catalogue, position, usual, take),
    },
    rejected,
  };
};

/** Every number that an assessment of such a part rests on, as fields of a form. */
export const kindFieldsFor = (
  catalogue: Catalogue,
  { request, rejected }: KindAsked,
  habit?: Habit,
): Field[] => {
  const { original, conditions } = resolveKindSituation(catalogue, request);
  const kind = catalogue.kinds[catalogue.kindTypes[original.type]?.kind ?? ''];
  const { value, unit, tolerance, rating, ratingUnit } = original;
  const ofPart: (Omit<Field, 'message' | 'group' | 'note'> | false)[] = [
    value !== undefined &&
      unit !== undefined && {
        key: kindPartKeys.value,
        label: kind?.value_name ?? 'Value',
        text: formatValue(value, unit, habit),
        from: saidOr(request.original.value),
      },
    tolerance !== undefined && {
      key: kindPartKeys.tolerance,
      label: 'Tolerance',
      text: printTolerance(tolerance, habit),
      from: saidOr(request.original.tolerance),
    },
    rating !== undefined &&
      ratingUnit !== undefined && {
        key: kindPartKeys.rating,
        label: kind?.rating_name ?? 'Rating',
        text: ratingPhrase(rating, ratingUnit, habit),
        from: saidOr(request.original.rating),
      },
  ];
  return [
    ...ofPart
      .filter((one) => one !== false)
      .map((one): Omit<Field, 'message'> => ({ ...one, group: 'part', note: '' })),
    ...conditionFields(catalogue, conditions, habit),
  ].map(fieldWith(rejected));
};
