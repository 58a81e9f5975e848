import { defineSum, quantity } from '../sum.ts';

const amps = (number: number) => ({
  label: `Ripple current ${number}, effective`,
  symbol: `I_${number}`,
  unit: 'A' as const,
  lowest: 0,
  highest: 1000,
});
const factor = (number: number) => ({
  label: `Factor of its frequency ${number}`,
  symbol: `k_${number}`,
  unit: 'number' as const,
  lowest: 0.1,
  highest: 5,
});

/** Ripple currents of several frequencies as one at the frequency of the rating. */
export const rippleCurrents = defineSum({
  id: 'ripple-current',
  title: 'Ripple currents of several frequencies',
  lead: 'What ripple currents of several frequencies come to at the frequency of the rating, and how much of the rating they take.',
  group: 'rating',
  inputs: {
    i1: quantity({ ...amps(1), usual: '0.5 A' }),
    k1: quantity({ ...factor(1), usual: '1', hint: '1 at the frequency of the rating' }),
    i2: quantity({ ...amps(2), usual: '0.7 A' }),
    k2: quantity({ ...factor(2), usual: '1.25', hint: 'of the sheet, at its frequency' }),
    i3: quantity({ ...amps(3), usual: '0 A' }),
    k3: quantity({ ...factor(3), usual: '1.4', hint: 'of the sheet, at its frequency' }),
    rating: quantity({
      label: 'Rated ripple current',
      symbol: 'I_R',
      unit: 'A',
      usual: '1.2 A',
      lowest: 1e-3,
      highest: 1000,
    }),
    rise: quantity({
      label: 'Own heat at the rated ripple',
      symbol: 'dT_R',
      unit: 'K',
      usual: '5 K to 10 K',
      lowest: 0.1,
      highest: 60,
    }),
  },
  outputs: {
    whole: { label: 'Comes to', symbol: 'I', unit: 'A', headline: true },
    share: { label: 'Of the rating', symbol: 's', unit: 'fraction' },
    warm: { label: 'Own heat', symbol: 'dT', unit: 'K' },
  },
  equations: ['I = sqrt((I_1/k_1)^2 + (I_2/k_2)^2 + (I_3/k_3)^2)', 's = I/I_R', 'dT = dT_R*s^2'],
  at: ({ i1, k1, i2, k2, i3, k3, rating, rise }) => {
    const whole = Math.hypot(i1 / k1, i2 / k2, i3 / k3);
    return { whole, share: whole / rating, warm: rise * (whole / rating) ** 2 };
  },
  notes: (_, { share = 0 }) =>
    share > 1
      ? [{ kind: 'limit', text: 'This is more than the rating: it gets warmer and lives shorter.' }]
      : [],
  plots: [
    {
      title: 'Own heat against the first current',
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
  ],
});
