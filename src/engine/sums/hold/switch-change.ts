import { seriesLoss } from '../../equations/switch.ts';
import { holdStep, settlingTime } from '../../equations/sampling.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, quantity } from '../sum.ts';

const on = (symbol: string, label: string, usual: string) =>
  quantity({ label, symbol, unit: 'ohm', usual, lowest: 0.01, highest: 1e6 });
const charge = (symbol: string, label: string, usual: string) =>
  quantity({ label, symbol, unit: 'C', usual, lowest: 0, highest: 1e-6 });

/** One analogue switch in place of another, in a hold circuit and in front of a load. */
export const switchChange = defineSum({
  id: 'switch-change',
  title: 'Another analogue switch',
  lead: 'What on-resistance and injected charge of a replacement switch do to a hold circuit and to the level into a load, against the old one.',
  group: 'hold',
  inputs: {
    oldOn: on('R_1', 'On-resistance of the old one', '280 Ω'),
    nextOn: on('R_2', 'On-resistance of the new one', '80 Ω to 175 Ω'),
    oldCharge: charge('Q_1', 'Charge of the old one', '10 pC'),
    nextCharge: charge('Q_2', 'Charge of the new one', '20 pC'),
    c: quantity({
      label: 'Hold capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '10 nF ±5 %',
      lowest: 1e-13,
      highest: 1e-2,
    }),
    step: quantity({
      label: 'Step',
      symbol: 'V',
      unit: 'V',
      usual: '10 V',
      lowest: 1e-6,
      highest: 100,
    }),
    error: quantity({
      label: 'Error that is allowed',
      symbol: 'V_e',
      unit: 'V',
      bare: 'mV',
      usual: '1 mV',
      lowest: 1e-9,
      highest: 10,
    }),
    load: quantity({
      label: 'Load behind it',
      symbol: 'R_L',
      unit: 'ohm',
      usual: '10 kΩ',
      lowest: 1,
      highest: 1e13,
    }),
  },
  outputs: {
    time: { label: 'Time to settle with the new one', symbol: 't_2', unit: 's', headline: true },
    oldTime: { label: 'Time with the old one', symbol: 't_1', unit: 's' },
    jump: { label: 'Hold step with the new one', symbol: 'V_2', unit: 'V' },
    oldJump: { label: 'Hold step with the old one', symbol: 'V_1', unit: 'V' },
    lost: { label: 'Lost into the load with the new one', symbol: 'l_2', unit: 'fraction' },
    oldLost: { label: 'Lost with the old one', symbol: 'l_1', unit: 'fraction' },
  },
  equations: [
    't_1 = R_1*C*max(0, ln(V/V_e)), t_2 = R_2*C*max(0, ln(V/V_e))',
    'V_1 = Q_1/C, V_2 = Q_2/C',
    'l_1 = R_1/(R_1 + R_L), l_2 = R_2/(R_2 + R_L)',
  ],
  at: ({ oldOn, nextOn, oldCharge, nextCharge, c, step, error, load }) => {
    const settle = (ohm: number): number => settlingTime(exactly(ohm * c), step, error).typ;
    const jump = (coulomb: number): number => holdStep(coulomb, exactly(c)).typ;
    return {
      time: settle(nextOn),
      oldTime: settle(oldOn),
      jump: jump(nextCharge),
      oldJump: jump(oldCharge),
      lost: seriesLoss(exactly(nextOn), load).typ,
      oldLost: seriesLoss(exactly(oldOn), load).typ,
    };
  },
  notes: () => [
    {
      kind: 'remark',
      text: 'A switch of lower on-resistance mostly injects more charge: it settles faster and jumps further.',
    },
    {
      kind: 'limit',
      text: 'On-resistance moves with the signal and rises at a low supply; take the range of the data sheet at your supply.',
    },
  ],
  plots: [
    {
      title: 'Hold step of both against the capacitor',
      x: 'c',
      scale: 'log',
      y: ['jump', 'oldJump'],
      yScale: 'log',
    },
  ],
  cautions: ['esd'],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked out for a switch of 240 Ω in front of 10 kΩ: 2.34 % are lost',
      inputs: { oldOn: '240', load: '10k' },
      expected: { oldLost: 0.0234 },
      within: 0.01,
      source: 'cd4066b-ti',
    },
  ],
});
