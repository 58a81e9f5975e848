import { say, sayNumber, sayTolerance } from '../markings/meanings/say.ts';
import type { ColourRole } from '../../schemas/marking-colours.ts';
import type { MeaningRow } from './scheme.ts';

const withWord = (text: string, word: string): string => (word === '' ? text : `${text}, ${word}`);

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Small factors as they are, large ones as a power of ten. */
const sayMultiplier = (factor: number): string =>
  factor <= 1000
    ? `× ${factor}`
    : `× 10${[...String(Math.round(Math.log10(factor)))].map((figure) => RAISED[Number(figure)]).join('')}`;

const sayTemperature = ({ low, value, high, word }: MeaningRow): string => {
  const figures =
    value === undefined
      ? `${sayNumber(low ?? 0)} to ${sayNumber(high ?? 0)} ppm/K`
      : low === undefined
        ? `${value > 0 ? '+' : ''}${sayNumber(value)} ppm/K`
        : `±${sayNumber(high ?? 0)} ppm/K`;
  return withWord(figures, word);
};

const words: Record<ColourRole, (row: MeaningRow) => string> = {
  digit: ({ value = 0 }) => `figure ${value}`,
  multiplier: ({ value = 1 }) => sayMultiplier(value),
  tolerance: ({ low = 0, high = 0, unit, word }) =>
    withWord(sayTolerance(-low, high, unit === 'pF' ? 'pF' : '%'), word),
  voltage: ({ value = 0 }) => `rated ${say(value, 'V')}`,
  'hundreds-of-volts': ({ value = 0 }) => `figure ${value} of the voltage, in hundreds of volts`,
  temperature: sayTemperature,
  characteristic: ({ word }) => `characteristic ${word}`,
  'failure-rate': ({ value = 0, word }) => withWord(`${value} % fail in 1000 hours`, word),
  'temperature-range': ({ low = 0, high = 0 }) => `${sayNumber(low)} to ${sayNumber(high)} °C`,
  vibration: ({ low = 0, high = 0 }) => `tested with vibration from ${low} to ${high} Hz`,
  class: ({ word }) => word,
  identifier: ({ word }) => word,
  type: ({ word }) => word,
  link: ({ word }) => word,
};

/** What a colour means, in a few words. */
export const sayMeaning = (row: MeaningRow): string => words[row.role](row);

/** The same with what other tables have instead. */
export const sayMeanings = ([usual, ...others]: readonly MeaningRow[]): string => {
  if (usual === undefined) return '';
  const first = sayMeaning(usual);
  const rest = [...new Set(others.map(sayMeaning))].filter((text) => text !== first);
  return rest.length === 0
    ? first
    : `${first}; ${rest.length === 1 ? 'another table has' : 'other tables have'} ${rest.join(' or ')}`;
};
