import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { mapFalling } from '../../quantities/range.ts';
import { byFigures, factAt } from '../model.ts';

/** Supply as a share of the highest recommended. */
export const supplyHigh = byFigures({
  properties: ['supply-max'],
  value: (numbers) => mapFalling(factAt(numbers, 0), (most) => numbers.of('supply') / most),
  working: (numbers) =>
    `${formatValue(numbers.of('supply'), 'V')} of ${formatQuantity(factAt(numbers, 0), 'V')}`,
});

/** Supply as a multiple of the lowest that it works at. */
export const supplyLow = byFigures({
  properties: ['supply-min'],
  value: (numbers) => mapFalling(factAt(numbers, 0), (least) => numbers.of('supply') / least),
  working: (numbers) =>
    `${formatValue(numbers.of('supply'), 'V')}, where ${formatQuantity(factAt(numbers, 0), 'V')} is needed`,
});

/** Span of a signal as a share of the widest that the part passes. */
export const span = byFigures({
  properties: ['supply-max'],
  value: (numbers) =>
    mapFalling(
      factAt(numbers, 0),
      (most) => numbers.of('signal-span') / Math.min(most, numbers.of('supply')),
    ),
  working: (numbers) =>
    `${formatValue(numbers.of('signal-span'), 'V')} within ${formatValue(Math.min(numbers.of('supply'), factAt(numbers, 0).typ), 'V')} between the rails`,
});
