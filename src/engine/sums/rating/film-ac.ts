import { lossHeat, voltageByEdge, voltageByHeat } from '../../equations/alternating.ts';
import { reactiveCurrent } from '../../equations/mains.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** AC voltage that a film part stands against frequency: field, heat and current. */
export const filmAc = defineSum({
  id: 'film-ac',
  title: 'Film on AC voltage',
  lead: 'How much AC voltage a film capacitor takes against frequency: its rating at low ones, its self-heating higher up, its contacts higher still.',
  group: 'rating',
  inputs: {
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '100 nF ±5 %',
      lowest: 1e-12,
      highest: 1e-2,
    }),
    rating: quantity({
      label: 'Rated AC voltage',
      symbol: 'U_AC',
      unit: 'V',
      usual: '160 V',
      lowest: 1,
      highest: 10_000,
      hint: 'at mains frequency',
    }),
    loss: quantity({
      label: 'Loss at the frequency',
      symbol: 'D',
      unit: 'fraction',
      bare: '%',
      usual: '0.8 to 1.1 %',
      lowest: 1e-6,
      highest: 0.5,
    }),
    heat: quantity({
      label: 'Heat that it may make',
      symbol: 'P_a',
      unit: 'W',
      usual: '0.1 W',
      lowest: 1e-4,
      highest: 100,
      hint: 'for some 10 K; by its size',
    }),
    edge: quantity({
      label: 'Rated dV/dt',
      symbol: 's',
      unit: 'V/s',
      usual: '15 V/µs',
      lowest: 1e4,
      highest: 1e12,
    }),
    f: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '10 kHz',
      lowest: 1,
      highest: 1e8,
    }),
    u: quantity({
      label: 'Your AC voltage',
      symbol: 'U',
      unit: 'V',
      usual: '25 V',
      lowest: 0,
      highest: 10_000,
    }),
  },
  outputs: {
    allowed: {
      label: 'AC voltage allowed',
      symbol: 'U_a',
      unit: 'V',
      headline: true,
    },
    byHeat: { label: 'By its heat', symbol: 'U_P', unit: 'V' },
    byEdge: { label: 'By its steepest edge', symbol: 'U_s', unit: 'V' },
    share: { label: 'Your voltage against that', symbol: 'n', unit: 'fraction' },
    power: { label: 'Heat at your voltage', symbol: 'P', unit: 'W' },
    current: { label: 'Current at your voltage', symbol: 'I', unit: 'A' },
  },
  equations: [
    'U_P = sqrt(P_a / (2*pi*f*C*D))',
    'U_s = s / (2*pi*f*sqrt(2))',
    'U_a = min(U_AC, U_P, U_s)',
    'n = U/U_a',
    'P = 2*pi*f*C*D*U^2',
    'I = 2*pi*f*C*U',
  ],
  at: ({ c, rating, loss, heat, edge, f, u }) => {
    const part = { frequency: f, capacitance: c, loss };
    const byHeat = voltageByHeat(heat, part);
    const byEdge = voltageByEdge(edge, f);
    const allowed = Math.min(rating, byHeat, byEdge);
    return {
      allowed,
      byHeat,
      byEdge,
      share: u / allowed,
      power: lossHeat(u, part),
      current: reactiveCurrent(f, exactly(c), u).typ,
    };
  },
  notes: ({ u }, { allowed = 0 }) => [
    ...noteIf(u > allowed, 'caution', 'Your voltage is above what it takes at this frequency.'),
    {
      kind: 'limit',
      text: 'Across the mains a rating is not enough: only a part approved for that place may sit there.',
    },
  ],
  plots: [
    {
      title: 'AC voltage allowed against frequency',
      x: 'f',
      scale: 'log',
      span: () => [10, 1e6],
      y: ['allowed'],
      yScale: 'log',
    },
  ],
  cautions: ['mains-class'],
  sources: ['identity'],
  checks: [
    {
      what: 'From a printed formula: 0.1 µF of polyester with a loss of 1.1 % at 10 kHz and 50 V makes 0.1728 W',
      inputs: { c: '0.1 µF', loss: '1.1 %', f: '10 kHz', u: '50' },
      expected: { power: 0.1728 },
      within: 0.01,
      source: 'winday-film',
    },
  ],
});
