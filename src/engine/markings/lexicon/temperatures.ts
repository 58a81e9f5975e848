import type { MarkingTables } from '../../../schemas/markings.ts';
import type { TypeId } from '../../catalogue.ts';
import { between, exactly, type Range } from '../../quantities/range.ts';
import type { TemperatureCharacteristic } from '../meanings/reading.ts';
import { sayNumber } from '../meanings/say.ts';
import type { Use } from '../meanings/token.ts';
import { inOrderOfUse } from '../meanings/use.ts';

type SystemRow = MarkingTables['temperatureSystems'][number];

/** A temperature code with what the tables say of it. */
export interface TemperatureMeaning {
  characteristic: TemperatureCharacteristic;
  types: readonly TypeId[];
  use: Use;
  bodies: readonly string[];
  origins: readonly string[];
  source: string;
  system: string;
  /** False for a single letter that is read so only beside a value. */
  alone: boolean;
  /** True where the code was put together by rule rather than found whole. */
  byRule: boolean;
}

const PPM = 1e-6;
const PERCENT = 0.01;

const slope = (code: string, system: SystemRow, coefficient: Range, spreadKnown: boolean) => ({
  code,
  class: system.class,
  coefficient,
  spreadKnown,
  tReference: system.t_ref,
  tMin: system.t_min,
  tMax: system.t_max,
});

const change = (
  code: string,
  system: SystemRow,
  low: number,
  high: number,
  span: { min: number; max: number },
): TemperatureCharacteristic => ({
  code,
  class: system.class,
  capacitanceChange: { min: low * PERCENT, max: high * PERCENT },
  spreadKnown: true,
  tReference: system.t_ref,
  tMin: span.min,
  tMax: span.max,
});

const systemOf = (tables: MarkingTables, id: string): SystemRow[] =>
  tables.temperatureSystems.filter((system) => system.id === id);

/** Class 1 codes that stand whole in their table. */
const namedClass1 = (tables: MarkingTables, code: string): TemperatureMeaning[] =>
  tables.class1Codes
    .filter((row) => row.code === code)
    .flatMap((row) =>
      systemOf(tables, row.system).map((system) => ({
        characteristic: slope(
          row.code,
          system,
          between(
            row.min_ppm * PPM,
            row.max_ppm * PPM,
            (row.typ_ppm ?? (row.min_ppm + row.max_ppm) / 2) * PPM,
          ),
          row.spread_known,
        ),
        types: row.types,
        use: row.use,
        bodies: row.bodies,
        origins: row.origins,
        source: row.source,
        system: row.system,
        alone: row.code.length > 1,
        byRule: false,
      })),
    );

/** Class 2 codes that stand whole in their table. */
const namedClass2 = (tables: MarkingTables, code: string): TemperatureMeaning[] =>
  tables.class2Codes
    .filter((row) => row.code === code)
    .flatMap((row) =>
      systemOf(tables, row.system).map((system) => ({
        characteristic: change(row.code, system, row.low, row.high, {
          min: row.t_min,
          max: row.t_max,
        }),
        types: row.types,
        use: row.use,
        bodies: row.bodies,
        origins: row.origins,
        source: row.source,
        system: row.system,
        alone: row.alone,
        byRule: false,
      })),
    );

type Class1Place = MarkingTables['class1Signs'][number]['place'];

const class1Sign = (tables: MarkingTables, system: string, place: Class1Place, symbol: string) =>
  tables.class1Signs.filter(
    (row) => row.system === system && row.place === place && row.symbol === symbol,
  );

const class2Sign = (tables: MarkingTables, place: string, symbol: string) =>
  tables.class2Signs.filter((row) => row.place === place && row.symbol === symbol);

/** Letter, figure, letter: figure times multiplier, and how far it may be off. */
const class1ByFigure = (tables: MarkingTables, code: string): TemperatureMeaning[] =>
  tables.temperatureSystems.flatMap((system) =>
    class1Sign(tables, system.id, 'figure', code.charAt(0)).flatMap((figure) =>
      class1Sign(tables, system.id, 'multiplier', code.charAt(1)).flatMap((multiplier) =>
        class1Sign(tables, system.id, 'spread', code.slice(2)).map((spread) => {
          // A zero figure times a negative multiplier would print as minus nought.
          const typ = figure.value * multiplier.value + 0;
          return {
            characteristic: slope(
              code,
              system,
              between((typ - spread.value) * PPM, (typ + spread.value) * PPM, typ * PPM),
              true,
            ),
            types: figure.types,
            use: multiplier.use,
            bodies: system.bodies,
            origins: [],
            source: figure.source,
            system: system.id,
            alone: true,
            byRule: true,
          };
        }),
      ),
    ),
  );

