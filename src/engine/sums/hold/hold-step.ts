import { holdStep as stepOf } from '../../equations/sampling.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, quantity } from '../sum.ts';

/** Step that the charge of an opening switch leaves on a hold capacitor. */
export const holdStep = defineSum({
  id: 'hold-step',
  title: 'Hold step',
  lead: 'How far a held voltage jumps when the switch opens, by the charge that the switch pushes into the capacitor.',
  group: 'hold',
  inputs: {
    q: quantity({
      label: 'Charge that the switch injects',
      symbol: 'Q',
      unit: 'C',
      usual: '10 pC',
      lowest: 0,
      highest: 1e-6,
    }),
    c: quantity({
      label: 'Hold capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '10 nF ±5 %',
      lowest: 1e-13,
      highest: 1e-2,
    }),
  },
  outputs: { step: { label: 'Hold step', symbol: 'V_step', unit: 'V', headline: true } },
  equations: ['V_step = Q/C'],
  at: ({ q, c }) => ({ step: stepOf(q, exactly(c)).typ }),
  notes: () => [
    {
      kind: 'limit',
      text: 'The charge goes with the supply, the held voltage and the edge of the control signal; a sheet gives it for one of each. Stray capacitance from the control line to the hold node adds to it.',
    },
  ],
  plots: [
    { title: 'Hold step against the capacitor', x: 'c', scale: 'log', y: ['step'], yScale: 'log' },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed step of 0.5 mV on 10 nF, which is 5 pC',
      inputs: { q: '5 pC', c: '10 nF' },
      expected: { step: 0.0005 },
      within: 0.01,
      source: 'ns-lf198-ds',
    },
    {
      what: 'Printed charge of 11 pC, capacitor of 1 nF chosen here',
      inputs: { q: '11 pC', c: '1 nF' },
      expected: { step: 0.011 },
      within: 0.001,
      source: 'edn-di-1995',
    },
  ],
});
