import { heatByCurrent } from '../equations/heat.ts';
import type { OfferedPart } from '../assessment/parts.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import type { Range } from '../quantities/range.ts';
import { ruleOf, rulesOf, type WithRules } from '../rule-of-thumb.ts';
import { valuesBetween } from '../values/index.ts';

/** Series resistance (ohm) that a finding asks for, and the one that would be best, if any is. */
export interface Wanted {
  low: number;
  high: number;
  best?: number;
}

/** Of rising resistances the one in the middle, or the nearest in ratio to a best one. */
const pick = (fitting: readonly number[], best: number | undefined): number | undefined => {
  if (best === undefined || best <= 0) return fitting[Math.floor(fitting.length / 2)];
  const distance = (ohm: number): number => Math.abs(Math.log(ohm / best));
  return fitting.toSorted((a, b) => distance(a) - distance(b))[0];
};

/** The power (W) that a resistor carries, and the rating to buy. */
const powerOf = (
  rules: WithRules,
  resistor: number,
  current: number,
): { heat: number; rating: number | undefined } => {
  const heat = heatByCurrent(current, resistor);
  const least = ruleOf(rules, 'resistor-power-in-hand') * heat;
  return { heat, rating: rulesOf(rules, 'resistor-powers').find((power) => power >= least) };
};

/**
 * A part with the E12 resistor that brings its series resistance (ohm) to what is wanted at both
 * ends: the one nearest to the best, or in the middle, which leaves as much to spare either way.
 * Nothing where none does or where it would run too hot.
 * @param current that flows through it, RMS, A; nothing where it is not known
 */
export const withResistor = (
  rules: WithRules,
  part: OfferedPart,
  own: Range,
  { low, high, best }: Wanted,
  current?: number,
): OfferedPart[] => {
  const tolerance = ruleOf(rules, 'resistor-tolerance');
  const least = (low - own.min) / (1 - tolerance);
  const most = (high - own.max) / (1 + tolerance);
  const fitting = least > 0 ? valuesBetween('E12', least, most) : [];
  const resistor = pick(fitting, best === undefined ? undefined : best - own.typ);
  if (resistor === undefined) return [];
  const total = { min: own.min + resistor, typ: own.typ + resistor, max: own.max + resistor };
  const power = current === undefined ? undefined : powerOf(rules, resistor, current);
  if (power !== undefined && power.rating === undefined) return [];
  const heated =
    power?.rating === undefined || current === undefined
      ? ''
      : `; up to ${formatValue(current, 'A')} through it makes ${formatValue(power.heat, 'W')}, so ` +
        `one for ${formatValue(power.rating, 'W')}`;
  return [
    {
      ...part,
      made: {
        kind: 'with-resistor',
        parts: [part],
        resistor,
        ...(power?.rating === undefined ? {} : { power: power.rating }),
        why:
          `${formatValue(resistor, 'ohm')} and ${formatQuantity(own, 'ohm')} of its own make ` +
          `${formatQuantity(total, 'ohm')}, wanted ${formatValue(low, 'ohm')} to ` +
          `${formatValue(high, 'ohm')}${heated}`,
      },
    },
  ];
};
