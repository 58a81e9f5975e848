import { recoveryShare } from '../../equations/diode.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { byFigures, factAt } from '../model.ts';
import { figureOf, shareOf } from './rating.ts';

export const reverse = shareOf('reverse-voltage', 'reverse-peak', 'V');
export const forward = shareOf('forward-current', 'load-current', 'A');
export const surge = shareOf('surge-current', 'surge', 'A');
export const drop = figureOf('drop', 'V', 'load-current');
export const reverseLeakage = figureOf('reverse-leakage', 'A');

const cycleWords = (hertz: number): string =>
  hertz > 0 ? `of a cycle of ${formatValue(1 / hertz, 's')}` : 'and nothing that goes to and fro';

/** Recovery time as a share of the cycle. */
export const recovery = byFigures({
  properties: ['recovery'],
  value: (numbers) => recoveryShare(factAt(numbers, 0), numbers.of('frequency')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 's')} ${cycleWords(numbers.of('frequency'))}`,
});
