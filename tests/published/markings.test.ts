import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { readClimate } from '../../src/engine/markings/ratings/climate.ts';
import { readDateCode } from '../../src/engine/markings/beside/dates.ts';
import type { Hints, Reading } from '../../src/engine/markings/meanings/reading.ts';
import { readMarking } from '../../src/engine/markings/read-marking.ts';
import { readTemperatureCharacteristic } from '../../src/engine/markings/lexicon/temperatures.ts';
import { readToleranceLetter } from '../../src/engine/markings/ratings/tolerances.ts';
import { readVoltageCode } from '../../src/engine/markings/ratings/voltage-codes.ts';
import { catalogue, markings } from '../engine/markings/tables.ts';

/** Marks that outside sources print with their meaning; those in colours are in colours.csv. */
const row = z.strictObject({
  id: z.string(),
  kind: z.string(),
  input: z.string(),
  expected: z.string(),
  tolerance: z.string(),
  source: z.string().min(1),
  locator: z.string(),
  note: z.string(),
});
type Case = z.output<typeof row>;

const records: unknown = parse(readFileSync('tests/published/capacitor-markings.csv', 'utf8'), {
  columns: true,
});
const cases = z.array(row).parse(records);

/** `key=value; key=value` as an object. */
const pairs = (text: string): Record<string, string> =>
  Object.fromEntries(
    text.split(';').map((part) => {
      const [key = '', ...value] = part.split('=');
      return [key.trim(), value.join('=').trim()];
    }),
  );

/** What the cases say of the part, as the hints of the engine. */
const hintsOf: Record<string, Hints> = {
  '': {},
  ceramic: { body: 'ceramic' },
  'ceramic disc': { body: 'ceramic' },
  'small ceramic, modern': { body: 'ceramic', origin: 'international' },
  'small ceramic disc': { body: 'ceramic' },
  'ceramic chip': { body: 'ceramic-chip' },
  'ceramic chip, letter plus digit': { body: 'ceramic-chip' },
  'old ceramic': { body: 'ceramic', era: { from: 1930, to: 1970 } },
  'old British tubular ceramic': { body: 'ceramic', origin: 'british' },
  Soviet: { origin: 'soviet' },
  'Soviet ceramic': { body: 'ceramic', origin: 'soviet' },
  film: { body: 'film' },
  '1 % film': { body: 'film' },
  'MKT film': { type: 'pet-metallized' },
  'polyester film': { body: 'film' },
  paper: { body: 'paper' },
  '1935 French paper': { body: 'paper', origin: 'french' },
  tantalum: { body: 'tantalum' },
  'military radial tantalum': { body: 'tantalum' },
  'aluminium chip': { body: 'aluminium' },
  unknown: {},
  'type unknown': {},
};

/** Everything after `marking=` up to the type is the marking, words beside it included. */
const markingOf = (input: string): { text: string; hints: Hints } => {
  const [first = '', ...rest] = input.split(';');
  const type =
    pairs(rest.join(';'))['type'] ?? (rest.join(';').trim() === 'type unknown' ? 'unknown' : '');
  const hints = hintsOf[type];
  if (hints === undefined) throw new Error(`no hints for ${type}`);
  return { text: first.replace(/^(marking|code)=/, '').trim(), hints };
};

const readings = (input: string): Reading[] => {
  const { text, hints } = markingOf(input);
  return readMarking(catalogue, text, hints);
};

const close = (actual: number | undefined, wanted: number, tolerance: string): void => {
  const relative = /^rel (.*)$/.exec(tolerance)?.[1] ?? '1e-9';
  expect(actual).toBeDefined();
  expect(Math.abs((actual ?? NaN) - wanted)).toBeLessThanOrEqual(
    Math.abs(wanted) * Number(relative) + 1e-12,
  );
};

const asTolerance = (text: string) => {
  const [, minus, plus, unit] = /^(-?[\d.]+)\/\+([\d.]+) (%|pF)$/.exec(text) ?? [];
  const factor = unit === '%' ? 0.01 : 1e-12;
  return {
    minus: expect.closeTo(Math.abs(Number(minus)) * factor, 15) as number,
    plus: expect.closeTo(Number(plus) * factor, 15) as number,
    unit: unit === '%' ? 'fraction' : 'F',
  };
};

