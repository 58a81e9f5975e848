import {
  choice,
  optionalQuantity,
  quantity,
  withFacts,
  type PlotSpec,
} from '../../../src/engine/sums/sum.ts';

/** An invented sum whose outputs can be reckoned in the head: y is a times x, less 2 for z. */
export const line = withFacts(() => ({ shift: 2 }))({
  id: 'line',
  title: 'Line',
  lead: 'A line.',
  group: 'parts',
  inputs: {
    x: quantity({ label: 'Along', unit: 'ohm', usual: '10', lowest: 1, highest: 100 }),
    a: quantity({ label: 'Slope', unit: 'ratio', usual: '3', lowest: -10, highest: 10 }),
    way: choice({
      label: 'Way',
      usual: 'up',
      options: [
        { id: 'up', name: 'up' },
        { id: 'down', name: 'down' },
      ],
    }),
    more: optionalQuantity({ label: 'More', unit: 'ohm', lowest: 0, highest: 5 }),
  },
  outputs: {
    y: { label: 'Height', unit: 'V', headline: true },
    z: { label: 'Lower', unit: 'V' },
    never: { label: 'Never', unit: 'V' },
  },
  equations: ['y = a*x'],
  at: ({ x, a }, { shift }) => ({ y: a * x, z: a * x - shift, never: undefined }),
  notes: ({ x }, { z = 0 }, { shift }) => [{ kind: 'remark', text: `${x}, ${z} and ${shift}.` }],
  tables: ({ x }, _facts, habit) => [
    { caption: habit?.decimal ?? 'none', head: ['x'], rows: [[String(x)]] },
  ],
  cautions: [],
  sources: [],
  checks: [],
});
export const facts = { shift: 2 };

export const spec: PlotSpec = { title: 'Line', x: 'x', scale: 'log', y: ['y'], yScale: 'log' };

export const exact = (value: number) => ({ min: value, typ: value, max: value });
export const given = (x: number, a = exact(3)) => ({ x: exact(x), a, way: 'up', more: undefined });
