import { capacitanceForCurrent, reactiveCurrent } from '../../equations/mains.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** Current from the mains to whoever touches the case, through the parts between line and earth. */
export const touchCurrent = defineSum({
  id: 'touch-current',
  title: 'Touch current through Y parts',
  lead: 'What the parts between line and earth let through to whoever touches the case when the earth is missing.',
  group: 'mains',
  inputs: {
    c: quantity({
      label: 'Capacitance from line to earth',
      symbol: 'C',
      unit: 'F',
      usual: '4.7 nF ±20 %',
      lowest: 1e-13,
      highest: 1e-5,
      hint: 'of all such parts that act at once',
    }),
    v: quantity({
      label: 'Mains voltage',
      symbol: 'V',
      unit: 'V',
      usual: '230 V +10/-10 %',
      lowest: 10,
      highest: 1000,
    }),
    f: quantity({
      label: 'Mains frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '50 Hz',
      lowest: 10,
      highest: 1000,
    }),
    limit: quantity({
      label: 'Limit to hold it against',
      symbol: 'I_max',
      unit: 'A',
      bare: 'mA',
      usual: '0.25 mA',
      lowest: 1e-6,
      highest: 0.1,
      hint: 'by the class of the equipment and your local rules',
    }),
  },
  outputs: {
    current: { label: 'Touch current', symbol: 'I', unit: 'A', headline: true },
    most: { label: 'Capacitance that just meets the limit', symbol: 'C_max', unit: 'F' },
  },
  equations: ['I = 2*pi*f*C*V', 'C_max = I_max / (2*pi*f*V)'],
  at: ({ c, v, f, limit }) => ({
    current: reactiveCurrent(f, exactly(c), v).typ,
    most: capacitanceForCurrent(limit, f, v),
  }),
  notes: ({ limit }, { current = 0 }) => [
    ...noteIf(current > limit, 'caution', 'This is above the limit beside it.'),
    {
      kind: 'limit',
      text: 'Which limit holds depends on the standard for the equipment, on its class and on where it is used: ask that, not this page.',
    },
  ],
  plots: [
    {
      title: 'Touch current against capacitance',
      x: 'c',
      scale: 'log',
      y: ['current'],
      yScale: 'log',
      limits: ({ limit }) => [{ label: 'limit', value: limit }],
    },
  ],
  cautions: ['mains', 'y-parts'],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: 4.7 nF at 240 V and 50 Hz let 0.354 mA through',
      inputs: { c: '4.7 nF', v: '240', f: '50' },
      expected: { current: 0.354e-3 },
      within: 0.005,
      source: 'diyaudio-59315',
    },
    {
      what: 'From a printed formula: a limit of 3.5 mA at 250 V and 50 Hz allows 44.6 nF',
      inputs: { v: '250', f: '50', limit: '3.5 mA' },
      expected: { most: 44.6e-9 },
      within: 0.005,
      source: 'te-leak',
    },
    {
      what: 'Worked by hand: 2π × 50 Hz × 4.7 nF × 230 V',
      inputs: { c: '4.7 nF', v: '230', f: '50' },
      expected: { current: 339.6e-6, most: 3.46e-9 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
