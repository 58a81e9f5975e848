import { seriesImpedance } from '../../equations/impedance.ts';
import { selfResonance } from '../../equations/resonance.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, optionalQuantity, quantity } from '../sum.ts';

interface Branch {
  c: number | undefined;
  esr: number | undefined;
  esl: number | undefined;
}

/** Resistance and reactance (ohm) of parts side by side at a frequency (Hz). */
const together = (branches: readonly Branch[], hertz: number): number => {
  const omega = 2 * Math.PI * hertz;
  let conductance = 0;
  let susceptance = 0;
  for (const { c, esr = 0, esl = 0 } of branches) {
    if (c === undefined) continue;
    const reactance = omega * esl - 1 / (omega * c);
    const square = esr ** 2 + reactance ** 2;
    conductance += esr / square;
    susceptance -= reactance / square;
  }
  return 1 / Math.hypot(conductance, susceptance);
};

const value = (number: number) =>
  ({
    label: `Capacitance ${number}`,
    symbol: `C_${number}`,
    unit: 'F',
    lowest: 1e-13,
    highest: 1,
  }) as const;
const resistance = (number: number) =>
  ({
    label: `Series resistance ${number}`,
    symbol: `R_${number}`,
    unit: 'ohm',
    lowest: 1e-6,
    highest: 1e4,
  }) as const;
const inductance = (number: number) =>
  ({
    label: `Inductance ${number}, with its leads`,
    symbol: `L_${number}`,
    unit: 'H',
    bare: 'nH',
    lowest: 1e-11,
    highest: 1e-3,
  }) as const;

/** Impedance of one to three decoupling parts in parallel against frequency. */
export const decoupling = defineSum({
  id: 'decoupling',
  title: 'Decoupling against frequency',
  lead: 'Impedance of one to three capacitors side by side, with their series resistance and inductance, and where they ring against each other.',
  group: 'supply',
  inputs: {
    c1: quantity({ ...value(1), usual: '47 µF' }),
    r1: quantity({ ...resistance(1), usual: '0.3 Ω' }),
    l1: quantity({ ...inductance(1), usual: '15 nH' }),
    c2: optionalQuantity({ ...value(2), hint: 'such as 100 nF; may stay empty' }),
    r2: optionalQuantity({ ...resistance(2), hint: 'such as 50 mΩ' }),
    l2: optionalQuantity({ ...inductance(2), hint: 'such as 6 nH' }),
    c3: optionalQuantity({ ...value(3), hint: 'such as 1 nF; may stay empty' }),
    r3: optionalQuantity({ ...resistance(3), hint: 'such as 50 mΩ' }),
    l3: optionalQuantity({ ...inductance(3), hint: 'such as 4 nH' }),
    f: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '1 MHz',
      lowest: 1,
      highest: 1e10,
    }),
  },
  outputs: {
    impedance: { label: 'Impedance at the frequency', symbol: 'Z', unit: 'ohm', headline: true },
    first: { label: 'Of the first alone', symbol: 'Z_1', unit: 'ohm' },
    resonance: { label: 'Resonance of the first alone', symbol: 'f_1', unit: 'Hz' },
  },
  equations: [
    'Z_1 = sqrt(R_1^2 + (2*pi*f*L_1 - 1/(2*pi*f*C_1))^2)',
    'f_1 = 1 / (2*pi*sqrt(L_1*C_1))',
  ],
  at: ({ c1, r1, l1, c2, r2, l2, c3, r3, l3, f }) => ({
    impedance: together(
      [
        { c: c1, esr: r1, esl: l1 },
        { c: c2, esr: r2, esl: l2 },
        { c: c3, esr: r3, esl: l3 },
      ],
      f,
    ),
    first: seriesImpedance(f, r1, l1, c1),
    resonance: selfResonance(exactly(l1), c1).typ,
  }),
  notes: ({ c2, r2, c3, r3 }) => [
    ...((c2 !== undefined && r2 === undefined) || (c3 !== undefined && r3 === undefined)
      ? [
          {
            kind: 'limit' as const,
            text: 'Without a series resistance a part rings more sharply here than any real one.',
          },
        ]
      : []),
    {
      kind: 'remark',
      text: 'Every millimetre of lead and track adds about a nanohenry (common practice, no source).',
    },
  ],
  plots: [
    {
      title: 'Impedance against frequency',
      x: 'f',
      scale: 'log',
      span: () => [1e3, 1e9],
      y: ['impedance', 'first'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Printed: 100 nF with 1 nH ring at 15.9 MHz',
      inputs: { c1: '100 nF', l1: '1 nH' },
      expected: { resonance: 15.9e6 },
      within: 0.003,
      source: 'hypercode-srf',
    },
    {
      what: 'Worked by hand: two equal parts side by side have half the impedance',
      inputs: {
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
