import type { Basis, Catalogue } from '../../catalogue.ts';
import { noiseOfResistor, currentNoise, thermalNoise } from '../../equations/resistor.ts';
import { mapRising, type Range } from '../../quantities/range.ts';
import { basisName } from '../../basis-name.ts';
import type { Curve, SumPlot } from '../picture.ts';
import { noteIf, quantity, withFacts, type SumTable } from '../sum.ts';

const INDEX = 'noise-index';

/** A construction whose noise index (dB) is known. */
interface Construction {
  name: string;
  index: Range;
  basis: Basis;
  /** Whether it is among the ordinary film parts. */
  usual: boolean;
}

/** Constructions of resistors by their noise, the quietest first. */
const factsOf = ({ kindTypes, knowledge }: Catalogue) => ({
  constructions: Object.values(kindTypes)
    .flatMap(({ id, kind, short_name: name, family, market, only_asked }): Construction[] => {
      const known = kind === 'resistor' ? knowledge[id]?.[INDEX] : undefined;
      if (known?.status !== 'known' || only_asked) return [];
      const { range: index, basis } = known;
      return [{ name, index, basis, usual: family === 'film' && market === 'common' }];
    })
    .toSorted((a, b) => a.index.typ - b.index.typ),
});
type Facts = ReturnType<typeof factsOf>;

/** What a resistor sits in: ohm, degC, Hz and V. */
interface Place {
  r: number;
  t: number;
  low: number;
  high: number;
  v: number;
}

const wholeNoise = ({ r, t, low, high, v }: Place, index: number): number =>
  noiseOfResistor(index, { ohm: r, celsius: t, volt: v, low, high });

/** Every construction beside the visitor's own. */
const sideBySide = (place: Place, own: number, { constructions }: Facts): SumTable => ({
  caption: 'The same resistance in other constructions',
  head: ['Construction', 'Noise index', 'By current', 'Noise in the band', 'Known from'],
  rows: [
    ...constructions.map(({ name, index, basis }) => [
      name,
      { value: index, unit: 'dB' as const },
      {
        value: mapRising(index, (each) => currentNoise(each, place.v, place.low, place.high)),
        unit: 'V' as const,
      },
      { value: mapRising(index, (each) => wholeNoise(place, each)), unit: 'V' as const },
      basisName(basis),
    ]),
    [
      'Yours',
      { value: own, unit: 'dB' as const },
      { value: currentNoise(own, place.v, place.low, place.high), unit: 'V' as const },
      { value: wholeNoise(place, own), unit: 'V' as const },
      'your number',
    ],
  ],
});

/** Ends of the voltage axis about the visitor's own, and places between. */
const AROUND = 30;
const PLACES = 41;

/** The quietest, the noisiest and the two ordinary film constructions, over the voltage. */
const overVoltage = (place: Place, own: number, { constructions }: Facts): SumPlot => {
  const films = constructions.filter(({ usual }) => usual);
  const drawn = new Set([
    ...constructions.slice(-1),
    ...films.slice(-1),
    ...films.slice(0, 1),
    ...constructions.slice(0, 1),
  ]);
  const middle = place.v > 0 ? place.v : 1;
  const volts = Array.from(
    { length: PLACES },
    (_, step) => (middle / AROUND) * AROUND ** ((2 * step) / (PLACES - 1)),
  );
  const curves = [...drawn].map(({ name, index }): Curve => {
    const at = (v: number, each: number): number => wholeNoise({ ...place, v }, each);
    return {
      label: name,
      points: volts.map((x) => ({
        x,
        y: at(x, index.typ),
        low: at(x, index.min),
        high: at(x, index.max),
      })),
    };
  });
  return {
    title: 'Noise against the voltage, by construction; the ring is yours',
    x: { label: 'DC voltage across it', unit: 'V', scale: 'log' },
    y: { label: 'Noise in the band', unit: 'V', scale: 'log' },
    curves,
    points: place.v > 0 ? [{ x: place.v, y: wholeNoise(place, own) }] : [],
    limits: [],
  };
};

