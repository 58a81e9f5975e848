import { opAmp, transistor } from './amplifiers.ts';
import { theRheostat, theTrimmer } from './here.ts';
import { ground, input, joints, output, supply, tap, wire } from './marks.ts';
import { meter, resistor } from './parts.ts';
import type { Schematic } from './schematic.ts';

/** Circuits in which a trimmer is set once. */
export const trimmerSchematics: Readonly<Record<string, Schematic>> = {
  'gain-trim': {
    name: 'An amplifier whose feedback goes to ground by way of a fixed resistor and the trimmer, which is a variable resistor there.',
    size: [24, 21],
    draw: [
      input('in', [1.5, 5], [9, 5]),
      opAmp([9, 6], '+'),
      wire([9, 7], [7.5, 7], [7.5, 10]),
      resistor([7.5, 10], [16, 10], { name: 'R_2' }),
      wire([16, 10], [16, 6]),
      joints([7.5, 10], [16, 6]),
      resistor([7.5, 10], [7.5, 14], { name: 'R_1', other: true }),
      theRheostat([7.5, 14], [7.5, 18]),
      ground([7.5, 18]),
      output('out', [13, 6], [21, 6]),
    ],
  },
  'bias-trim': {
    name: 'Two output transistors; the trimmer, a variable resistor in the chain between supply and ground, sets the voltage between their bases.',
    size: [25, 19],
    draw: [
      supply('+V', [8, 1.3]),
      resistor([8, 1.3], [8, 6]),
      theRheostat([8, 6], [8, 12]),
      resistor([8, 12], [8, 16]),
      joints([8, 6], [8, 12]),
      wire([8, 6], [14, 6]),
      wire([10.2, 12], [14, 12]),
      transistor([14, 6]),
      transistor([14, 12], 'pnp'),
      supply('+V', [16, 1.3]),
      wire([16, 1.3], [16, 4]),
      wire([16, 8], [16, 10]),
      joints([16, 9]),
      wire([16, 14], [16, 16]),
      ground([8, 16], [16, 16]),
      output('out', [16, 9], [22, 9]),
    ],
  },
  'scale-trim': {
    name: 'The trimmer, as a variable resistor, and a fixed one stand in series with a meter and set its full scale.',
    size: [24, 13],
    draw: [
      input('in', [1.5, 3], [3, 3]),
      resistor([3, 3], [8, 3], { name: 'R' }),
      theTrimmer([8, 3], [14, 3], [11, 5.4]),
      wire([11, 5.4], [14, 5.4], [14, 3]),
      joints([14, 3]),
      wire([14, 3], [18, 3]),
      meter([18, 3], [18, 10]),
      ground([18, 10]),
    ],
  },
  'offset-trim': {
    name: 'The ends of the trimmer go to the two null pins of an amplifier, its slider to a supply.',
    size: [23, 18],
    draw: [
      input('', [1.5, 4], [8, 4]),
      input('', [1.5, 6], [8, 6]),
      opAmp([8, 5], '-'),
      output('out', [12, 5], [19, 5]),
      wire([9, 6.7], [9, 8.5], [6, 8.5], [6, 11], [7, 11]),
      wire([10.5, 5.9], [10.5, 8.5], [14, 8.5], [14, 11], [13, 11]),
      theTrimmer([7, 11], [13, 11], [10, 13.6]),
      wire([10, 13.6], [10, 15.5]),
      tap('V+ or V−', [10, 15.8], 'start'),
    ],
  },
  'pitch-trim': {
    name: 'The trimmer lies between two fixed resistors across a reference; its slider gives the voltage that sets a pitch.',
    size: [24, 19],
    draw: [
      input('V_ref', [2, 2.5], [6, 2.5]),
      resistor([6, 2.5], [6, 6.5]),
      theTrimmer([6, 6.5], [6, 11.5], [8.6, 9]),
      resistor([6, 11.5], [6, 15.5]),
      ground([6, 15.5]),
      wire([8.6, 9], [11, 9]),
      opAmp([11, 10], '+'),
      wire([11, 11], [10, 11], [10, 13.5], [17, 13.5], [17, 10]),
      joints([17, 10]),
      output('pitch', [15, 10], [21, 10]),
    ],
  },
  'level-preset': {
    name: 'A signal stands across the whole trimmer; its slider passes a part of it on to the next stage.',
    size: [22, 15],
    draw: [
      input('in', [1.5, 3], [7, 3]),
      theTrimmer([7, 3], [7, 11], [9.6, 7]),
      ground([7, 11]),
      wire([9.6, 7], [12, 7]),
      opAmp([12, 8], '+'),
      wire([12, 9], [11, 9], [11, 11.5], [17.5, 11.5], [17.5, 8]),
      joints([17.5, 8]),
      output('out', [16, 8], [20, 8]),
    ],
  },
};
