import { atWiper, contactJump, greaterOf, wiperCurrent } from '../../equations/trimmer.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

const ohms = (label: string, symbol: string, usual: string, hint?: string) =>
  quantity({ label, symbol, unit: 'ohm', usual, lowest: 0, highest: 1e8, ...(hint && { hint }) });

const shareOfTotal = (label: string, symbol: string, usual: string, hint: string) =>
  quantity({ label, symbol, unit: 'fraction', bare: '%', usual, lowest: 0, highest: 1, hint });

/** What stands at the wiper and flows there; at either end of the track part of it is not there. */
const equationsOf = ({ setting, v }: { setting: number; v: number }): readonly string[] => {
  const inTrack = setting === 0 ? 'V/R_t - I' : 'V_o/(n*R_t)';
  return [
    'V_n = n*V',
    'R_S = n*(1 - n)*R_t',
    'l = R_S/(R_S + R_L)',
    'V_o = (V_n - I_B*R_S)*(1 - l)',
    setting * v > 0 ? 's = 1 - V_o/V_n' : 's = l',
    'R_c = max(c*R_t, R_c0)',
    'V_c = (V_o + I_B*R_L)*R_c/(R_S + R_L + R_c)',
    'R_e = max(e_0*R_t, R_e0)',
    'V_e = V*R_e/R_t',
    'I = V_o/R_L + I_B',
    setting < 1 ? `I_t = max(${inTrack}, ${inTrack} + I)` : `I_t = ${inTrack}`,
    'I_m = sqrt(P/R_t)',
  ];
};

