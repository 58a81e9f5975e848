import { storedEnergy, surgeCurrent, switchOnPeak } from '../../equations/inrush.ts';
import { rectified } from '../../equations/rectifier.ts';
import { triangularRms } from '../../equations/ripple.ts';
import type { Catalogue } from '../../catalogue.ts';
import { ruleOf } from '../../rule-of-thumb.ts';
import { dangerousVoltage } from '../dangerous-voltage.ts';
import { choice, noteIf, optionalQuantity, quantity, withFacts } from '../sum.ts';

/** Ways of rectifying, with the pulses that each gives in a cycle. */
const WAYS = {
  bridge: { name: 'bridge of four diodes', pulses: 2 },
  tapped: { name: 'two diodes, tapped winding', pulses: 2 },
  half: { name: 'one diode, half wave', pulses: 1 },
} as const;
type Way = keyof typeof WAYS;

const wayOf = (id: string): Way => (id === 'half' || id === 'tapped' ? id : 'bridge');

/** DC current for each ampere, RMS, of the winding, with a capacitor behind the rectifier. */
const sharesOf = (catalogue: Catalogue): Record<Way, number> => ({
  bridge: ruleOf(catalogue, 'winding-share-bridge'),
  tapped: ruleOf(catalogue, 'winding-share-tapped'),
  half: ruleOf(catalogue, 'winding-share-half'),
});

const factsOf = (catalogue: Catalogue) => ({
  shares: sharesOf(catalogue),
  halfSine: ruleOf(catalogue, 'surge-half-sine'),
  dangerous: dangerousVoltage(catalogue),
});

const equationsOf = (id: string): readonly string[] => {
  const { pulses } = WAYS[wayOf(id)];
  return [
    'V_p = max(0, sqrt(2)*V_ac - V_D)',
    pulses === 2 ? 'V_r = min(V_p, I / (2*f*C))' : 'V_r = min(V_p, I / (f*C))',
    'V_t = V_p - V_r',
    'V_h = V_t - V_out - V_min',
    'I_0 = V_p/R',
    'I_S = I_0*min(1, sqrt(R*C/t_S))',
    'I_w = I/k_w',
    'W = C*V_p^2/2',
  ];
};

