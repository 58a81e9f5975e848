import { edgeByCurrent } from '../../equations/edge.ts';
import { settlingConstants, settlingTime } from '../../equations/sampling.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, optionalQuantity, quantity } from '../sum.ts';

/** How long a hold capacitor needs to take a new voltage. */
export const acquisition = defineSum({
  id: 'acquisition',
  title: 'Acquisition time of a hold capacitor',
  lead: 'How long a hold capacitor must be connected before it is within an error of the new voltage.',
  group: 'hold',
  inputs: {
    c: quantity({
      label: 'Hold capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '10 nF ±5 %',
      lowest: 1e-13,
      highest: 1e-2,
    }),
    r: quantity({
      label: 'Switch and source resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '300 Ω',
      lowest: 0,
      highest: 1e9,
    }),
    step: quantity({
      label: 'Step',
      symbol: 'V',
      unit: 'V',
      usual: '10 V',
      lowest: 1e-6,
      highest: 1000,
    }),
    error: quantity({
      label: 'Error that is allowed',
      symbol: 'V_e',
      unit: 'V',
      bare: 'mV',
      usual: '1 mV',
      lowest: 1e-9,
      highest: 100,
    }),
    i: optionalQuantity({
      label: 'Output current limit of the amplifier',
      symbol: 'I',
      unit: 'A',
      lowest: 1e-9,
      highest: 100,
      hint: 'may stay empty',
    }),
  },
  outputs: {
    time: { label: 'Time to settle', symbol: 't', unit: 's', headline: true },
    constants: { label: 'Time constants that this takes', symbol: 'n', unit: 'number' },
    slewing: { label: 'Time at the limit of the current, on top', symbol: 't_I', unit: 's' },
  },
  equations: ['n = max(0, ln(V/V_e))', 't = n*R*C', 't_I = C*V/I'],
  at: ({ c, r, step, error, i }) => ({
    time: settlingTime(exactly(r * c), step, error).typ,
    constants: settlingConstants(step, error),
    slewing: i === undefined ? undefined : step / edgeByCurrent(i, c),
  }),
  notes: ({ step, error }) => [
    ...noteIf(
      error >= step,
      'remark',
      'The error that is allowed is as large as the step: nothing has to settle.',
    ),
    {
      kind: 'limit',
      text: 'One time constant is taken for the whole path; absorption and the settling of the amplifier come on top.',
    },
  ],
  plots: [
    { title: 'Time against the capacitor', x: 'c', scale: 'log', y: ['time'], yScale: 'log' },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: settling to a part in 16 384 takes 9.7 time constants',
      inputs: { step: '16384 mV', error: '1 mV' },
      expected: { constants: 9.7 },
      within: 0.01,
      source: 'ti-slyw038d',
    },
    {
      what: 'Worked by hand: 300 Ω and 10 nF, 10 V to within 1 mV take ln(10 000) = 9.21 time constants of 3 µs',
      inputs: { c: '10 nF', r: '300', step: '10', error: '1 mV' },
      expected: { time: 27.63e-6, constants: 9.21 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
