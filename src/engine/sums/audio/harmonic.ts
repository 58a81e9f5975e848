import { cornerFrequency, shareAcross } from '../../equations/coupling.ts';
import { peakOfSine } from '../../equations/sine.ts';
import { harmonicAtLoad } from '../../equations/distortion.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** Third harmonic that a coupling part makes whose capacitance moves with voltage. */
export const harmonic = defineSum({
  id: 'harmonic',
  title: 'Distortion of a coupling capacitor',
  lead: 'An estimate of the third harmonic that a capacitor makes whose capacitance moves with voltage: how much signal is across it, and what that does.',
  group: 'audio',
  inputs: {
    change: quantity({
      label: 'Capacitance lost at rated voltage',
      symbol: 'k_V',
      unit: 'fraction',
      bare: '%',
      usual: '-40 to -10 %',
      lowest: -1,
      highest: 1,
      hint: 'class 2 ceramic −80 to −10 %; film and class 1 next to nothing',
    }),
    rating: quantity({
      label: 'Rated voltage',
      symbol: 'U_R',
      unit: 'V',
      usual: '50 V',
      lowest: 1,
      highest: 50_000,
    }),
    signal: quantity({
      label: 'Signal, RMS',
      symbol: 'V',
      unit: 'V',
      usual: '1 V',
      lowest: 0,
      highest: 5000,
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '1 µF',
      lowest: 1e-13,
      highest: 1,
    }),
    r: quantity({
      label: 'Load resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '10 kΩ',
      lowest: 0.01,
      highest: 1e13,
    }),
    f: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '20 Hz',
      lowest: 1e-3,
      highest: 1e9,
    }),
  },
  outputs: {
    third: { label: 'Third harmonic at the load', symbol: 'h_3', unit: 'fraction', headline: true },
    across: { label: 'Signal across the capacitor', symbol: 'V_C', unit: 'V' },
    share: { label: 'Share of the signal across it', symbol: 's', unit: 'fraction' },
    corner: { label: 'Corner frequency', symbol: 'f_c', unit: 'Hz' },
  },
  equations: [
    'f_c = 1/(2*pi*R*C)',
    's = 1/sqrt(1 + (f/f_c)^2)',
    'V_C = s*V',
    'h_3 = 4/(15*pi)*|k_V|*sqrt(2)*V*s^2/U_R',
  ],
  at: ({ change, rating, signal, c, r, f }) => {
    const corner = cornerFrequency(exactly(c), r).typ;
    const share = shareAcross(f, corner);
    return {
      third: harmonicAtLoad(change, rating, signal, share),
      across: share * signal,
      share,
      corner,
    };
  },
  notes: ({ rating, signal }, { across = 0 }) => [
    ...noteIf(
      peakOfSine(across) > rating,
      'caution',
      'The peak of the signal across it is above its rated voltage.',
    ),
    ...noteIf(signal === 0, 'limit', 'Without a signal nothing is bent.'),
    {
      kind: 'limit',
      text: 'The order of magnitude alone: the law is one of small signals in a ferroelectric, from memory, and holds for no other cause of distortion. A larger capacitor lets less signal stand across itself: ten times the value, a hundredth of this.',
    },
  ],
  plots: [
    {
      title: 'Third harmonic against the frequency',
      x: 'f',
      scale: 'log',
      y: ['third'],
      yScale: 'log',
    },
    {
      title: 'Third harmonic against the capacitance',
      x: 'c',
      scale: 'log',
      y: ['third'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['trade', 'identity'],
  checks: [
    {
      what: 'Worked by hand: at the corner 0.7071 of the signal is across it; 0.0849 × 0.3 × 1.414 V × 0.5 / 50 V is 0.036 %',
      inputs: { change: '-30 %', c: '1 µF', r: '10k', f: '15.9155 Hz', rating: '50', signal: '1' },
      expected: { third: 3.601e-4, share: 0.7071 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
