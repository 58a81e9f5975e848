import { describe, expect, test } from 'vitest';
import { allSums } from '../../../src/engine/sums/index.ts';
import type { SumNote } from '../../../src/engine/sums/sum.ts';
import { catalogue, sumOf, valuesOf, type Texts } from './asked.ts';

/** What a sum says beside its numbers, with other numbers in some of its fields. */
const notesOf = (id: string, inputs: Texts): readonly SumNote[] => {
  const sum = sumOf(id);
  const facts: unknown = sum.facts?.(catalogue);
  const values = valuesOf(sum, facts, inputs);
  return sum.notes?.(values, sum.at(values, facts), facts) ?? [];
};

/** Their kinds by first letters. */
const kindsOf = (id: string, inputs: Texts): string =>
  notesOf(id, inputs)
    .map(({ kind }) => kind.charAt(0))
    .join('');

const approved = { type: 'film-x2', rating: '275 V' };

type Case = [why: string, inputs: Texts, kinds: string];

/** Each worked by hand, on either side of where a note begins; kinds by their first letters. */
const cases: Record<string, Case[]> = {
  acquisition: [
    ['an error below the step', {}, 'l'],
    ['one as large as the step', { step: '1 mV', error: '1 mV' }, 'rl'],
  ],
  harmonic: [
    [
      'far below the corner all of it stands across: 35 V have a peak of 49.5 V, below 50 V',
      { f: '10 mHz', signal: '35 V' },
      'l',
    ],
    ['36 V have one of 50.9 V', { f: '10 mHz', signal: '36 V' }, 'cl'],
    ['no signal', { signal: '0' }, 'll'],
  ],
  'class2-left': [
    ['at the rating of 50 V', { v: '50 V' }, 'l'],
    ['above it', { v: '51 V' }, 'cl'],
  ],
  absorption: [
    // Of 100 s open after 10 s a charge of a millisecond leaves next to nothing to come back.
    [
      'a test that charges for a millisecond',
      { testSoak: '1 ms', testShort: '10 s', testOpen: '100 s' },
      'll',
    ],
    ['charged for long', {}, 'l'],
    ['charged for an hour', { soak: '1 h' }, 'lr'],
  ],
  discharge: [
    ['no higher than wanted to begin with', { v: '30 V' }, 'rr'],
    ['100 µF at 447 V hold 9.99 J', { v: '447 V' }, 'r'],
    ['at 448 V 10.04 J', { v: '448 V' }, 'cr'],
  ],
  'touch-current': [
    ['4.7 nF let 0.3396 mA through at 230 V and 50 Hz', { limit: '0.34 mA' }, 'l'],
    ['which is above', { limit: '0.339 mA' }, 'cl'],
  ],
  'back-to-back': [
    ['35 V peak at 49.5 V, and at 1 Hz hardly any current flows', { ac: '35 V', f: '1 Hz' }, 'r'],
    ['36 V peak at 50.9 V', { ac: '36 V', f: '1 Hz' }, 'cr'],
    ['1 V at 1 kHz drives 69.1 mA through 11 µF', { ripple: '70 mA' }, 'r'],
    ['which is above', { ripple: '69 mA' }, 'lr'],
  ],
  'series-pair': [
    ['as it stands at first', {}, 'c'],
    ['with 30 % one takes 357.5 V while charging', { tol: '30 %' }, 'cc'],
    ['with 490 kΩ one stands at 348.5 V in the long run', { r: '490k' }, 'c'],
    ['with 499 kΩ at 349.9 V', { r: '499k' }, 'c'],
    ['with 510 kΩ at 351.5 V, and only 500 kΩ are allowed', { r: '510k' }, 'clc'],
    ['800 V are more than two of 350 V have together', { v: '800 V' }, 'lcc'],
    [
      '700 V are just as much as they have, which leaves nothing',
      { v: '700 V', tol: '0', r: '1' },
      'lcc',
    ],
  ],
  'two-together': [
    ['47 nF takes 340.14 V of 500 V beside 100 nF', { ub: '341 V' }, 'l'],
    ['which is above', { ub: '340 V' }, 'cl'],
    ['and 100 nF 159.86 V', { ua: '160 V' }, 'l'],
    ['which is above as well', { ua: '159 V' }, 'cl'],
  ],
  'electrolytic-life': [
    ['at the rating', { v: '35 V' }, 'r'],
    ['above it', { v: '36 V' }, 'cr'],
    ['at the 105 °C of its sheet', { t: '105', v: '35 V' }, 'r'],
    ['hotter', { t: '106', v: '35 V' }, 'cr'],
    // Where it stands at first: 123 470 h or 3.17e8 s at 60 °C; ten kelvin less double that.
    ['ten years at 60 °C', {}, 'r'],
    ['twenty at 50 °C', { t: '50 °C' }, 'lr'],
  ],
  'film-ac': [
    ['it stands 40.93 V at 10 kHz', { u: '40.9 V' }, 'l'],
    ['which is less', { u: '41 V' }, 'cl'],
  ],
  'pulse-edge': [
    ['at its rating of 75 V/µs', { edge: '75 V/µs' }, 'r'],
    ['above it', { edge: '76 V/µs' }, 'lr'],
    ['a step without its time', { swing: '100 V' }, 'lr'],
    ['a time without its step', { time: '2 µs' }, 'lr'],
    ['both: 50 V/µs', { swing: '100 V', time: '2 µs' }, 'r'],
    ['both: 100 V/µs', { swing: '100 V', time: '1 µs' }, 'lr'],
  ],
  reforming: [
    ['a low voltage', { rating: '59 V' }, 'l'],
    ['one that can hurt', { rating: '60 V' }, 'cl'],
    ['a part for both signs', { type: 'al-electrolytic-bipolar', rating: '25 V' }, 'rl'],
  ],
  'ripple-current': [
    [
      'all of its 1.2 A, with every factor said',
      { i1: '1.2 A', i2: '0', k1: '1', k2: '1', kt: '1' },
      '',
    ],
    ['more than that', { i1: '1.21 A', i2: '0', k1: '1', k2: '1', kt: '1' }, 'l'],
    ['a factor for the cool above one', { i2: '0', k1: '1', k2: '1', kt: '1.1' }, 'r'],
    [
      'twice as much as it takes, at a factor of two',
      { i1: '4.8 A', i2: '0', k1: '1', k2: '1', kt: '2' },
      'lr',
    ],
  ],
  'ripple-heating': [
    // 7.0007 K at 1 A, and with the square of it.
    ['9.91 K at 1.19 A', { i: '1.19 A' }, 'r'],
    ['10.08 K at 1.2 A', { i: '1.2 A' }, 'lr'],
  ],
  'tantalum-resistance': [
    ['an ohm for each of 12 V', { source: '12 Ω' }, ''],
    ['less', { source: '11.9 Ω' }, 'l'],
    [
      '12 V through 0.3 Ω: 40 A, and 25 V through 1.3 Ω at most are 19 A',
      { esr: '0.3', source: '0' },
      'cl',
    ],
    ['12 V on 6.3 V', { rating: '6.3 V' }, 'cl'],
  ],
  'working-voltage': [
    ['24.8 V and a peak of 0.14 V, below 25 V', { dc: '24.8 V' }, 'r'],
    ['24.9 V and that peak', { dc: '24.9 V' }, 'cr'],
    // The peak of 275 V is 388.9 V.
    ['the mains on a part approved for it', { ...approved, dc: '0', ac: '230 V' }, 'r'],
    ['388 V across such a part', { ...approved, dc: '388 V', ac: '0' }, 'r'],
    ['390 V across it', { ...approved, dc: '390 V', ac: '0' }, 'cr'],
  ],
  'resistor-drift': [
    ['its whole power', { p: '0.25 W' }, 'l'],
    ['more', { p: '0.26 W' }, 'cl'],
    // A fifth of its power warms the film by a fifth of the 55 K from its knee to 125 °C.
    ['113 °C and 11 K', { t: '113 °C' }, 'l'],
    ['115 °C and 11 K', { t: '115 °C' }, 'cl'],
    ['a film that was tested above the knee', { film: '71 °C' }, 'l'],
    ['and one at it', { film: '70 °C' }, 'cl'],
    // 25 W warm the film by 5500 K: 2^183 times the drift of the test.
    ['25 W leave no part that drifts', { p: '25 W' }, 'cll'],
    ['nor is a half in an hour one over years', { change: '50 %', time: '1 h' }, 'll'],
  ],
  'resistor-limits': [
    ['all that its body stands', { v: '250 V' }, 'r'],
    ['more', { v: '251 V' }, 'cr'],
    ['a line that does not fall: nothing is said of the voltage', { end: '70 °C' }, 'lr'],
    ['where no power is left no voltage is stood', { t: '155 °C' }, 'cr'],
  ],
  'resistor-noise': [
    ['a narrow band', { low: '20 Hz', high: '21 Hz' }, 'r'],
    ['none', { low: '20 Hz', high: '20 Hz' }, 'lr'],
    ['one the wrong way round', { low: '30 Hz', high: '20 Hz' }, 'lr'],
  ],
  'resistor-pulse': [
    // 325 V into 47 Ω are 2247 W, for a millisecond 2.247 J.
    ['twice a second 4.49 W of 5 W', { f: '2 Hz' }, 'lrr'],
    ['three times 6.74 W', { f: '3 Hz' }, 'clrr'],
    // 2.5² times 0.25 W for five seconds are 7.8125 J; 325 V on 10 Ω are 10 562.5 W.
    ['7.80 J in a quarter of a watt', { r: '10', t: '0.7385 ms', p: '0.25' }, 'lrr'],
    ['7.83 J in it', { r: '10', t: '0.7413 ms', p: '0.25' }, 'clrr'],
    ['which its sheet allows', { r: '10', t: '0.7413 ms', p: '0.25', most: '10 J' }, 'lrr'],
    ['a sheet that allows more', { most: '2.25 J' }, 'lrr'],
    ['a sheet that allows less', { most: '2.24 J' }, 'llrr'],
  ],
  'resistor-voltage': [
    ['0.035 % for each of 571 V are 19.99 %', { v: '571 V' }, 'r'],
    ['for each of 572 V 20.02 %', { v: '572 V' }, 'lr'],
  ],
  'trimmer-preset': [
    ['as many ohms as it has', { reading: '10k', total: '10k' }, 'r'],
    ['more than it has', { reading: '10k', total: '9.9k' }, 'lr'],
    ['a reading above the whole of the old one', { reading: '11k', total: '20k' }, 'lr'],
    ['the same of a divider', { use: 'divider', reading: '11k' }, 'lr'],
    ['a rheostat minds no other total', { total: '12k' }, 'r'],
    ['a divider of four percent more', { use: 'divider', total: '10.4k' }, 'r'],
    ['of six more', { use: 'divider', total: '10.6k' }, 'rr'],
    ['of six less', { use: 'divider', total: '9.4k' }, 'rr'],
  ],
  'trimmer-wiper': [
    // 0.5 W in 10 kΩ are 70.7 V or 7.07 mA.
    ['60 V, hardly loaded', { v: '60 V' }, 'l'],
    [
      '60 V from half its way: 30 V behind 2.5 kΩ into 1 kΩ are 8.6 mA',
      { v: '60 V', load: '1k' },
      'cl',
    ],
    ['71 V', { v: '71 V' }, 'ccl'],
  ],
  'larger-rail-capacitor': [
    ['25 µF at its rating', { next: '25 µF', v: '35 V' }, 'r'],
    ['above it', { next: '25 µF', v: '36 V' }, 'cr'],
    ['26 µF', { next: '26 µF' }, 'lr'],
    ['0.7723 A into 220 µF, a rectifier for less', { surge: '0.772 A' }, 'llr'],
    ['a rectifier for more', { surge: '0.773 A' }, 'lr'],
  ],
  'regulator-dump': [
    ['at the limit of 25 µF', { c: '25 µF' }, 'r'],
    ['above it', { c: '26 µF' }, 'cr'],
  ],
  reservoir: [
    // The trough is at 18.25 V where it stands at first.
    ['diodes that drop more than the crest', { vac: '1 V', drop: '2 V' }, 'lrr'],
    ['a regulator of 15 V that wants 3 V more', { reg: '15 V', dropout: '3 V' }, 'rr'],
    ['one that wants 3.5 V more', { reg: '15 V', dropout: '3.5 V' }, 'lrr'],
    // 2 A for 10 ms out of 2200 µF: 9.1 V of some 19 V.
    ['a third of it is ripple', { i: '2 A' }, 'lrr'],
    // 1.414 times the voltage, less two drops of 1.6 V in all.
    ['59.9 V', { vac: '43.5 V' }, 'rr'],
    ['60.6 V', { vac: '44 V' }, 'crr'],
  ],
  'resistance-window': [
    ['a window of one number', { low: '5 Ω', high: '5 Ω' }, 'r'],
    ['none', { low: '5.1 Ω', high: '5 Ω' }, 'lr'],
    ['a part at its upper end', { esr: '5 Ω' }, 'r'],
    ['beyond it', { esr: '5.1 Ω' }, 'lr'],
  ],
  'lc-resonance': [
    // Half a percent times 80 is 0.4, one percent 0.8; a frequency goes with the root.
    ['1 % more: the frequency is half a percent lower', { c: '181.8 pF' }, 'l'],
    ['2 % more', { c: '183.6 pF' }, 'rl'],
    ['2 % less', { c: '176.4 pF' }, 'rl'],
  ],
  'rc-timing': [
    ['one up, one down', { tcR: '50', tcC: '-150' }, 'r'],
    ['one down, one up', { tcR: '-50', tcC: '150' }, 'r'],
    ['both up', { tcR: '50', tcC: '150' }, ''],
    ['both down', { tcR: '-50', tcC: '-150' }, ''],
    ['one that stays', { tcR: '50', tcC: '0' }, ''],
  ],
  'timer-chip': [
    // A third of 9 V on 57 kΩ are 52.6 µA at two thirds.
    ['no leakage', {}, 'l'],
    ['less than a tenth', { leak: '5 µA' }, 'l'],
    ['more than a tenth', { leak: '6 µA' }, 'll'],
    ['all of it', { leak: '53 µA' }, 'll'],
    ['one pulse', { mode: 'pulse' }, 'rl'],
  ],
};

