import { storedCharge, storedEnergy, switchOnPeak } from '../../equations/inrush.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** What the capacitor behind a regulator sends back through it when its input is shorted. */
export const regulatorDump = defineSum({
  id: 'regulator-dump',
  title: 'Reverse diode at a regulator',
  lead: 'Whether the capacitor at the output of an adjustable regulator needs a reverse diode, and what it sends through when the input is shorted.',
  group: 'supply',
  inputs: {
    c: quantity({
      label: 'Capacitance at the output',
      symbol: 'C',
      unit: 'F',
      usual: '10 µF ±20 %',
      lowest: 1e-9,
      highest: 1,
    }),
    v: quantity({
      label: 'Output voltage',
      symbol: 'V',
      unit: 'V',
      usual: '12 V',
      lowest: 0.5,
      highest: 1000,
    }),
    limit: quantity({
      label: 'Capacitance that needs no diode',
      symbol: 'C_D',
      unit: 'F',
      usual: '25 µF',
      lowest: 1e-9,
      highest: 1,
      hint: 'of the regulator’s sheet; 25 µF is that of one that bears 25 A',
    }),
    r: quantity({
      label: 'Resistance of the short and the part',
      symbol: 'R',
      unit: 'ohm',
      usual: '0.6 Ω',
      lowest: 1e-3,
      highest: 1e4,
      hint: 'ESR of the capacitor, tracks, the junction',
    }),
  },
  outputs: {
    share: {
      label: 'Of what needs no diode',
      symbol: 'n',
      unit: 'fraction',
      headline: true,
    },
    current: { label: 'Current at first', symbol: 'I', unit: 'A' },
    charge: { label: 'Charge', symbol: 'Q', unit: 'C' },
    energy: { label: 'Energy', symbol: 'W', unit: 'J' },
    constant: { label: 'Falls to a third within', symbol: 't', unit: 's' },
  },
  equations: ['n = C/C_D', 'I = V/R', 'Q = C*V', 'W = C*V^2/2', 't = R*C'],
  at: ({ c, v, limit, r }) => ({
    share: c / limit,
    current: switchOnPeak(v, r),
    charge: storedCharge(c, v),
    energy: storedEnergy(c, v),
    constant: r * c,
  }),
  judges: true,
  answer: ({ c, limit }) =>
    c <= limit
      ? 'No reverse diode is needed for this capacitor.'
      : 'A reverse diode is needed: cathode to the input, anode to the output.',
  notes: ({ c, limit }) => [
    ...noteIf(
      c > limit,
      'caution',
      'A short at the input, or a switch-off with a heavy load there, sends this charge back through the regulator.',
      'ti-lm350',
    ),
    {
      kind: 'remark',
      text: 'A capacitor at the adjustment terminal discharges through the regulator too, and has a limit and a diode of its own in the sheet. Fixed regulators differ: some name themselves safe without.',
    },
  ],
  plots: [
    {
      title: 'Share against the capacitance',
      x: 'c',
      scale: 'log',
      y: ['share'],
      yScale: 'log',
      limits: () => [{ label: 'needs a diode above', value: 1 }],
    },
  ],
  cautions: ['regulator-dump'],
  sources: ['ti-lm350', 'identity'],
  checks: [
    {
      what: 'From a printed limit: 22 µF are below the 25 µF that need no diode',
      inputs: { c: '22 µF' },
      expected: { share: 0.88 },
      within: 0.001,
      source: 'ti-lm350',
      locator: 'PROTECTION DIODES',
    },
    {
      what: 'Worked by hand: 10 µF at 12 V hold 120 µC and 0.72 mJ, and send 20 A through 0.6 Ω',
      inputs: { c: '10 µF', v: '12', r: '0.6' },
      expected: { charge: 120e-6, energy: 0.72e-3, current: 20 },
      within: 1e-6,
      source: 'identity',
    },
  ],
});
