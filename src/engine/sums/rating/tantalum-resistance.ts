import { switchOnPeak, surgeShare } from '../../equations/inrush.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** Series resistance that keeps the surge through a solid tantalum part within what it is proved with. */
export const tantalumResistance = defineSum({
  id: 'tantalum-resistance',
  title: 'Series resistor for a solid tantalum',
  lead: 'How large the surge through a solid tantalum part is at switch-on against the one that it is proved with, and what resistance keeps it below.',
  group: 'rating',
  inputs: {
    v: quantity({
      label: 'Rail',
      symbol: 'V',
      unit: 'V',
      usual: '12 V',
      lowest: 0.5,
      highest: 200,
    }),
    source: quantity({
      label: 'Source resistance',
      symbol: 'R_S',
      unit: 'ohm',
      usual: '0.2 Ω',
      lowest: 0,
      highest: 1e5,
    }),
    esr: quantity({
      label: 'ESR of the part',
      symbol: 'R_C',
      unit: 'ohm',
      usual: '0.9 Ω',
      lowest: 1e-3,
      highest: 1000,
    }),
    rating: quantity({
      label: 'Rated voltage',
      symbol: 'U_R',
      unit: 'V',
      usual: '25 V',
      lowest: 1,
      highest: 200,
    }),
    test: quantity({
      label: 'Resistance of the maker’s surge test',
      symbol: 'R_0',
      unit: 'ohm',
      usual: '0.45 to 1 Ω',
      lowest: 0,
      highest: 10,
    }),
  },
  outputs: {
    share: { label: 'Surge against the proved one', symbol: 's', unit: 'fraction', headline: true },
    surge: { label: 'Surge', symbol: 'I', unit: 'A' },
    proved: { label: 'Proved with', symbol: 'I_0', unit: 'A' },
    needed: { label: 'Resistance in front of it for half of that', symbol: 'R_n', unit: 'ohm' },
    perVolt: { label: 'Series ohms for each volt', unit: 'number' },
  },
  equations: [
    'I = V/(R_S + R_C)',
    'I_0 = U_R/(R_0 + R_C)',
    's = I/I_0',
    'R_n = max(0, 2*V/I_0 - R_C)',
  ],
  at: ({ v, source, esr, rating, test }) => {
    const proved = switchOnPeak(rating, test + esr);
    return {
      share: surgeShare({ voltage: v, source, own: esr, rated: rating, test }),
      surge: switchOnPeak(v, source + esr),
      proved,
      needed: Math.max(0, (2 * v) / proved - esr),
      perVolt: source / v,
    };
  },
  notes: ({ v, rating }, { perVolt = 0, share = 0 }) => [
    ...noteIf(
      v > rating,
      'caution',
      'The rail is above the rating: a solid tantalum fails to a short there, and may burn.',
    ),
    ...noteIf(
      v <= rating && share > 1,
      'caution',
      'The surge is above what its maker proves it with: more series resistance, or a higher rating.',
    ),
    ...noteIf(
      perVolt < 1,
      'limit',
      'Below one ohm a volt half the rated voltage is the usual reserve; old practice asked for three ohms a volt (common practice).',
    ),
  ],
  plots: [
    {
      title: 'Surge against the source resistance',
      x: 'source',
      scale: 'log',
      span: () => [0.01, 100],
      y: ['share'],
      yScale: 'log',
      limits: () => [{ label: 'proved with', value: 1 }],
    },
  ],
  cautions: ['tantalum-fire'],
  sources: ['avx-tcl-summary'],
  checks: [
    {
      what: 'Worked by hand: 12 V through 0.2 Ω and 0.9 Ω is 10.9 A',
      inputs: {},
      expected: { surge: 10.909 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
