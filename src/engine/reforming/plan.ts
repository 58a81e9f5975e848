import { dissipation } from '../equations/heat.ts';
import type { ReformingRow } from '../../schemas/reforming.ts';
import type { Part } from '../assessment/parts.ts';
import type { Basis, Catalogue, SourceId } from '../catalogue.ts';
import { leakageLimit } from '../triage/leakage-limit.ts';
import { valuesBetween } from '../values/index.ts';

/** One voltage of a re-forming, and how long it stays at the least. */
export interface ReformingStep {
  /** Of the supply, V. */
  voltage: number;
  /** s */
  time: number;
}

/** How to re-form a wet electrolytic after a time without voltage; SI units. */
export interface ReformingPlan {
  /** In series, ohm: a preferred value. */
  resistor: number;
  /** Heat (W) in it should the part be a short. */
  heat: number;
  /** Voltages from the first to the rated one. */
  steps: ReformingStep[];
  /** At rated voltage, s. */
  hold: number;
  /** Leakage (A) that must come to stand still below. */
  leakage: number;
  /** The same as the voltage (V) across the resistor. */
  drop: number;
  /** Voltage (V) across the resistor that condemns the part if it still stands there ... */
  scrapDrop: number;
  /** ... after this time at rated voltage, s. */
  giveUp: number;
  /** Resistor (ohm) to discharge it through. */
  discharge: number;
  /** Before it is measured, s. */
  rest: number;
  /** Whether it is done once more the other way round, for a part that takes both signs. */
  bothWays: boolean;
  sources: SourceId[];
  bases: Basis[];
}

type Figure = ReformingRow['figure'];

/** The row of a figure that holds after the longest time without voltage that has passed. */
const rowFor = (
  rows: readonly ReformingRow[],
  figure: Figure,
  years: number,
): ReformingRow | undefined =>
  rows
    .filter((row) => row.figure === figure && row.idle_from <= years)
    .toSorted((a, b) => b.idle_from - a.idle_from)[0];

/**
 * How to re-form a part: voltage in steps through a resistor, until its leakage stands still within
 * bounds. Nothing for types that are not re-formed.
 *
 * The resistor is the one that recipes name, or a smaller one where the leakage that is allowed in
 * the end would take more of the voltage in it than marks a bad part; never less than makers use on
 * new parts. Each step lasts at least until the part is charged.
 *
 * @param part capacitance in F, rated voltage in V
 * @param idle time without voltage, s
 */
export const reformingPlan = (
  catalogue: Pick<Catalogue, 'reforming' | 'leakageLimits' | 'units' | 'types'>,
  part: Pick<Part, 'type' | 'capacitance' | 'ratedVoltage'>,
  idle: number,
): ReformingPlan | undefined => {
  const { type, capacitance, ratedVoltage } = part;
  const limit = leakageLimit(catalogue.leakageLimits, type, capacitance, ratedVoltage);
  const rows = catalogue.reforming.filter(
    ({ types, v_from: from, v_to: to }) =>
      types.includes(type) && ratedVoltage > from && ratedVoltage <= to,
  );
  if (limit === undefined || rows.length === 0) return undefined;
  const years = idle / (catalogue.units['years']?.factor ?? 1);
  const used: ReformingRow[] = [];
  const figure = (name: Figure): number => {
    const row = rowFor(rows, name, years);
    if (row === undefined) throw new Error(`reforming.csv says no ${name} for ${type}`);
    used.push(row);
    return row.value * (catalogue.units[row.unit]?.factor ?? 1);
  };
  const leakage = figure('leakage-most') * limit;
  const scrapDrop = figure('drop-most') * ratedVoltage;
  const wanted = Math.min(figure('resistor'), scrapDrop / leakage);
  const least = figure('resistor-least');
  const resistor = valuesBetween('E12', least, Math.max(least, wanted)).at(-1) ?? least;
  const time = Math.max(figure('step-time'), figure('time-constants') * resistor * capacitance);
  const [first, step] = [figure('first-step'), figure('step')];
  const count = Math.max(0, Math.ceil((1 - first) / step - 1e-9));
  const shares = Array.from({ length: count + 1 }, (_, index) => Math.min(1, first + index * step));
  return {
    resistor,
    heat: dissipation(ratedVoltage, resistor),
    steps: shares.map((share) => ({ voltage: share * ratedVoltage, time })),
    hold: figure('hold'),
    leakage,
    drop: leakage * resistor,
    scrapDrop,
    giveUp: figure('give-up'),
    discharge: figure('discharge') * ratedVoltage,
    rest: figure('rest'),
    bothWays: catalogue.types[type]?.polarity === 'non-polar',
    sources: [...new Set(used.map(({ source }) => source))],
    bases: used.map(({ basis }) => basis),
  };
};
