import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { scale } from '../../quantities/range.ts';
import { byFigures, factAt } from '../model.ts';
import { figureOf } from './rating.ts';

export const seatHeight = figureOf('seat-height', 'm');
export const contact = figureOf('contact-resistance', 'ohm');
export const builtInCapacitor = figureOf('built-in-capacitor', 'F');

/** The built-in capacitor as a share of the one that the rail has. */
export const addsToRail = byFigures({
  properties: ['built-in-capacitor'],
  value: (numbers) => scale(factAt(numbers, 0), 1 / numbers.of('rail-capacitor')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'F')} beside ${formatValue(numbers.of('rail-capacitor'), 'F')} of the rail`,
});