describe.each(Object.entries(cases))('what %s says beside its numbers', (id, rows) => {
  test.each(rows)('%s', (_why, inputs, kinds) => {
    expect(kindsOf(id, inputs)).toBe(kinds);
  });
});

/** What holds whatever the numbers, for a sum that says nothing else. */
const always = {
  'bypass-shelf': 'l',
  'coupling-corner': 'l',
  crossover: 'l',
  'disc-equaliser': 'r',
  insulation: 'l',
  loss: 'r',
  acquisition: 'l',
  'amplifier-change': 'l',
  'hold-droop': 'rl',
  'hold-step': 'l',
  'integrator-drift': 'rl',
  'switch-change': 'rl',
  divider: 'l',
  decoupling: 'r',
  snubber: 'cl',
  'second-order-filter': 'r',
};
test.each(Object.entries(always))('what %s says whatever its numbers: %s', (id, kinds) => {
  expect(kindsOf(id, {})).toBe(kinds);
});

describe('of two things it says the one that holds', () => {
  test.each([
    ['hold-droop', { i: '100 pA' }, /hangs on the capacitor/],
    ['hold-droop', { i: '10 pA' }, /capacitor has a noticeable part/],
    ['integrator-drift', {}, /amplifier has the larger part/],
    ['integrator-drift', { insulation: '1 GΩ' }, /capacitor has the largest part/],
    // 2 nA of bias current against 10 nA through 500 MΩ, and the other way round.
    ['integrator-drift', { offset: '0.1 µV', i: '2 nA', insulation: '500 MΩ' }, /capacitor has/],
    ['integrator-drift', { offset: '0.1 µV', i: '20 nA', insulation: '500 MΩ' }, /amplifier has/],
    ['second-order-filter', { kind: 'low' }, /^First capacitor from the output/],
    ['second-order-filter', { kind: 'high' }, /^First resistor from the output/],
    ['timer-chip', { leak: '6 µA' }, /more than a tenth/],
    ['timer-chip', { leak: '53 µA' }, /takes all/],
  ] as [string, Texts, RegExp][])('%s, %o', (id, texts, said) => {
    expect(notesOf(id, texts)[0]?.text).toMatch(said);
  });
});

