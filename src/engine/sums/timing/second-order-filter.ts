import {
  followerHighPass,
  followerLowPass,
  highPassLevel,
  lowPassLevel,
  type PolePair,
} from '../../equations/second-order.ts';
import { choice, defineSum, quantity } from '../sum.ts';

const resistor = (symbol: string, label: string) =>
  quantity({ label, symbol, unit: 'ohm', usual: '10 kΩ ±1 %', lowest: 1, highest: 1e10 });

const capacitor = (symbol: string, label: string, usual: string) =>
  quantity({ label, symbol, unit: 'F', usual, lowest: 1e-13, highest: 1 });

interface Parts {
  kind: string;
  r1: number;
  r2: number;
  c1: number;
  c2: number;
}

const poles = ({ kind, r1, r2, c1, c2 }: Parts): PolePair =>
  kind === 'high' ? followerHighPass(r1, r2, c1, c2) : followerLowPass(r1, r2, c1, c2);

/** Second-order filter about a follower, with the tolerances of its four parts. */
export const secondOrderFilter = defineSum({
  id: 'second-order-filter',
  title: 'Corner and Q of a second-order filter',
  lead: 'Where a second-order filter about a follower has its corner, how it peaks there, and what the tolerances of its four parts do to both.',
  group: 'timing',
  inputs: {
    kind: choice({
      label: 'What it passes',
      usual: 'low',
      options: [
        { id: 'low', name: 'low frequencies' },
        { id: 'high', name: 'high frequencies' },
      ],
    }),
    r1: resistor('R_1', 'First resistor'),
    r2: resistor('R_2', 'Second resistor'),
    c1: capacitor('C_1', 'First capacitor', '22 nF ±5 %'),
    c2: capacitor('C_2', 'Second capacitor', '10 nF ±5 %'),
    f: quantity({
      label: 'Frequency to look at',
      symbol: 'f',
      unit: 'Hz',
      usual: '1 kHz',
      lowest: 1e-3,
      highest: 1e9,
    }),
  },
  outputs: {
    frequency: { label: 'Corner', symbol: 'f_0', unit: 'Hz', headline: true },
    quality: { label: 'Quality factor', symbol: 'Q', unit: 'number' },
    level: { label: 'Level at the frequency', unit: 'dB' },
  },
  equations: [
    'f_0 = 1 / (2*pi*sqrt(R_1*R_2*C_1*C_2))',
    'Q = sqrt(R_1*R_2*C_1*C_2) / (C_2*(R_1 + R_2))',
  ],
  equationsFor: ({ kind }) => [
    'f_0 = 1 / (2*pi*sqrt(R_1*R_2*C_1*C_2))',
    kind === 'high'
      ? 'Q = sqrt(R_1*R_2*C_1*C_2) / (R_1*(C_1 + C_2))'
      : 'Q = sqrt(R_1*R_2*C_1*C_2) / (C_2*(R_1 + R_2))',
  ],
  at: ({ f, ...parts }) => {
    const pair = poles(parts);
    return {
      frequency: pair.frequency,
      quality: pair.quality,
      level: parts.kind === 'high' ? highPassLevel(pair, f) : lowPassLevel(pair, f),
    };
  },
  notes: ({ kind }) => [
    {
      kind: 'remark',
      text:
        kind === 'high'
          ? 'First resistor from the output, second to ground, both capacitors in the path.'
          : 'First capacitor from the output, second to ground, both resistors in the path.',
    },
  ],
  plots: [
    { title: 'Level against frequency', x: 'f', scale: 'log', y: ['level'], yScale: 'linear' },
  ],
  drawn: ['frequency', 'quality'],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 10 kΩ twice, 22 nF and 10 nF: 1/(2π × 10 kΩ × 14.83 nF), Q = √2.2 / 2',
      inputs: {},
      expected: { frequency: 1073, quality: 0.7416 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: a high-pass of equal capacitors with 10 kΩ and 20 kΩ has Q = √2 / 2, and is 3 dB down at its corner',
      inputs: { kind: 'high', r1: '10k', r2: '20k', c1: '10n', c2: '10n', f: '1125.4 Hz' },
      expected: { frequency: 1125.4, quality: 0.7071, level: -3.0103 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
