import { leakageThrough } from '../../equations/leakage.ts';
import { exactly } from '../../quantities/range.ts';
import { edgeByCurrent } from '../../equations/edge.ts';
import { defineSum, quantity } from '../sum.ts';

/** How an integrator runs away with nothing at its input. */
export const integratorDrift = defineSum({
  id: 'integrator-drift',
  title: 'Drift of an integrator',
  lead: 'How fast an integrator runs away with nothing at its input, by offset, bias current and the leakage of its capacitor.',
  group: 'hold',
  inputs: {
    c: quantity({
      label: 'Integrating capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '100 nF ±5 %',
      lowest: 1e-13,
      highest: 1e-2,
    }),
    r: quantity({
      label: 'Input resistor',
      symbol: 'R',
      unit: 'ohm',
      usual: '1 MΩ',
      lowest: 1,
      highest: 1e12,
    }),
    offset: quantity({
      label: 'Offset voltage of the amplifier',
      symbol: 'V_os',
      unit: 'V',
      bare: 'mV',
      usual: '1 mV',
      lowest: 0,
      highest: 1,
    }),
    i: quantity({
      label: 'Bias current',
      symbol: 'I_b',
      unit: 'A',
      usual: '50 pA',
      lowest: 0,
      highest: 1e-2,
    }),
    insulation: quantity({
      label: 'Insulation of the capacitor',
      symbol: 'R_C',
      unit: 'ohm',
      usual: '100 GΩ',
      lowest: 1e3,
      highest: 1e16,
    }),
    v: quantity({
      label: 'Voltage at the output',
      symbol: 'V',
      unit: 'V',
      usual: '5 V',
      lowest: 0,
      highest: 1000,
    }),
  },
  outputs: {
    rate: { label: 'Drift at its worst', symbol: 'v', unit: 'V/s', headline: true },
    byOffset: { label: 'By the offset', symbol: 'v_1', unit: 'V/s' },
    byBias: { label: 'By the bias current', symbol: 'v_2', unit: 'V/s' },
    byCapacitor: { label: 'By the capacitor', symbol: 'v_3', unit: 'V/s' },
  },
  equations: ['v_1 = V_os/(R*C)', 'v_2 = I_b/C', 'v_3 = V/(R_C*C)', 'v = v_1 + v_2 + v_3'],
  at: ({ c, r, offset, i, insulation, v }) => {
    const byOffset = edgeByCurrent(offset / r, c);
    const byBias = edgeByCurrent(i, c);
    const byCapacitor = edgeByCurrent(leakageThrough(v, exactly(insulation)).typ, c);
    return { rate: byOffset + byBias + byCapacitor, byOffset, byBias, byCapacitor };
  },
  notes: (_, { byOffset = 0, byBias = 0, byCapacitor = 0 }) => [
    {
      kind: 'remark',
      text:
        byCapacitor >= Math.max(byOffset, byBias)
          ? 'The capacitor has the largest part in this.'
          : 'The amplifier has the larger part in this: a better capacitor alone changes little.',
    },
    { kind: 'limit', text: 'Signs are not known, so the three are added at their worst.' },
  ],
  plots: [
    { title: 'Drift against the capacitor', x: 'c', scale: 'log', y: ['rate'], yScale: 'log' },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'From a printed formula: a bias current of 500 nA into 1 µF runs 0.5 V/s',
      inputs: { c: '1 µF', i: '500 nA', offset: '0', v: '0' },
      expected: { rate: 0.5 },
      within: 0.01,
      source: 'opamp-text-p198',
    },
    {
      what: 'Worked by hand: 1 mV on 1 MΩ is 1 nA, into 100 nF 10 mV/s; 50 pA add 0.5 mV/s; 5 V on 100 GΩ add 0.5 mV/s',
      inputs: { c: '100 nF' },
      expected: { rate: 0.011, byOffset: 0.01, byBias: 0.0005, byCapacitor: 0.0005 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
