import { turnsToGo, finestStep, presetOf, type TrimmerUse } from '../../equations/trimmer.ts';
import { choice, defineSum, noteIf, quantity } from '../sum.ts';

/** Setting a new trimmer beforehand to what the old one read between the same two terminals. */
export const trimmerPreset = defineSum({
  id: 'trimmer-preset',
  title: 'Setting a new trimmer beforehand',
  lead: 'What a new trimmer has to read before it is soldered in, how many turns that is from where it stands, and what differs when the totals differ.',
  group: 'resistor',
  inputs: {
    use: choice({
      label: 'How it is used',
      usual: 'rheostat',
      options: [
        { id: 'rheostat', name: 'as a variable resistor: two terminals' },
        { id: 'divider', name: 'as a divider: three terminals' },
      ],
    }),
    reading: quantity({
      label: 'Old reading between wiper and the end in use',
      symbol: 'R_a',
      unit: 'ohm',
      usual: '2.687 kΩ',
      lowest: 0,
      highest: 1e8,
      hint: 'out of circuit',
    }),
    oldTotal: quantity({
      label: 'Old total, end to end',
      symbol: 'R_t1',
      unit: 'ohm',
      usual: '10 kΩ',
      lowest: 1,
      highest: 1e8,
      hint: 'measured, if you can',
    }),
    total: quantity({
      label: 'New total, end to end',
      symbol: 'R_t2',
      unit: 'ohm',
      usual: '10 kΩ ±10 %',
      lowest: 1,
      highest: 1e8,
      hint: 'measured, or its mark with its tolerance',
    }),
    now: quantity({
      label: 'New one reads now between the same terminals',
      symbol: 'R_b',
      unit: 'ohm',
      usual: '4.56 kΩ',
      lowest: 0,
      highest: 1e8,
      hint: 'as supplied, mostly near the middle',
    }),
    turns: quantity({
      label: 'Turns from end to end',
      symbol: 'N',
      unit: 'number',
      usual: '25',
      lowest: 0.5,
      highest: 100,
      hint: 'a single turn of 270° is 0.75',
    }),
    adjust: quantity({
      label: 'Finest setting, share of the total',
      symbol: 'a',
      unit: 'fraction',
      bare: '%',
      usual: '0.05 %',
      lowest: 0,
      highest: 0.2,
      hint: 'adjustability of its data sheet',
    }),
  },
  outputs: {
    set: {
      label: 'Set the new one to read',
      symbol: 'R_s',
      unit: 'ohm',
      headline: true,
      digits: 4,
    },
    go: { label: 'Turns to go from where it stands', symbol: 'n', unit: 'number' },
    fromEnd: { label: 'Turns from the end in use', symbol: 'n_e', unit: 'number' },
    fromMid: { label: 'Turns from mid travel', symbol: 'n_m', unit: 'number' },
    fine: { label: 'Finest step', symbol: 'd', unit: 'ohm' },
    perTurn: { label: 'Ohms in a turn', symbol: 'r', unit: 'ohm' },
    ratio: { label: 'Ratio of the old setting', symbol: 'k_1', unit: 'fraction' },
    newRatio: { label: 'Ratio of the new setting', symbol: 'k_2', unit: 'fraction' },
    ratioError: { label: 'Ratio off by', symbol: 'e', unit: 'fraction' },
  },
  equations: [
    'k_1 = R_a/R_t1, k_2 = R_s/R_t2',
    'r = R_t2/N',
    'n = (R_s - R_b)/r',
    'n_e = R_s/r',
    'n_m = n_e - N/2',
    'e = k_2/k_1 - 1',
    'd = a*R_t2',
  ],
  at: ({ use, reading, oldTotal, total, now, turns, adjust }) => {
    const wired: TrimmerUse = use === 'divider' ? 'divider' : 'rheostat';
    const preset = presetOf({ use: wired, reading, oldTotal, total, turns });
    const { set, fromEnd, perTurn, ratio, newRatio } = preset;
    const reaches = set <= total;
    return {
      set: reaches ? set : undefined,
      go: reaches ? turnsToGo(set, now, perTurn) : undefined,
      fromEnd: reaches ? fromEnd : undefined,
      fromMid: reaches ? fromEnd - turns / 2 : undefined,
      fine: finestStep(adjust, total),
      perTurn,
      ratio,
      newRatio: reaches ? newRatio : undefined,
      ratioError: reaches && ratio > 0 ? newRatio / ratio - 1 : undefined,
    };
  },
  notes: ({ use, reading, total, oldTotal }) => [
    ...noteIf(
      reading > oldTotal,
      'limit',
      'The old one cannot read more than its whole: measure both again. A wiper in poor contact reads too much, and turning it to and fro a few times helps.',
    ),
    ...noteIf(
      use === 'rheostat' && reading > total,
      'limit',
      'The new one does not reach so high: take a larger total, or a resistor in series.',
    ),
    ...noteIf(
      use === 'divider' && Math.abs(total / oldTotal - 1) > 0.05,
      'remark',
      'The totals differ: as a divider the ratio is set, not the ohms, and what hangs on the ends sees another resistance.',
    ),
    {
      kind: 'remark',
      text: 'Fewer ohms than now means turning towards the end in use. Note which two terminals were measured; wipers settle after a few turns to and fro.',
    },
  ],
  plots: [
    {
      title: 'Turns to go against the old reading',
      x: 'reading',
      scale: 'linear',
      y: ['go'],
      yScale: 'linear',
    },
  ],
  cautions: ['readings-first'],
  sources: ['identity'],
  checks: [
    {
      what: 'From the totals and turns that a sheet prints: 3.3 kΩ on a new total of 9.6 kΩ with 25 turns is 8.59 turns from the end',
      inputs: { reading: '3.3k', total: '9.6k', turns: '25' },
      expected: { fromEnd: 8.59, set: 3300 },
      within: 0.001,
      source: 'bourns-3296',
    },
    {
      what: 'Worked by hand: the same ohms on a total a tenth too high are a ratio 9.09 % too low',
      inputs: { reading: '2k', oldTotal: '10k', total: '11k' },
      expected: { ratioError: -0.0909, fromMid: -7.9545 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: as a divider the ohms follow the total and the ratio stays',
      inputs: { use: 'divider', reading: '2k', oldTotal: '10k', total: '11k' },
      expected: { set: 2200, ratioError: 0 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Common practice, no source: the old one reads 2.687 kΩ, the new one 4.56 kΩ as supplied; of 10 kΩ and 25 turns that is 4.68 turns back',
      inputs: { reading: '2.687k', now: '4.56k', total: '10k' },
      expected: { go: -4.6825, perTurn: 400, set: 2687 },
      within: 0.0005,
      source: 'trade',
    },
  ],
});
