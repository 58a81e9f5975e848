import { steadyError } from '../../equations/amplifier.ts';
import { droop } from '../../equations/leakage.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, quantity } from '../sum.ts';

const current = (symbol: string, label: string, usual: string) =>
  quantity({ label, symbol, unit: 'A', usual, lowest: 0, highest: 1e-2 });

/** One amplifier in place of another, by their bias currents. */
export const amplifierChange = defineSum({
  id: 'amplifier-change',
  title: 'Another amplifier, another bias current',
  lead: 'What the bias current of a replacement does in the resistance at its input and on the capacitor that it watches, against the old one.',
  group: 'hold',
  inputs: {
    old: current('I_1', 'Bias current of the old one', '80 nA'),
    next: current('I_2', 'Bias current of the new one', '30 pA to 200 pA'),
    r: quantity({
      label: 'Resistance at its input',
      symbol: 'R',
      unit: 'ohm',
      usual: '1 MΩ',
      lowest: 0,
      highest: 1e13,
    }),
    c: quantity({
      label: 'Capacitor that it watches',
      symbol: 'C',
      unit: 'F',
      usual: '100 nF',
      lowest: 1e-13,
      highest: 1,
    }),
    t: quantity({
      label: 'For how long',
      symbol: 't',
      unit: 's',
      usual: '1 s',
      lowest: 1e-9,
      highest: 1e7,
    }),
  },
  outputs: {
    offset: { label: 'Offset by the new one', symbol: 'V_2', unit: 'V', headline: true },
    oldOffset: { label: 'Offset by the old one', symbol: 'V_1', unit: 'V' },
    runs: { label: 'Drift on the capacitor by the new one', symbol: 'd_2', unit: 'V' },
    oldRuns: { label: 'Drift by the old one', symbol: 'd_1', unit: 'V' },
  },
  equations: ['V_1 = I_1*R, V_2 = I_2*R', 'd_1 = I_1*t/C, d_2 = I_2*t/C'],
  at: ({ old, next, r, c, t }) => {
    const run = (bias: number): number =>
      droop(Infinity, c, exactly(bias), exactly(0), t).total.typ;
    const across = (bias: number): number => steadyError(exactly(0), exactly(bias), r, 1).typ;
    return { offset: across(next), oldOffset: across(old), runs: run(next), oldRuns: run(old) };
  },
  notes: () => [
    {
      kind: 'limit',
      text: 'Bias current of an input with field-effect transistors doubles about every ten kelvin; that of bipolar inputs changes little. Range, phase reversal, stability and pins are checked elsewhere, not here.',
    },
  ],
  plots: [
    {
      title: 'Drift of both against time',
      x: 't',
      scale: 'log',
      y: ['runs', 'oldRuns'],
      yScale: 'log',
    },
  ],
  cautions: ['esd'],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked out from a printed bias current of 80 nA: 80 mV in 1 MΩ',
      inputs: { old: '80 nA', r: '1M' },
      expected: { oldOffset: 0.08 },
      within: 0.001,
      source: 'lm741-ti',
    },
  ],
});
