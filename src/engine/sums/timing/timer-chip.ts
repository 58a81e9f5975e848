import { timerAstable, timerPulse } from '../../equations/timing.ts';
import { driftOf, temperatureInputs, temperatureOutputs } from '../temperature-drift.ts';
import { choice, defineSum, noteIf, quantity } from '../sum.ts';

const DRIFT = 'd = |alpha_R + alpha_C|*dT';
const ASTABLE = [
  't_1 = ln(2)*(R_A + R_B)*C',
  't_2 = ln(2)*R_B*C',
  't = t_1 + t_2',
  'f = 1/t',
  'D = t_1/t',
  'I_2 = V/(3*(R_A + R_B)) - I_L',
  DRIFT,
];
const PULSE = ['t = ln(3)*R_A*C', 'I_2 = V/(3*R_A) - I_L', DRIFT];
/** The same with a leakage, which is in the way of charging and helps to discharge. */
const LEAKING = [
  't_1 = (R_A + R_B)*C*ln((2*V - 3*I_L*(R_A + R_B)) / (V - 3*I_L*(R_A + R_B)))',
  't_2 = R_B*C*ln((2*V + 3*I_L*R_B) / (V + 3*I_L*R_B))',
  't = t_1 + t_2',
  'f = 1/t',
  'D = t_1/t',
  'I_2 = V/(3*(R_A + R_B)) - I_L',
  DRIFT,
];
const LEAKING_PULSE = [
  't = R_A*C*ln((3*V - 3*I_L*R_A) / (V - 3*I_L*R_A))',
  'I_2 = V/(3*R_A) - I_L',
  DRIFT,
];

/** Times of the classic eight-pin timer chip. */
export const timerChip = defineSum({
  id: 'timer-chip',
  title: '555 timer',
  lead: 'Period, duty and pulse of the 555 timer with the tolerances of its parts, and what the leakage of an electrolytic does to it.',
  group: 'timing',
  inputs: {
    mode: choice({
      label: 'How it runs',
      usual: 'astable',
      options: [
        { id: 'astable', name: 'free running' },
        { id: 'pulse', name: 'one pulse a trigger' },
      ],
    }),
    ra: quantity({
      label: 'Resistor from the supply',
      symbol: 'R_A',
      unit: 'ohm',
      usual: '10 kΩ ±5 %',
      lowest: 100,
      highest: 1e9,
    }),
    rb: quantity({
      label: 'Resistor to the capacitor',
      symbol: 'R_B',
      unit: 'ohm',
      usual: '47 kΩ ±5 %',
      lowest: 0,
      highest: 1e9,
      hint: 'free running only',
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '1 µF ±10 %',
      lowest: 1e-11,
      highest: 0.1,
    }),
    leak: quantity({
      label: 'Leakage of the capacitor',
      symbol: 'I_L',
      unit: 'A',
      usual: '0 µA',
      bare: 'µA',
      lowest: 0,
      highest: 1e-2,
    }),
    ...temperatureInputs,
    v: quantity({
      label: 'Supply',
      symbol: 'V',
      unit: 'V',
      usual: '9 V',
      lowest: 1,
      highest: 20,
    }),
  },
  outputs: {
    time: { label: 'Period, or length of the pulse', symbol: 't', unit: 's', headline: true },
    high: { label: 'High time', symbol: 't_1', unit: 's' },
    low: { label: 'Low time', symbol: 't_2', unit: 's' },
    frequency: { label: 'Frequency', symbol: 'f', unit: 'Hz' },
    duty: { label: 'Duty cycle, share high', symbol: 'D', unit: 'fraction' },
    ...temperatureOutputs,
    least: { label: 'Current left to charge with at two thirds', symbol: 'I_2', unit: 'A' },
  },
  equations: ASTABLE,
  equationsFor: ({ mode, leak }) => {
    if (mode === 'pulse') return leak > 0 ? LEAKING_PULSE : PULSE;
    return leak > 0 ? LEAKING : ASTABLE;
  },
  at: ({ mode, ra, rb, c, leak, v, tcR, tcC, span }) => {
    const through = mode === 'pulse' ? ra : ra + rb;
    const least = v / (3 * through) - leak;
    const rest = { least, ...driftOf(tcR, tcC, span) };
    const leaking = { leak, supply: v };
    const free = { high: undefined, low: undefined, frequency: undefined, duty: undefined };
    if (mode === 'pulse') return { time: timerPulse(ra, c, leaking), ...free, ...rest };
    const times = timerAstable(ra, rb, c, leaking);
    if (times === undefined) return { time: undefined, ...free, ...rest };
    const { high, low } = times;
    const time = high + low;
    return { time, high, low, frequency: 1 / time, duty: high / time, ...rest };
  },
  notes: ({ mode, leak }, { least = 0 }) => [
    ...noteIf(mode === 'pulse', 'remark', 'For one pulse the lower resistor is not there.'),
    ...noteIf(
      least <= 0,
      'limit',
      'The leakage takes all of the charging current before two thirds of the supply are reached: it never gets there.',
    ),
    ...noteIf(
      leak > 0 && least > 0 && leak > 0.1 * (least + leak),
      'limit',
      'The leakage takes more than a tenth of the charging current at the end: it makes the time longer, and moves with temperature and age.',
    ),
    {
      kind: 'limit',
      text: 'The thresholds are a third and two thirds of the supply as long as nothing pulls at the control terminal. For long times an electrolytic decides: its tolerance and its leakage, which grows after years at rest.',
    },
  ],
  plots: [
    { title: 'Period against the capacitor', x: 'c', scale: 'log', y: ['time'], yScale: 'log' },
  ],
  cautions: [],
  sources: ['ti-se555sp-ds'],
  checks: [
    {
      what: 'From the equation that data sheets print: 5 kΩ and 3 kΩ are high for 8 of 11 parts of the time',
      inputs: { ra: '5k', rb: '3k' },
      expected: { duty: 0.727 },
      within: 0.005,
      source: 'ti-se555sp-ds',
    },
    {
      what: 'Worked by hand: 10 kΩ twice from 3 V with 25 µA of leakage make for 5/6, so that it is high for ln 3 of 20 ms and low for ln 1.8 of 10 ms',
      inputs: { ra: '10k', rb: '10k', c: '1 µF', leak: '25 µA', v: '3' },
      expected: { high: 0.021972, low: 0.0058779, time: 0.02785 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Printed by a user: 909 kΩ, 47 kΩ and 470 µF give 5.5 minutes',
      inputs: { ra: '909k', rb: '47k', c: '470 µF' },
      expected: { time: 330 },
      within: 0.02,
      source: 'e2e-564703',
    },
    {
      what: 'Printed: 120 kΩ and 7.5 µF give a pulse of one second',
      inputs: { mode: 'pulse', ra: '120k', c: '7.5 µF' },
      expected: { time: 1 },
      within: 0.015,
      source: 'pis-555',
    },
  ],
});
