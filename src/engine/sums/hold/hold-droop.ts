import { edgeByCurrent } from '../../equations/edge.ts';
import { leakageOfPart, droop } from '../../equations/leakage.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** How a held voltage falls by switch, amplifier, board and the capacitor itself. */
export const holdDroop = defineSum({
  id: 'hold-droop',
  title: 'Droop of a held voltage',
  lead: 'How far a held voltage runs away, and how much of that is the capacitor and how much what hangs on it.',
  group: 'hold',
  inputs: {
    c: quantity({
      label: 'Hold capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '10 nF ±5 %',
      lowest: 1e-13,
      highest: 10,
    }),
    v: quantity({
      label: 'Voltage held',
      symbol: 'V',
      unit: 'V',
      usual: '5 V',
      lowest: 0,
      highest: 1000,
    }),
    i: quantity({
      label: 'Bias and switch leakage together',
      symbol: 'I',
      unit: 'A',
      usual: '100 pA',
      lowest: 0,
      highest: 1e-2,
      hint: 'amplifier, switch and board',
    }),
    tau: quantity({
      label: 'Insulation of the capacitor at 25 °C',
      symbol: 'tau',
      unit: 's',
      bare: 's',
      usual: '10000 to 100000 s',
      lowest: 0.01,
      highest: 1e9,
      hint: 'MΩ·µF, which is seconds',
    }),
    cap: quantity({
      label: 'Insulation that no part exceeds',
      symbol: 'R_most',
      unit: 'ohm',
      usual: '1000 TΩ',
      lowest: 1e3,
      highest: 1e18,
      hint: 'over body and leads, at 25 °C',
    }),
    halving: quantity({
      label: 'Kelvin that halve the insulation',
      symbol: 'H',
      unit: 'K',
      usual: '10 K',
      lowest: 2,
      highest: 100,
    }),
    temp: quantity({
      label: 'Temperature of the part',
      symbol: 'T',
      unit: 'degC',
      usual: '35 °C',
      lowest: -60,
      highest: 200,
    }),
    t: quantity({
      label: 'Hold time',
      symbol: 't',
      unit: 's',
      usual: '1 s',
      lowest: 1e-9,
      highest: 1e7,
    }),
  },
  outputs: {
    total: { label: 'Droop', symbol: 'V_droop', unit: 'V', headline: true },
    share: { label: 'Share of it that is the capacitor’s own', unit: 'fraction' },
    own: { label: 'Leakage of the capacitor', symbol: 'I_C', unit: 'A' },
    insulation: { label: 'Its insulation at that temperature', symbol: 'R_C', unit: 'ohm' },
    rate: { label: 'Droop in a second', unit: 'V/s' },
  },
  equations: [
    'R_C = min(tau/C, R_most)*2^(-max(0, T - 25)/H)',
    'I_C = V/R_C',
    'V_droop = I*t/C + min(V, I_C*t/C)',
  ],
  at: ({ c, v, i, tau, cap, halving, temp, t }) => {
    const dielectric = { constant: exactly(tau), most: exactly(cap), halving: exactly(halving) };
    const { insulation, current: own } = leakageOfPart(dielectric, c, v, temp);
    const { total, ownShare } = droop(v, c, exactly(i), own, t);
    return {
      total: total.typ,
      share: ownShare,
      own: own.typ,
      insulation: insulation.typ,
      rate: edgeByCurrent(i + own.typ, c),
    };
  },
  notes: ({ v }, { share = 0, total = 0 }) => [
    ...noteIf(
      total > v,
      'limit',
      'That is more than the voltage held: what hangs on the capacitor takes it past nought, until a supply stops it.',
    ),
    share < 0.1
      ? {
          kind: 'remark',
          text: 'What hangs on the capacitor decides here: a better dielectric will not lessen the droop, though it may lessen absorption.',
        }
      : {
          kind: 'remark',
          text: 'The capacitor has a noticeable part in this: a dielectric with better insulation helps, and so does a clean board.',
        },
    { kind: 'limit', text: 'The figure for 25 °C is not improved upon below 25 °C.' },
  ],
  plots: [
    { title: 'Droop against hold time', x: 't', scale: 'log', y: ['total'], yScale: 'log' },
    {
      title: 'Droop against temperature',
      x: 'temp',
      scale: 'linear',
      span: () => [15, 75],
      y: ['total'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 100 pA out of 10 nF for one second, with insulation so good that it has no say',
      inputs: { c: '10 nF', i: '100 pA', tau: '1e9 s', temp: '25', t: '1 s', v: '5 V' },
      expected: { total: 0.01 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: 10 000 s of insulation alone, 5 V for one second at 25 °C, and half of the insulation at 35 °C',
      inputs: { c: '10 nF', i: '0', tau: '10000 s', temp: '35', t: '1 s', v: '5 V' },
      expected: { total: 0.001, share: 1, insulation: 5e11 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
