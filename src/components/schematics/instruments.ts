import { amplifier } from './amplifiers.ts';
import { ground, input, joints, output, supply, wire } from './marks.ts';
import { capacitor, diode, meter, resistor } from './parts.ts';
import type { Schematic } from './schematic.ts';

/** Circuits of other kinds. */
export const instrumentSchematics: Readonly<Record<string, Schematic>> = {
  'meter-damping': {
    name: 'A diode and a resistor feed a meter; the capacitor lies across the meter, positive side to the resistor.',
    size: [24, 13],
    draw: [
      input('in', [1, 3], [2, 3]),
      diode([2, 3], [6.5, 3]),
      resistor([6.5, 3], [12, 3], { name: 'R' }),
      wire([12, 3], [20, 3]),
      joints([14, 3]),
      capacitor([14, 3], [14, 10], { polar: true }),
      meter([20, 3], [20, 10]),
      ground([14, 10], [20, 10]),
    ],
  },
  'noise-generator': {
    name: 'A resistor feeds a diode in breakdown; the capacitor takes its noise to an amplifier.',
    size: [26, 15],
    draw: [
      supply('+V', [5, 1.3]),
      resistor([5, 1.3], [5, 7]),
      diode([5, 13], [5, 7], { zener: true }),
      joints([5, 7], [14, 7]),
      capacitor([5, 7], [13, 7]),
      wire([13, 7], [17, 7]),
      resistor([14, 7], [14, 13], { name: 'R' }),
      ground([5, 13], [14, 13]),
      amplifier([17, 7]),
      output('noise', [20, 7], [24, 7]),
    ],
  },
};
