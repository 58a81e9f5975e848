import { driftWithResistor } from '../../equations/drift.ts';
import { cents as centsOf, centsOfDrift } from '../../equations/pitch.ts';
import { selfResonance } from '../../equations/resonance.ts';
import { frequencyShift } from '../../equations/shift.ts';
import { exactly } from '../../quantities/range.ts';
import { coefficient, warming } from '../temperature-drift.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** A coil and a capacitor, and what another capacitor does to where they ring. */
export const lcResonance = defineSum({
  id: 'lc-resonance',
  title: 'LC resonance',
  lead: 'Where a coil and a capacitor ring, and how far another value moves that.',
  group: 'timing',
  inputs: {
    l: quantity({
      label: 'Inductance',
      symbol: 'L',
      unit: 'H',
      usual: '680 µH ±5 %',
      lowest: 1e-10,
      highest: 1000,
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '180 pF ±2 %',
      lowest: 1e-13,
      highest: 1,
    }),
    old: quantity({
      label: 'Capacitance that it was tuned with',
      symbol: 'C_old',
      unit: 'F',
      usual: '180 pF',
      lowest: 1e-13,
      highest: 1,
    }),
    tcL: coefficient('Temperature coefficient of the coil', 'alpha_L', '50 ppm/K'),
    tcC: coefficient('Temperature coefficient of the capacitor', 'alpha_C', '-120 ppm/K'),
    span: warming,
    q: quantity({
      label: 'Q of the circuit',
      symbol: 'Q',
      unit: 'number',
      usual: '80',
      lowest: 0.1,
      highest: 10_000,
    }),
  },
  outputs: {
    frequency: { label: 'Resonance', symbol: 'f', unit: 'Hz', headline: true },
    shift: { label: 'Moved by', symbol: 's', unit: 'fraction' },
    cents: { label: 'The same as pitch', symbol: 'p', unit: 'cents' },
    drift: { label: 'Change with temperature', symbol: 'd', unit: 'fraction' },
    driftCents: { label: 'That as pitch', unit: 'cents' },
    band: { label: 'Width of the band at −3 dB', symbol: 'B', unit: 'Hz' },
    impedance: { label: 'Characteristic impedance', symbol: 'Z', unit: 'ohm' },
  },
  equations: [
    'f = 1 / (2*pi*sqrt(L*C))',
    's = |sqrt(C_old/C) - 1|',
    'p = 600*log2(C_old/C)',
    'd = |alpha_L + alpha_C|*dT/2',
    'B = f/Q',
    'Z = sqrt(L/C)',
  ],
  at: ({ l, c, old, tcL, tcC, span, q }) => {
    const frequency = selfResonance(exactly(l), c).typ;
    const drift = driftWithResistor(exactly(tcC), exactly(tcL), span / 2);
    return {
      frequency,
      shift: frequencyShift(exactly(c), old, 0.5).typ,
      cents: centsOf(exactly(Math.sqrt(old / c) - 1)).typ,
      drift: drift.typ,
      driftCents: centsOfDrift(drift).typ,
      band: frequency / q,
      impedance: Math.sqrt(l / c),
    };
  },
  notes: ({ q }, { shift = 0 }) => [
    ...noteIf(
      shift * q > 0.5,
      'remark',
      'It moved by more than half the width of its band: trim the coil or choose a closer value.',
    ),
    {
      kind: 'limit',
      text: 'Capacitance of the winding, of what is connected and of the wiring adds to that of the part: with less than some 100 pF put it in as well.',
    },
  ],
  plots: [
    {
      title: 'Resonance against the capacitor',
      x: 'c',
      scale: 'log',
      y: ['frequency'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: a quarter more capacitance lowers it by 10.6 %, 193 cents; +50 and −150 ppm/K over 20 K move it by 0.1 %',
      inputs: { c: '225 pF', old: '180 pF', tcL: '50', tcC: '-150', span: '20' },
      expected: { shift: 0.105573, cents: -193.157, drift: 0.001, driftCents: 1.7313 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Printed: 0.2 µH and 13.5 pF ring at 96.8 MHz',
      inputs: { l: '0.2 µH', c: '13.5 pF' },
      expected: { frequency: 96.8e6 },
      within: 0.002,
      source: 'cxi1-colpitts',
    },
  ],
});
