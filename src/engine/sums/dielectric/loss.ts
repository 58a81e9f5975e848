import { lossResistance, qualityOf } from '../../equations/loss.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, quantity } from '../sum.ts';

/** Loss, series resistance and quality as the same thing said three ways. */
export const loss = defineSum({
  id: 'loss',
  title: 'Loss, ESR and Q',
  lead: 'A dissipation factor as ESR, parallel resistance and Q at its frequency.',
  group: 'dielectric',
  inputs: {
    d: quantity({
      label: 'Dissipation factor',
      symbol: 'D',
      unit: 'fraction',
      bare: '%',
      usual: '15 %',
      lowest: 1e-7,
      highest: 10,
    }),
    f: quantity({
      label: 'At the frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '120 Hz',
      lowest: 1e-3,
      highest: 1e10,
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '100 µF',
      lowest: 1e-13,
      highest: 10,
    }),
  },
  outputs: {
    series: {
      label: 'Equivalent series resistance (ESR)',
      symbol: 'R_s',
      unit: 'ohm',
      headline: true,
    },
    parallel: { label: 'As a resistance across it', symbol: 'R_p', unit: 'ohm' },
    quality: { label: 'Quality factor', symbol: 'Q', unit: 'number' },
    angle: { label: 'Loss angle', symbol: 'delta', unit: 'deg' },
    reactance: { label: 'Reactance', symbol: 'X', unit: 'ohm' },
  },
  equations: ['X = 1/(2*pi*f*C)', 'R_s = D*X', 'R_p = X*(1 + D^2)/D', 'Q = 1/D', 'delta = atan(D)'],
  at: ({ d, f, c }) => {
    const reactance = 1 / (2 * Math.PI * f * c);
    return {
      series: lossResistance(d, f, c),
      parallel: (reactance * (1 + d ** 2)) / d,
      quality: qualityOf(exactly(d)).typ,
      angle: (Math.atan(d) * 180) / Math.PI,
      reactance,
    };
  },
  notes: () => [
    {
      kind: 'remark',
      text: 'Loss at 120 Hz of 0.12 times that at 1 kHz points to ESR, as of a drying electrolyte; the same at both to the dielectric; eight times as much to leakage.',
    },
  ],
  plots: [
    {
      title: 'ESR against the value',
      x: 'c',
      scale: 'log',
      y: ['series'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed beside it in a meter’s guide: 100 µF with a loss of 15 % at 120 Hz reads 2.0 Ω',
      inputs: { d: '15 %', f: '120', c: '100 µF' },
      expected: { series: 2 },
      within: 0.01,
      source: 'esr-guide',
    },
    {
      what: 'From a printed formula: 100 µF with 16 % is 2.12 Ω',
      inputs: { d: '16 %', f: '120', c: '100 µF' },
      expected: { series: 2.12 },
      within: 0.01,
      source: 'vishay-038rsu',
    },
  ],
});