/** Two letters: a slope, and how far it may be off. */
const class1ByPair = (tables: MarkingTables, code: string): TemperatureMeaning[] =>
  tables.temperatureSystems.flatMap((system) =>
    class1Sign(tables, system.id, 'slope', code.charAt(0)).flatMap((figure) =>
      class1Sign(tables, system.id, 'spread', code.slice(1)).map((spread) => ({
        characteristic: slope(
          code,
          system,
          between(
            (figure.value - spread.value) * PPM,
            (figure.value + spread.value) * PPM,
            figure.value * PPM,
          ),
          true,
        ),
        types: figure.types,
        use: 'other' as const,
        bodies: system.bodies,
        origins: [],
        source: figure.source,
        system: system.id,
        alone: true,
        byRule: true,
      })),
    ),
  );

/** A single slope letter behind a tolerance letter, as on old British and on Soviet ceramics. */
export const slopeLetters = (tables: MarkingTables, letter: string): TemperatureMeaning[] =>
  tables.temperatureSystems.flatMap((system) => {
    // A system without single letters has no origins for them.
    if (system.origins.length === 0) return [];
    return class1Sign(tables, system.id, 'slope', letter).map((row) => ({
      characteristic: slope(letter, system, exactly(row.value * PPM), false),
      types: row.types,
      use: row.use,
      bodies: system.bodies,
      origins: system.origins,
      source: row.source,
      system: system.id,
      alone: false,
      byRule: true,
    }));
  });

/** Letter, figure, letter: lowest temperature, highest temperature, change between them. */
const class2ByLetters = (tables: MarkingTables, code: string): TemperatureMeaning[] =>
  tables.temperatureSystems.flatMap((system) =>
    class2Sign(tables, 'low', code.charAt(0)).flatMap((low) =>
      class2Sign(tables, 'high', code.charAt(1)).flatMap((high) =>
        class2Sign(tables, 'change', code.slice(2))
          .filter((row) => [low.system, high.system, row.system].every((id) => id === system.id))
          .map((row) => ({
            characteristic: change(code, system, row.low ?? 0, row.high ?? 0, {
              min: low.low ?? system.t_min,
              max: high.high ?? system.t_max,
            }),
            types: row.types,
            use: row.use,
            bodies: system.bodies,
            origins: [],
            source: row.source,
            system: system.id,
            alone: true,
            byRule: true,
          })),
      ),
    ),
  );

/** Change code, then a figure for the temperature span, such as 2C1. */
const class2BySpan = (tables: MarkingTables, code: string): TemperatureMeaning[] =>
  tables.temperatureSystems.flatMap((system) =>
    class2Sign(tables, 'change', code.slice(0, -1)).flatMap((row) =>
      class2Sign(tables, 'span', code.slice(-1))
        .filter((span) => span.system === system.id && row.system === system.id)
        .map((span) => ({
          characteristic: change(code, system, row.low ?? 0, row.high ?? 0, {
            min: span.low ?? system.t_min,
            max: span.high ?? system.t_max,
          }),
          types: row.types,
          use: 'other' as const,
          bodies: system.bodies,
          origins: [],
          source: row.source,
          system: system.id,
          alone: true,
          byRule: true,
        })),
    ),
  );

/**
 * Every meaning of a temperature code by itself, such as `X7R`, `N750`, `UJ`, `2C1`: those that
 * stand whole in a table first, and only where there are none, those that the rules give.
 */
export const readTemperatureCharacteristic = (
  tables: MarkingTables,
  code: string,
): TemperatureMeaning[] => {
  const named = [...namedClass1(tables, code), ...namedClass2(tables, code)];
  if (named.length > 0) return inOrderOfUse(named);
  return [
    ...class2ByLetters(tables, code),
    ...class1ByFigure(tables, code),
    ...class1ByPair(tables, code),
    ...class2BySpan(tables, code),
  ];
};

/** ppm/K and percent in words. */
export const sayCharacteristic = (characteristic: TemperatureCharacteristic): string => {
  const span = `${sayNumber(characteristic.tMin)} to ${sayNumber(characteristic.tMax)} °C`;
  const signed = (value: number): string => `${value > 0 ? '+' : ''}${sayNumber(value)}`;
  const { capacitanceChange, coefficient } = characteristic;
  if (capacitanceChange !== undefined) {
    const low = Number((capacitanceChange.min / PERCENT).toFixed(2));
    const high = Number((capacitanceChange.max / PERCENT).toFixed(2));
    return `class 2, ${signed(low)}/${signed(high)} % over ${span}`;
  }
  if (coefficient === undefined) return `class ${characteristic.class}`;
  const [min, typ, max] = [coefficient.min, coefficient.typ, coefficient.max].map((value) =>
    Math.round(value / PPM),
  ) as [number, number, number];
  if (!characteristic.spreadKnown) return `class 1, ${signed(typ)} ppm/K`;
  return max - typ === typ - min
    ? `class 1, ${signed(typ)} ±${max - typ} ppm/K`
    : `class 1, ${signed(min)} to ${signed(max)} ppm/K`;
};
