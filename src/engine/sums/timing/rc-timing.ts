import { cents as centsOf } from '../../equations/pitch.ts';
import { frequencyShift, timeShift } from '../../equations/shift.ts';
import { chargingTime } from '../../equations/timing.ts';
import { exactly } from '../../quantities/range.ts';
import { driftOf, temperatureInputs, temperatureOutputs } from '../temperature-drift.ts';
import { defineSum, optionalQuantity, quantity } from '../sum.ts';

/** Time and frequency by a resistor and a capacitor, and how temperature and another value move them. */
export const rcTiming = defineSum({
  id: 'rc-timing',
  title: 'RC timing',
  lead: 'How long a resistor and a capacitor take to a threshold, which frequency that makes, and how far temperature and another value move both, in per cent and in cents.',
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
    old: optionalQuantity({
      label: 'Capacitance that it was set with',
      symbol: 'C_old',
      unit: 'F',
      lowest: 1e-13,
      highest: 10,
    }),
  },
  outputs: {
    time: { label: 'Time', symbol: 't', unit: 's', headline: true },
    frequency: { label: 'Frequency of a period so long', symbol: 'f', unit: 'Hz' },
    ...temperatureOutputs,
    timeMoved: { label: 'Time moved by the other value', symbol: 's_t', unit: 'fraction' },
    frequencyMoved: { label: 'Frequency moved by it', symbol: 's_f', unit: 'fraction' },
    pitchMoved: { label: 'The same as pitch', symbol: 'p', unit: 'cents' },
  },
  equations: [
    't = R*C*ln(1/(1 - x))',
    'f = 1/t',
    'd = |alpha_R + alpha_C|*dT',
    's_t = |C/C_old - 1|',
    's_f = |C_old/C - 1|',
    'p = 1200*log2(C_old/C)',
  ],
  at: ({ r, c, x, tcR, tcC, span, old }) => {
    const time = chargingTime(r, c, x);
    return {
      time,
      frequency: 1 / time,
      ...driftOf(tcR, tcC, span),
      timeMoved: old === undefined ? undefined : timeShift(exactly(c), old).typ,
      frequencyMoved: old === undefined ? undefined : frequencyShift(exactly(c), old, 1).typ,
      pitchMoved: old === undefined ? undefined : centsOf(exactly(old / c - 1)).typ,
    };
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
    {
      what: 'Worked by hand: 27 nF for 22 nF makes a time 22.7 % longer and a frequency 18.5 % lower, 354.5 cents',
      inputs: { c: '27 nF', old: '22 nF' },
      expected: { timeMoved: 0.22727, frequencyMoved: 0.185185, pitchMoved: -354.547 },
      within: 0.0001,
      source: 'identity',
    },
  ],
});
