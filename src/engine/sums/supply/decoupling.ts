import {
  parallelImpedance,
  seriesReactance,
  type SeriesBranch,
} from '../../equations/impedance.ts';
import { selfResonance } from '../../equations/resonance.ts';
import { exactly } from '../../quantities/range.ts';
import { choice, defineSum, quantity } from '../sum.ts';
import { ringing } from './ringing.ts';

const WHICH = ['one', 'two', 'three'] as const;

const value = (number: number, usual: string) =>
  quantity({
    label: `Capacitance ${number}`,
    symbol: `C_${number}`,
    unit: 'F',
    usual,
    lowest: 1e-13,
    highest: 1,
  });
const resistance = (number: number, usual: string) =>
  quantity({
    label: `ESR ${number}`,
    symbol: `R_${number}`,
    unit: 'ohm',
    usual,
    lowest: 1e-6,
    highest: 1e4,
  });
const inductance = (number: number, usual: string) =>
  quantity({
    label: `Inductance ${number}, with its leads`,
    symbol: `L_${number}`,
    unit: 'H',
    bare: 'nH',
    usual,
    lowest: 1e-11,
    highest: 1e-3,
  });
const reactance = (number: number) =>
  ({ label: `Reactance ${number}`, symbol: `X_${number}`, unit: 'ohm', step: true }) as const;
const alone = (number: number, which: string) =>
  ({ label: `Of the ${which} alone`, symbol: `Z_${number}`, unit: 'ohm' }) as const;
const resonance = (number: number, which: string) =>
  ({ label: `Resonance of the ${which}`, symbol: `f_${number}`, unit: 'Hz' }) as const;

interface Numbers {
  parts: string;
  c1: number;
  r1: number;
  l1: number;
  c2: number;
  r2: number;
  l2: number;
  c3: number;
  r3: number;
  l3: number;
}

/** Those parts that count. */
const partsOf = ({ parts, c1, r1, l1, c2, r2, l2, c3, r3, l3 }: Numbers): SeriesBranch[] =>
  [
    { capacitance: c1, resistance: r1, inductance: l1 },
    { capacitance: c2, resistance: r2, inductance: l2 },
    { capacitance: c3, resistance: r3, inductance: l3 },
  ].slice(0, 1 + WHICH.findIndex((one) => one === parts));

/** The equations of one part. */
const equationsOf = (number: number): string[] => [
  `f_${number} = 1 / (2*pi*sqrt(L_${number}*C_${number}))`,
  `X_${number} = 2*pi*f*L_${number} - 1/(2*pi*f*C_${number})`,
  `Z_${number} = sqrt(R_${number}^2 + X_${number}^2)`,
];

/** That of several in parallel: conductances and susceptances add. */
const together = (numbers: readonly number[]): string => {
  const sum = (letter: string): string =>
    numbers.map((number) => `${letter}_${number}/Z_${number}^2`).join(' + ');
  return `Z = 1 / sqrt((${sum('R')})^2 + (${sum('X')})^2)`;
};

/** Impedance of one to three decoupling parts in parallel against frequency. */
export const decoupling = defineSum({
  id: 'decoupling',
  title: 'Decoupling against frequency',
  lead: 'Impedance of one to three capacitors in parallel, with their ESR and inductance, and where they ring against each other.',
  group: 'supply',
  inputs: {
    parts: choice({
      label: 'Parts in parallel',
      usual: 'two',
      options: [
        { id: 'one', name: 'one' },
        { id: 'two', name: 'two' },
        { id: 'three', name: 'three' },
      ],
    }),
    f: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '1 MHz',
      lowest: 1,
      highest: 1e10,
    }),
    c1: value(1, '47 µF'),
    r1: resistance(1, '0.3 Ω'),
    l1: inductance(1, '15 nH'),
    c2: value(2, '100 nF'),
    r2: resistance(2, '50 mΩ'),
    l2: inductance(2, '6 nH'),
    c3: value(3, '1 nF'),
    r3: resistance(3, '50 mΩ'),
    l3: inductance(3, '4 nH'),
  },
  outputs: {
    impedance: { label: 'Impedance at the frequency', symbol: 'Z', unit: 'ohm', headline: true },
    first: alone(1, 'first'),
    second: alone(2, 'second'),
    third: alone(3, 'third'),
    resonance: resonance(1, 'first'),
    resonance2: resonance(2, 'second'),
    resonance3: resonance(3, 'third'),
    x1: reactance(1),
    x2: reactance(2),
    x3: reactance(3),
  },
  equations: [...equationsOf(1), ...equationsOf(2), together([1, 2])],
  equationsFor: ({ parts }) => {
    if (parts === 'one') return [...equationsOf(1), 'Z = Z_1'];
    const numbers = parts === 'two' ? [1, 2] : [1, 2, 3];
    return [...numbers.flatMap(equationsOf), together(numbers)];
  },
  at: (values) => {
    const [one, two, three] = partsOf(values);
    const { f } = values;
    const by = (
      part: SeriesBranch | undefined,
      figure: (part: SeriesBranch) => number,
    ): number | undefined => part && figure(part);
    const own = (part: SeriesBranch): number => parallelImpedance(f, [part]);
    const rings = ({ inductance: l, capacitance: c }: SeriesBranch): number =>
      selfResonance(exactly(l), c).typ;
    const reacts = (part: SeriesBranch): number => seriesReactance(f, part);
    return {
      impedance: parallelImpedance(f, partsOf(values)),
      first: by(one, own),
      second: by(two, own),
      third: by(three, own),
      resonance: by(one, rings),
      resonance2: by(two, rings),
      resonance3: by(three, rings),
      x1: by(one, reacts),
      x2: by(two, reacts),
      x3: by(three, reacts),
    };
  },
  tables: (values) => [
    {
      caption: 'Where they are best, and where they ring against each other',
      head: ['', 'Frequency', 'Impedance'],
      rows: ringing(partsOf(values)).map(({ kind, frequency, impedance }) => [
        kind,
        { value: frequency, unit: 'Hz' as const },
        { value: impedance, unit: 'ohm' as const },
      ]),
    },
  ],
  notes: () => [
    {
      kind: 'remark',
      text: 'Every millimetre of lead and track adds about a nanohenry (common practice, no source). Between two resonances the one part is an inductance and the other a capacitance: the less series resistance they have, the higher they ring there.',
    },
  ],
  plots: [
    {
      title: 'Impedance against frequency',
      x: 'f',
      scale: 'log',
      span: () => [1e3, 1e9],
      y: ['impedance', 'first', 'second', 'third'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: 100 nF with 1 nH ring at 15.9 MHz',
      inputs: { parts: 'one', c1: '100 nF', l1: '1 nH' },
      expected: { resonance: 15.9e6 },
      within: 0.003,
      source: 'hypercode-srf',
    },
    {
      what: 'Worked by hand: two equal parts in parallel have half the impedance',
      inputs: {
        parts: 'two',
        c1: '100 nF',
        r1: '1',
        l1: '10 nH',
        c2: '100 nF',
        r2: '1',
        l2: '10 nH',
        f: '100 kHz',
      },
      expected: { first: 15.942, impedance: 7.971 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
