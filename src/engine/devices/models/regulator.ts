import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { byFigures, factAt } from '../model.ts';
import { figureOf, shareOf } from './rating.ts';

export const headroom = shareOf('dropout', 'headroom-low', 'V', 'load-current');
export const differenceLimit = shareOf('input-max', 'headroom-high', 'V');
export const load = shareOf('load-max', 'load-current', 'A');
export const outputCapacitor = shareOf('output-capacitor-min', 'output-capacitor', 'F');
export const outputEsr = figureOf('output-esr-min', 'ohm');
export const discharge = shareOf('discharge-safe', 'output-capacitor', 'F');
export const leastLoad = figureOf('load-min', 'A');

/** Highest input, which is output and difference, as a share of what the part takes. */
export const inputLimit = byFigures({
  properties: ['input-max', 'output-voltage'],
  value: (numbers) => {
    const [most, output] = [factAt(numbers, 0), factAt(numbers, 1)];
    const above = numbers.of('headroom-high');
    return {
      min: (output.typ + above) / most.max,
      typ: (output.typ + above) / most.typ,
      max: (output.typ + above) / most.min,
    };
  },
  working: (numbers) =>
    `${formatValue(factAt(numbers, 1).typ, 'V')} and ${formatValue(numbers.of('headroom-high'), 'V')} above it, of ${formatQuantity(factAt(numbers, 0), 'V')}`,
});
