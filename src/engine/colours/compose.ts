import type { TypeId } from '../catalogue.ts';
import { given } from '../given.ts';
import type {
  Reading,
  TemperatureCharacteristic,
  Tolerance,
} from '../markings/meanings/reading.ts';
import { overTemperature, withTolerance } from '../markings/composing/spread.ts';
import { between, exactly, type Range } from '../quantities/range.ts';
import { placeGiven, type Candidate } from './candidate.ts';
import { evidenceOf, notUnderstoodOf } from './evidence.ts';
import type { ColourReadingTables, MeaningRow, Scheme } from './scheme.ts';
import type { Taken, Taking } from './take.ts';

const PERCENT = 0.01;
const PPM = 1e-6;
const PICO = 1e-12;

const told = (taking: Taking, role: Taken['role']): MeaningRow | undefined =>
  taking.taken.find((group) => group.role === role)?.meanings[0] ??
  taking.absent.find((row) => row.role === role);

/** A percentage as a fraction without what a hundredth leaves behind. */
const scaled = (value: number, unit: number): number => Number((value * unit).toPrecision(12));

/** The tolerance that colours give, or that their absence gives. */
export const toleranceOf = (taking: Taking): Tolerance | undefined => {
  const row = told(taking, 'tolerance');
  if (row === undefined) return undefined;
  const [unit, size] =
    row.unit === 'pF' ? (['F', PICO] as const) : (['fraction', PERCENT] as const);
  return { minus: scaled(-(row.low ?? 0), size), plus: scaled(row.high ?? 0, size), unit };
};

/** V; one colour, or figures that count hundreds. */
const voltageOf = (taking: Taking): Range | undefined => {
  const volts = told(taking, 'voltage')?.value;
  if (volts !== undefined) return exactly(volts);
  const figures = taking.taken
    .filter(({ role }) => role === 'hundreds-of-volts')
    .map(({ meanings }) => meanings[0]?.value);
  const hundreds = figures.includes(undefined) ? 0 : Number(figures.join(''));
  return hundreds > 0 ? exactly(hundreds * 100) : undefined;
};

/** 1/K, from ppm/K. */
const coefficientOf = ({ low, value, high }: Pick<MeaningRow, 'low' | 'value' | 'high'>): Range =>
  between(
    scaled(low ?? value ?? 0, PPM),
    scaled(high ?? value ?? 0, PPM),
    value === undefined ? undefined : scaled(value, PPM),
  );

/** How the capacitance follows temperature: as the colour says, or as the letter that it stands for. */
const characteristicOf = (
  tables: ColourReadingTables,
  { system }: Scheme,
  taking: Taking,
  types: readonly TypeId[],
): TemperatureCharacteristic | undefined => {
  if (system === undefined) return undefined;
  const span = { tReference: system.t_ref, tMin: system.t_min, tMax: system.t_max };
  const own = told(taking, 'temperature');
  if (own !== undefined)
    return {
      code: own.word,
      class: system.class,
      coefficient: coefficientOf(own),
      spreadKnown: own.low !== undefined,
      ...span,
    };
  const letter = told(taking, 'characteristic')?.word;
  const row = tables.class1Codes.find((code) => code.code === letter && code.system === system.id);
  // A paper part in the body of a mica one has no mica characteristic.
  if (row?.types.some((type) => types.includes(type)) !== true) return undefined;
  const { min_ppm: low, typ_ppm: value, max_ppm: high } = row;
  return {
    code: row.code,
    class: system.class,
    coefficient: coefficientOf({ low, value, high }),
    spreadKnown: row.spread_known,
    ...span,
  };
};

/** Types that colours name, or else those of the scheme. */
const typesOf = ({ row }: Scheme, { taken }: Taking): TypeId[] => {
  const named = taken.flatMap(({ meanings }) => meanings[0]?.types ?? []);
  return named.length > 0 ? [...new Set(named)] : row.types;
};

const valueOf = (
  { row, form }: Scheme,
  { value }: Taking,
  tolerance: Tolerance | undefined,
  characteristic: TemperatureCharacteristic | undefined,
) => {
  if (value === undefined) return {};
  if (row.quantity === 'resistance') return { resistance: withTolerance(value, tolerance) };
  return {
    capacitance: withTolerance(value, tolerance),
    ...given(
      'capacitanceOverTemperature',
      characteristic === undefined || form.kind !== 'capacitor'
        ? undefined
        : overTemperature(value, tolerance, characteristic),
    ),
  };
};

/** Puts a reading together; how far to trust it is settled among its rivals. */
export const composed = (tables: ColourReadingTables, candidate: Candidate): Reading => {
  const { scheme, taking, tolerance, turned, guessed } = candidate;
  const { form, row, layout } = scheme;
  const types = typesOf(scheme, taking);
  const characteristic = characteristicOf(tables, scheme, taking, types);
  const drift = form.kind === 'resistor' ? told(taking, 'temperature') : undefined;
  const marks = turned ? taking.marks.toReversed() : [...taking.marks];
  return {
    kind: form.kind,
    ...valueOf(scheme, taking, tolerance, characteristic),
    ...given('tolerance', tolerance),
    ...given('ratedVoltage', voltageOf(taking)),
    ...given('temperatureCharacteristic', characteristic),
    ...given('temperatureCoefficient', drift === undefined ? undefined : coefficientOf(drift)),
    types,
    ...given('polarity', row.polarity === '' ? undefined : row.polarity),
    colours: {
      scheme: row.id,
      name: row.name,
      turned,
      marks,
      guessed: guessed.map((at) => placeGiven(at, candidate)).sort((a, b) => a - b),
    },
    sure: 'possible',
    evidence: evidenceOf(tables, candidate),
    notUnderstood: notUnderstoodOf(tables, candidate, layout),
    settleBy: [],
  };
};
