import { besideEachOther } from '../../equations/combinations.ts';
import { cornerFrequency } from '../../equations/coupling.ts';
import { levelBehind } from '../../equations/level.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, quantity } from '../sum.ts';

/** Cathode or emitter bypass: how far below its corner the gain falls to that without it. */
export const bypassShelf = defineSum({
  id: 'bypass-shelf',
  title: 'Bypass shelf',
  lead: 'From which frequency a cathode, emitter or source bypass gives the stage its full gain, and how much is missing below.',
  group: 'audio',
  inputs: {
    c: quantity({
      label: 'Bypass capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '22 µF ±20 %',
      lowest: 1e-12,
      highest: 1,
    }),
    r: quantity({
      label: 'Resistor that it bypasses',
      symbol: 'R',
      unit: 'ohm',
      usual: '820 Ω',
      lowest: 0.1,
      highest: 1e8,
    }),
    into: quantity({
      label: 'Resistance into the device there',
      symbol: 'r',
      unit: 'ohm',
      usual: '667 Ω',
      lowest: 0.1,
      highest: 1e9,
      hint: 'about 1/gm; for a triode (ra + load)/(µ + 1)',
    }),
    f: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '20 Hz',
      lowest: 1e-3,
      highest: 1e8,
    }),
  },
  outputs: {
    pole: { label: 'Full gain from about', symbol: 'f_p', unit: 'Hz', headline: true },
    zero: { label: 'Least gain below about', symbol: 'f_z', unit: 'Hz' },
    level: { label: 'Missing at the frequency', symbol: 'a', unit: 'dB' },
    shelf: { label: 'Missing at the lowest frequencies', symbol: 'a_0', unit: 'dB' },
    seen: { label: 'Resistance that the capacitor sees', symbol: 'R_s', unit: 'ohm' },
  },
  equations: [
    'R_s = R*r/(R + r)',
    'f_z = 1/(2*pi*R*C)',
    'f_p = 1/(2*pi*R_s*C)',
    'a = 10*log10((1 + (f/f_z)^2)/(1 + (f/f_p)^2)) + a_0',
    'a_0 = 20*log10(r/(R + r))',
  ],
  at: ({ c, r, into, f }) => {
    const seen = besideEachOther([exactly(r), exactly(into)]).typ;
    const zero = cornerFrequency(exactly(c), r).typ;
    const pole = cornerFrequency(exactly(c), seen).typ;
    const shelf = levelBehind(into, r);
    const rise = 10 * Math.log10((1 + (f / zero) ** 2) / (1 + (f / pole) ** 2));
    return { pole, zero, level: rise + shelf, shelf, seen };
  },
  notes: () => [
    {
      kind: 'limit',
      text: 'For small signals: the resistance of the device changes with its current, so use that at its working point.',
    },
  ],
  plots: [
    { title: 'Gain against frequency', x: 'f', scale: 'log', y: ['level'], yScale: 'linear' },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: 820 Ω beside 1/1.5 mS is 368 Ω, and 53 µF turn over there at 8.2 Hz',
      inputs: { r: '820', into: '666.67', c: '53 µF' },
      expected: { seen: 368, pole: 8.2 },
      within: 0.01,
      source: 'ampbooks-pentode3',
    },
  ],
});