/** What stands at the wiper of a loaded trimmer, how it jumps, and where its travel ends. */
export const trimmerWiper = defineSum({
  id: 'trimmer-wiper',
  title: 'Wiper of a trimmer under load',
  lead: 'What a load does to the voltage at the wiper of a trimmer, how far that jumps as the wiper moves, and how near the end it gets.',
  group: 'resistor',
  inputs: {
    total: quantity({
      label: 'Total, end to end',
      symbol: 'R_t',
      unit: 'ohm',
      usual: '10 kΩ ±10 %',
      lowest: 1,
      highest: 1e8,
    }),
    setting: shareOfTotal('Setting', 'n', '50 %', 'of its total, from the lower end'),
    v: quantity({
      label: 'Voltage across it',
      symbol: 'V',
      unit: 'V',
      usual: '10 V',
      lowest: 0,
      highest: 10_000,
    }),
    load: quantity({
      label: 'Load at the wiper',
      symbol: 'R_L',
      unit: 'ohm',
      usual: '100 kΩ',
      lowest: 1,
      highest: 1e15,
    }),
    bias: quantity({
      label: 'Bias current of the next stage',
      symbol: 'I_B',
      unit: 'A',
      usual: '0',
      lowest: 0,
      highest: 0.1,
      hint: 'drawn through the wiper besides',
    }),
    contact: shareOfTotal('Contact variation', 'c', '1 %', 'of its sheet, of the total'),
    contactOhm: ohms('or at least', 'R_c0', '3 Ω', 'whichever is greater'),
    end: shareOfTotal('End resistance', 'e_0', '1 %', 'of its sheet, of the total'),
    endOhm: ohms('or at least this', 'R_e0', '2 Ω', 'whichever is greater'),
    p: quantity({
      label: 'Rated power',
      symbol: 'P',
      unit: 'W',
      usual: '0.5 W',
      lowest: 1e-3,
      highest: 100,
      hint: 'of the whole element',
    }),
  },
  outputs: {
    out: { label: 'Voltage at the wiper', symbol: 'V_o', unit: 'V', headline: true },
    ideal: { label: 'Without the load', symbol: 'V_n', unit: 'V' },
    lost: { label: 'Taken by the load', symbol: 'l', unit: 'fraction' },
    shift: { label: 'Taken by load and bias current', symbol: 's', unit: 'fraction' },
    contactOf: { label: 'Contact resistance, as it varies', symbol: 'R_c', unit: 'ohm' },
    jump: { label: 'Jump as the wiper moves, up to', symbol: 'V_c', unit: 'V' },
    endOf: { label: 'Left at the stop', symbol: 'R_e', unit: 'ohm' },
    lowest: { label: 'Lowest voltage at the stop, up to', symbol: 'V_e', unit: 'V' },
    source: { label: 'Output resistance at the wiper', symbol: 'R_S', unit: 'ohm', step: true },
    current: { label: 'Current through the wiper', symbol: 'I', unit: 'A' },
    track: { label: 'Largest current in the track', symbol: 'I_t', unit: 'A' },
    most: { label: 'Current that the element takes', symbol: 'I_m', unit: 'A' },
  },
  equations: equationsOf({ setting: 0.5, v: 1 }),
  equationsFor: equationsOf,
  at: ({ total, setting, v, load, bias, contact, contactOhm, end, endOhm, p }) => {
    const hung = { total, setting, voltage: v, load, bias };
    const { out, ideal, lost, shift, source, current, track } = atWiper(hung);
    const contactOf = greaterOf(contact, contactOhm, total);
    const endOf = greaterOf(end, endOhm, total);
    return {
      out,
      ideal,
      lost,
      shift,
      contactOf,
      jump: contactJump({ out, source }, hung, contactOf),
      endOf,
      lowest: (v * endOf) / total,
      source,
      current,
      track,
      most: wiperCurrent(p, total),
    };
  },
  notes: ({ v, total, p }, { current = 0, track = 0, most = 0 }) => [
    ...noteIf(
      Math.max(current, track) > most,
      'caution',
      'The wiper or its track carries more than the element takes.',
    ),
    ...noteIf(v ** 2 / total > p, 'caution', 'The voltage alone heats it beyond its rated power.'),
    {
      kind: 'limit',
      text: 'The load bends the scale, most of all at two thirds of the travel: one of ten times the total takes 1.5 % of the whole voltage there. It is taken as going to the lower end.',
    },
  ],
  plots: [
    {
      title: 'Voltage at the wiper against the setting',
      x: 'setting',
      scale: 'linear',
      span: () => [0, 1],
      y: ['out', 'ideal'],
      yScale: 'linear',
    },
    {
      title: 'Taken by the load, against the load',
      x: 'load',
      scale: 'log',
      y: ['lost'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['bourns-3296', 'mil-prf-22097j-p7', 'realnfo-loading', 'lm741-ti', 'identity'],
  checks: [
    {
      what: 'From a printed sheet of 25 turns: the contact of 10 kΩ varies by up to 100 Ω, the greater of 1 % and 3 Ω',
      inputs: { total: '10k', contact: '1 %', contactOhm: '3' },
      expected: { contactOf: 100 },
      within: 1e-6,
      source: 'bourns-3296',
    },
    {
      what: 'From the same sheet: of 100 Ω up to 2 Ω are left at the stop, the greater of 1 % and 2 Ω',
      inputs: { total: '100', end: '1 %', endOhm: '2', v: '1' },
      expected: { endOf: 2, lowest: 0.02 },
      within: 1e-6,
      source: 'bourns-3296',
    },
    {
      what: 'Worked by hand: 10 kΩ in the middle, loaded with 10 kΩ, gives 4 V of 10 V; 100 Ω more in the wiper 31.75 mV less',
      inputs: { total: '10k', setting: '50 %', v: '10', load: '10k' },
      expected: { out: 4, lost: 0.2, jump: 0.031746 },
      within: 0.0001,
      source: 'identity',
    },
    {
      what: 'From a textbook: 1 MΩ in the middle with 100 Ω at the wiper gives 2 mV of 10 V',
      inputs: { total: '1M', setting: '50 %', v: '10', load: '100' },
      expected: { out: 0.002 },
      within: 0.001,
      source: 'realnfo-loading',
    },
    {
      what: 'By the printed bias current of a 741: 80 nA in 1 MΩ are 80 mV, and a trimmer of 4 MΩ in the middle looks like 1 MΩ',
      inputs: { total: '4M', setting: '50 %', v: '10', load: '1e12', bias: '80n' },
      expected: { source: 1e6, out: 4.92 },
      within: 0.0001,
      source: 'lm741-ti',
    },
  ],
});
