import { opAmp } from './amplifiers.ts';
import { theTrimmer } from './here.ts';
import { ground, input, joints, output, wire } from './marks.ts';
import { lamp, otherCapacitor } from './parts.ts';
import type { Schematic } from './schematic.ts';

/** Circuits with a control that is turned by hand. */
export const potSchematics: Readonly<Record<string, Schematic>> = {
  'volume-control': {
    name: 'A signal comes by way of a capacitor to the upper end of the control, whose lower end is at ground; its slider leads to the amplifier.',
    size: [26, 15],
    draw: [
      input('in', [1.5, 3], [3, 3]),
      otherCapacitor([3, 3], [8, 3]),
      wire([8, 3], [10, 3]),
      theTrimmer([10, 3], [10, 11], [12.6, 7]),
      ground([10, 11]),
      wire([12.6, 7], [15, 7]),
      opAmp([15, 8], '+'),
      wire([15, 9], [14, 9], [14, 11.5], [20.5, 11.5], [20.5, 8]),
      joints([20.5, 8]),
      output('out', [19, 8], [23.5, 8]),
    ],
  },
  'panel-voltage': {
    name: 'The control lies between a positive and a negative rail; its slider gives the voltage that sets something else.',
    size: [18, 15],
    draw: [
      input('V+', [2.5, 2.5], [7, 2.5]),
      theTrimmer([7, 2.5], [7, 11.5], [9.6, 7]),
      input('V−', [2.5, 11.5], [7, 11.5]),
      output('out', [9.6, 7], [14.5, 7]),
    ],
  },
  'panel-rheostat': {
    name: 'The control stands in series with a lamp; its slider is joined to its far end, so that the current goes through the part in use.',
    size: [22, 13],
    draw: [
      input('+V', [1.5, 3], [4, 3]),
      theTrimmer([4, 3], [11, 3], [7.5, 5.6]),
      wire([7.5, 5.6], [11, 5.6], [11, 3]),
      joints([11, 3]),
      wire([11, 3], [16, 3]),
      lamp([16, 3], [16, 10]),
      ground([16, 10]),
    ],
  },
};
