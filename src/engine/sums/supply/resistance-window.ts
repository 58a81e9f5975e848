import { cornerFrequency } from '../../equations/coupling.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** Series resistance of an output capacitor against the window in which a regulator is stable. */
export const resistanceWindow = defineSum({
  id: 'resistance-window',
  title: 'ESR at a regulator',
  lead: 'Whether the ESR of an output capacitor lies in the window that a regulator asks for, and what resistor brings it there.',
  group: 'supply',
  inputs: {
    esr: quantity({
      label: 'ESR of the part',
      symbol: 'R_C',
      unit: 'ohm',
      usual: '20 to 60 mΩ',
      lowest: 1e-6,
      highest: 1e4,
      hint: 'cold, a wet electrolytic has several times as much',
    }),
    added: quantity({
      label: 'Resistor in series with it',
      symbol: 'R_A',
      unit: 'ohm',
      usual: '0 Ω',
      lowest: 0,
      highest: 1e4,
    }),
    low: quantity({
      label: 'Smallest that the regulator allows',
      symbol: 'R_1',
      unit: 'ohm',
      usual: '0.1 Ω',
      lowest: 0,
      highest: 1e4,
    }),
    high: quantity({
      label: 'Largest that it allows',
      symbol: 'R_2',
      unit: 'ohm',
      usual: '5 Ω',
      lowest: 1e-4,
      highest: 1e4,
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '22 µF ±20 %',
      lowest: 1e-9,
      highest: 1,
    }),
  },
  outputs: {
    whole: { label: 'Series resistance in all', symbol: 'R', unit: 'ohm', headline: true },
    least: { label: 'Resistor to add, at least', symbol: 'R_n', unit: 'ohm' },
    most: { label: 'Resistor to add, at most', symbol: 'R_m', unit: 'ohm' },
    zero: { label: 'Frequency of the zero', symbol: 'f_z', unit: 'Hz' },
  },
  equations: ['R = R_C + R_A', 'R_n = R_1 - R_C', 'R_m = R_2 - R_C', 'f_z = 1/(2*pi*R*C)'],
  at: ({ esr, added, low, high, c }) => ({
    whole: esr + added,
    least: esr >= low ? undefined : low - esr,
    most: esr > high ? undefined : high - esr,
    zero: cornerFrequency(exactly(c), esr + added).typ,
  }),
  judges: true,
  answer: ({ esr, added, low, high }) => {
    const whole = esr + added;
    if (low > high) return 'The window ends below where it begins.';
    if (whole < low) return 'Too little ESR: the regulator may oscillate.';
    return whole > high
      ? 'Too much ESR: the regulator may oscillate, or pass ripple.'
      : 'The ESR lies in the window.';
  },
  notes: ({ low, high, esr }) => [
    ...noteIf(low > high, 'limit', 'The window ends below where it begins.'),
    ...noteIf(
      esr > high,
      'limit',
      'No resistor helps a part that has too much by itself: take one of lower ESR, or two in parallel.',
    ),
    {
      kind: 'remark',
      text: 'The window is that of the regulator’s sheet, over load and temperature. A ceramic chip elsewhere on the same rail works round the resistor: look along the tracks.',
    },
  ],
  plots: [
    {
      title: 'Series resistance in all against the resistor',
      x: 'added',
      scale: 'linear',
      span: ({ added, low, high, esr }) => [
        0,
        Math.max(1.2 * (high - esr), 2 * added, 2 * low, 0.1),
      ],
      y: ['whole'],
      yScale: 'log',
      limits: ({ low, high }) => [
        { label: 'smallest', value: low },
        { label: 'largest', value: high },
      ],
    },
  ],
  cautions: ['rail-order'],
  sources: ['ti-lm2941-ds', 'identity'],
  checks: [
    {
      what: 'Worked by hand: 0.05 Ω with 0.15 Ω before 22 µF is 0.2 Ω, its zero at 36.2 kHz; 0.1 Ω needs at least 0.05 Ω',
      inputs: { esr: '0.05', added: '0.15', low: '0.1', c: '22 µF' },
      expected: { whole: 0.2, zero: 36.17e3, least: 0.05 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