describe('where the factors of a ripple current are from', () => {
  // By the tables: a wet electrolytic of 220 µF and 63 V has them of one sheet and of one guide.
  const sourcesOf = (texts: Texts) =>
    notesOf('ripple-current', { t: '85 °C', ...texts }).map(({ text, source }) => [
      /frequency|temperature/.exec(text)?.[0],
      source,
    ]);
  const [frequency, temperature] = [
    ['frequency', 'vishay-038rsu'],
    ['temperature', 'ge-capacitor-guide'],
  ];
  test.each([
    ['both of tables', {}, [frequency, temperature]],
    ['one of two of frequency typed', { k1: '1' }, [frequency, temperature]],
    ['the other typed', { k2: '1.2' }, [frequency, temperature]],
    ['those of frequency typed', { k1: '1', k2: '1.2' }, [temperature]],
    ['one typed where the other is not needed', { k1: '1', i2: '0' }, [temperature]],
    ['that of temperature typed', { kt: '1' }, [frequency]],
    ['all typed', { k1: '1', k2: '1.2', kt: '1' }, []],
  ] as [string, Texts, string[][]][])('%s', (_what, texts, sources) => {
    expect(sourcesOf(texts)).toEqual(sources);
  });

  test('warmer than the table goes nothing is allowed', () => {
    const notes = notesOf('ripple-current', { t: '86 °C', k1: '1', k2: '1.2' });
    expect(notes.map(({ kind }) => kind)).toEqual(['limit']);
    expect(notes[0]?.text).toMatch(/Warmer than any table/);
  });
});

