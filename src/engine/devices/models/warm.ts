import { leakageWhenWarm } from '../../equations/switch.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import type { Range } from '../../quantities/range.ts';
import type { Numbers } from '../model.ts';

/** Leakage (A) of a junction, of which a figure at 25 degC is known, at the temperature of the circuit. */
export const whenWarm = (numbers: Numbers, leakage: Range): Range =>
  leakageWhenWarm(leakage, numbers.of('temperature'), numbers.rule('junction-doubling'));

/** The same in words: the figure, and how it grows. */
export const warmWords = (numbers: Numbers, leakage: Range): string =>
  `${formatQuantity(leakage, 'A')} at 25 °C, doubled every ${formatValue(numbers.rule('junction-doubling'), 'K')} up to ${formatValue(numbers.of('temperature'), 'degC')}`;
