import { dissipation } from '../../equations/heat.ts';
import { storedEnergy } from '../../equations/inrush.ts';
import { energyOnTop, overloadEnergy } from '../../equations/resistor.ts';
import { overloadBy } from '../../laws.ts';
import { formatValue } from '../../quantities/index.ts';
import { choice, noteIf, optionalQuantity, quantity, withFacts } from '../sum.ts';

const CAPACITOR = 'capacitor';

const equationsOf = (kind: string): string[] => [
  'P = V^2/R',
  kind === CAPACITOR ? 'W = C*V^2/2' : 'W = P*t',
  't_e = W/P',
];

const AGAIN = ['P_m = W*f', 'W_c = W*(1 + P_m/P_R)'];

/** Energy of a pulse in a resistor, and the square pulse that is as hard on it. */
export const resistorPulse = withFacts(overloadBy)({
  id: 'resistor-pulse',
  title: 'Pulse load of a resistor',
  lead: 'What a short pulse, or a capacitor charged or discharged through it, puts into a resistor, to be held against the pulse curve of its sheet.',
  group: 'resistor',
  inputs: {
    kind: choice({
      label: 'What comes',
      usual: 'square',
      options: [
        { id: 'square', name: 'square pulse' },
        { id: CAPACITOR, name: 'charge of a capacitor' },
      ],
    }),
    v: quantity({
      label: 'Voltage across it at the start',
      symbol: 'V',
      unit: 'V',
      usual: '325 V',
      lowest: 0,
      highest: 100_000,
    }),
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '47 Ω ±5 %',
      lowest: 1e-3,
      highest: 1e13,
    }),
    t: quantity({
      label: 'Length of the pulse',
      symbol: 't',
      unit: 's',
      bare: 'ms',
      usual: '1 ms',
      lowest: 1e-9,
      highest: 10,
      hint: 'of a square pulse',
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '100 µF ±20 %',
      lowest: 1e-13,
      highest: 10,
      hint: 'charged or discharged through it',
    }),
    f: optionalQuantity({
      label: 'How often it comes',
      symbol: 'f',
      unit: 'Hz',
      lowest: 1e-6,
      highest: 1e6,
      hint: 'empty: once, into a part that does not work yet',
    }),
    p: quantity({
      label: 'Rated power',
      symbol: 'P_R',
      unit: 'W',
      usual: '5 W',
      lowest: 1e-3,
      highest: 10_000,
    }),
    most: optionalQuantity({
      label: 'Energy that its sheet allows',
      symbol: 'W_a',
      unit: 'J',
      lowest: 1e-9,
      highest: 1e6,
      hint: 'at the length below; may stay empty',
    }),
  },
  outputs: {
    energy: { label: 'Energy of the pulse', symbol: 'W', unit: 'J', headline: true },
    peak: { label: 'Highest power', symbol: 'P', unit: 'W' },
    long: { label: 'Square pulse of that height, as long as', symbol: 't_e', unit: 's' },
    mean: { label: 'Mean power', symbol: 'P_m', unit: 'W' },
    loaded: { label: 'Counts as a single pulse of', symbol: 'W_c', unit: 'J' },
    share: { label: 'Of what its sheet allows', symbol: 'n', unit: 'fraction' },
  },
  equations: equationsOf('square'),
  equationsFor: ({ kind, f, most }) => [
    ...equationsOf(kind),
    ...(f === undefined ? [] : AGAIN),
    ...(most === undefined ? [] : [f === undefined ? 'n = W/W_a' : 'n = W_c/W_a']),
  ],
  at: ({ kind, v, r, t, c, f, p, most }) => {
    const peak = dissipation(v, r);
    const energy = kind === CAPACITOR ? storedEnergy(c, v) : peak * t;
    const mean = f === undefined ? undefined : energy * f;
    const loaded = mean === undefined ? undefined : energyOnTop(energy, mean, p);
    return {
      energy,
      peak,
      long: peak === 0 ? undefined : energy / peak,
      mean,
      loaded,
      share: most === undefined ? undefined : (loaded ?? energy) / most,
    };
  },
  notes: ({ p, most }, { energy = 0, mean = 0, share = 0 }, test) => [
    ...noteIf(
      most === undefined && energy > overloadEnergy(p, test),
      'caution',
      `That is more energy than the overload test of ${formatValue(test.time, 's')} puts into a part of this rating: it burns open.`,
    ),
    ...noteIf(mean > p, 'caution', 'The mean power alone is above the rating.'),
    ...noteIf(share > 1, 'limit', 'That is more than its sheet allows.'),
    {
      kind: 'limit',
      text: 'Wire takes the energy of any pulse shorter than some milliseconds, so that its sheet prints joules; a film burns by its highest power, so that its sheet prints a curve over the length. Both have a highest voltage besides, which is a sum of its own.',
    },
    {
      kind: 'remark',
      text: 'A part that is already loaded takes less: what comes on top counts as more, in the proportion of mean to rated power. This is one maker’s rule, for pulses up to 100 ms.',
      source: 'vishay-dto25',
    },
    {
      kind: 'remark',
      text: 'Where there is no pulse curve, take a composition, wire-wound or named pulse type, and leave the flameproof or fusible one where one was.',
    },
  ],
  plots: [
    {
      title: 'Energy against the voltage',
      x: 'v',
      scale: 'log',
      y: ['energy'],
      yScale: 'log',
      limits: ({ most }) => (most === undefined ? [] : [{ label: 'allowed', value: most }]),
    },
  ],
  cautions: ['stored-charge'],
  sources: ['vishay-dto25', 'vishay-dale-pulse', 'identity'],
  checks: [
    {
      what: 'Printed: a wire-wound part takes 24 500 W for 1 ms, because energy is power times time; resistance and voltage chosen here',
      inputs: { r: '1', v: '156.525', t: '1 ms' },
      expected: { peak: 24_500, energy: 24.5 },
      within: 0.0001,
      source: 'vishay-dale-pulse',
    },
    {
      what: 'Printed of the same part: 24 500 000 W for 1 µs, which is as much energy',
      inputs: { r: '1', v: '4949.75', t: '1 µs' },
      expected: { peak: 24.5e6, energy: 24.5 },
      within: 0.0001,
      source: 'vishay-dale-pulse',
    },
    {
      what: 'From a printed formula, U²/R times t, and E times (1 + P_a/P_r): 100 V on 10 Ω for 10 ms once a second are 10 J, and count as 14 J in a part of 25 W',
      inputs: { r: '10', v: '100', t: '10 ms', f: '1', p: '25' },
      expected: { energy: 10, mean: 10, loaded: 14 },
      within: 1e-6,
      source: 'vishay-dto25',
    },
    {
      what: 'Worked by hand: 100 µF from 300 V hold 4.5 J; through 10 Ω they are as hard as 9 kW for half of R·C, 0.5 ms',
      inputs: { kind: CAPACITOR, r: '10', v: '300', c: '100 µF' },
      expected: { energy: 4.5, peak: 9000, long: 0.5e-3 },
      within: 1e-6,
      source: 'identity',
    },
  ],
});
