import { currentNoise, thermalNoise } from '../../equations/resistor.ts';
import { defineSum, quantity } from '../sum.ts';

/** Thermal and current noise of a resistor. */
export const resistorNoise = defineSum({
  id: 'resistor-noise',
  title: 'Noise of a resistor',
  lead: 'Thermal noise of a resistance, and what its construction adds when direct voltage stands across it.',
  group: 'resistor',
  inputs: {
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '100 kΩ',
      lowest: 1e-3,
      highest: 1e13,
    }),
    t: quantity({
      label: 'Temperature',
      symbol: 'T',
      unit: 'degC',
      usual: '25 °C',
      lowest: -200,
      highest: 300,
    }),
    low: quantity({
      label: 'Band from',
      symbol: 'f_1',
      unit: 'Hz',
      usual: '20 Hz',
      lowest: 1e-3,
      highest: 1e9,
    }),
    high: quantity({
      label: 'Band to',
      symbol: 'f_2',
      unit: 'Hz',
      usual: '20 kHz',
      lowest: 2e-3,
      highest: 1e10,
    }),
    v: quantity({
      label: 'Direct voltage across it',
      symbol: 'V',
      unit: 'V',
      usual: '10 V',
      lowest: 0,
      highest: 10_000,
    }),
    index: quantity({
      label: 'Noise index of its construction',
      symbol: 'N',
      unit: 'dB',
      usual: '-30 dB',
      lowest: -60,
      highest: 40,
      hint: '0 dB is 1 µV for a volt and a decade; film about −40 to −10, composition −12 to +6 dB',
    }),
  },
  outputs: {
    total: { label: 'Noise in the band', symbol: 'e', unit: 'V', headline: true },
    thermal: { label: 'Thermal', symbol: 'e_t', unit: 'V' },
    excess: { label: 'By current', symbol: 'e_x', unit: 'V' },
  },
  equations: [
    'e_t = sqrt(4*k*(T + 273.15)*R*(f_2 - f_1))',
    'e_x = 1e-6*10^(N/20)*V*sqrt(log10(f_2/f_1))',
    'e = sqrt(e_t^2 + e_x^2)',
  ],
  at: ({ r, t, low, high, v, index }) => {
    if (high <= low) return { total: undefined, thermal: undefined, excess: undefined };
    const thermal = thermalNoise(r, t, low, high);
    const excess = currentNoise(index, v, low, high);
    return { total: Math.hypot(thermal, excess), thermal, excess };
  },
  notes: ({ low, high }) => [
    ...(high <= low
      ? [{ kind: 'limit' as const, text: 'The band ends below where it begins.' }]
      : []),
    {
      kind: 'remark',
      text: 'The ranges beside the noise index are common practice, no single source; the data sheet of the part decides.',
    },
  ],
  plots: [
    {
      title: 'Noise against the resistance',
      x: 'r',
      scale: 'log',
      y: ['total', 'thermal', 'excess'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 1 kΩ at 17 °C (290.15 K) in a band of 10 kHz has √(4 × 1.380649e−23 × 290.15 × 1000 × 10 000) = 0.4003 µV',
      inputs: { r: '1k', t: '17', low: '10 kHz', high: '20 kHz', v: '0' },
      expected: { thermal: 0.4003e-6, excess: 0 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: 0 dB, 10 V and three decades give 10 µV × √3',
      inputs: { r: '1', low: '20', high: '20 kHz', v: '10', index: '0 dB' },
      expected: { excess: 17.32e-6 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
