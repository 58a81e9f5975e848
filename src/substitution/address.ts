import {
  DEFAULT_GUIDELINE,
  formatQuantity,
  formatValue,
  resolveSituation,
  type Catalogue,
  type Habit,
  type PositionId,
  type Range,
  type Request,
  type TypeId,
  type Unit,
} from '../engine/index.ts';
import type { ConditionDefinitionRow } from '../schemas/positions.ts';
import {
  PART_LIMITS,
  printTolerance,
  readRange,
  readToleranceText,
  type Measure,
  type Read,
  type Rejected,
} from './typed-numbers.ts';

/** Keys of the address that speak of the old part; all others are condition ids. */
export const partKeys = {
  capacitance: 'c',
  tolerance: 'tol',
  ratedVoltage: 'v',
  age: 'age',
} as const;
export const guidelineKey = 'g';

/** What an address asks for, and what in it could not be understood. */
export interface Asked {
  request: Request;
  rejected: Record<string, Rejected>;
}

/** SI unit of a condition, as the engine names it. */
export const conditionUnit = (catalogue: Catalogue, id: string): Unit => {
  const unit = catalogue.conditionDefinitions[id]?.unit ?? '';
  return (catalogue.units[unit]?.si ?? 'ratio') as Unit;
};

const conditionMeasure = (catalogue: Catalogue, id: string): Measure => {
  const row = catalogue.conditionDefinitions[id];
  const factor = catalogue.units[row?.unit ?? '']?.factor ?? 1;
  return {
    unit: conditionUnit(catalogue, id),
    bare: row?.unit,
    lowest: (row?.lowest ?? 0) * factor,
    highest: (row?.highest ?? Infinity) * factor,
  };
};

/** Ids of the conditions that a position lets the visitor change. */
export const conditionIds = (catalogue: Catalogue, position: PositionId): string[] =>
  catalogue.conditions.filter((row) => row.position === position).map((row) => row.condition);

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
  const rejected: Record<string, Rejected> = {};
  const take = <T>(key: string, read: (text: string) => Read<T>): T | undefined => {
    const text = query.get(key)?.trim() ?? '';
    if (text === '') return undefined;
    const result = read(text);
    if ('value' in result) return result.value;
    rejected[key] = { text, message: result.message };
    return undefined;
  };
  const capacitance = take(partKeys.capacitance, (text) =>
    readRange(text, PART_LIMITS.capacitance),
  );
  const ratedVoltage = take(partKeys.ratedVoltage, (text) =>
    readRange(text, PART_LIMITS.ratedVoltage),
  );
  const tolerance = take(partKeys.tolerance, readToleranceText);
  const age = take(partKeys.age, (text) => readRange(text, PART_LIMITS.age));
  const guideline = take(guidelineKey, (text) =>
    Object.hasOwn(catalogue.guidelines, text)
      ? { value: text }
      : { message: 'There is no such guideline.' },
  );
  const conditions: Record<string, Range> = {};
  for (const id of conditionIds(catalogue, position)) {
    const range = take(id, (text) => readRange(text, conditionMeasure(catalogue, id)));
    if (range !== undefined) conditions[id] = range;
  }
  return {
    request: {
      original: { type, capacitance, tolerance, ratedVoltage, age },
      position,
      conditions,
      guideline: guideline ?? DEFAULT_GUIDELINE,
    },
    rejected,
  };
};

/** What a number is about: the old part itself, or what conditions are grouped by. */
export type FieldGroup = 'part' | ConditionDefinitionRow['group'];

/** One number that the visitor may change. */
export interface Field {
  key: string;
  group: FieldGroup;
  label: string;
  unit: Unit;
  /** What stands in the field: the visitor's own text, or the default written out. */
  text: string;
  /** Whether the text is the visitor's, a default, or follows from the old part. */
  from: 'given' | 'default' | 'derived';
  message?: string;
  note: string;
}

/** A condition written out; no time at all in the unit that people give it in, as `0 years`. */
const printCondition = (catalogue: Catalogue, id: string, range: Range, habit?: Habit): string => {
  const unit = conditionUnit(catalogue, id);
  return unit === 's' && range.max === 0
    ? `0\u00A0${catalogue.conditionDefinitions[id]?.unit ?? unit}`
    : formatQuantity(range, unit, habit);
};

/** Every number that an assessment of this request rests on, as fields of a form. */
export const fieldsFor = (
  catalogue: Catalogue,
  { request, rejected }: Asked,
  habit?: Habit,
): Field[] => {
  const { original, conditions } = resolveSituation(catalogue, request);
  const field = (own: Omit<Field, 'message'>): Field => {
    const fault = rejected[own.key];
    return fault === undefined
      ? own
      : {
          ...own,
          text: fault.text,
          message: `${fault.message} Until then ${own.text} counts.`,
          from: 'given',
        };
  };
  const given = (value: unknown): Field['from'] => (value === undefined ? 'default' : 'given');
  return [
    field({
      key: partKeys.capacitance,
      group: 'part',
      label: 'Capacitance',
      unit: 'F',
      text: formatValue(original.capacitance, 'F', habit),
      from: given(request.original.capacitance),
      note: '',
    }),
    field({
      key: partKeys.tolerance,
      group: 'part',
      label: 'Tolerance',
      unit: 'fraction',
      text: printTolerance(original.tolerance, habit),
      from: given(request.original.tolerance),
      note: '',
    }),
    field({
      key: partKeys.ratedVoltage,
      group: 'part',
      label: 'Rated voltage',
      unit: 'V',
      text: formatValue(original.ratedVoltage, 'V', habit),
      from: given(request.original.ratedVoltage),
      note: '',
    }),
    field({
      key: partKeys.age,
      group: 'part',
      label: 'Age',
      unit: 's',
      text: formatValue(original.age, 's', habit),
      from: given(request.original.age),
      note: 'What is usual for the type; some ceramics have lost capacitance since. Heat above about 125 °C, as in soldering, gives it back for a while',
    }),
    ...conditions.map(({ id, range, from, row }) =>
      field({
        key: id,
        group: catalogue.conditionDefinitions[id]?.group ?? 'circuit',
        label: catalogue.conditionDefinitions[id]?.name ?? id,
        unit: conditionUnit(catalogue, id),
        text: printCondition(catalogue, id, range, habit),
        from,
        note: row.note,
      }),
    ),
  ];
};
