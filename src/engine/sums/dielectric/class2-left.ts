import { leftBy, factorUnderBias } from '../../equations/bias.ts';
import { ageingLoss } from '../../equations/drift.ts';
import { knownRange } from '../../known-range.ts';
import { exactly, type Range } from '../../quantities/range.ts';
import { HOUR, YEAR } from '../../quantities/si.ts';
import { choice, noteIf, optionalQuantity, quantity, withFacts } from '../sum.ts';

interface Kind {
  id: string;
  name: string;
  bias: Range;
  temperature: Range;
  ageing: Range;
}

/** What is left of a class 2 ceramic under bias, over temperature and with age. */
export const class2Left = withFacts(({ types, knowledge }): Kind[] =>
  Object.values(types).flatMap(({ id, name }) => {
    const own = knowledge[id];
    const bias = knownRange(own?.['voltage-coefficient']);
    const temperature = knownRange(own?.['capacitance-change-temperature']);
    const ageing = knownRange(own?.['ageing']);
    return bias && temperature && ageing && ageing.max > 0
      ? [{ id, name, bias, temperature, ageing }]
      : [];
  }),
)({
  id: 'class2-left',
  title: 'What is left of a class 2 ceramic',
  lead: 'How much of its marked value a class 2 ceramic keeps under DC voltage, over its temperatures and after years.',
  group: 'dielectric',
  inputs: {
    kind: choice<Kind[]>({ label: 'Type', usual: 'ceramic-x7r', options: (kinds) => kinds }),
    c: quantity({
      label: 'Marked value',
      symbol: 'C',
      unit: 'F',
      usual: '100 nF ±10 %',
      lowest: 1e-13,
      highest: 10,
    }),
    v: quantity({
      label: 'DC voltage across it',
      symbol: 'V',
      unit: 'V',
      usual: '12 V',
      lowest: 0,
      highest: 50_000,
    }),
    rating: quantity({
      label: 'Rated voltage',
      symbol: 'U_R',
      unit: 'V',
      usual: '50 V',
      lowest: 1,
      highest: 50_000,
    }),
    curve: optionalQuantity({
      label: 'Change at its rated voltage, by its maker’s curve',
      symbol: 'b_R',
      unit: 'fraction',
      bare: '%',
      lowest: -0.99,
      highest: 0.5,
      hint: 'such as −60 %; goes before what is usual of its type; may stay empty',
    }),
    age: quantity({
      label: 'Since it was last hot',
      symbol: 't',
      unit: 's',
      bare: 'years',
      usual: '10 years',
      lowest: HOUR,
      highest: 5e9,
      hint: 'heat above its Curie point, as in soldering, begins it anew',
    }),
  },
  outputs: {
    left: { label: 'Typically left', symbol: 'C_l', unit: 'F', headline: true },
    worst: { label: 'At the worst end of everything', unit: 'F' },
    bias: { label: 'Change by the voltage', symbol: 'b', unit: 'fraction' },
    aged: { label: 'Lost by age', symbol: 'a', unit: 'fraction' },
    cold: { label: 'Most that its temperatures take', unit: 'fraction' },
  },
  equations: ['C_l = C*(1 + b)*(1 - a)'],
  at: ({ kind, c, v, rating, curve, age }, kinds) => {
    const own = kinds.find(({ id }) => id === kind);
    if (own === undefined) {
      return {
        left: undefined,
        worst: undefined,
        bias: undefined,
        aged: undefined,
        cold: undefined,
      };
    }
    const underBias = factorUnderBias(curve === undefined ? own.bias : exactly(curve), v, rating);
    const lost = ageingLoss(own.ageing, age / HOUR);
    const cold = Math.min(0, own.temperature.min);
    return {
      left: leftBy(c, [underBias.typ, 1 - lost.typ]),
      worst: leftBy(c, [underBias.min, 1 + cold, 1 - lost.max]),
      bias: underBias.typ - 1,
      aged: lost.typ,
      cold,
    };
  },
  notes: ({ v, rating }) => [
    ...noteIf(v > rating, 'caution', 'The voltage is above the rating.'),
    {
      kind: 'limit',
      text: 'Change by voltage is taken in proportion to the share of the rating. Small multilayer parts lose far more than discs, and only the maker’s curve for the very part is sure: one chip of 4.7 µF and 16 V kept 1.5 µF at 12 V, the same value in a larger body 3.4 µF.',
      source: 'maxim-5527',
    },
  ],
  plots: [
    {
      title: 'Typically left against voltage',
      x: 'v',
      scale: 'linear',
      span: ({ rating }) => [0, rating],
      y: ['left', 'worst'],
      yScale: 'linear',
    },
    {
      title: 'Typically left against age',
      x: 'age',
      scale: 'log',
      span: () => [HOUR, 50 * YEAR],
      y: ['left'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['trade'],
  checks: [
    {
      what: 'Printed of a chip in a small body: of 4.7 µF 1.5 µF are left at 12 V of its 16 V',
      inputs: {
        kind: 'ceramic-x7r',
        c: '4.7 µF',
        rating: '16',
        v: '12',
        curve: '-90.67 %',
        age: '1 h',
      },
      expected: { left: 1.5e-6 },
      within: 0.01,
      source: 'maxim-5527',
    },
    {
      what: 'Worked by hand from the rate of this site, 2.25 % a decade, the middle of its sources: three decades of hours take 6.75 %, and no voltage takes nothing',
      inputs: { kind: 'ceramic-x7r', v: '0', age: '1000 h', c: '100 nF' },
      expected: { aged: 0.0675, left: 93.25e-9, bias: 0 },
      within: 0.0001,
      source: 'identity',
    },
  ],
});
