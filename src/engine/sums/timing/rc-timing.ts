import { chargingTime } from '../../equations/timing.ts';
import { driftOf, temperatureInputs, temperatureOutputs } from '../temperature-drift.ts';
import { defineSum, quantity } from '../sum.ts';

/** Time by a resistor and a capacitor, and how temperature moves it. */
export const rcTiming = defineSum({
  id: 'rc-timing',
  title: 'Resistor and capacitor as a timer',
  lead: 'How long a resistor and a capacitor take to a threshold, and how far temperature moves that, in per cent and in cents.',
  group: 'timing',
  inputs: {
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '100 kΩ ±1 %',
      lowest: 0.1,
      highest: 1e13,
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '10 nF ±5 %',
      lowest: 1e-13,
      highest: 10,
    }),
    x: quantity({
      label: 'Threshold as a share of the step',
      symbol: 'x',
      unit: 'fraction',
      bare: '%',
      usual: '63.2 %',
      lowest: 0.0001,
      highest: 0.9999,
    }),
    ...temperatureInputs,
  },
  outputs: {
    time: { label: 'Time', symbol: 't', unit: 's', headline: true },
    frequency: { label: 'Frequency of a period so long', symbol: 'f', unit: 'Hz' },
    ...temperatureOutputs,
  },
  equations: ['t = R*C*ln(1/(1 - x))', 'f = 1/t', 'd = |alpha_R + alpha_C|*dT'],
  at: ({ r, c, x, tcR, tcC, span }) => {
    const time = chargingTime(r, c, x);
    return { time, frequency: 1 / time, ...driftOf(tcR, tcC, span) };
  },
  notes: ({ tcR, tcC }) =>
    Math.sign(tcR) * Math.sign(tcC) < 0
      ? [
          {
            kind: 'remark',
            text: 'The two coefficients have opposite signs and balance each other in part: a new capacitor with another sign undoes that.',
          },
        ]
      : [],
  plots: [
    { title: 'Time against the capacitor', x: 'c', scale: 'log', y: ['time'], yScale: 'log' },
    {
      title: 'Pitch drift against the capacitor’s coefficient',
      x: 'tcC',
      scale: 'linear',
      span: () => [-800e-6, 800e-6],
      y: ['cents'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: after two time constants 86.5 %, so 86.5 % takes two',
      inputs: { r: '100k', c: '10n', x: '86.5 %' },
      expected: { time: 0.002 },
      within: 0.002,
      source: 'picbasic-tau',
    },
    {
      what: 'Worked by hand: +50 and −150 ppm/K leave 100 ppm/K, over 10 K 0.1 %, which is 1.73 cents',
      inputs: { tcR: '50', tcC: '-150', span: '10' },
      expected: { drift: 0.001, cents: 1.7313 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
