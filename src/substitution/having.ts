import {
  formatValue,
  type Assessment,
  type Candidate,
  type Catalogue,
  type Habit,
} from '../engine/index.ts';
import { readCapacitance } from './bare-capacitance.ts';
import { fieldsOf, havingOf, type Having, type HavingField } from './having-fields.ts';
import { havingKeys } from './keys.ts';
import { ratingLabel } from './phrases.ts';
import {
  PART_LIMITS,
  printTolerance,
  readRange,
  readToleranceText,
  takerOf,
} from './typed-numbers.ts';

/** The capacitor that the visitor has, as an address carries it. */
export const readHaving = (catalogue: Catalogue, query: URLSearchParams): Having<Candidate> => {
  const taker = takerOf(query);
  const { take } = taker;
  const type = catalogue.types[query.get(havingKeys.type) ?? ''];
  const capacitance = take(havingKeys.capacitance, (text) => readCapacitance(text, type))?.typ;
  const numbers = {
    capacitance,
    tolerance: take(havingKeys.tolerance, (text) =>
      readToleranceText(text, { of: 'capacitor', farad: capacitance }),
    ),
    ratedVoltage: take(havingKeys.ratedVoltage, (text) => readRange(text, PART_LIMITS.ratedVoltage))
      ?.typ,
  };
  const said = (['capacitance', 'tolerance', 'ratedVoltage'] as const).filter(
    (name) => numbers[name] !== undefined,
  );
  return havingOf(taker, catalogue.types, numbers, new Set(said.map((name) => havingKeys[name])));
};

/** What the visitor has, with what each of its numbers is taken as; the type comes first. */
export const havingFields = (
  having: Having<Candidate>,
  assessment: Assessment | undefined,
  habit?: Habit,
): [HavingField, ...HavingField[]] => {
  const part = assessment?.candidate;
  return fieldsOf(having, [
    {
      key: havingKeys.capacitance,
      label: 'Capacitance',
      taken: part === undefined ? '' : formatValue(part.capacitance, 'F', habit),
    },
    {
      key: havingKeys.tolerance,
      label: 'Tolerance',
      taken: part === undefined ? '' : printTolerance(part.tolerance, habit),
    },
    {
      key: havingKeys.ratedVoltage,
      label: ratingLabel(part?.voltageKind),
      taken: part === undefined ? '' : formatValue(part.ratedVoltage, 'V', habit),
    },
  ]);
};
