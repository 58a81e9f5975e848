import { switchOnPeak, storedEnergy } from '../../equations/inrush.ts';
import { edgeByCurrent } from '../../equations/edge.ts';
import { defineSum, quantity } from '../sum.ts';

/** Resistor and capacitor across a contact or winding. */
export const snubber = defineSum({
  id: 'snubber',
  title: 'Snubber across a contact',
  lead: 'What a resistor and a capacitor across a contact let through, how far the voltage rises when it opens, and how steep.',
  group: 'supply',
  inputs: {
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '100 nF ±20 %',
      lowest: 1e-12,
      highest: 1e-3,
    }),
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '100 Ω ±10 %',
      lowest: 0.1,
      highest: 1e7,
    }),
    v: quantity({
      label: 'Voltage across the open contact',
      symbol: 'V',
      unit: 'V',
      usual: '325 V',
      lowest: 0.1,
      highest: 50_000,
      hint: 'the peak, where it alternates',
    }),
    i: quantity({
      label: 'Current when it opens',
      symbol: 'I',
      unit: 'A',
      usual: '0.5 A',
      lowest: 0,
      highest: 1000,
    }),
    l: quantity({
      label: 'Inductance of the load',
      symbol: 'L',
      unit: 'H',
      usual: '100 mH',
      lowest: 1e-9,
      highest: 1000,
    }),
    f: quantity({
      label: 'How often it closes and opens',
      symbol: 'f',
      unit: 'Hz',
      usual: '50 Hz',
      lowest: 0,
      highest: 1e7,
      hint: 'of a triac the mains frequency, twice that with a coil as its load, of a relay next to nothing',
    }),
  },
  outputs: {
    kick: { label: 'Voltage at the moment of opening', symbol: 'V_0', unit: 'V', headline: true },
    swing: { label: 'Swing by the coil alone, undamped', symbol: 'V_L', unit: 'V' },
    highest: { label: 'Highest across the contact, undamped', symbol: 'V_m', unit: 'V' },
    edge: { label: 'Steepest rise on the capacitor', symbol: 's', unit: 'V/s' },
    closing: { label: 'Current through the contact when it closes', symbol: 'I_c', unit: 'A' },
    loss: { label: 'Heat in the resistor', symbol: 'P', unit: 'W' },
  },
  equations: [
    'V_0 = I*R',
    'V_L = I*sqrt(L/C)',
    'V_m = V + sqrt(V^2 + V_L^2)',
    's = I/C',
    'I_c = V/R',
    'P = C*V^2*f',
  ],
  at: ({ c, r, v, i, l, f }) => {
    const swing = i * Math.sqrt(l / c);
    return {
      kick: i * r,
      swing,
      // The coil carries on from the supply: the capacitor swings about its voltage, from nothing.
      highest: v + Math.hypot(v, swing),
      edge: edgeByCurrent(i, c),
      closing: switchOnPeak(v, r),
      loss: 2 * storedEnergy(c, v) * f,
    };
  },
  notes: () => [
    {
      kind: 'caution',
      text: 'Across mains contacts only a capacitor approved for the mains, and a flameproof resistor that takes the surges: old ones of metallized paper smoke and burn.',
    },
    {
      kind: 'limit',
      text: 'The swing leaves out all damping and what the contact arcs away, and the highest voltage takes the current and the peak of the supply at once: it is the most that can come.',
    },
  ],
  plots: [
    {
      title: 'Highest voltage against the capacitor',
      x: 'c',
      scale: 'log',
      y: ['highest', 'swing'],
      yScale: 'log',
    },
  ],
  cautions: ['mains', 'mains-class', 'old-paper-mains'],
  sources: ['identity'],
  checks: [
    {
      what: 'From a printed formula: 1 nF, 100 V, 100 kHz heat the resistor with 1 W',
      inputs: { c: '1 nF', v: '100', f: '100 kHz' },
      expected: { loss: 1 },
      within: 0.001,
      source: 'unseel-snub',
    },
    {
      what: 'Worked by hand: 0.5 A into 100 nF rises 5 V/µs; 100 mH swing it to 500 V',
      inputs: { c: '100 nF', i: '0.5', l: '100 mH', r: '100' },
      expected: { edge: 5e6, swing: 500, kick: 50 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: 0.4 A, 100 mH and 100 nF swing to 400 V by themselves; on 300 V the capacitor swings by √(300² + 400²) = 500 V about those 300 V',
      inputs: { c: '100 nF', i: '0.4', l: '100 mH', v: '300' },
      expected: { swing: 400, highest: 800 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
