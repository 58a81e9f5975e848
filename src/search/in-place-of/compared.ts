import { formatQuantity, formatValue, type Habit, type Unit } from '../../engine/index.ts';
import { inHabit } from '../../text/in-habit.ts';
import { printNumber } from '../../text/numbers.ts';
import { typeset } from '../../text/words.ts';
import type { InPlaceOfRow } from '../../schemas/in-place-of.ts';
import type { Side } from './side.ts';
import { FLOAT_ERROR } from '../../engine/quantities/within.ts';

/** One quantity that both parts of a question say. */
export interface Compared {
  quantity: InPlaceOfRow['quantity'];
  /** What the part to be fitted has, beside the old one. */
  thanOld: InPlaceOfRow['than_old'] | 'same';
  /** Both in words, such as `Rated voltage: 63 V for 50 V, 26 % more`. */
  words: string;
}

/** What can be compared, in the order in which one asks for it. */
const MEASURES: Readonly<Record<InPlaceOfRow['quantity'], readonly [name: string, unit: Unit]>> = {
  capacitance: ['Capacitance', 'F'],
  resistance: ['Resistance', 'ohm'],
  tolerance: ['Tolerance', 'fraction'],
  'rated-voltage': ['Rated voltage', 'V'],
  power: ['Rated power', 'W'],
  'highest-temperature': ['Highest temperature', 'degC'],
  'line-pulses': ['Pulses on the line that its class stands', 'V'],
  'impulse-test': ['Impulse that its class is tested with', 'V'],
};

/**
 * How much more or less one number is than another, behind a comma: a difference of temperatures, else
 * a share; nothing beside a resistance of 0, which is a link of wire.
 */
const difference = (fitted: number, old: number, unit: Unit, habit?: Habit): string => {
  const way = fitted > old ? 'more' : 'less';
  if (fitted === 0 || old === 0) return '';
  if (unit === 'degC') return `, ${formatValue(Math.abs(fitted - old), 'K', habit)} ${way}`;
  const ratio = fitted / old;
  const [share, times] = [Math.abs(ratio - 1), ratio].map((one) => Number(one.toPrecision(2)));
  return ratio > 0.5 && ratio < 2
    ? `, ${formatValue(share ?? 0, 'fraction', habit)} ${way}`
    : `, ${inHabit(printNumber(times ?? 0), habit ?? {})} times as much`;
};

/** Where a value lies beside what the old part itself may have; nothing is said of ratings. */
const besideOld = (fitted: number, { reading }: Side, habit?: Habit): string => {
  if (reading?.measured === undefined) return '';
  const { range, toleranceTaken } = reading.measured;
  const where = fitted >= range.min && fitted <= range.max ? 'within' : 'outside';
  const taken =
    toleranceTaken === undefined
      ? ''
      : `, ±${formatValue(toleranceTaken, 'fraction', habit)} taken`;
  const unit = reading.kind === 'resistor' ? 'ohm' : 'F';
  return `; ${where} what the old one itself may have (${formatQuantity(range, unit, habit)}${taken})`;
};

const APPROVALS: readonly string[] = ['line-pulses', 'impulse-test'];

/** Whether a part is approved for less than the old one, which no place makes up for. */
export const isOfLowerClass = (compared: readonly Compared[]): boolean =>
  compared.some(({ quantity, thanOld }) => thanOld === 'less' && APPROVALS.includes(quantity));

const VALUES: readonly string[] = ['capacitance', 'resistance'];

/** What both parts of a question say, the value first. */
export const comparedIn = (fitted: Side, old: Side, habit?: Habit): Compared[] =>
  Object.entries(MEASURES).flatMap(([key, [name, unit]]): Compared[] => {
    const quantity = key as InPlaceOfRow['quantity'];
    const [its, olds] = [fitted.numbers[quantity], old.numbers[quantity]];
    if (its === undefined || olds === undefined) return [];
    const print = (value: number): string =>
      (quantity === 'tolerance' ? '±' : '') + formatValue(value, unit, habit);
    if (Math.abs(its - olds) <= FLOAT_ERROR * Math.abs(olds))
      return [{ quantity, thanOld: 'same', words: `${name}: ${print(its)}, the same.` }];
    const isValue = VALUES.includes(quantity);
    const apart = quantity === 'tolerance' ? '' : difference(its, olds, unit, habit);
    return [
      {
        quantity,
        thanOld: its > olds ? 'more' : 'less',
        words: typeset(
          `${name}: ${print(its)} for ${print(olds)}${apart}${isValue ? besideOld(its, old, habit) : ''}.`,
        ),
      },
    ];
  });
