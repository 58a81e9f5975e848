import type { Made, OfferedPart, Part } from '../assessment/parts.ts';
import {
  equalisingResistor,
  parallelCapacitance,
  parallelTolerance,
  seriesCapacitance,
  seriesTolerance,
  worstShare,
} from '../equations/combinations.ts';
import { dissipation } from '../equations/heat.ts';
import { leakOf } from '../findings/insulation.ts';
import { conditionOr, type Circumstances } from '../findings/model.ts';
import { formatValue } from '../quantities/index.ts';
import { FLOAT_ERROR } from '../quantities/within.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { valuesBetween } from '../values/index.ts';
import type { Pair } from './in-parallel.ts';

const orderingOf = ([a, b]: Pair): Pick<OfferedPart, 'style' | 'pitch' | 'series'> => ({
  style: a.style === b.style ? a.style : `${a.style} and ${b.style}`,
  pitch: a.style === b.style ? a.pitch.filter((pitch) => b.pitch.includes(pitch)) : [],
  series: a.series,
});

const joined = (
  pair: Pair,
  whole: Pick<Part, 'capacitance' | 'tolerance' | 'ratedVoltage'>,
  made: Omit<Made, 'parts'>,
): OfferedPart => ({
  type: pair[0].type,
  voltageKind: pair[0].voltageKind,
  ...whole,
  ...orderingOf(pair),
  made: { ...made, parts: [...pair] },
});

const percent = (fraction: number): string => formatValue(fraction, 'fraction');

const spread = ({ minus, plus }: Part['tolerance']): string =>
  Math.abs(minus - plus) < 1e-6 ? `±${percent(plus)}` : `+${percent(plus)}/−${percent(minus)}`;

/** Two parts in parallel: their values add up, the lower rating counts. */
export const inParallel = (pair: Pair): OfferedPart => {
  const capacitance = parallelCapacitance(pair.map((part) => part.capacitance));
  const tolerance = parallelTolerance(pair);
  const [first, second] = pair.map((part) => formatValue(part.capacitance, 'F'));
  return joined(
    pair,
    { capacitance, tolerance, ratedVoltage: Math.min(...pair.map((part) => part.ratedVoltage)) },
    {
      kind: 'parallel',
      why:
        `${first ?? ''} and ${second ?? ''} in parallel make ${formatValue(capacitance, 'F')}; ` +
        `${spread(tolerance)} together where both are off the same way`,
    },
  );
};

/** The largest E12 value (ohm) that is not above a resistance. */
const nextLower = (ohm: number): number | undefined =>
  valuesBetween('E12', ohm / 2, ohm * (1 + FLOAT_ERROR)).at(-1);

interface Equalising {
  bleeder?: number;
  words: string;
}

/**
 * The resistor across each of two parts in series that keeps DC voltage shared no worse than
 * while charging, should one leak as much as its limit and the other not at all. Nothing where
 * leakage is not known or the resistor would run too hot.
 */
const equalising = (
  part: Part,
  share: number,
  circumstances: Circumstances,
): Equalising | undefined => {
  const voltage = conditionOr(circumstances, 'vdc', 0).max;
  if (voltage === 0) return { words: 'no DC voltage is across them here' };
  const most = share * voltage;
  const leak = leakOf(part, circumstances, most);
  if (leak === undefined) return undefined;
  const needed = equalisingResistor(voltage, share, leak.current.max);
  const bleeder = nextLower(Math.min(ruleOf(circumstances.catalogue, 'largest-resistor'), needed));
  if (bleeder === undefined) return undefined;
  const heat = dissipation(most, bleeder);
  if (heat > ruleOf(circumstances.catalogue, 'hottest-resistor')) return undefined;
  return {
    bleeder,
    words:
      `${formatValue(bleeder, 'ohm')} across each keeps it so with ` +
      `${formatValue(voltage, 'V')} standing there, should one leak ` +
      `${formatValue(leak.current.max, 'A')} and the other nothing; up to ` +
      `${formatValue(most, 'V')} and ${formatValue(heat, 'W')} at each resistor`,
  };
};

/** Two like parts in series: half the value, and as much voltage as the worse off of them allows. */
export const inSeries = (part: OfferedPart, circumstances: Circumstances): OfferedPart[] => {
  const share = worstShare(part.tolerance);
  const evened = equalising(part, share, circumstances);
  if (evened === undefined) return [];
  const pair: Pair = [part, part];
  const ratedVoltage = part.ratedVoltage / share;
  return [
    joined(
      pair,
      {
        capacitance: seriesCapacitance(pair.map(({ capacitance }) => capacitance)),
        tolerance: seriesTolerance(pair),
        ratedVoltage,
      },
      {
        kind: 'series',
        ...(evened.bleeder === undefined ? {} : { bleeder: evened.bleeder }),
        why:
          `at ${spread(part.tolerance)} one of them may take ${percent(share)} of the voltage, so ` +
          `together they take ${formatValue(ratedVoltage, 'V')} and not ` +
          `${formatValue(2 * part.ratedVoltage, 'V')}; ${evened.words}`,
      },
    ),
  ];
};

/** Two like polar parts in series with like poles joined: half the value, the rating of one. */
export const backToBack = (part: OfferedPart): OfferedPart => {
  const pair: Pair = [part, part];
  const capacitance = seriesCapacitance(pair.map((one) => one.capacitance));
  return joined(
    pair,
    { capacitance, tolerance: seriesTolerance(pair), ratedVoltage: part.ratedVoltage },
    {
      kind: 'back-to-back',
      why:
        `two of ${formatValue(part.capacitance, 'F')} in series make ` +
        `${formatValue(capacitance, 'F')}; whichever sign the voltage has, one of them takes ` +
        `all of it, so the pair is good for ${formatValue(part.ratedVoltage, 'V')}, as each is`,
    },
  );
};
