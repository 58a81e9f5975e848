import { amplifiedLeakage, amplifiedLeakageShare } from '../../equations/transistor.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { byFigures, factAt } from '../model.ts';
import { figureOf, shareOf } from './rating.ts';

export const stands = shareOf('breakdown', 'top-voltage', 'V');
export const carries = shareOf('current-max', 'top-current', 'A');
export const amplifies = figureOf('gain', 'ratio');
export const fastEnough = figureOf('transition', 'Hz');

/** Leakage of the collector, amplified, as a share of the current that the stage works at. */
export const leakageShare = byFigures({
  properties: ['reverse-leakage', 'gain'],
  value: (numbers) =>
    amplifiedLeakageShare(
      factAt(numbers, 0),
      factAt(numbers, 1),
      numbers.of('temperature'),
      numbers.of('top-current'),
    ),
  working: (numbers) => {
    const [cutoff, gain, warm] = [
      factAt(numbers, 0),
      factAt(numbers, 1),
      numbers.of('temperature'),
    ];
    const amplified = formatQuantity(amplifiedLeakage(cutoff, gain, warm), 'A');
    return `${formatQuantity(cutoff, 'A')} at 25 °C become ${amplified} at ${formatValue(warm, 'degC')} with nothing at the base, of ${formatValue(numbers.of('top-current'), 'A')}`;
  },
});
