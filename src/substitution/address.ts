import {
  DEFAULT_GUIDELINE,
  formatValue,
  resolveSituation,
  type Catalogue,
  type Habit,
  type PositionId,
  type Request,
  type TypeId,
} from '../engine/index.ts';
import { readCapacitance } from './bare-capacitance.ts';
import { conditionFields, readConditions } from './condition-fields.ts';
import { fieldWith, saidOr, type Field } from './field.ts';
import { guidelineKey, partKeys } from './keys.ts';
import { ratingLabel } from './phrases.ts';
import { printRated, readRated } from './rated-voltage.ts';
import {
  PART_LIMITS,
  printTolerance,
  readRange,
  readToleranceText,
  takerOf,
  type Rejected,
} from './typed-numbers.ts';

/** What an address asks for, and what in it could not be understood. */
export interface Asked {
  request: Request;
  rejected: Record<string, Rejected>;
}

/**
 * The request that an address makes of a type and a position. Unknown keys are passed over; what
 * cannot be understood leaves the default in place and is reported with its text.
 */
export const readAddress = (
  catalogue: Catalogue,
  type: TypeId,
  position: PositionId,
  query: URLSearchParams,
): Asked => {
  const { take, rejected } = takerOf(query);
  const capacitance = take(partKeys.capacitance, (text) =>
    readCapacitance(text, catalogue.types[type]),
  );
  const rated = take(partKeys.ratedVoltage, readRated);
  const tolerance = take(partKeys.tolerance, (text) =>
    readToleranceText(text, { of: 'capacitor', farad: capacitance?.typ }),
  );
  const age = take(partKeys.age, (text) => readRange(text, PART_LIMITS.age));
  const guideline = take(guidelineKey, (text) =>
    Object.hasOwn(catalogue.guidelines, text)
      ? { value: text }
      : { message: 'There is no such guideline.' },
  );
  const original = {
    ...{ type, capacitance, tolerance, age },
    ...{ ratedVoltage: rated?.volts, voltageKind: rated?.kind },
  };
  const usual = () => resolveSituation(catalogue, { original, position }).conditions;
  return {
    request: {
      original,
      position,
      conditions: readConditions(catalogue, position, usual, take),
      guideline: guideline ?? DEFAULT_GUIDELINE,
    },
    rejected,
  };
};

/** Every number that an assessment of this request rests on, as fields of a form. */
export const fieldsFor = (
  catalogue: Catalogue,
  { request, rejected }: Asked,
  habit?: Habit,
): Field[] => {
  const { original, conditions } = resolveSituation(catalogue, request);
  const field = fieldWith(rejected);
  return [
    field({
      key: partKeys.capacitance,
      group: 'part',
      label: 'Capacitance',
      text: formatValue(original.capacitance, 'F', habit),
      from: saidOr(request.original.capacitance),
      note: '',
    }),
    field({
      key: partKeys.tolerance,
      group: 'part',
      label: 'Tolerance',
      text: printTolerance(original.tolerance, habit),
      from: saidOr(request.original.tolerance),
      note: '',
    }),
    field({
      key: partKeys.ratedVoltage,
      group: 'part',
      label: ratingLabel(original.voltageKind),
      text: printRated(catalogue, original, habit),
      from: saidOr(request.original.ratedVoltage),
      note: '',
    }),
    field({
      key: partKeys.age,
      group: 'part',
      label: 'Age',
      text: formatValue(original.age, 's', habit),
      from: saidOr(request.original.age),
      note: 'What is usual for the type; some ceramics have lost capacitance since. Heat above about 125 °C, as in soldering, gives it back for a while',
    }),
    ...conditionFields(catalogue, conditions, habit).map(field),
  ];
};
