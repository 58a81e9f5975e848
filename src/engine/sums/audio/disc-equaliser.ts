import { cornerFrequency } from '../../equations/coupling.ts';
import { discReplayLevel } from '../../equations/equaliser.ts';
import { discStandardBy } from '../../laws.ts';
import { exactly } from '../../quantities/range.ts';
import { quantity, withFacts } from '../sum.ts';

const constant = (symbol: string, label: string, usual: string) =>
  quantity({ label, symbol, unit: 's', usual, lowest: 1e-7, highest: 0.1, hint: 'R × C' });

/** Disc replay by its three time constants, against the standard ones. */
export const discEqualiser = withFacts(discStandardBy)({
  id: 'disc-equaliser',
  title: 'RIAA equaliser',
  lead: 'How disc replay deviates when the parts of its three time constants, 3180, 318 and 75 µs, are off.',
  group: 'audio',
  inputs: {
    bass: constant('tau_1', 'Bass time constant', '3180 µs ±5 %'),
    middle: constant('tau_2', 'Middle time constant', '318 µs ±5 %'),
    treble: constant('tau_3', 'Treble time constant', '75 µs ±5 %'),
    f: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      usual: '10 kHz',
      lowest: 1,
      highest: 1e6,
    }),
  },
  outputs: {
    error: { label: 'Off the standard curve at the frequency', unit: 'dB', headline: true },
    level: { label: 'Level there against 1 kHz', symbol: 'a', unit: 'dB' },
    standard: { label: 'Level by the standard', unit: 'dB' },
    low: { label: 'Bass turnover', symbol: 'f_1', unit: 'Hz' },
    mid: { label: 'Middle turnover', symbol: 'f_2', unit: 'Hz' },
    high: { label: 'Treble turnover', symbol: 'f_3', unit: 'Hz' },
  },
  equations: ['f_1 = 1/(2*pi*tau_1), f_2 = 1/(2*pi*tau_2), f_3 = 1/(2*pi*tau_3)'],
  at: ({ bass, middle, treble, f }, ofStandard) => {
    const level = discReplayLevel(f, { bass, middle, treble });
    const standard = discReplayLevel(f, ofStandard);
    const turnover = (tau: number): number => cornerFrequency(exactly(tau), 1).typ;
    return {
      error: level - standard,
      level,
      standard,
      low: turnover(bass),
      mid: turnover(middle),
      high: turnover(treble),
    };
  },
  notes: () => [
    {
      kind: 'remark',
      text: 'Each constant is taken as if nothing else loaded its parts; most replay networks let them act on each other, so measure or simulate the network before choosing odd values.',
    },
  ],
  plots: [
    {
      title: 'Off the standard curve',
      x: 'f',
      scale: 'log',
      span: () => [10, 30_000],
      y: ['error'],
      yScale: 'linear',
    },
    {
      title: 'Replay against 1 kHz',
      x: 'f',
      scale: 'log',
      span: () => [10, 30_000],
      y: ['level', 'standard'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['microgroove-riaa'],
  checks: [
    {
      what: 'Printed turnovers of the standard constants: 50.05 Hz and 500.5 Hz; replay at 100 Hz by the printed formula 13.09 dB',
      inputs: { f: '100' },
      expected: { low: 50.05, mid: 500.5, level: 13.09 },
      within: 0.001,
      source: 'microgroove-riaa',
    },
    {
      what: 'Replay at 10 kHz by the printed formula: −13.73 dB',
      inputs: { f: '10 kHz' },
      expected: { level: -13.73, error: 0 },
      within: 0.001,
      source: 'microgroove-riaa',
    },
  ],
});
