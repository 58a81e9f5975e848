import { capacitanceForCorner } from '../../equations/coupling.ts';
import { levelBehind } from '../../equations/level.ts';
import { choice, defineSum, quantity } from '../sum.ts';

const FACTORS: Readonly<Record<string, { c: number; l: number }>> = {
  first: { c: 1, l: 1 },
  'second-linkwitz': { c: 0.5, l: 2 },
  'second-butterworth': { c: Math.SQRT1_2, l: Math.SQRT2 },
};

/** How parts follow from driver and frequency, by kind. */
const EQUATIONS: Readonly<Record<string, readonly string[]>> = {
  first: ['C_0 = 1/(2*pi*f*R)', 'L_0 = R/(2*pi*f)'],
  'second-butterworth': ['C_0 = 1/(2*pi*f*R*sqrt(2))', 'L_0 = sqrt(2)*R/(2*pi*f)'],
  'second-linkwitz': ['C_0 = 1/(4*pi*f*R)', 'L_0 = R/(pi*f)'],
};

/** Capacitor and coil of a loudspeaker crossover, and what another value does. */
export const crossover = defineSum({
  id: 'crossover',
  title: 'Loudspeaker crossover network',
  lead: 'Capacitor and coil of a simple crossover for a frequency, where the capacitor at hand puts it, and what its ESR does.',
  group: 'audio',
  inputs: {
    order: choice({
      label: 'Kind',
      usual: 'first',
      options: [
        { id: 'first', name: 'first order' },
        { id: 'second-butterworth', name: 'second order, Butterworth' },
        { id: 'second-linkwitz', name: 'second order, Linkwitz–Riley' },
      ],
    }),
    r: quantity({
      label: 'Driver impedance, as a resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '8 Ω',
      lowest: 0.5,
      highest: 2000,
    }),
    f: quantity({
      label: 'Crossover frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '3 kHz',
      lowest: 10,
      highest: 100_000,
    }),
    c: quantity({
      label: 'Capacitor at hand',
      symbol: 'C',
      unit: 'F',
      usual: '6.8 µF ±5 %',
      lowest: 1e-8,
      highest: 1e-2,
    }),
    esr: quantity({
      label: 'Its ESR',
      symbol: 'R_s',
      unit: 'ohm',
      usual: '0.5 Ω',
      lowest: 0,
      highest: 100,
    }),
  },
  outputs: {
    capacitance: {
      label: 'Capacitor for this frequency',
      symbol: 'C_0',
      unit: 'F',
      headline: true,
    },
    inductance: { label: 'Coil for this frequency', symbol: 'L_0', unit: 'H' },
    actual: { label: 'The one at hand puts it at', symbol: 'f_1', unit: 'Hz' },
    loss: { label: 'Level lost in its ESR', symbol: 'a', unit: 'dB' },
  },
  equations: ['C_0 = 1/(2*pi*f*R)', 'L_0 = R/(2*pi*f)', 'a = 20*log10(R/(R + R_s))'],
  equationsFor: ({ order }) => [...(EQUATIONS[order] ?? []), 'a = 20*log10(R/(R + R_s))'],
  at: ({ order, r, f, c, esr }) => {
    const factor = FACTORS[order] ?? { c: 1, l: 1 };
    const capacitance = factor.c * capacitanceForCorner(r, f);
    return {
      capacitance,
      inductance: (factor.l * r) / (2 * Math.PI * f),
      actual: (f * capacitance) / c,
      loss: levelBehind(r, esr),
    };
  },
  notes: () => [
    {
      kind: 'limit',
      text: 'A driver is a resistance only in part of its range, so the sound decides within a preferred value or two. A film capacitor without the ohm that an old electrolytic had lifts the treble a little: a resistor of that size gives it back.',
    },
  ],
  plots: [
    {
      title: 'Frequency against the capacitor at hand',
      x: 'c',
      scale: 'log',
      y: ['actual'],
      yScale: 'log',
    },
  ],
  cautions: ['bipolar-not-ac'],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: first order at 3 kHz with 4 Ω takes 13.3 µF and 0.212 mH',
      inputs: { order: 'first', r: '4', f: '3k' },
      expected: { capacitance: 13.3e-6, inductance: 0.212e-3 },
      within: 0.005,
      source: 'ohmicaudio-1st',
    },
    {
      what: 'From a printed formula: second order, Linkwitz–Riley, at 3 kHz with 8 Ω takes 3.32 µF and 0.849 mH',
      inputs: { order: 'second-linkwitz', r: '8', f: '3k' },
      expected: { capacitance: 3.32e-6, inductance: 0.849e-3 },
      within: 0.005,
      source: 'colomar-xover',
    },
  ],
});