/** Thermal and current noise of a resistor. */
export const resistorNoise = withFacts(factsOf)({
  id: 'resistor-noise',
  title: 'Noise of a resistor',
  lead: 'Thermal noise of a resistance, and what its construction adds under DC voltage; all constructions side by side.',
  group: 'resistor',
  inputs: {
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '100 kΩ',
      lowest: 1e-3,
      highest: 1e13,
    }),
    t: quantity({
      label: 'Temperature',
      symbol: 'T',
      unit: 'degC',
      usual: '25 °C',
      lowest: -200,
      highest: 300,
    }),
    low: quantity({
      label: 'Band from',
      symbol: 'f_1',
      unit: 'Hz',
      usual: '20 Hz',
      lowest: 1e-3,
      highest: 1e9,
    }),
    high: quantity({
      label: 'Band to',
      symbol: 'f_2',
      unit: 'Hz',
      usual: '20 kHz',
      lowest: 2e-3,
      highest: 1e10,
    }),
    v: quantity({
      label: 'DC voltage across it',
      symbol: 'V',
      unit: 'V',
      usual: '10 V',
      lowest: 0,
      highest: 10_000,
    }),
    index: quantity({
      label: 'Noise index of its construction',
      symbol: 'N',
      unit: 'dB',
      usual: '-30 dB',
      lowest: -60,
      highest: 40,
      hint: '0 dB is 1 µV for a volt and a decade; of the sheet, or from the table below',
    }),
  },
  outputs: {
    total: { label: 'Noise in the band', symbol: 'e', unit: 'V', headline: true },
    thermal: { label: 'Thermal', symbol: 'e_t', unit: 'V' },
    excess: { label: 'By current', symbol: 'e_x', unit: 'V' },
  },
  equations: [
    'e_t = sqrt(4*k*(T + 273.15)*R*(f_2 - f_1))',
    'e_x = 1e-6*10^(N/20)*V*sqrt(log10(f_2/f_1))',
    'e = sqrt(e_t^2 + e_x^2)',
  ],
  at: ({ r, t, low, high, v, index }) => {
    if (high <= low) return { total: undefined, thermal: undefined, excess: undefined };
    const thermal = thermalNoise(r, t, low, high);
    const excess = currentNoise(index, v, low, high);
    return { total: wholeNoise({ r, t, low, high, v }, index), thermal, excess };
  },
  notes: ({ low, high }) => [
    ...noteIf(high <= low, 'limit', 'The band ends below where it begins.'),
    {
      kind: 'remark',
      text: 'Noise indices differ from maker to maker and rise with the value; the data sheet of the part decides. Thermal noise goes by the value alone and cannot be bought away.',
      source: 'foil-noise-table',
    },
  ],
  tables: ({ r, t, low, high, v, index }, facts) =>
    high <= low ? [] : [sideBySide({ r, t, low, high, v }, index, facts)],
  pictures: ({ r, t, low, high, v, index }, facts) =>
    high <= low ? [] : [overVoltage({ r, t, low, high, v }, index, facts)],
  plots: [
    {
      title: 'Noise against the resistance',
      x: 'r',
      scale: 'log',
      y: ['total', 'thermal', 'excess'],
      yScale: 'log',
    },
  ],
  cautions: [],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 1 kΩ at 17 °C (290.15 K) in a band of 10 kHz has √(4 × 1.380649e−23 × 290.15 × 1000 × 10 000) = 0.4003 µV',
      inputs: { r: '1k', t: '17', low: '10 kHz', high: '20 kHz', v: '0' },
      expected: { thermal: 0.4003e-6, excess: 0 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: 0 dB, 10 V and three decades give 10 µV × √3',
      inputs: { r: '1', low: '20', high: '20 kHz', v: '10', index: '0 dB' },
      expected: { excess: 17.32e-6 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
