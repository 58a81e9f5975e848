import { z } from 'zod';
import { id, idList, text } from './cells.ts';

/** What one field of a bench sum is filled with where a finding leads to it. */
export const sumInputRow = z.strictObject({
  sum: id.describe('id of a bench sum'),
  input: text.describe('key of one of its fields'),
  takes: z
    .enum([
      'capacitance',
      'rated-voltage',
      'type',
      'old-capacitance',
      'old-rated-voltage',
      'series-resistance',
      'surge-resistance',
      'with-own-resistance',
      'with-surge-resistance',
      'service-capacitance',
      'loss',
      'own-heat',
      'heat-for-ten-kelvin',
      'core-rise',
      'alternating-rating',
      'pulse-rating',
      'ripple-type',
      'reformed-type',
      'ripple-rating',
      'ripple-rating-frequency',
      'ripple-rating-temperature',
      'warming',
      'figure',
      'condition',
      'highest',
      'peak',
      'property',
      'property-if-known',
      'value',
      'mark',
      'mid-travel',
      'setting',
      'rating',
      'rms',
      'by-wiring',
      'wiring',
      'words',
      'nothing',
    ])
    .describe(
      'capacitance, rated-voltage, type: of the part that the finding is about; old-…: of the one that it replaces; series-resistance: at the working frequency; surge-resistance: series resistance near 100 kHz, where sheets list it; with-…-resistance: a resistance of the position and that of the part, as far as it is known; service-capacitance: what tolerance, temperature, age and bias leave; loss: the published one nearest to the working frequency; own-heat: by its ripple current; heat-for-ten-kelvin: what its body gives off when it is so much warmer; core-rise: of its core over that of its surface; alternating-rating: AC voltage that it takes at mains frequency; pulse-rating: its steepest edge; ripple-type: the type, where factors on its ripple current are listed; reformed-type: the type, where it is re-formed; ripple-rating…: what is listed for it; warming: from the coldest to the warmest; figure: what the finding itself comes to; condition: of the position; highest: its upper end; peak: of a condition that is an RMS value; property: of its type; property-if-known: the field keeps its usual number where it is not; value, mark, rating: of a part that is no capacitor, its mark with its tolerance or without; mid-travel: half of the mark of a trimmer; setting: of the old trimmer, carried over, as a share of the new total; rms: steady and AC voltage together; by-wiring: the first property with two terminals in use, the second with three; wiring: which of the two it is; words: always the same; nothing: the field keeps what stands in it',
    ),
  of: idList.describe(
    'the condition, the property or the words; for type: properties that it must have',
  ),
  for: idList.describe(
    'findings that this row is for; a row without any is for those for which there is no other',
  ),
});
export type SumInputRow = z.output<typeof sumInputRow>;
