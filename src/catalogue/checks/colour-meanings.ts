import type { ColourRole } from '../../schemas/marking-colours.ts';
import type { ValueOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'colour-meaning';

const MEANINGS = 'markings/colour-meanings.csv';

type Meaning = ValueOf<typeof MEANINGS>;

/** A column that does not hold what its role needs, and what that is. */
type Lack = { column: string; expected: string } | undefined;
type Need = (meaning: Meaning) => Lack;

const figure: Need = ({ value }) =>
  value !== undefined && Number.isInteger(value) && value >= 0 && value <= 9
    ? undefined
    : { column: 'value', expected: 'a figure from 0 to 9' };

const aboveZero =
  (...units: Meaning['unit'][]): Need =>
  ({ value, unit }) => {
    if (value === undefined || value <= 0)
      return { column: 'value', expected: 'a number above zero' };
    return units.includes(unit)
      ? undefined
      : { column: 'unit', expected: units.join(' or ') || 'none' };
  };

const span =
  (...units: Meaning['unit'][]): Need =>
  ({ low, high, unit }) => {
    if (low === undefined) return { column: 'low', expected: 'the lower end' };
    if (high === undefined) return { column: 'high', expected: 'the upper end' };
    return units.includes(unit) ? undefined : { column: 'unit', expected: units.join(' or ') };
  };

const spanOrValue: Need = (meaning) =>
  meaning.value !== undefined && meaning.unit === 'ppm/K' ? undefined : span('ppm/K')(meaning);

const word: Need = (meaning) =>
  meaning.word === '' ? { column: 'word', expected: 'what it means, in words' } : undefined;

const needs: Record<ColourRole, Need> = {
  digit: figure,
  'hundreds-of-volts': figure,
  multiplier: aboveZero(''),
  tolerance: span('percent', 'pF'),
  voltage: aboveZero('V'),
  temperature: spanOrValue,
  class: word,
  characteristic: word,
  identifier: word,
  type: word,
  link: word,
  'failure-rate': aboveZero('percent/1000h'),
  'temperature-range': span('degC'),
  vibration: span('Hz'),
};

export const colourMeanings: Check = {
  id: rule,
  about: 'A meaning of a colour holds the figures or words that its role needs.',
  needs: [MEANINGS],
  check: (tables) =>
    goodRows(tables, MEANINGS).flatMap((row) => {
      const lack = needs[row.value.role](row.value);
      if (lack === undefined) return [];
      const { column, expected } = lack;
      return [
        cellFault(rule, MEANINGS, row, column, { wrong: `not as ${row.value.role} is`, expected }),
      ];
    }),
};
