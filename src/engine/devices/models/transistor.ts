import { amplifiedLeakage, shareOfWorking } from '../../equations/transistor.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { byFigures, factAt, type Numbers } from '../model.ts';
import { figureOf, shareOf } from './rating.ts';

export const stands = shareOf('breakdown', 'top-voltage', 'V');
export const carries = shareOf('current-max', 'top-current', 'A');
export const amplifies = figureOf('gain', 'ratio');
export const fastEnough = figureOf('transition', 'Hz');

const amplified = (numbers: Numbers) =>
  amplifiedLeakage(factAt(numbers, 0), factAt(numbers, 1), {
    warm: numbers.of('temperature'),
    doubling: numbers.rule('junction-doubling'),
  });

/** Leakage of the collector, amplified, as a share of the current that the stage works at. */
export const leakageShare = byFigures({
  properties: ['reverse-leakage', 'gain'],
  value: (numbers) => shareOfWorking(amplified(numbers), numbers.of('top-current')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'A')} at 25 °C become ${formatQuantity(amplified(numbers), 'A')} at ${formatValue(numbers.of('temperature'), 'degC')} with nothing at the base, of ${formatValue(numbers.of('top-current'), 'A')}`,
});
