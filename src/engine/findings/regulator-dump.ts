import { formatValue } from '../quantities/index.ts';
import { conditionOf, plain, type FindingModel } from './model.ts';

/**
 * Capacitance behind a regulator against what may discharge back through it when its input is
 * shorted. What the old part held was borne or has its diode, so as much is allowed.
 */
export const regulatorDump: FindingModel = {
  limit: (circumstances) => ({
    high: Math.max(
      conditionOf(circumstances, 'diode-free').typ,
      circumstances.original.capacitance,
    ),
  }),
  measure: ({ capacitance }) => plain(capacitance),
  working: ({ capacitance }, circumstances) => {
    const most = conditionOf(circumstances, 'diode-free').typ;
    const size = formatValue(capacitance, 'F');
    const limit = formatValue(most, 'F');
    if (capacitance <= most) return `${size}, and ${limit} need no diode`;
    return capacitance <= circumstances.original.capacitance
      ? `${size} are more than ${limit}, as the old part was: look for its reverse diode`
      : `${size} are more than ${limit}: an adjustable regulator needs a reverse diode then, ` +
          'cathode to its input and anode to its output; one that is named as safe without needs none';
  },
};
