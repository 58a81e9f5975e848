import {
  equalisingResistor,
  seriesCapacitance,
  standingShare,
  worstShare,
} from '../../equations/combinations.ts';
import { dissipation } from '../../equations/heat.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** Two electrolytics in series for a higher voltage, with a resistor across each. */
export const seriesPair = defineSum({
  id: 'series-pair',
  title: 'Balancing resistors for two capacitors in series',
  lead: 'How two equal capacitors in series share the voltage, and what resistor across each keeps either within its rating.',
  group: 'parts',
  inputs: {
    c: quantity({
      label: 'Each capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '100 µF ±20 %',
      lowest: 1e-13,
      highest: 1,
    }),
    tol: quantity({
      label: 'Tolerance of each',
      symbol: 'p',
      unit: 'fraction',
      bare: '%',
      usual: '20 %',
      lowest: 0,
      highest: 0.9,
    }),
    rating: quantity({
      label: 'Rating of each',
      symbol: 'U_R',
      unit: 'V',
      usual: '350 V',
      lowest: 1,
      highest: 50_000,
    }),
    v: quantity({
      label: 'Voltage across both',
      symbol: 'V',
      unit: 'V',
      usual: '550 V',
      lowest: 0.1,
      highest: 100_000,
    }),
    leak: quantity({
      label: 'Difference of their leakage currents',
      symbol: 'dI',
      unit: 'A',
      usual: '300 µA',
      lowest: 1e-12,
      highest: 1,
      hint: 'at most the leakage limit of one',
    }),
    r: quantity({
      label: 'Resistor across each',
      symbol: 'R',
      unit: 'ohm',
      usual: '220 kΩ ±5 %',
      lowest: 1,
      highest: 1e12,
    }),
  },
  outputs: {
    most: {
      label: 'Largest resistor that keeps each within its rating',
      symbol: 'R_max',
      unit: 'ohm',
      headline: true,
    },
    whole: { label: 'Capacitance of both', symbol: 'C_s', unit: 'F' },
    charging: { label: 'Most across one while charging', symbol: 'V_1', unit: 'V' },
    standing: { label: 'Most across one in the long run', symbol: 'V_2', unit: 'V' },
    heat: { label: 'Heat in a resistor whose part has the most', symbol: 'P', unit: 'W' },
    constant: { label: 'Time constant of the discharge', symbol: 'tau', unit: 's' },
  },
  equations: [
    'C_s = C/2',
    'V_1 = V*(1 + p)/2',
    'V_2 = min(V, V/2 + R*dI/2)',
    'R_max = (2*U_R - V)/dI',
    'P = V_2^2/R',
    'tau = R*C',
  ],
  at: ({ c, tol, rating, v, leak, r }) => {
    const standing = standingShare(v, r, leak) * v;
    const most = equalisingResistor(v, rating / v, leak);
    return {
      most: most > 0 && Number.isFinite(most) ? most : undefined,
      whole: seriesCapacitance([c, c]),
      charging: worstShare({ minus: tol, plus: tol }) * v,
      standing,
      heat: dissipation(standing, r),
      constant: r * c,
    };
  },
  notes: ({ rating, r }, { most, charging = 0, standing = 0 }) => [
    ...noteIf(
      most === undefined,
      'limit',
      'The two ratings together do not reach the voltage: no resistor helps.',
    ),
    ...noteIf(
      Math.max(charging, standing) > rating,
      'caution',
      'One of the two may be above its rating with these numbers.',
    ),
    ...noteIf(
      most !== undefined && r > most,
      'limit',
      'The resistor is larger than the sharing allows.',
    ),
    {
      kind: 'caution',
      text: 'The joint in the middle, and often the can of the upper part, is at half of the voltage: insulate it. Each keeps its own charge: discharge both.',
    },
  ],
  plots: [
    {
      title: 'Most across one in the long run, against the resistor',
      x: 'r',
      scale: 'log',
      y: ['standing'],
      yScale: 'linear',
      limits: ({ rating }) => [{ label: 'rating', value: rating }],
    },
  ],
  cautions: ['stored-charge', 'high-voltage'],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 2 × 350 V less 550 V over 300 µA; with ±20 % one takes 0.6 of it while charging; 220 kΩ put 33 V more across one',
      inputs: { c: '100 µF', r: '220k' },
      expected: {
        most: 500e3,
        whole: 50e-6,
        charging: 330,
        standing: 308,
        heat: 0.4312,
        constant: 22,
      },
      within: 0.0005,
      source: 'identity',
    },
  ],
});
