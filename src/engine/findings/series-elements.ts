import { inThePath } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { impedanceSpan } from '../equations/impedance.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { esrOf, RESISTANCE, type SeriesResistance } from '../sizes/esr-of.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';

const INDUCTANCE = 'inductance';

/** Self-inductance (H) of a part. */
export const inductanceOf = (part: Part, circumstances: Circumstances): Range | undefined =>
  inThePath(part, (single) => rangeOf(circumstances, single, INDUCTANCE));

/** Where a series resistance is from, for a working. */
const origin = ({ by }: SeriesResistance): string =>
  by === 'value' ? 'for its value and voltage' : 'as of its type, whatever the value';

/** What a finding that uses a series resistance rests on. */
const restingOn = ({ by, sources, bases }: SeriesResistance) => ({
  properties: by === 'type' ? [RESISTANCE] : [],
  sources: [...sources],
  bases: [...bases],
});

/** Series resistance against the window that keeps the circuit stable. */
export const esrWindow: FindingModel = {
  measure: (part, { catalogue }) => {
    const resistance = esrOf(catalogue, part);
    return resistance === undefined
      ? { status: 'unknown', missing: [RESISTANCE] }
      : { status: 'known', value: resistance.range, ...restingOn(resistance) };
  },
  working: (part, circumstances, value) => {
    const resistance = esrOf(circumstances.catalogue, part);
    return (
      `${formatQuantity(value, 'ohm')}${resistance ? ` ${origin(resistance)}` : ''}, wanted ` +
      `${formatValue(conditionOf(circumstances, 'esr-min').typ, 'ohm')} to ` +
      formatValue(conditionOf(circumstances, 'esr-max').typ, 'ohm')
    );
  },
  limit: (circumstances) => ({
    low: conditionOf(circumstances, 'esr-min').typ,
    high: conditionOf(circumstances, 'esr-max').typ,
  }),
};

/** Impedance at the highest frequency that a bypass must serve. */
export const impedance: FindingModel = {
  measure: (part, circumstances) => {
    const inductance = inductanceOf(part, circumstances);
    if (inductance === undefined) return { status: 'unknown', missing: [INDUCTANCE] };
    const resistance = esrOf(circumstances.catalogue, part);
    const rests = resistance === undefined ? { properties: [] } : restingOn(resistance);
    return {
      status: 'known',
      ...rests,
      value: impedanceSpan(
        conditionOf(circumstances, 'f-work').typ,
        resistance?.range ?? exactly(0),
        inductance,
        part.capacitance,
      ),
      properties: [INDUCTANCE, ...rests.properties],
    };
  },
  working: (part, circumstances, value) => {
    const inductance = inductanceOf(part, circumstances) ?? exactly(NaN);
    const resistance = esrOf(circumstances.catalogue, part);
    const ohms = resistance
      ? `${formatQuantity(resistance.range, 'ohm')} ${origin(resistance)}`
      : 'series resistance not known';
    return (
      `${formatQuantity(inductance, 'H')}, ${ohms} and ` +
      `${formatValue(part.capacitance, 'F')} at ` +
      `${formatValue(conditionOf(circumstances, 'f-work').typ, 'Hz')}: ${formatQuantity(value, 'ohm')}`
    );
  },
};
