import { FLOAT_ERROR } from '../quantities/within.ts';
import type { MarkingTables } from '../../schemas/markings.ts';
import type { Tolerance } from '../markings/meanings/reading.ts';
import { sayTolerance } from '../markings/meanings/say.ts';
import {
  slopeLetters,
  readTemperatureCharacteristic,
  type TemperatureMeaning,
} from '../markings/lexicon/temperatures.ts';
import { spanHolds, toleranceOf } from '../markings/ratings/tolerances.ts';
import { voltageCodesThat } from '../markings/ratings/voltage-codes.ts';
import { inUnit, plainFigures, within } from './numbers.ts';
import type { PartToPrint, Piece } from './way.ts';

const same = (a: number, b: number): boolean =>
  Math.abs(a - b) <= FLOAT_ERROR * Math.max(Math.abs(a), Math.abs(b));

/** Whether a letter says the tolerance of a part. */
const saysTolerance = (means: Tolerance, tolerance: Tolerance): boolean =>
  means.unit === tolerance.unit &&
  same(means.minus, tolerance.minus) &&
  same(means.plus, tolerance.plus);

const bothWays = (percent: number): Tolerance => ({
  minus: percent / 100,
  plus: percent / 100,
  unit: 'fraction',
});

/**
 * How a value is written beside a tolerance letter that is seldom met: a code of three figures, or
 * with a letter for its point. Behind other figures it would be taken for their unit, as the P of
 * `180P`, and behind a unit the unit for the tolerance, as the M of `0.1M Y`.
 */
const BESIDE_SELDOM = /^(?:\d\d[1-9]|\d*\p{L}\d+)$/u;

type LetterRow = MarkingTables['toleranceLetters'][number];

/** Bodies that bear a tolerance letter: not those on which a seldom one is a voltage in its place. */
const bodiesWith = (tables: MarkingTables, { letter, met, bodies }: LetterRow): string[] => {
  const taken = voltageCodesThat(tables, 'behind-figures')
    .filter((row) => row.code === letter)
    .flatMap((row) => row.bodies);
  if (met === 'often' || taken.length === 0) return bodies;
  const all = tables.bodies.filter((row) => row.kind === 'capacitor').map((row) => row.id);
  return (bodies.length === 0 ? all : bodies).filter((body) => !taken.includes(body));
};

/** Letters for the tolerance of a part. */
const toleranceLetters = (tables: MarkingTables, part: PartToPrint): Piece[] => {
  const { tolerance, capacitance } = part;
  if (tolerance === undefined) return [];
  const rows =
    capacitance === undefined
      ? tables.resistorTolerances
          .filter((row) => saysTolerance(bothWays(row.percent), tolerance))
          .map((row) => ({ ...row, note: '' }))
      : tables.toleranceLetters
          .filter((row) => spanHolds(capacitance, { from: row.from_f, below: row.below_f }))
          .filter((row) => saysTolerance(toleranceOf(row), tolerance))
          .map((row) => ({
            ...row,
            bodies: bodiesWith(tables, row),
            ...(row.met === 'seldom' && row.letter.length === 1 ? { besides: BESIDE_SELDOM } : {}),
          }));
  return rows.map((row) => ({ ...row, text: row.letter }));
};

const written = (text: string): Piece => ({
  text,
  use: 'usual',
  bodies: [],
  origins: [],
  source: 'trade',
  note: '',
});

/** A tolerance in figures: `10%`, `±0.5pF`, `-20+80%`. */
const tolerancePercent = ({ tolerance }: PartToPrint): Piece[] => {
  if (tolerance === undefined || tolerance.unit === 'ohm') return [];
  const [size, unit] =
    tolerance.unit === 'fraction' ? ([0.01, '%'] as const) : ([1e-12, 'pF'] as const);
  const [minus, plus] = [inUnit(tolerance.minus, size), inUnit(tolerance.plus, size)];
  if (minus !== plus) return unit === '%' ? [written(`-${minus}+${plus}%`)] : [];
  return unit === '%'
    ? [written(`${minus}%`), { ...written(`±${minus}%`), use: 'other' }]
    : [written(sayTolerance(minus, plus, unit))];
};

const isKind = (kind: string, part: PartToPrint): boolean =>
  part.voltageKind === 'ac' ? kind === 'ac' : kind !== 'ac';

type VoltageCode = MarkingTables['voltageCodes'][number];

/** Whether two rows say the same voltage; of words for what is drawn, one is enough. */
const sameVolts = (a: VoltageCode, b: VoltageCode | undefined): boolean =>
  a.volts_min === b?.volts_min && a.volts_max === b.volts_max;

/** Codes for the rated voltage, of one scheme. */
const voltageCodes = (tables: MarkingTables, part: PartToPrint, scheme: string): Piece[] => {
  const { ratedVoltage: volts } = part;
  if (volts === undefined) return [];
  const isWords = tables.voltageSchemes.some(
    ({ id, stands }) => id === scheme && stands === 'by-itself',
  );
  return tables.voltageCodes
    .filter((row) => row.scheme === scheme && isKind(row.kind, part))
    .filter((row) => within(volts, row.volts_min, row.volts_max))
    .filter((row, index, rows) => !isWords || index === 0 || !sameVolts(row, rows[0]))
    .map((row) => ({ ...row, text: row.code, note: '' }));
};

