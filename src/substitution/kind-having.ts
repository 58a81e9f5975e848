import {
  formatValue,
  type Catalogue,
  type Habit,
  type KindAssessment,
  type KindCandidate,
} from '../engine/index.ts';
import type { KindRow } from '../schemas/kinds.ts';
import { fieldsOf, havingOf, type Having, type HavingField } from './having-fields.ts';
import { kindHavingKeys } from './keys.ts';
import { ratingMeasure, valueMeasure } from './kind-address.ts';
import { ratingPhrase } from './phrases.ts';
import {
  printTolerance,
  readRange,
  readToleranceText,
  takerOf,
  withoutFraction,
  type Measure,
} from './typed-numbers.ts';

/** Whether parts of a kind have a number of that name at all. */
const has = ({ unit }: Measure): boolean => (unit as string) !== '';

/** The part of a kind that the visitor has, as an address carries it. */
export const readKindHaving = (
  catalogue: Catalogue,
  kind: KindRow,
  query: URLSearchParams,
): Having<KindCandidate> => {
  const taker = takerOf(query);
  const { take } = taker;
  const measured = (key: string, measure: Measure): number | undefined =>
    has(measure) ? take(key, (text) => readRange(withoutFraction(text), measure))?.typ : undefined;
  const numbers = {
    value: measured(kindHavingKeys.value, valueMeasure(kind)),
    tolerance: take(kindHavingKeys.tolerance, (text) =>
      readToleranceText(text, { of: 'resistor' }),
    ),
    rating: measured(kindHavingKeys.rating, ratingMeasure(kind)),
  };
  const said = (['value', 'tolerance', 'rating'] as const).filter(
    (name) => numbers[name] !== undefined,
  );
  const keys = new Set(said.map((name) => kindHavingKeys[name]));
  return havingOf(taker, catalogue.kindTypes, numbers, keys);
};

/** What the visitor has, with what each of its numbers is taken as; the type comes first. */
export const kindHavingFields = (
  kind: KindRow,
  having: Having<KindCandidate>,
  assessment: KindAssessment | undefined,
  habit?: Habit,
): [HavingField, ...HavingField[]] => {
  const { value, unit, tolerance, rating, ratingUnit } = assessment?.candidate ?? {};
  return fieldsOf(
    having,
    [
      has(valueMeasure(kind)) && {
        key: kindHavingKeys.value,
        label: kind.value_name,
        taken: value === undefined || unit === undefined ? '' : formatValue(value, unit, habit),
      },
      {
        key: kindHavingKeys.tolerance,
        label: 'Tolerance',
        taken: tolerance === undefined ? '' : printTolerance(tolerance, habit),
      },
      has(ratingMeasure(kind)) && {
        key: kindHavingKeys.rating,
        label: kind.rating_name,
        taken:
          rating === undefined || ratingUnit === undefined
            ? ''
            : ratingPhrase(rating, ratingUnit, habit),
      },
    ].filter((one) => one !== false),
  );
};
