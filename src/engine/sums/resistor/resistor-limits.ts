import { dissipation } from '../../equations/heat.ts';
import { overloadStood, powerShare, voltageStood } from '../../equations/resistor.ts';
import { overloadBy } from '../../laws.ts';
import { noteIf, quantity, withFacts } from '../sum.ts';

/** Power at temperature and the voltage limit of a resistor. */
export const resistorLimits = withFacts(overloadBy)({
  id: 'resistor-limits',
  title: 'Power and voltage limits of a resistor',
  lead: 'How much power and voltage a resistor takes at its temperature, and whether power or the limit of its style decides.',
  group: 'resistor',
  inputs: {
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '1 MΩ ±5 %',
      lowest: 1e-3,
      highest: 1e13,
    }),
    p: quantity({
      label: 'Rated power',
      symbol: 'P_R',
      unit: 'W',
      usual: '0.25 W',
      lowest: 1e-3,
      highest: 1000,
    }),
    vmax: quantity({
      label: 'Voltage limit of the style',
      symbol: 'V_max',
      unit: 'V',
      usual: '250 V',
      lowest: 1,
      highest: 100_000,
    }),
    knee: quantity({
      label: 'Full power up to',
      symbol: 'T_1',
      unit: 'degC',
      usual: '70 °C',
      lowest: 0,
      highest: 300,
    }),
    end: quantity({
      label: 'No power from',
      symbol: 'T_2',
      unit: 'degC',
      usual: '155 °C',
      lowest: 1,
      highest: 500,
    }),
    t: quantity({
      label: 'Ambient temperature',
      symbol: 'T',
      unit: 'degC',
      usual: '45 °C',
      lowest: -60,
      highest: 400,
    }),
    v: quantity({
      label: 'Voltage across it',
      symbol: 'V',
      unit: 'V',
      usual: '200 V',
      lowest: 0,
      highest: 100_000,
    }),
  },
  outputs: {
    allowed: { label: 'Voltage allowed', symbol: 'V_a', unit: 'V', headline: true },
    share: { label: 'Share of the rated power left', symbol: 'k', unit: 'fraction' },
    power: { label: 'Power that it has', symbol: 'P', unit: 'W' },
    load: { label: 'Of what is allowed', symbol: 's', unit: 'fraction' },
    heat: { label: 'Power, of what is left of its rating', symbol: 's_P', unit: 'fraction' },
    rated: { label: 'Rated voltage, while it is cool', symbol: 'V_R', unit: 'V' },
    ratedLoad: { label: 'Of the rated voltage', symbol: 's_R', unit: 'fraction' },
    overload: { label: 'Voltage allowed for some seconds', symbol: 'V_O', unit: 'V' },
    critical: {
      label: 'Resistance above which the voltage limit decides',
      symbol: 'R_c',
      unit: 'ohm',
    },
  },
  equations: [
    'k = max(0, min(1, (T_2 - T)/(T_2 - T_1)))',
    'V_a = min(V_max, sqrt(k*P_R*R))',
    'P = V^2/R',
    's = V/V_a',
    's_P = P/(k*P_R)',
    'V_R = min(V_max, sqrt(P_R*R))',
    's_R = V/V_R',
    'V_O = min(2*V_max, 2.5*sqrt(P_R*R))',
    'R_c = V_max^2/P_R',
  ],
  at: ({ r, p, vmax, knee, end, t, v }, test) => {
    const share = powerShare(knee, end, t);
    const allowed = share === undefined ? undefined : voltageStood(r, share * p, vmax);
    const rated = voltageStood(r, p, vmax);
    const left = (share ?? 0) * p;
    const power = dissipation(v, r);
    return {
      allowed,
      share,
      power,
      load: allowed === undefined || allowed === 0 ? undefined : v / allowed,
      heat: left === 0 ? undefined : power / left,
      rated,
      ratedLoad: v / rated,
      overload: overloadStood(r, p, vmax, test),
      critical: vmax ** 2 / p,
    };
  },
  notes: ({ v }, { allowed }) => [
    ...noteIf(
      allowed === undefined,
      'limit',
      'Power has to fall from the first of the two temperatures to the second: give a higher one for “No power from”.',
    ),
    ...noteIf(
      allowed !== undefined && v > allowed,
      'caution',
      'The voltage is above what this part takes.',
    ),
    {
      kind: 'remark',
      text: 'Fusible and flameproof resistors are replaced like for like: there a larger power rating is a fault, not a reserve.',
    },
  ],
  plots: [
    {
      title: 'Voltage allowed against temperature',
      x: 't',
      scale: 'linear',
      span: ({ end }) => [20, end],
      y: ['allowed'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['identity', 'mil-prf-39005g', 'te-cfr-2011'],
  checks: [
    {
      what: 'Printed: 1 W, 10 kΩ at 70 °C take 100 V',
      inputs: { r: '10k', p: '1', vmax: '500', t: '70' },
      expected: { allowed: 100 },
      within: 0.005,
      source: 'vishay-rcm',
    },
    {
      what: 'Printed: 100 W from 70 to 200 °C leave 77 W at 100 °C',
      inputs: { p: '100', knee: '70', end: '200', t: '100' },
      expected: { share: 0.77 },
      within: 0.01,
      source: 'resistor-factory',
    },
    {
      what: 'Worked out from a printed limit of 250 V: 1 MΩ of a quarter watt would take 500 V by its power',
      inputs: { r: '1M', p: '0.25', vmax: '250', t: '25' },
      expected: { allowed: 250, critical: 250e3 },
      within: 0.001,
      source: 'yageo-cfr',
    },
  ],
});
