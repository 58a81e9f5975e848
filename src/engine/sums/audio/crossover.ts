import { capacitanceForCorner } from '../../equations/coupling.ts';
import { levelBehind } from '../../equations/level.ts';
import { choice, defineSum, noteIf, quantity } from '../sum.ts';

/**
 * A kind of network: its parts as multiples of those of the first order, and the power of its capacitor
 * that its frequency goes with. In the second order the capacitor rings with the coil, which stays.
 */
interface Network {
  c: number;
  l: number;
  power: number;
}

const FIRST: Network = { c: 1, l: 1, power: 1 };
const NETWORKS: Readonly<Record<string, Network>> = {
  first: FIRST,
  'second-linkwitz': { c: 0.5, l: 2, power: 0.5 },
  'second-butterworth': { c: Math.SQRT1_2, l: Math.SQRT2, power: 0.5 },
};

/** How parts follow from driver and frequency, by kind. */
const EQUATIONS: Readonly<Record<string, readonly string[]>> = {
  first: ['C_0 = 1/(2*pi*f*R)', 'L_0 = R/(2*pi*f)', 'f_1 = f*C_0/C'],
  'second-butterworth': [
    'C_0 = 1/(2*pi*f*R*sqrt(2))',
    'L_0 = sqrt(2)*R/(2*pi*f)',
    'f_1 = 1/(2*pi*sqrt(L_0*C))',
  ],
  'second-linkwitz': ['C_0 = 1/(4*pi*f*R)', 'L_0 = R/(pi*f)', 'f_1 = 1/(2*pi*sqrt(L_0*C))'],
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
  equations: [
    'C_0 = 1/(2*pi*f*R)',
    'L_0 = R/(2*pi*f)',
    'f_1 = f*C_0/C',
    'a = 20*log10(R/(R + R_s))',
  ],
  equationsFor: ({ order }) => [...(EQUATIONS[order] ?? []), 'a = 20*log10(R/(R + R_s))'],
  at: ({ order, r, f, c, esr }) => {
    const network = NETWORKS[order] ?? FIRST;
    const capacitance = network.c * capacitanceForCorner(r, f);
    return {
      capacitance,
      inductance: (network.l * r) / (2 * Math.PI * f),
      actual: f * (capacitance / c) ** network.power,
      loss: levelBehind(r, esr),
    };
  },
  notes: ({ order }) => [
    ...noteIf(
      order !== 'first',
      'remark',
      'In a second order the capacitor rings with the coil, which is taken as the one for this frequency: twice the value lowers the frequency to 71 %, and raises the Q as much.',
    ),
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
    {
      what: 'Worked by hand: in the first order twice the value halves the frequency',
      inputs: { order: 'first', r: '8', f: '3k', c: '13.263 µF' },
      expected: { actual: 1500 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: in the second order, Butterworth, 8 Ω at 3 kHz take 4.689 µF and 0.6002 mH; 9.378 µF ring with that coil at 3 kHz over √2',
      inputs: { order: 'second-butterworth', r: '8', f: '3k', c: '9.3783 µF' },
      expected: { capacitance: 4.6892e-6, inductance: 0.60021e-3, actual: 2121.3 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
