import { loadedDivider } from '../../equations/divider.ts';
import { defineSum, quantity } from '../sum.ts';

const resistor = (symbol: string, label: string, usual: string) =>
  quantity({ label, symbol, unit: 'ohm', usual, lowest: 0.001, highest: 1e13 });

/** A divider with the tolerances of its resistors. */
export const divider = defineSum({
  id: 'divider',
  title: 'Voltage divider and its tolerance',
  lead: 'What a divider gives, what the tolerances of its resistors do to that at worst and statistically, and what a load takes.',
  group: 'parts',
  inputs: {
    v: quantity({
      label: 'Voltage across it',
      symbol: 'V',
      unit: 'V',
      usual: '10 V',
      lowest: 0,
      highest: 100_000,
    }),
    a: resistor('R_1', 'Upper resistor', '9.1 kΩ ±1 %'),
    b: resistor('R_2', 'Lower resistor', '1 kΩ ±1 %'),
    load: quantity({
      label: 'Load across the lower one',
      symbol: 'R_L',
      unit: 'ohm',
      usual: '1 MΩ',
      lowest: 1,
      highest: 1e15,
    }),
  },
  outputs: {
    out: { label: 'Output voltage', symbol: 'V_o', unit: 'V', headline: true },
    ratio: { label: 'Ratio without load', symbol: 'n', unit: 'fraction' },
    lost: { label: 'Taken by the load', symbol: 'l', unit: 'fraction' },
    source: { label: 'Output resistance', symbol: 'R_S', unit: 'ohm' },
  },
  equations: [
    'n = R_2 / (R_1 + R_2)',
    'R_S = R_1*R_2 / (R_1 + R_2)',
    'l = R_S / (R_S + R_L)',
    'V_o = V*n*(1 - l)',
  ],
  at: ({ v, a, b, load }) => {
    const { ratio, source, lost } = loadedDivider(a, b, load);
    return { out: v * ratio * (1 - lost), ratio, lost, source };
  },
  notes: () => [
    {
      kind: 'limit',
      text: 'Both resistors also warm, and drift apart where they differ in type. What each of them takes is a sum of its own.',
    },
  ],
  plots: [
    {
      title: 'Voltage against the lower resistor',
      x: 'b',
      scale: 'log',
      y: ['out'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 9 kΩ over 1 kΩ, loaded with 9 kΩ',
      inputs: { a: '9k', b: '1k', load: '9k', v: '10' },
      expected: { out: 0.90909, ratio: 0.1, lost: 0.090909, source: 900 },
      within: 0.0001,
      source: 'identity',
    },
  ],
});
