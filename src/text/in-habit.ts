import { formatQuantity, type Habit } from '../engine/index.ts';

const NO_BREAK = '\u00a0';

/** Farads and ohms as they are printed without a habit, with what each is times the SI unit. */
const SCALES: ReadonlyMap<string, readonly ['F' | 'ohm', number]> = new Map([
  ['pF', ['F', 1e-12]],
  ['nF', ['F', 1e-9]],
  ['µF', ['F', 1e-6]],
  ['F', ['F', 1]],
  ['Ω', ['ohm', 1]],
  ['kΩ', ['ohm', 1e3]],
  ['MΩ', ['ohm', 1e6]],
  ['GΩ', ['ohm', 1e9]],
  ['TΩ', ['ohm', 1e12]],
]);

const AMOUNT = '\\d+(?:\u00a0\\d{3})*(?:\\.\\d+)?';
/** An amount or a range of such a unit; no product such as MΩ·µF. */
const QUANTITY = new RegExp(
  `(?<![\\d.,−])(${AMOUNT})(?:–(${AMOUNT}))?\u00a0([pnµ]?F|[kMGT]?Ω)(?![·\\p{L}\\p{N}])`,
  'gu',
);

/** Words that were made without a habit, with their numbers and units as a reader likes them. */
export const inHabit = (words: string, habit: Habit = {}): string => {
  if (Object.keys(habit).length === 0) return words;
  const withUnits = words.replace(
    QUANTITY,
    (whole, low: string, high: string | undefined, unit: string) => {
      const [si, factor] = SCALES.get(unit) ?? [];
      if (si === undefined || factor === undefined) return whole;
      const [min = 0, max = min] = [low, high].flatMap((text) =>
        text === undefined ? [] : [Number(text.replaceAll(NO_BREAK, '')) * factor],
      );
      return formatQuantity({ min, typ: min, max }, si, habit);
    },
  );
  return habit.decimal === 'comma' ? withUnits.replace(/(?<=\d)\.(?=\d)/gu, ',') : withUnits;
};