type Characteristic = NonNullable<Reading['temperatureCharacteristic']>;

/** What the table has of the class of mains duty that a marking was read as. */
const classRead = ({ safetyClass }: Reading) =>
  markings.safetyClasses.find((one) => one.class === safetyClass);

/** How each key of an expectation is compared with a reading. */
const checks: Record<string, (reading: Reading, wanted: string, tolerance: string) => void> = {
  C_pF: (reading, wanted, tolerance) =>
    close((reading.capacitance?.typ ?? NaN) / 1e-12, Number(wanted), tolerance),
  tol: (reading, wanted) => expect(reading.tolerance).toEqual(asTolerance(wanted)),
  V: (reading, wanted, tolerance) => close(reading.ratedVoltage?.typ, Number(wanted), tolerance),
  V_kind: (reading, wanted) => expect(reading.voltageKind).toBe(wanted),
  date: (reading, wanted) => expect(reading.date).toBe(wanted),
  class: (reading, wanted) => expect(reading.safetyClass).toBe(wanted),
  polarity: (reading, wanted) => expect(reading.polarity).toBe(wanted),
  peak_in_service_V: (reading, wanted) =>
    expect(classRead(reading)?.peak_in_service_v).toBe(Number(wanted)),
  impulse_test_V: (reading, wanted) =>
    expect(classRead(reading)?.impulse_test_v).toBe(Number(wanted)),
  diel: (reading, wanted) => {
    const said = [
      ...reading.evidence.map(({ means }) => means),
      ...reading.types.map((type) => catalogue.types[type]?.name ?? ''),
    ].join(' ');
    for (const word of wanted.split(' ')) expect(said).toContain(word);
  },
};

/** The same for temperature characteristics. */
const temperatureChecks: Record<string, (actual: Characteristic, wanted: string) => void> = {
  TC_ppm: (actual, wanted) =>
    expect((actual.coefficient?.typ ?? NaN) * 1e6).toBeCloseTo(Number(wanted)),
  TC_tol: ({ coefficient }, wanted) =>
    expect((((coefficient?.max ?? NaN) - (coefficient?.min ?? NaN)) / 2) * 1e6).toBeCloseTo(
      Number(wanted),
    ),
  dC: (actual, wanted) => {
    const [, minus, plus] = /^(-[\d.]+)\/\+([\d.]+) %$/.exec(wanted) ?? [];
    expect((actual.capacitanceChange?.min ?? NaN) * 100).toBeCloseTo(Number(minus));
    expect((actual.capacitanceChange?.max ?? NaN) * 100).toBeCloseTo(Number(plus));
  },
  T: (actual, wanted) => expect(`${actual.tMin}..${actual.tMax}`).toBe(wanted),
};

const checkCharacteristic = (actual: Characteristic | undefined, expected: string): void => {
  expect(actual).toBeDefined();
  for (const [key, wanted] of Object.entries(pairs(expected))) {
    if (actual !== undefined) temperatureChecks[key]?.(actual, wanted);
  }
};

const checkReading = ({ input, expected, tolerance }: Case): void => {
  const [reading] = readings(input);
  expect(reading).toBeDefined();
  if (reading === undefined) return;
  for (const [key, wanted] of Object.entries(pairs(expected))) {
    if (key in temperatureChecks) {
      checkCharacteristic(reading.temperatureCharacteristic, `${key}=${wanted}`);
    } else {
      expect(Object.keys(checks)).toContain(key);
      checks[key]?.(reading, wanted, tolerance);
    }
  }
};

/** Which systems of temperature codes a case names. */
const systems: Record<string, string[]> = {
  'EIA code': ['eia-1', 'eia-2'],
  'JIS code': ['jis-1'],
  'JIS letter': ['jis-2'],
  name: ['industry'],
  'mica characteristic': ['mica'],
};

