import { timesAsked } from '../../equations/beyond-telling.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { mapFalling } from '../../quantities/range.ts';
import { byFigures, factAt, type DeviceModel } from '../model.ts';

/** A level that the circuit gives, as a share of one that the part asks for. */
const driven = (property: string, level: string, words: string): DeviceModel =>
  byFigures({
    properties: [property],
    at: 'supply',
    value: (numbers) => mapFalling(factAt(numbers, 0), (asked) => numbers.of(level) / asked),
    working: (numbers) =>
      `${formatValue(numbers.of(level), 'V')}, where ${words} ${formatQuantity(factAt(numbers, 0), 'V')} is sure`,
  });

/** A level that the part gives, as a share of one that the circuit asks for. */
const given = (property: string, level: string): DeviceModel =>
  byFigures({
    properties: [property],
    at: 'supply',
    value: (numbers) => timesAsked(factAt(numbers, 0), numbers.of(level)),
    working: (numbers) =>
      `${formatQuantity(factAt(numbers, 0), 'V')} against ${formatValue(numbers.of(level), 'V')}`,
  });

export const driveHigh = driven('input-high', 'high-level', 'from');
export const driveLow = driven('input-low', 'low-level', 'up to');
export const givesHigh = given('output-high', 'next-high');
export const givesLow = given('output-low', 'next-low');

/** Current that a low output takes, as a share of what is sent into it. */
export const sinks = byFigures({
  properties: ['sink-current'],
  at: 'supply',
  value: (numbers) => timesAsked(factAt(numbers, 0), numbers.of('sink-needed')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'A')} against ${formatValue(numbers.of('sink-needed'), 'A')}`,
});
