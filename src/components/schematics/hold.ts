import { follower, opAmp } from './amplifiers.ts';
import { box, ground, input, joints, output, wire } from './marks.ts';
import { capacitor, diode, openSwitch, resistor } from './parts.ts';
import type { Schematic } from './schematic.ts';

/** Circuits that hold a voltage or sum a current. */
export const holdSchematics: Readonly<Record<string, Schematic>> = {
  'sample-hold': {
    name: 'A switch connects the input to a capacitor to ground; a follower passes the held voltage on.',
    size: [31, 13],
    draw: [
      input('in', [1, 5], [3, 5]),
      openSwitch([3, 5], [9, 5], { name: 'sample' }),
      wire([9, 5], [19, 5]),
      joints([12, 5]),
      capacitor([12, 5], [12, 11]),
      ground([12, 11]),
      follower([19, 5]),
      output('held', [25, 6], [29, 6]),
    ],
  },
  'memory-hold': {
    name: 'A scanner gives each of several capacitors its voltage in turn; one is drawn with its follower.',
    size: [33, 11],
    draw: [
      input('CV', [1, 5.5], [4, 5.5]),
      box('scan', [4, 1], 6, 9),
      wire([10, 3], [20, 3]),
      wire([10, 5], [11.5, 5]),
      wire([10, 7], [11.5, 7]),
      wire([10, 9], [11.5, 9]),
      joints([15, 3]),
      capacitor([15, 3], [15, 9]),
      ground([15, 9]),
      follower([20, 3]),
      output('CV out', [26, 4], [30, 4]),
    ],
  },
  'peak-detector': {
    name: 'A diode charges a capacitor to ground up to the peak; a resistor beside it lets it down, a follower reads it.',
    size: [33, 13],
    draw: [
      input('in', [1, 5], [3, 5]),
      diode([3, 5], [8, 5]),
      wire([8, 5], [21, 5]),
      joints([11, 5], [15.5, 5]),
      capacitor([11, 5], [11, 11]),
      resistor([15.5, 5], [15.5, 11], { name: 'R' }),
      ground([11, 11], [15.5, 11]),
      follower([21, 5]),
      output('peak', [27, 6], [31, 6]),
    ],
  },
  integrator: {
    name: 'A resistor feeds the inverting input of an amplifier; the capacitor leads from its output back to that input.',
    size: [26, 12],
    draw: [
      input('in', [1, 6], [3, 6]),
      resistor([3, 6], [9, 6], { name: 'R' }),
      wire([9, 6], [13, 6]),
      joints([10.5, 6], [19, 7]),
      opAmp([13, 7], '-'),
      wire([13, 8], [11.5, 8], [11.5, 10]),
      ground([11.5, 10]),
      wire([10.5, 6], [10.5, 2.5]),
      capacitor([10.5, 2.5], [19, 2.5]),
      wire([19, 2.5], [19, 7]),
      wire([17, 7], [19, 7]),
      output('ramp', [19, 7], [24, 7]),
    ],
  },
};