/** Volts in figures with a word of the table behind them. */
const voltageWords = (tables: MarkingTables, part: PartToPrint, word: string): Piece[] => {
  const { ratedVoltage: volts } = part;
  if (volts === undefined) return [];
  return tables.voltageWords
    .filter((row) => row.word === word && row.place === 'after' && row.role === 'rated')
    .filter((row) => isKind(row.kind, part) && volts >= row.factor)
    .flatMap((row) => {
      const figures = plainFigures(inUnit(volts, row.factor));
      return figures === undefined ? [] : [{ ...row, text: figures + row.word, note: '' }];
    });
};

type Characteristic = TemperatureMeaning['characteristic'];

/** Whether two codes name the same slope, or the same change over the same span. */
const alike = (a: Characteristic, b: Characteristic): boolean => {
  if (a.coefficient !== undefined && b.coefficient !== undefined)
    return same(a.coefficient.typ, b.coefficient.typ);
  const [one, other] = [a.capacitanceChange, b.capacitanceChange];
  return (
    one !== undefined &&
    other !== undefined &&
    same(one.min, other.min) &&
    same(one.max, other.max) &&
    a.tMin === b.tMin &&
    a.tMax === b.tMax
  );
};

/** Whether two codes leave the same room for error round the slope. */
const asClose = (a: Characteristic, b: Characteristic): boolean =>
  a.coefficient === undefined ||
  b.coefficient === undefined ||
  (same(a.coefficient.min, b.coefficient.min) && same(a.coefficient.max, b.coefficient.max));

const characteristicOf = (
  tables: MarkingTables,
  part: PartToPrint,
): TemperatureMeaning | undefined =>
  readTemperatureCharacteristic(tables, part.temperatureCharacteristic ?? '')[0];

const pieceOf = (text: string, meaning: TemperatureMeaning, own: TemperatureMeaning): Piece => ({
  text,
  use: asClose(meaning.characteristic, own.characteristic) ? meaning.use : 'rare',
  bodies: meaning.bodies,
  origins: meaning.origins,
  source: meaning.source,
  note: '',
});

/** The code of the characteristic, and the codes of other systems that say the same. */
const temperatureCodes = (tables: MarkingTables, part: PartToPrint): Piece[] => {
  const own = characteristicOf(tables, part);
  if (own === undefined) return [];
  const named = [...tables.class1Codes, ...tables.class2Codes].map((row) => row.code);
  const codes = [...new Set([own.characteristic.code, ...named])];
  return codes.flatMap((code) =>
    readTemperatureCharacteristic(tables, code)
      .filter((meaning) => meaning.alone && alike(meaning.characteristic, own.characteristic))
      .slice(0, 1)
      .map((meaning) => pieceOf(code, meaning, own)),
  );
};

/** A single letter for the slope, as on old British and on Soviet ceramics. */
const temperatureLetters = (tables: MarkingTables, part: PartToPrint): Piece[] => {
  const own = characteristicOf(tables, part);
  if (own === undefined) return [];
  const letters = new Set(
    tables.class1Signs.filter((row) => row.place === 'slope').map((row) => row.symbol),
  );
  return [...letters].flatMap((letter) =>
    slopeLetters(tables, letter)
      .filter((meaning) => alike(meaning.characteristic, own.characteristic))
      .map((meaning) => ({ ...pieceOf(letter, meaning, own), use: meaning.use })),
  );
};

/** Letters that name what the part is made of. */
const dielectrics = (tables: MarkingTables, { type }: PartToPrint): Piece[] =>
  type === undefined
    ? []
    : tables.dielectricCodes
        .filter(
          (row) => row.form === 'word' && /^\p{Lu}+$/u.test(row.code) && row.types.includes(type),
        )
        .map((row) => ({ ...row, text: row.code }));

/** Values that a letter of a taper stands before and behind; elsewhere it would be another's. */
const BESIDE_LETTER: Readonly<Record<string, RegExp>> = { before: /^\d/, behind: /^\d.*[A-Za-z]$/ };

/** Whether a letter or word for a taper is printed in a place; words that are not usual stand in lists alone. */
const isPrintedIn = (place: string, { letter, use }: MarkingTables['tapers'][number]): boolean =>
  place === 'word' ? letter.length > 1 && use === 'usual' : letter.length === 1;

/** Letters or words for the taper of a potentiometer. */
const tapers = (tables: MarkingTables, { taper }: PartToPrint, place: string): Piece[] =>
  tables.tapers
    .filter((row) => row.law === taper && isPrintedIn(place, row))
    .map((row) => {
      const besides = BESIDE_LETTER[place];
      return {
        ...row,
        text: row.letter,
        ...(besides === undefined ? {} : { besides }),
      };
    });

/**
 * What may stand in one place of an arrangement, such as `tolerance:letter`; none where the part
 * says nothing of it or no sign of the tables says the same.
 */
export const piecesFor = (tables: MarkingTables, part: PartToPrint, place: string): Piece[] => {
  const [kind, detail = ''] = place.split(/:(.*)/s) as [string, string?];
  if (kind === 'voltage') return voltageCodes(tables, part, detail);
  if (kind === 'volts') return voltageWords(tables, part, detail);
  if (kind === 'dielectric') return dielectrics(tables, part);
  if (kind === 'taper') return tapers(tables, part, detail);
  if (kind === 'tolerance')
    return detail === 'letter' ? toleranceLetters(tables, part) : tolerancePercent(part);
  return detail === 'code' ? temperatureCodes(tables, part) : temperatureLetters(tables, part);
};
