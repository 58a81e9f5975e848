import { parallelCapacitance, seriesCapacitance } from '../../equations/combinations.ts';
import { formatValue } from '../../quantities/index.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

const part = (number: number, usual: string) =>
  quantity({
    label: `Capacitor ${number}`,
    symbol: `C_${number}`,
    unit: 'F',
    usual,
    lowest: 1e-13,
    highest: 10,
  });
const rated = (number: number, usual: string) =>
  quantity({
    label: `Rating of ${number}`,
    symbol: `U_${number}`,
    unit: 'V',
    usual,
    lowest: 0.5,
    highest: 100_000,
  });

/** Two capacitors of any values in parallel and in series. */
export const twoTogether = defineSum({
  id: 'two-together',
  title: 'Two capacitors in parallel or in series',
  lead: 'What two capacitors of any values come to in parallel and in series, and how a series pair shares its voltage while it charges.',
  group: 'parts',
  inputs: {
    a: part(1, '100 nF ±5 %'),
    ua: rated(1, '400 V'),
    b: part(2, '47 nF ±5 %'),
    ub: rated(2, '400 V'),
    v: quantity({
      label: 'Voltage across the series pair',
      symbol: 'V',
      unit: 'V',
      usual: '500 V',
      lowest: 0,
      highest: 100_000,
    }),
  },
  outputs: {
    beside: { label: 'In parallel', symbol: 'C_p', unit: 'F', headline: true },
    row: { label: 'In series', symbol: 'C_s', unit: 'F' },
    besideRating: { label: 'Voltage in parallel, at most', symbol: 'U_p', unit: 'V' },
    rowRating: { label: 'Voltage in series while charging, at most', symbol: 'U_s', unit: 'V' },
    across1: { label: 'Across 1 in series', symbol: 'V_1', unit: 'V' },
    across2: { label: 'Across 2 in series', symbol: 'V_2', unit: 'V' },
  },
  equations: [
    'C_p = C_1 + C_2',
    'C_s = C_1*C_2/(C_1 + C_2)',
    'U_p = min(U_1, U_2)',
    'V_1 = V*C_2/(C_1 + C_2)',
    'V_2 = V*C_1/(C_1 + C_2)',
    'U_s = min(U_1*(C_1 + C_2)/C_2, U_2*(C_1 + C_2)/C_1)',
  ],
  at: ({ a, ua, b, ub, v }) => {
    const beside = parallelCapacitance([a, b]);
    const row = seriesCapacitance([a, b]);
    return {
      beside,
      row,
      besideRating: Math.min(ua, ub),
      rowRating: Math.min((ua * a) / row, (ub * b) / row),
      across1: (v * row) / a,
      across2: (v * row) / b,
    };
  },
  answer: ({ a, b }, _facts, habit) => {
    const [beside, row] = [parallelCapacitance([a, b]), seriesCapacitance([a, b])];
    return `In parallel ${formatValue(beside, 'F', habit)}, in series ${formatValue(row, 'F', habit)}.`;
  },
  notes: ({ ua, ub }, { across1 = 0, across2 = 0 }) => [
    ...noteIf(
      across1 > ua || across2 > ub,
      'caution',
      'In series one of the two is above its rating: the smaller value takes the larger share.',
    ),
    {
      kind: 'limit',
      text: 'A series pair shares like this only while it charges and on AC voltage. A steady voltage is shared by leakage in the long run: put a resistor across each.',
    },
  ],
  plots: [
    {
      title: 'Value against the second capacitor',
      x: 'b',
      scale: 'log',
      y: ['beside', 'row'],
      yScale: 'log',
    },
  ],
  cautions: ['stored-charge'],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 300 nF and 100 nF are 400 nF in parallel and 75 nF in series; of 400 V the smaller takes 300 V, so that two of 300 V take 400 V',
      inputs: { a: '300 nF', b: '100 nF', ua: '300', ub: '300', v: '400' },
      expected: {
        beside: 400e-9,
        row: 75e-9,
        besideRating: 300,
        rowRating: 400,
        across1: 100,
        across2: 300,
      },
      within: 0.0001,
      source: 'identity',
    },
  ],
});
