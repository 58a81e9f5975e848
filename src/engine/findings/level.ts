import type { Part } from '../assessment/parts.ts';
import { magnitude } from '../equations/drift.ts';
import { levelChange, seriesForChange } from '../equations/level.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { conditionOf, type Circumstances, type FindingModel, type Limit } from './model.ts';
import { originOf, resistanceOf, type PartResistance } from './series-resistance.ts';

const loadOf = (circumstances: Circumstances): number => conditionOf(circumstances, 'load').typ;

const oldOf = (circumstances: Circumstances): number => conditionOf(circumstances, 'esr-old').typ;

/** Whether a part is another of the old type and value. */
const isLikeOld = ({ type, capacitance, made }: Part, { original }: Circumstances): boolean =>
  made === undefined && type === original.type && capacitance === original.capacitance;

/** Series resistance; of a part like the old one what that one brought when it was sound. */
const ownResistance = (part: Part, circumstances: Circumstances): PartResistance | undefined => {
  const own = resistanceOf(part, circumstances, conditionOf(circumstances, 'f-work').typ);
  return own !== undefined && isLikeOld(part, circumstances)
    ? { ...own, range: exactly(oldOf(circumstances)) }
    : own;
};

/** Louder (dB) with the part than with the old one, above zero; the load is one and the same. */
const changeBy = ({ range }: PartResistance, circumstances: Circumstances): Range =>
  levelChange(loadOf(circumstances), oldOf(circumstances), range);

/**
 * Series resistance (ohm) that a part must have to change the level by no more than a limit (dB)
 * allows, and that of the old part, which changes nothing.
 */
export const resistanceForLevel = (
  { high = 0 }: Limit,
  circumstances: Circumstances,
): { low: number; best: number; high: number } => {
  const [load, old] = [loadOf(circumstances), oldOf(circumstances)];
  return {
    low: seriesForChange(load, old, high),
    best: old,
    high: seriesForChange(load, old, -high),
  };
};

/** Changes (dB) below this are none to any ear. */
const SILENT = 0.005;

const usualChange = (change: number): string => {
  const size = formatValue(Math.abs(change), 'dB');
  if (Math.abs(change) < SILENT) return 'none';
  return `${size} ${change > 0 ? 'louder' : 'softer'}`;
};

/** Change of the level at the load where a part of another series resistance takes the place. */
export const levelShift: FindingModel = {
  measure: (part, circumstances) => {
    const own = ownResistance(part, circumstances);
    if (own === undefined) return { status: 'unknown', missing: ['dissipation-factor-1khz'] };
    const { properties, sources, bases } = own;
    return {
      status: 'known',
      value: magnitude(changeBy(own, circumstances)),
      properties,
      sources,
      bases,
    };
  },
  working: (part, circumstances) => {
    const own = ownResistance(part, circumstances);
    if (own === undefined) return '';
    const load = formatValue(loadOf(circumstances), 'ohm');
    const change = changeBy(own, circumstances);
    return (
      `(${load} + ${formatValue(oldOf(circumstances), 'ohm')} of the old part) / ` +
      `(${load} + ${formatQuantity(own.range, 'ohm')} ` +
      `${originOf(own, conditionOf(circumstances, 'f-work').typ)}): ` +
      `${formatQuantity(magnitude(change), 'dB')}, usually ${usualChange(change.typ)}`
    );
  },
};
