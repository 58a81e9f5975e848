import { inThePath } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { impedanceSpan } from '../equations/impedance.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { RESISTANCE, TABLE_FREQUENCY } from '../sizes/esr-of.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';
import { highFrequencyResistance, originOf, type PartResistance } from './series-resistance.ts';

const INDUCTANCE = 'inductance';

/** Self-inductance (H) of a part. */
export const inductanceOf = (
  part: Part,
  circumstances: Pick<Circumstances, 'catalogue'>,
): Range | undefined => inThePath(part, (single) => rangeOf(circumstances, single, INDUCTANCE));

/** What a finding that uses a series resistance rests on. */
const restingOn = ({ properties, sources, bases }: PartResistance) => ({
  properties,
  sources,
  bases,
});

const inWords = (resistance: PartResistance): string =>
  `${formatQuantity(resistance.range, 'ohm')} ${originOf(resistance, TABLE_FREQUENCY)}`;

/** Series resistance against the window that keeps the circuit stable. */
export const esrWindow: FindingModel = {
  measure: (part, circumstances) => {
    const resistance = highFrequencyResistance(part, circumstances);
    return resistance === undefined
      ? { status: 'unknown', missing: [RESISTANCE] }
      : { status: 'known', value: resistance.range, ...restingOn(resistance) };
  },
  working: (part, circumstances) => {
    const resistance = highFrequencyResistance(part, circumstances);
    return (
      `${resistance ? inWords(resistance) : 'not known'}, wanted ` +
      `${formatValue(conditionOf(circumstances, 'esr-min').typ, 'ohm')} to ` +
      formatValue(conditionOf(circumstances, 'esr-max').typ, 'ohm')
    );
  },
  limit: (circumstances) => ({
    low: conditionOf(circumstances, 'esr-min').typ,
    high: conditionOf(circumstances, 'esr-max').typ,
  }),
};

/**
 * Impedance (ohm) of a part at a frequency (Hz), from its inductance, its series resistance near
 * 100 kHz and its value; nothing where the inductance is not known.
 */
export const impedanceAt = (
  part: Part,
  circumstances: Pick<Circumstances, 'catalogue'>,
  hertz: number,
): Range | undefined => {
  const inductance = inductanceOf(part, circumstances);
  if (inductance === undefined) return undefined;
  const resistance = highFrequencyResistance(part, circumstances);
  return impedanceSpan(hertz, resistance?.range ?? exactly(0), inductance, part.capacitance);
};

/** Impedance at the highest frequency that a bypass must serve. */
export const impedance: FindingModel = {
  measure: (part, circumstances) => {
    const value = impedanceAt(part, circumstances, conditionOf(circumstances, 'f-work').typ);
    if (value === undefined) return { status: 'unknown', missing: [INDUCTANCE] };
    const resistance = highFrequencyResistance(part, circumstances);
    const rests = resistance === undefined ? { properties: [] } : restingOn(resistance);
    return {
      status: 'known',
      ...rests,
      value,
      properties: [INDUCTANCE, ...rests.properties],
    };
  },
  working: (part, circumstances, value) => {
    const inductance = inductanceOf(part, circumstances) ?? exactly(NaN);
    const resistance = highFrequencyResistance(part, circumstances);
    const ohms = resistance ? inWords(resistance) : 'ESR not known';
    return (
      `${formatQuantity(inductance, 'H')}, ${ohms} and ` +
      `${formatValue(part.capacitance, 'F')} at ` +
      `${formatValue(conditionOf(circumstances, 'f-work').typ, 'Hz')}: ${formatQuantity(value, 'ohm')}`
    );
  },
};
