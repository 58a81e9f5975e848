import { riseByList, rippleTaken, rippleTogether } from '../../equations/ripple.ts';
import type { Catalogue } from '../../catalogue.ts';
import { frequencyFactor, temperatureFactor } from '../../sizes/ripple-factors.ts';
import { rulesOf } from '../../rule-of-thumb.ts';
import { choice, noteIf, optionalQuantity, quantity, withFacts, type SumNote } from '../sum.ts';

/** The one rule of thumb that the factors by frequency go by. */
const REACH = 'frequency-reach-down';

/** What the factors need, without the words that only their tables show. */
const factsOf = (catalogue: Catalogue) => {
  const { types, rippleByFrequency, rippleByTemperature } = catalogue;
  const listed = new Set([...rippleByFrequency, ...rippleByTemperature].map(({ type }) => type));
  return {
    types: [...listed].map((id) => ({ id, name: types[id]?.name ?? id })),
    rippleByFrequency: rippleByFrequency.map((row) => ({ ...row, locator: '', note: '' })),
    rippleByTemperature: rippleByTemperature.map((row) => ({ ...row, locator: '', note: '' })),
    rulesOfThumb: { [REACH]: rulesOf(catalogue, REACH) },
  };
};
type Facts = ReturnType<typeof factsOf>;

/** The part whose row is looked for. */
interface Kind {
  type: string;
  c: number;
  v: number;
}

const byFrequency = (facts: Facts, { type, c, v }: Kind, from: number, to: number) =>
  frequencyFactor(facts, { type, capacitance: c, ratedVoltage: v }, from, to);

const amps = (number: number, usual: string) =>
  quantity({
    label: `Ripple current ${number}, RMS`,
    unit: 'A',
    usual,
    symbol: `I_${number}`,
    lowest: 0,
    highest: 1000,
  });
const hertz = (number: number, usual: string) =>
  quantity({ label: `Its frequency ${number}`, unit: 'Hz', usual, lowest: 1, highest: 1e7 });
const typed = (label: string) =>
  optionalQuantity({
    label,
    unit: 'number',
    lowest: 0.1,
    highest: 5,
    hint: 'of the sheet; empty: from the table',
  });

/** The factor that was typed, or that of the table; none is needed for no current. */
const factorOf = (
  own: number | undefined,
  listed: { factor: number } | undefined,
  current: number,
): number | undefined => own ?? listed?.factor ?? (current === 0 ? 1 : undefined);

/** Whether a factor that counts was left to the table. */
const isFromTable = (own: number | undefined, current: number): boolean =>
  own === undefined && current > 0;

const sourceNotes = (sources: readonly string[], what: string): SumNote[] =>
  sources.map((source) => ({
    kind: 'remark',
    text: `Factors by ${what} are those of one series of such parts; the sheet of yours goes first.`,
    source,
  }));

