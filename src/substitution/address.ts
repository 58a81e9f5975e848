import {
  DEFAULT_GUIDELINE,
  formatQuantity,
  formatValue,
  parseQuantity,
  resolveSituation,
  type Catalogue,
  type PositionId,
  type Range,
  type Request,
  type Tolerance,
  type TypeId,
  type Unit,
} from '../engine/index.ts';

/** Keys of the address that speak of the old part; all others are condition ids. */
export const partKeys = { capacitance: 'c', tolerance: 'tol', ratedVoltage: 'v' } as const;
export const guidelineKey = 'g';

/** Longest text that one key of an address may carry. */
const LONGEST = 60;

/** A number of the visitor's that could not be used, kept as typed. */
export interface Rejected {
  text: string;
  message: string;
}

/** What an address asks for, and what in it could not be understood. */
export interface Asked {
  request: Request;
  rejected: Record<string, Rejected>;
}

type Read<T> = { value: T } | { message: string };

/** How the numbers of one key are read. */
interface Measure {
  unit: Unit;
  /** Unit of a number without one, as in units.csv. */
  bare?: string | undefined;
  /** SI */
  lowest: number;
  /** SI */
  highest: number;
}

const readRange = (text: string, { unit, bare, lowest, highest }: Measure): Read<Range> => {
  if (text.length > LONGEST) return { message: `Please keep to ${LONGEST} characters.` };
  const parsed = parseQuantity(text, unit, bare);
  if (!parsed.ok) return { message: parsed.fault.message };
  const { min, max } = parsed.value;
  return min >= lowest && max <= highest
    ? { value: parsed.value }
    : {
        message: `Please give a value from ${formatValue(lowest, unit)} to ${formatValue(highest, unit)}.`,
      };
};

/** Least and greatest values that an old part may have, SI. */
const PART_LIMITS = {
  capacitance: { unit: 'F', lowest: 1e-13, highest: 10 },
  ratedVoltage: { unit: 'V', lowest: 0.5, highest: 100_000 },
} as const satisfies Record<string, Measure>;

const WORST_TOLERANCE = 2;

/** `10`, `±10 %`, `20/80` (minus before plus) or `+80 −20`: how far the old part may be off. */
export const readToleranceText = (text: string): Read<Tolerance> => {
  const numbers = text.replaceAll(',', '.').match(/\d+(?:\.\d+)?/g) ?? [];
  const inOrder = text.startsWith('+') ? numbers.toReversed() : numbers;
  const [minus, plus = minus] = inOrder.map((number) => Number(number) / 100);
  if (minus === undefined || plus === undefined || numbers.length > 2) {
    return { message: 'Please write a tolerance such as 10 % or 20/80.' };
  }
  return Math.max(minus, plus) <= WORST_TOLERANCE && minus < 1
    ? { value: { minus, plus } }
    : { message: 'Please give a tolerance below 100 % downwards and 200 % upwards.' };
};

/** A tolerance as an address carries it. */
export const writeTolerance = ({ minus, plus }: Tolerance): string => {
  const percent = (fraction: number): string => String(Number((fraction * 100).toPrecision(6)));
  return minus === plus ? percent(plus) : `${percent(minus)}/${percent(plus)}`;
};

/** A tolerance as a field shows it: `±10 %`, `−20/+80 %`. */
const printTolerance = (tolerance: Tolerance): string => {
  const { minus, plus } = tolerance;
  return minus === plus
    ? `±${formatValue(plus, 'fraction')}`
    : `−${formatValue(minus, 'fraction')}/+${formatValue(plus, 'fraction')}`;
};

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
      original: { type, capacitance, tolerance, ratedVoltage },
      position,
      conditions,
      guideline: guideline ?? DEFAULT_GUIDELINE,
    },
    rejected,
  };
};

/** One number that the visitor may change. */
export interface Field {
  key: string;
  label: string;
  unit: Unit;
  /** What stands in the field: the visitor's own text, or the default written out. */
  text: string;
  /** Whether the text is the visitor's, a default, or follows from the old part. */
  from: 'given' | 'default' | 'derived';
  message?: string;
  note: string;
}

/** Every number that an assessment of this request rests on, as fields of a form. */
export const fieldsFor = (catalogue: Catalogue, { request, rejected }: Asked): Field[] => {
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
      label: 'Capacitance',
      unit: 'F',
      text: formatValue(original.capacitance, 'F'),
      from: given(request.original.capacitance),
      note: '',
    }),
    field({
      key: partKeys.tolerance,
      label: 'Tolerance',
      unit: 'fraction',
      text: printTolerance(original.tolerance),
      from: given(request.original.tolerance),
      note: '',
    }),
    field({
      key: partKeys.ratedVoltage,
      label: 'Rated voltage',
      unit: 'V',
      text: formatValue(original.ratedVoltage, 'V'),
      from: given(request.original.ratedVoltage),
      note: '',
    }),
    ...conditions.map(({ id, range, from, row }) =>
      field({
        key: id,
        label: catalogue.conditionDefinitions[id]?.name ?? id,
        unit: conditionUnit(catalogue, id),
        text: formatQuantity(range, conditionUnit(catalogue, id)),
        from,
        note: row.note,
      }),
    ),
  ];
};
