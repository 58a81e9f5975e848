import { cornerFrequency, levelPassed, phaseLead, shareAcross } from '../../equations/coupling.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, quantity } from '../sum.ts';

/** High-pass of a coupling capacitor and the resistance that it works into. */
export const couplingCorner = defineSum({
  id: 'coupling-corner',
  title: 'Coupling corner',
  lead: 'At which frequency a coupling capacitor has lost 3 dB, and what it still passes elsewhere.',
  group: 'audio',
  inputs: {
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '100 nF ±10 %',
      lowest: 1e-13,
      highest: 10,
    }),
    r: quantity({
      label: 'Source and load resistance together',
      symbol: 'R',
      unit: 'ohm',
      usual: '47 kΩ',
      lowest: 0.1,
      highest: 1e13,
      hint: 'source and load in series',
    }),
    f: quantity({
      label: 'Frequency of the signal',
      symbol: 'f',
      unit: 'Hz',
      usual: '20 Hz',
      lowest: 1e-3,
      highest: 1e9,
    }),
  },
  outputs: {
    corner: { label: 'Corner frequency', symbol: 'f_c', unit: 'Hz', headline: true },
    level: { label: 'Level at the frequency', symbol: 'a', unit: 'dB' },
    phase: { label: 'Phase lead there', symbol: 'phi', unit: 'deg' },
    share: { label: 'Share of the signal across the capacitor', symbol: 's', unit: 'fraction' },
  },
  equations: [
    'f_c = 1 / (2*pi*R*C)',
    'a = -10*log10(1 + (f_c/f)^2)',
    'phi = atan(f_c/f)',
    's = 1 / sqrt(1 + (f/f_c)^2)',
  ],
  at: ({ c, r, f }) => {
    const corner = cornerFrequency(exactly(c), r).typ;
    return {
      corner,
      level: levelPassed(f, corner),
      phase: phaseLead(f, corner),
      share: shareAcross(f, corner),
    };
  },
  notes: () => [
    {
      kind: 'limit',
      text: 'Resistance of the source and of the load count together. Several such corners in a chain lose more: two equal ones are 6 dB down at theirs.',
    },
  ],
  plots: [
    {
      title: 'Level against frequency',
      x: 'f',
      scale: 'log',
      y: ['level'],
      yScale: 'linear',
      limits: () => [{ label: '−3 dB', value: levelPassed(1, 1) }],
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: 2 µF into 10 kΩ turn over at 7.95 Hz',
      inputs: { c: '2 µF', r: '10k' },
      expected: { corner: 7.95 },
      within: 0.003,
      source: 'aa-209396',
    },
    {
      what: '10 nF into 1 MΩ, worked by hand: 1/(2π × 1 MΩ × 10 nF)',
      inputs: { c: '10 nF', r: '1 MΩ', f: '20 Hz' },
      expected: { corner: 15.915, level: -2.129, phase: 38.51, share: 0.6227 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
