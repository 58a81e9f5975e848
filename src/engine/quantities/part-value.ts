import { fail, ok, type Result } from '../result.ts';
import type { Part } from './part.ts';
import { capital } from './text.ts';
import type { Scale, Unit } from './unit.ts';
import { UNIT_FACTS } from './unit-facts.ts';
import { scaleOf } from './unit-words.ts';

/**
 * The unit of capacitances written without one, by the habit of the trade: below one they are in
 * microfarad (`.01`), whole numbers from one up in picofarad (`470`). Scientific notation is SI.
 */
const usualCapacitance = (parts: readonly Part[]): Scale | undefined => {
  if (parts.every(({ number }) => number.scientific)) return { power: 0 };
  if (parts.some(({ number }) => number.scientific)) return undefined;
  const values = parts.map(({ number }) => Number(number.digits));
  if (values.every((value) => value < 1)) return { power: -6 };
  const whole = parts.every(({ number }) => /^\d+$/u.test(number.digits));
  return whole ? { power: -12 } : undefined;
};

/** Each part's scale; a part without a unit takes that of the next part that has one. */
export const scalesOf = (
  parts: readonly Part[],
  unit: Unit,
  bare: string | undefined,
): Result<Scale[]> => {
  const scales: Scale[] = [];
  for (const [index, part] of parts.entries()) {
    const written = parts.slice(index).find(({ scale }) => scale !== undefined)?.scale;
    const usual = bare ?? UNIT_FACTS[unit].usual;
    const scale =
      written ??
      // Behind a part with a unit, a part without one can only mean the same: `10 nF..20`.
      parts.slice(0, index).findLast((earlier) => earlier.scale !== undefined)?.scale ??
      (usual === undefined ? usualCapacitance(parts) : scaleOf(usual, unit));
    if (scale === undefined) {
      const { suggest } = UNIT_FACTS[unit];
      return fail(`The unit is missing; write ${suggest} behind the number.`, part.end);
    }
    scales.push(scale);
  }
  return ok(scales);
};

/** A part's value in the SI unit. */
export const valueOf = ({ number, at }: Part, scale: Scale, unit: Unit): Result<number> => {
  const digits = `${number.negative ? '-' : ''}${number.digits}`;
  const { power, factor = 1, offset = 0 } = scale;
  // The prefix goes into the exponent, so that 4n7, 4.7n and 4700 pF are the same number.
  const value = Number(`${digits}e${String(number.exponent + power)}`) * factor + offset;
  const nothing = /^[0.]*$/u.test(number.digits);
  if (!Number.isFinite(value)) return fail('That number is too large.', at);
  if (value === 0 && !nothing && offset === 0) return fail('That number is too small.', at);
  if (value < 0 && !UNIT_FACTS[unit].signed)
    return fail(`${capital(UNIT_FACTS[unit].kind)} cannot be below zero.`, at);
  return ok(value === 0 ? 0 : value);
};