/** Reservoir behind a rectifier: ripple, pulses, surge, and what a regulator has left. */
export const reservoir = withFacts(factsOf)({
  id: 'reservoir',
  title: 'Reservoir behind a rectifier',
  lead: 'Ripple, charging pulses and switch-on surge of a reservoir behind a rectifier, what the winding has to give, and what is left for a regulator.',
  group: 'supply',
  inputs: {
    way: choice({
      label: 'Rectifier',
      usual: 'bridge',
      options: Object.entries(WAYS).map(([id, { name }]) => ({ id, name })),
    }),
    vac: quantity({
      label: 'Secondary voltage, RMS',
      symbol: 'V_ac',
      unit: 'V',
      usual: '15 V ±10 %',
      lowest: 1,
      highest: 10_000,
      hint: 'of a tapped one either half',
    }),
    drop: quantity({
      label: 'Drop of the diodes in the path',
      symbol: 'V_D',
      unit: 'V',
      usual: '1.6 V',
      lowest: 0,
      highest: 100,
      hint: 'two diodes in a bridge, else one',
    }),
    i: quantity({
      label: 'Load current',
      symbol: 'I',
      unit: 'A',
      usual: '300 mA',
      lowest: 1e-6,
      highest: 100,
    }),
    f: quantity({
      label: 'Mains frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '50 Hz',
      lowest: 10,
      highest: 1000,
    }),
    c: quantity({
      label: 'Reservoir',
      symbol: 'C',
      unit: 'F',
      usual: '2200 µF ±20 %',
      lowest: 1e-7,
      highest: 1,
    }),
    r: quantity({
      label: 'Resistance of winding, diodes and capacitor',
      symbol: 'R',
      unit: 'ohm',
      usual: '1 Ω',
      lowest: 1e-3,
      highest: 1e5,
      hint: 'as seen from the secondary',
    }),
    reg: optionalQuantity({
      label: 'Regulator output voltage',
      symbol: 'V_out',
      unit: 'V',
      lowest: 0.5,
      highest: 5000,
    }),
    dropout: optionalQuantity({
      label: 'Dropout voltage of the regulator',
      symbol: 'V_min',
      unit: 'V',
      lowest: 0,
      highest: 100,
    }),
  },
  outputs: {
    ripple: { label: 'Ripple, peak to peak', symbol: 'V_r', unit: 'V', headline: true },
    rms: { label: 'Ripple, RMS', unit: 'V' },
    peak: { label: 'Peak voltage', symbol: 'V_p', unit: 'V' },
    trough: { label: 'Lowest voltage', symbol: 'V_t', unit: 'V' },
    headroom: { label: 'Headroom of the regulator at the lowest', symbol: 'V_h', unit: 'V' },
    conduction: {
      label: 'Conduction, share of the time',
      symbol: 'D',
      unit: 'fraction',
    },
    pulse: { label: 'Highest of the charging pulses', symbol: 'I_p', unit: 'A' },
    first: { label: 'Current at the first instant', symbol: 'I_0', unit: 'A' },
    surge: { label: 'Surge as an equivalent half sine', symbol: 'I_S', unit: 'A' },
    halfSine: { label: 'Half sine of its rating', symbol: 't_S', unit: 's', step: true },
    winding: { label: 'Current that the winding is rated for, at least', symbol: 'I_w', unit: 'A' },
    share: {
      label: 'DC current for each ampere of the winding',
      symbol: 'k_w',
      unit: 'ratio',
      step: true,
    },
    energy: { label: 'Energy stored', symbol: 'W', unit: 'J' },
  },
  equations: equationsOf('bridge'),
  equationsFor: ({ way }) => equationsOf(way),
  at: ({ way, vac, drop, i, f, c, r, reg, dropout }, { shares, halfSine }) => {
    const { pulses } = WAYS[wayOf(way)];
    const share = shares[wayOf(way)];
    const { peak, ripple, trough, conduction, pulse } = rectified({
      rms: vac,
      drop,
      current: i,
      mains: f,
      farad: c,
      pulses,
    });
    return {
      ripple,
      rms: triangularRms(ripple),
      peak,
      trough,
      headroom: reg === undefined ? undefined : trough - reg - (dropout ?? 0),
      conduction,
      pulse,
      first: switchOnPeak(peak, r),
      surge: surgeCurrent(peak, r, c, halfSine),
      halfSine,
      winding: i / share,
      share,
      energy: storedEnergy(c, peak),
    };
  },
  notes: ({ reg }, { peak = 0, headroom = 0, ripple = 0, trough = 0 }, { dangerous }) => [
    ...noteIf(
      peak === 0,
      'limit',
      'The diodes drop more than the winding gives at its peak: nothing gets through.',
    ),
    ...noteIf(
      reg !== undefined && headroom < 0,
      'limit',
      'The lowest voltage falls below what the regulator needs: hum passes through it.',
    ),
    ...noteIf(
      peak > 0 && ripple > trough / 3,
      'limit',
      'With ripple as large as this the equation is rough: it errs on the high side.',
    ),
    ...noteIf(
      peak >= dangerous,
      'caution',
      'This supply can kill, and keeps its charge when it is off. Discharge through a resistor, measure, then touch.',
    ),
    {
      kind: 'remark',
      text: 'Without load a transformer gives up to a fifth more than rated, and the mains may be a tenth high: the capacitor has to take that.',
    },
    {
      kind: 'remark',
      text: 'Into a capacitor the usual rectifier of one ampere may give a fifth less than its rating, by its sheet: 0.8 A on average.',
      source: 'diodes-1n400x',
    },
  ],
  plots: [
    {
      title: 'Ripple against the reservoir',
      x: 'c',
      scale: 'log',
      y: ['ripple'],
      yScale: 'log',
    },
    {
      title: 'Surge at switch-on against the reservoir',
      x: 'c',
      scale: 'log',
      y: ['surge', 'first'],
      yScale: 'linear',
    },
  ],
  cautions: ['mains', 'stored-charge'],
  sources: ['identity', 'hammond-rectifier'],
  checks: [
    {
      what: 'From a chart for transformers: a winding of 2 A behind a bridge and a capacitor gives 1.24 A',
      inputs: { way: 'bridge', i: '1.24 A' },
      expected: { winding: 2 },
      within: 0.001,
      source: 'hammond-rectifier',
    },
    {
      what: 'Worked by hand: one diode and a ripple of a tenth of the peak conduct for acos(0.9) of 360 degrees',
      inputs: { way: 'half', vac: '10', drop: '0', i: '1 A', f: '50', c: '14142.1 µF' },
      expected: { ripple: 1.41421, conduction: 0.07178 },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Printed: 12 V behind two drops of 0.8 V have a peak of 15.37 V; 154 mA at 60 Hz and 1 V of ripple ask for 1283 µF',
      inputs: { vac: '12', drop: '1.6', i: '154 mA', f: '60', c: '1283 µF' },
      expected: { peak: 15.37, ripple: 1 },
      within: 0.002,
      source: 'homework-974070',
    },
    {
      what: 'From a printed formula: 800 mA at 60 Hz and 300 µF leave 6.4 V RMS',
      inputs: { vac: '100', i: '800 mA', f: '60', c: '300 µF' },
      expected: { rms: 6.4 },
      within: 0.005,
      source: 'epst-p196',
    },
  ],
});