test('every note is of a kind, in words, and of a source that there is', () => {
  for (const { id } of allSums) {
    for (const { kind, text, source } of notesOf(id, {})) {
      expect(['caution', 'limit', 'remark'], id).toContain(kind);
      expect(text, id).toMatch(/^[A-Z].*[.!]$/s);
      if (source !== undefined) expect(catalogue.sources, id).toHaveProperty([source]);
    }
  }
});

describe('a larger capacitor behind a regulator', () => {
  /** The notes about a diode, where positions take other capacitances to need none. */
  const notesWith = (limits: readonly (number | undefined)[], next: string): string[] => {
    const sum = sumOf('larger-rail-capacitor');
    const row = catalogue.conditions.find(({ condition }) => condition === 'diode-free');
    if (row === undefined) throw new Error('no row to begin with');
    const conditions = [
      ...catalogue.conditions.filter(({ condition }) => condition !== 'diode-free'),
      ...limits.map((typ) => ({ ...row, typ })),
    ];
    const facts: unknown = sum.facts?.({ ...catalogue, conditions });
    const values = valuesOf(sum, facts, { next });
    return (sum.notes?.(values, sum.at(values, facts), facts) ?? [])
      .filter(({ text }) => text.includes('diode'))
      .map(({ text }) => text.replaceAll('\u00a0', ' '));
  };

  test.each<[string, limits: (number | undefined)[], next: string, said: RegExp | undefined]>([
    ['25 µF where the tables say so', [25], '26 µF', /more than 25 µF asks/],
    ['the least of two', [47, 10, undefined], '11 µF', /more than 10 µF asks/],
    ['just that', [47, 10], '10 µF', undefined],
    ['nothing where no position says', [undefined], '1 F', undefined],
    ['nothing where no position asks', [], '1 F', undefined],
  ])('needs a diode beyond %s', (_what, limits, next, said) => {
    const notes = notesWith(limits, next);
    expect(notes).toHaveLength(said === undefined ? 0 : 1);
    if (said !== undefined) expect(notes[0]).toMatch(said);
  });
});
