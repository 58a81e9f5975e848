import type { Catalogue } from '../../catalogue.ts';
import { voltageLifeFactor, wearLife } from '../../equations/life.ts';
import { formatValue } from '../../quantities/index.ts';
import { HOUR } from '../../quantities/si.ts';
import { voltageGainBy } from '../../laws.ts';
import { ruleOf } from '../../rule-of-thumb.ts';
import { noteIf, quantity, withFacts } from '../sum.ts';

/** What nobody vouches for any more, and what unused voltage does. */
const factsOf = (catalogue: Catalogue) => ({
  longest: ruleOf(catalogue, 'longest-life'),
  gain: voltageGainBy(catalogue),
});

/** Life of a wet electrolytic by temperature, ripple heating and voltage. */
export const electrolyticLife = withFacts(factsOf)({
  id: 'electrolytic-life',
  title: 'Life of an electrolytic',
  lead: 'How long a wet electrolytic lasts at its temperature, with its self-heating by ripple and with the voltage that is left unused.',
  group: 'rating',
  inputs: {
    rated: quantity({
      label: 'Rated life (endurance)',
      symbol: 'L_0',
      unit: 's',
      bare: 'h',
      usual: '2000 h',
      lowest: HOUR,
      highest: 1e9,
    }),
    top: quantity({
      label: 'At this temperature',
      symbol: 'T_0',
      unit: 'degC',
      usual: '105 °C',
      lowest: 40,
      highest: 200,
    }),
    t: quantity({
      label: 'Ambient temperature in use',
      symbol: 'T',
      unit: 'degC',
      usual: '60 °C',
      lowest: -55,
      highest: 200,
    }),
    rise: quantity({
      label: 'Self-heating by ripple',
      symbol: 'dT',
      unit: 'K',
      usual: '3 K',
      lowest: 0,
      highest: 100,
    }),
    doubling: quantity({
      label: 'Kelvin cooler that double the life',
      symbol: 'H',
      unit: 'K',
      usual: '10 K',
      lowest: 3,
      highest: 30,
    }),
    halving: quantity({
      label: 'Kelvin of self-heating that halve it',
      symbol: 'h',
      unit: 'K',
      usual: '5 K to 10 K',
      lowest: 2,
      highest: 30,
    }),
    v: quantity({
      label: 'Voltage across it',
      symbol: 'U',
      unit: 'V',
      usual: '24 V',
      lowest: 0,
      highest: 2000,
    }),
    rating: quantity({
      label: 'Rated voltage',
      symbol: 'U_R',
      unit: 'V',
      usual: '35 V',
      lowest: 1,
      highest: 2000,
    }),
  },
  outputs: {
    life: { label: 'Life in use', symbol: 'L', unit: 's', headline: true },
    plain: { label: 'Without gain from unused voltage', symbol: 'L_1', unit: 's' },
    factor: { label: 'Gain from unused voltage', symbol: 'K_V', unit: 'ratio' },
    most: { label: 'Longest that is vouched for', symbol: 'L_m', unit: 's', step: true },
  },
  equations: [
    'L_1 = min(L_m, L_0*2^((T_0 - T)/H)*2^(-dT/h))',
    'K_V = max(0.6, min(1, U/U_R))^-2.5',
    'L = min(L_m, L_1*K_V)',
  ],
  at: ({ rated, top, t, rise, doubling, halving, v, rating }, { longest, gain }) => {
    const factor = voltageLifeFactor(v, rating, gain);
    const wear = {
      rated,
      ratedTemperature: top,
      ambient: t,
      doubling,
      rise,
      riseHalving: halving,
      longest,
    };
    return {
      life: wearLife({ ...wear, voltageFactor: factor }),
      plain: wearLife({ ...wear, voltageFactor: 1 }),
      factor,
      most: longest,
    };
  },
  notes: ({ v, rating, t, top }, { life = 0 }, { longest }) => [
    ...noteIf(
      t > top,
      'caution',
      'It is hotter than its sheet allows: no life is promised, and the seal may open.',
    ),
    ...noteIf(v > rating, 'caution', 'The voltage is above the rating: no life is promised.'),
    ...noteIf(
      life >= longest,
      'limit',
      `Beyond ${formatValue(longest, 's')} nobody vouches for the seal, whatever the equation says: the result stops there.`,
      'beckhoff-ps',
    ),
    {
      kind: 'remark',
      text: 'Gain from unused voltage counts between 60 and 100 % of the rating; makers differ on whether there is any. One promises none: see the line without it.',
    },
  ],
  plots: [
    {
      title: 'Life against temperature',
      x: 't',
      scale: 'linear',
      span: ({ top }) => [25, top],
      y: ['life', 'plain'],
      yScale: 'log',
    },
  ],
  cautions: ['electrolytic-vent'],
  sources: ['jianghai-note'],
  checks: [
    {
      what: 'Printed: 2000 h at 105 °C are 8000 h at 85 °C',
      inputs: { rated: '2000 h', top: '105', t: '85', rise: '0', v: '35', rating: '35' },
      expected: { life: 8000 * HOUR },
      within: 0.005,
      source: 'jp-forum-life',
    },
    {
      what: 'Printed: 1000 h at 105 °C are 32 000 h at 55 °C',
      inputs: { rated: '1000 h', top: '105', t: '55', rise: '0', v: '35', rating: '35' },
      expected: { life: 32_000 * HOUR },
      within: 0.005,
      source: 'cosel-faq',
    },
    {
      what: 'From a maker’s rule: 2000 h at 105 °C, used at 65 °C with 5 K of self-heating that halve it, are 16 000 h',
      inputs: {
        rated: '2000 h',
        top: '105',
        t: '65',
        rise: '5',
        halving: '5',
        v: '35',
        rating: '35',
      },
      expected: { life: 16_000 * HOUR },
      within: 0.005,
      source: 'dblectro-cn1a',
    },
    {
      what: 'From a maker’s model: at 80 % of the rated voltage 1.747 times',
      inputs: { v: '28', rating: '35' },
      expected: { factor: 1.747 },
      within: 0.005,
      source: 'jianghai-note',
    },
  ],
});
