import {
  type AbsorptionTimes,
  absorptionError,
  absorptionPerDecade,
  recoveryDecades,
} from '../../equations/absorption.ts';
import { exactly } from '../../quantities/range.ts';
import { defineSum, noteIf, optionalQuantity, quantity } from '../sum.ts';

const timesOf = (soak: number | undefined, short: number, open: number): AbsorptionTimes => ({
  short,
  open,
  ...(soak === undefined ? {} : { soak }),
});

/** What comes back of an old voltage, from a figure of another test than the circuit's times. */
export const absorption = defineSum({
  id: 'absorption',
  title: 'Dielectric absorption in the circuit’s own times',
  lead: 'How much of an old voltage creeps back during a hold, worked out from a published figure whose test had other times.',
  group: 'hold',
  inputs: {
    figure: quantity({
      label: 'Dielectric absorption by its test',
      symbol: 'd',
      unit: 'fraction',
      bare: '%',
      usual: '0.02 to 0.1 %',
      lowest: 0,
      highest: 0.5,
    }),
    testShort: quantity({
      label: 'Discharged in the test for',
      symbol: 't_s1',
      unit: 's',
      usual: '10 s',
      lowest: 1e-6,
      highest: 1e6,
    }),
    testOpen: quantity({
      label: 'Left open in the test for',
      symbol: 't_o1',
      unit: 's',
      usual: '15 min',
      lowest: 1e-6,
      highest: 1e7,
    }),
    testSoak: optionalQuantity({
      label: 'Charged in the test for',
      symbol: 't_01',
      unit: 's',
      lowest: 1e-3,
      highest: 1e9,
    }),
    step: quantity({
      label: 'Voltage step before the hold',
      symbol: 'V',
      unit: 'V',
      usual: '5 V',
      lowest: 1e-3,
      highest: 10_000,
    }),
    short: quantity({
      label: 'Acquisition time, at the new voltage',
      symbol: 't_s',
      unit: 's',
      usual: '50 ms',
      lowest: 1e-9,
      highest: 1e6,
    }),
    open: quantity({
      label: 'Hold time',
      symbol: 't_o',
      unit: 's',
      usual: '5 s',
      lowest: 1e-9,
      highest: 1e7,
    }),
    soak: optionalQuantity({
      label: 'Time at the old voltage',
      symbol: 't_0',
      unit: 's',
      lowest: 1e-9,
      highest: 1e9,
      hint: 'empty: so long that everything had followed',
    }),
  },
  outputs: {
    error: { label: 'Voltage that creeps back', symbol: 'V_a', unit: 'V', headline: true },
    perDecade: { label: 'Absorption in a decade of time', symbol: 'x', unit: 'fraction' },
    decades: { label: 'Decades that the hold covers', symbol: 'n', unit: 'number' },
    unfilled: { label: 'Of them never filled at the old voltage', symbol: 'm', unit: 'number' },
    testUnfilled: { label: 'Never filled in the test', symbol: 'm_1', unit: 'number' },
  },
  equations: [
    'm_1 = log10((t_01 + t_s1 + t_o1)/(t_01 + t_s1))',
    'x = d / (log10((t_s1 + t_o1)/t_s1) - m_1)',
    'm = log10((t_0 + t_s + t_o)/(t_0 + t_s))',
    'n = log10((t_s + t_o)/t_s) - m',
    'V_a = V*x*n',
  ],
  at: ({ figure, testShort, testOpen, testSoak, step, short, open, soak }) => {
    const test = timesOf(testSoak, testShort, testOpen);
    const times = timesOf(soak, short, open);
    const perDecade = absorptionPerDecade(exactly(figure), test);
    return {
      error: absorptionError(step, perDecade, times).typ,
      perDecade: perDecade.typ,
      decades: recoveryDecades(times),
      unfilled: recoveryDecades({ short, open }) - recoveryDecades(times),
      testUnfilled: recoveryDecades({ short: testShort, open: testOpen }) - recoveryDecades(test),
    };
  },
  notes: ({ soak }, { perDecade = 0 }) => [
    ...noteIf(
      perDecade > 1,
      'limit',
      'No dielectric gives back more than it took: after so short a charge its test could not have shown as much.',
    ),
    {
      kind: 'limit',
      text: 'Relaxation is taken as spread evenly over log time; derived, not published. A ladder measured on the very part is better where there is one.',
    },
    ...noteIf(
      soak !== undefined,
      'remark',
      'Less comes back after a short time at the old voltage: the decades that it never filled are taken off.',
    ),
  ],
  plots: [
    {
      title: 'What creeps back against hold time',
      x: 'open',
      scale: 'log',
      y: ['error'],
      yScale: 'linear',
    },
  ],
  cautions: ['charge-returns'],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 0.1 % after 10 s of short and 90 s open is 0.1 % a decade; 9 s of hold after 1 s is one decade',
      inputs: {
        figure: '0.1 %',
        testShort: '10',
        testOpen: '90',
        step: '5',
        short: '1',
        open: '9',
      },
      expected: { error: 0.005, perDecade: 0.001, decades: 1 },
      within: 1e-6,
      source: 'identity',
    },
  ],
});
