import type { Catalogue } from '../../catalogue.ts';
import { filmDrift, filmTemperature } from '../../equations/resistor.ts';
import { HOUR, YEAR } from '../../quantities/si.ts';
import { ruleOf } from '../../rule-of-thumb.ts';
import { noteIf, quantity, withFacts } from '../sum.ts';

const factsOf = (catalogue: Catalogue) => ({
  halving: ruleOf(catalogue, 'film-drift-halving'),
});

/** How far a film resistor drifts over the years, from the life test of its sheet. */
export const resistorDrift = withFacts(factsOf)({
  id: 'resistor-drift',
  title: 'Drift of a film resistor',
  lead: 'How far a film resistor drifts in years of service, from what its sheet promises for a thousand hours at full load.',
  group: 'resistor',
  inputs: {
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '100 kΩ',
      lowest: 1e-3,
      highest: 1e13,
    }),
    change: quantity({
      label: 'Change in the life test of its sheet',
      symbol: 'd_0',
      unit: 'fraction',
      bare: '%',
      usual: '0.25 %',
      lowest: 1e-6,
      highest: 0.5,
    }),
    time: quantity({
      label: 'Length of that test',
      symbol: 't_0',
      unit: 's',
      bare: 'h',
      usual: '1000 h',
      lowest: HOUR,
      highest: 1e9,
    }),
    film: quantity({
      label: 'Film temperature in that test',
      symbol: 'T_0',
      unit: 'degC',
      usual: '125 °C',
      lowest: 40,
      highest: 300,
      hint: 'where full load has none left to add: its highest temperature',
    }),
    knee: quantity({
      label: 'Full power up to',
      symbol: 'T_k',
      unit: 'degC',
      usual: '70 °C',
      lowest: 0,
      highest: 250,
    }),
    rated: quantity({
      label: 'Rated power',
      symbol: 'P_R',
      unit: 'W',
      usual: '0.25 W',
      lowest: 1e-3,
      highest: 1000,
    }),
    p: quantity({
      label: 'Power dissipated in use',
      symbol: 'P',
      unit: 'W',
      usual: '50 mW',
      lowest: 0,
      highest: 1000,
    }),
    t: quantity({
      label: 'Ambient temperature',
      symbol: 'T',
      unit: 'degC',
      usual: '35 to 45 °C',
      lowest: -55,
      highest: 250,
    }),
    life: quantity({
      label: 'Time in service',
      symbol: 't',
      unit: 's',
      bare: 'years',
      usual: '20 years',
      lowest: HOUR,
      highest: 5e9,
      hint: 'switched on',
    }),
  },
  outputs: {
    drift: { label: 'Drift, either way', symbol: 'd', unit: 'fraction', headline: true },
    ohm: { label: 'The same in ohms', symbol: 'R_d', unit: 'ohm' },
    warm: { label: 'Film temperature in use', symbol: 'T_f', unit: 'degC' },
  },
  equations: [
    'T_f = T + (T_0 - T_k)*P/P_R',
    'd = d_0*(t/t_0)^(1/3)*2^((T_f - T_0)/30)',
    'R_d = d*R',
  ],
  at: ({ r, change, time, film, knee, rated, p, t, life }, { halving }) => {
    const warm = filmTemperature(t, p, { knee, film, rated });
    const drift = filmDrift({ change, time, film }, life, warm, halving);
    return drift < 1 ? { drift, ohm: drift * r, warm } : { drift: undefined, ohm: undefined, warm };
  },
  notes: ({ film, knee, rated, p }, { drift, warm = 0 }) => [
    ...noteIf(
      warm > film || p > rated || film <= knee,
      'caution',
      'Its film is warmer than in the test, or the load is above the rating: nothing is promised there.',
    ),
    ...noteIf(
      drift === undefined,
      'limit',
      'More than the whole of its value is no drift: such a part has burnt open, or its test was no life test.',
    ),
    {
      kind: 'limit',
      text: 'The cube root of time and the halving by 30 K are drawn through the few figures of one maker’s sheet of metal film. They give the size of a drift, not a promise, and say nothing of moisture, by which composition drifts most.',
      source: 'vishay-mba',
    },
  ],
  plots: [
    {
      title: 'Drift against time',
      x: 'life',
      scale: 'log',
      span: () => [100 * HOUR, 50 * YEAR],
      y: ['drift'],
      yScale: 'log',
    },
    {
      title: 'Drift against the power dissipated',
      x: 'p',
      scale: 'linear',
      span: ({ rated }) => [0, rated],
      y: ['drift'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['vishay-mba'],
  checks: [
    {
      what: 'Printed for metal film at full load: 0.25 % in 1000 h becomes 1.5 % in 225 000 h',
      inputs: { change: '0.25 %', p: '0.25 W', t: '70 °C', life: '225000 h' },
      expected: { drift: 0.015, warm: 125 },
      within: 0.02,
      source: 'vishay-mba',
    },
    {
      what: 'Printed for the same part loaded until its film is at 155 °C: 0.5 % in 1000 h',
      inputs: { change: '0.25 %', p: '0.38636 W', t: '70 °C', life: '1000 h' },
      expected: { drift: 0.005, warm: 155 },
      within: 0.001,
      source: 'vishay-mba',
    },
  ],
});
