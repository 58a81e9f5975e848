import { seriesCapacitance } from '../../equations/combinations.ts';
import { peakOfSine } from '../../equations/sine.ts';
import { reactiveCurrent } from '../../equations/mains.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, quantity } from '../sum.ts';

/** Two polar electrolytics with like poles joined, in place of one for both signs. */
export const backToBack = defineSum({
  id: 'back-to-back',
  title: 'Two polar electrolytics back to back',
  lead: 'What two polar electrolytics with like poles joined come to in place of one for both signs, and what runs through them.',
  group: 'parts',
  inputs: {
    c: quantity({
      label: 'Each capacitor',
      symbol: 'C',
      unit: 'F',
      usual: '22 µF ±20 %',
      lowest: 1e-9,
      highest: 1,
    }),
    rating: quantity({
      label: 'Rating of each',
      symbol: 'U_R',
      unit: 'V',
      usual: '50 V',
      lowest: 1,
      highest: 1000,
    }),
    ac: quantity({
      label: 'AC voltage across both, RMS',
      symbol: 'V',
      unit: 'V',
      usual: '1 V',
      lowest: 0,
      highest: 1000,
    }),
    f: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '1 kHz',
      lowest: 0.1,
      highest: 1e6,
    }),
    ripple: quantity({
      label: 'Ripple current of each',
      symbol: 'I_R',
      unit: 'A',
      usual: '100 mA',
      lowest: 1e-4,
      highest: 100,
      hint: 'of its sheet, at this frequency',
    }),
  },
  outputs: {
    whole: { label: 'Capacitance of both', symbol: 'C_s', unit: 'F', headline: true },
    needed: { label: 'Each would need, for the value of one', symbol: 'C_n', unit: 'F' },
    peak: { label: 'Peak across both', symbol: 'V_p', unit: 'V' },
    current: { label: 'Current through them', symbol: 'I', unit: 'A' },
    share: { label: 'Of the ripple current', symbol: 's', unit: 'fraction' },
  },
  equations: ['C_s = C/2', 'C_n = 2*C', 'V_p = sqrt(2)*V', 'I = 2*pi*f*C_s*V', 's = I/I_R'],
  at: ({ c, ac, f, ripple }) => {
    const whole = seriesCapacitance([c, c]);
    const current = reactiveCurrent(f, exactly(whole), ac).typ;
    return {
      whole,
      needed: 2 * c,
      peak: peakOfSine(ac),
      current,
      share: current / ripple,
    };
  },
  notes: ({ rating }, { peak = 0, share = 0 }) => [
    ...noteIf(peak > rating, 'caution', 'The peak is above the rating of either.'),
    ...noteIf(share > 1, 'limit', 'The current is above what either takes for long.'),
    {
      kind: 'remark',
      text: 'Each takes nearly the whole voltage in its own half of the swing once the pair has charged itself, so each needs the full rating. Never across the mains: a motor or a mains part needs one made for it.',
    },
  ],
  plots: [
    {
      title: 'Current against frequency',
      x: 'f',
      scale: 'log',
      y: ['current'],
      yScale: 'log',
      limits: ({ ripple }) => [{ label: 'rated', value: ripple }],
    },
  ],
  cautions: ['bipolar-not-ac', 'electrolytic-vent'],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 22 µF twice is 11 µF, and at 1 kHz 5 V drive 0.3456 A through it',
      inputs: { c: '22 µF', ac: '5', f: '1k' },
      expected: { whole: 11e-6, current: 0.34558, peak: 7.0711 },
      within: 0.0005,
      source: 'identity',
    },
  ],
});