/** Ripple currents of several frequencies as one at the frequency of the rating. */
export const rippleCurrents = withFacts(factsOf)({
  id: 'ripple-current',
  title: 'Ripple currents of several frequencies',
  lead: 'What ripple currents of several frequencies come to at the frequency of the rating, and how much of the rating they take at that temperature.',
  group: 'rating',
  inputs: {
    type: choice<Facts>({
      label: 'Type',
      usual: 'al-electrolytic-wet',
      options: ({ types }) => types,
    }),
    c: quantity({
      label: 'Capacitance',
      unit: 'F',
      usual: '220 µF',
      lowest: 1e-8,
      highest: 1,
      hint: 'chooses the factors',
    }),
    v: quantity({
      label: 'Rated voltage',
      unit: 'V',
      usual: '63 V',
      lowest: 1,
      highest: 1000,
      hint: 'chooses the factors',
    }),
    rating: quantity({
      label: 'Rated ripple current',
      symbol: 'I_R',
      unit: 'A',
      usual: '1.2 A',
      lowest: 1e-4,
      highest: 1000,
    }),
    f0: quantity({
      label: 'Frequency of the rating',
      unit: 'Hz',
      usual: '100 Hz',
      lowest: 1,
      highest: 1e7,
    }),
    t0: quantity({
      label: 'Temperature of the rating',
      unit: 'degC',
      usual: '85 °C',
      lowest: 0,
      highest: 200,
    }),
    t: quantity({
      label: 'Ambient temperature in use',
      unit: 'degC',
      usual: '55 °C',
      lowest: -55,
      highest: 200,
    }),
    i1: amps(1, '0.5 A'),
    f1: hertz(1, '100 Hz'),
    k1: typed('Its factor 1'),
    i2: amps(2, '0.7 A'),
    f2: hertz(2, '500 Hz'),
    k2: typed('Its factor 2'),
    i3: amps(3, '0 A'),
    f3: hertz(3, '10 kHz'),
    k3: typed('Its factor 3'),
    kt: typed('Factor of the temperature'),
    rise: quantity({
      label: 'Self-heating at the rated ripple',
      symbol: 'dT_R',
      unit: 'K',
      usual: '5 K to 10 K',
      lowest: 0.1,
      highest: 60,
    }),
  },
  outputs: {
    share: { label: 'Ripple against what it takes', symbol: 's', unit: 'fraction', headline: true },
    whole: { label: 'Comes to, at the frequency of the rating', symbol: 'I', unit: 'A' },
    warm: { label: 'Self-heating', symbol: 'dT', unit: 'K' },
    factor1: { label: 'Factor of frequency 1', symbol: 'k_1', unit: 'number' },
    factor2: { label: 'Factor of frequency 2', symbol: 'k_2', unit: 'number' },
    factor3: { label: 'Factor of frequency 3', symbol: 'k_3', unit: 'number' },
    factorT: { label: 'Factor of the temperature', symbol: 'k_T', unit: 'number' },
  },
  equations: [
    'I = sqrt((I_1/k_1)^2 + (I_2/k_2)^2 + (I_3/k_3)^2)',
    's = I/(I_R*k_T)',
    'dT = dT_R*(I/I_R)^2',
  ],
  at: ({ type, c, v, rating, f0, t0, t, i1, f1, k1, i2, f2, k2, i3, f3, k3, kt, rise }, facts) => {
    const kind = { type, c, v };
    const factor1 = factorOf(k1, byFrequency(facts, kind, f0, f1), i1);
    const factor2 = factorOf(k2, byFrequency(facts, kind, f0, f2), i2);
    const factor3 = factorOf(k3, byFrequency(facts, kind, f0, f3), i3);
    const factorT = kt ?? temperatureFactor(facts, { type }, t0, t)?.factor;
    const whole =
      factor1 === undefined || factor2 === undefined || factor3 === undefined
        ? undefined
        : rippleTogether([
            { current: i1, factor: factor1 },
            { current: i2, factor: factor2 },
            { current: i3, factor: factor3 },
          ]);
    return {
      share:
        whole === undefined || factorT === undefined
          ? undefined
          : whole / rippleTaken(rating, 1, factorT),
      whole,
      warm: whole === undefined ? undefined : riseByList(whole, rating, rise),
      factor1,
      factor2,
      factor3,
      factorT,
    };
  },
  notes: (
    { type, c, v, f0, t0, t, i1, k1, i2, k2, i3, k3, kt },
    { share, whole, factorT },
    facts,
  ) => [
    ...noteIf(
      (share ?? 0) > 1,
      'limit',
      'This is more than it takes: it gets warmer and lives shorter.',
    ),
    ...noteIf(
      whole === undefined,
      'limit',
      'The table has no factor for this type, value, voltage and frequency: type that of the sheet.',
    ),
    ...noteIf(
      factorT === undefined,
      'limit',
      'Warmer than any table goes: nothing is allowed there.',
    ),
    ...noteIf((factorT ?? 0) > 1, 'remark', 'What the cool allows more costs life.'),
    ...(isFromTable(k1, i1) || isFromTable(k2, i2) || isFromTable(k3, i3)
      ? sourceNotes(byFrequency(facts, { type, c, v }, f0, f0)?.sources ?? [], 'frequency')
      : []),
    ...(kt === undefined
      ? sourceNotes(temperatureFactor(facts, { type }, t0, t)?.sources ?? [], 'temperature')
      : []),
  ],
  plots: [
    {
      title: 'Factor of the frequency',
      x: 'f1',
      scale: 'log',
      span: () => [50, 1e5],
      y: ['factor1'],
      yScale: 'linear',
    },
    {
      title: 'Self-heating against the first current',
      x: 'i1',
      scale: 'linear',
      y: ['warm'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['alum-life-technote'],
  checks: [
    {
      what: 'From a printed rule: 0.5 A with factor 1 and 0.7 A with factor 1.25 come to 0.7507 A',
      inputs: { i1: '0.5', k1: '1', i2: '0.7', k2: '1.25' },
      expected: { whole: 0.7507 },
      within: 0.001,
      source: 'alum-life-technote',
    },
    {
      what: 'Printed in a table: 220 µF takes 1.2 times as much at 500 Hz as at 100 Hz',
      inputs: { c: '220 µF', f0: '100', f2: '500' },
      expected: { factor2: 1.2 },
      within: 0.001,
      source: 'vishay-038rsu',
      locator: 'table 3',
    },
    {
      what: 'Printed in a table: a low-impedance type of 105 °C takes 1.7 times as much at 85 °C',
      inputs: { type: 'al-electrolytic-low-esr', t0: '105', t: '85' },
      expected: { factorT: 1.7 },
      within: 0.001,
      source: 'rubycon-life-formula',
      locator: 'table',
    },
    {
      what: 'Printed in a table: at 65 °C 1.7 times as much as at 85 °C',
      inputs: { t0: '85', t: '65' },
      expected: { factorT: 1.7 },
      within: 0.001,
      source: 'ge-capacitor-guide',
      locator: 'table AP2',
    },
  ],
});