const checkTemperature = ({ input, expected }: Case): void => {
  const [[system, code] = ['', '']] = Object.entries(pairs(input));
  const meaning = readTemperatureCharacteristic(markings, code).find((each) =>
    systems[system]?.includes(each.system),
  );
  checkCharacteristic(meaning?.characteristic, expected);
};

const checkTolerance = ({ input, expected }: Case): void => {
  const { 'tolerance letter': letter = '', C } = pairs(input);
  const capacitance = C === undefined ? 1e-9 : Number(C.replace(' pF', '')) * 1e-12;
  const [meaning] = readToleranceLetter(markings, letter, capacitance);
  expect(meaning?.tolerance).toEqual(asTolerance(pairs(expected)['tol'] ?? ''));
};

const checkVoltage = ({ input, expected, tolerance }: Case): void => {
  const [meaning] = readVoltageCode(markings, pairs(input)['voltage code'] ?? '');
  close(meaning?.volts.typ, Number(pairs(expected)['V']), tolerance);
};

/** Schemes as the cases name them; the era where the case or its source's own table gives one. */
const schemes: Record<string, { id: string; era?: Hints['era'] }> = {
  'British two letters': { id: 'british-two-letters' },
  'month letter and year digit': { id: 'month-letter-year-figure' },
  'year digit and week, part of the 1990s': {
    id: 'year-figure-week',
    era: { from: 1990, to: 1999 },
  },
  'IEC 60062': { id: 'iec-60062' },
  'year figure and month, 1990s': { id: 'year-figure-month', era: { from: 1990, to: 1999 } },
  'year figure and month, 2000s': { id: 'year-figure-month', era: { from: 2000, to: 2009 } },
  'month of four years, 1997 to 2003': {
    id: 'month-of-four-years',
    era: { from: 1997, to: 2003 },
  },
  'year letter from 1920': { id: 'year-letter-1920' },
  'year, month and day': { id: 'year-month-day' },
};

/** The data sheet that these two cases come from lists the years 2018 to 2029 only. */
const eraOfSource = ({ source }: Case): Hints['era'] =>
  source.startsWith('K53-78') ? { from: 2018, to: 2029 } : undefined;

const checkDate = (each: Case): void => {
  const { 'date code': code = '', scheme = '' } = pairs(each.input);
  const { id, era } = schemes[scheme] ?? { id: '' };
  const meaning = readDateCode(markings, code, era ?? eraOfSource(each)).find(
    (found) => found.scheme === id,
  );
  expect(meaning?.dates.join(' or ')).toBe(pairs(each.expected)['date']);
};

/** Every reading of the list must be offered, in its order, before any other. */
const checkAmbiguous = ({ input, expected }: Case): void => {
  const wanted = [...expected.matchAll(/C_pF=(\d+)/g)].map((match) => Number(match[1]));
  const offered = readings(input).map(({ capacitance }) => (capacitance?.typ ?? NaN) / 1e-12);
  expect(offered.slice(0, wanted.length).map((value) => Math.round(value))).toEqual(wanted);
};

const checkClimate = ({ input, expected }: Case): void => {
  const found = readClimate(markings, pairs(input)['marking'] ?? '');
  const { T_low, T_high, damp_days } = pairs(expected);
  expect(found?.climate).toEqual({
    tMin: Number(T_low),
    tMax: Number(T_high),
    dampDays: Number(damp_days),
  });
};

const checkOf: Record<string, (each: Case) => void> = {
  value: checkReading,
  full: checkReading,
  'legacy-unit': checkReading,
  dielectric: checkReading,
  safety: checkReading,
  climate: checkClimate,
  tempco: checkTemperature,
  class2: checkTemperature,
  tolerance: checkTolerance,
  voltage: checkVoltage,
  date: checkDate,
  ambiguous: checkAmbiguous,
};

describe('markings that outside sources print with their meaning', () => {
  test('there are as many as were copied', () => {
    expect(cases).toHaveLength(148);
  });

  test.each(cases)('$id $kind: $input ($source)', (each) => {
    expect(Object.keys(checkOf)).toContain(each.kind);
    checkOf[each.kind]?.(each);
  });
});
