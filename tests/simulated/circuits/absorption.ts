import {
  absorptionError,
  absorptionPerDecade,
  type AbsorptionTimes,
} from '../../../src/engine/equations/absorption.ts';
import { absorptionLadder, type LadderSpan } from './absorption-ladder.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { netlistOf, PRECISE, within, type SimulatedCase } from '../case.ts';
import { valueAt } from '../waves.ts';

export interface Soakage {
  /** F */
  capacitance: number;
  /** Fraction. */
  perDecade: number;
  /** V */
  step: number;
  times: AbsorptionTimes;
  span: LadderSpan;
}

/** When the recovery is read: at the end of the open time. */
const endOf = ({ soak = 0, short, open }: AbsorptionTimes): number => soak + short + open;

/**
 * Charged, shorted through 1 milliohm, left open. A soak without a length is one that never ended:
 * every branch begins charged.
 */
const soakageNetlist = ({ capacitance, perDecade, step, times, span }: Soakage): string => {
  const { soak, short } = times;
  const from = soak === undefined ? step : 0;
  const edge = short * 1e-4;
  const shorted = (soak ?? 0) + edge;
  const opened = (soak ?? 0) + short;
  const end = endOf(times);
  const ladder = absorptionLadder(capacitance, perDecade, span).flatMap((branch, index) => [
    `Rb${index} hold b${index} ${branch.resistance}`,
    `Cb${index} b${index} 0 ${branch.capacitance} IC=${from}`,
  ]);
  return netlistOf(
    'absorption by a ladder of relaxations',
    PRECISE,
    soak === undefined
      ? 'Vs source 0 0'
      : `Vs source 0 PWL(0 ${step} ${soak} ${step} ${shorted} 0 ${end} 0)`,
    `Vc gate 0 PWL(0 1 ${opened} 1 ${opened + edge} 0 ${end} 0)`,
    // A conductance rather than a switch: it opens smoothly and then is truly open.
    'Bs source hold I=v(gate)*v(source,hold)',
    'Rsource source 0 1',
    `C1 hold 0 ${capacitance} IC=${soak === undefined ? 0 : from}`,
    ...ladder,
    `.tran ${end / 1000} ${end * 1.0001} 0 ${end / 200} uic`,
  );
};

const LONG_TEST: AbsorptionTimes = { short: 10, open: 900 };
const QUARTER_HOUR: AbsorptionTimes = { soak: 900, short: 10, open: 900 };
const ONE_MINUTE: AbsorptionTimes = { soak: 60, short: 6, open: 60 };

/** From where nothing survives the short to where nothing more comes back in the open time. */
const spanFor = (times: AbsorptionTimes, branchesPerDecade: number): LadderSpan => ({
  fastest: times.short / 100,
  slowest: 1000 * (times.short + times.open),
  branchesPerDecade,
});

interface Trial {
  what: string;
  /** Absorption that a part was given, fraction, and the test that it was given by. */
  figure: number;
  test: AbsorptionTimes;
  capacitance: number;
  step: number;
  times: AbsorptionTimes;
}

const trials: Trial[] = [
  {
    what: '0.2 % by the 15 min test with an endless soak comes back in that test',
    figure: 0.002,
    test: LONG_TEST,
    capacitance: 1e-6,
    step: 100,
    times: LONG_TEST,
  },
  {
    what: '0.2 % by the 15 min test with its own soak comes back in that test',
    figure: 0.002,
    test: QUARTER_HOUR,
    capacitance: 1e-6,
    step: 100,
    times: QUARTER_HOUR,
  },
  {
    what: '0.2 % by the 15 min test, in the test of 6 s and 1 min',
    figure: 0.002,
    test: QUARTER_HOUR,
    capacitance: 1e-6,
    step: 100,
    times: ONE_MINUTE,
  },
  {
    what: '0.2 % by the 15 min test, in a hold of 10 ms after 10 µs',
    figure: 0.002,
    test: QUARTER_HOUR,
    capacitance: 10e-9,
    step: 5,
    times: { short: 10e-6, open: 10e-3 },
  },
  {
    what: '0.02 % by the 15 min test, in a hold of 1 s after 100 µs',
    figure: 0.0002,
    test: QUARTER_HOUR,
    capacitance: 10e-9,
    step: 5,
    times: { short: 100e-6, open: 1 },
  },
  {
    what: '0.2 % by the 15 min test, in a hold as short as its settling',
    figure: 0.002,
    test: QUARTER_HOUR,
    capacitance: 10e-9,
    step: 5,
    times: { short: 1e-3, open: 1e-3 },
  },
];

const seconds = ({ soak, short, open }: AbsorptionTimes): string =>
  `${soak === undefined ? 'endless' : `${soak} s`} soak, ${short} s short, ${open} s open`;

export const absorptionCases: SimulatedCase[] = trials.map(
  ({ what, figure, test, capacitance, step, times }) => {
    const perDecade = absorptionPerDecade(exactly(figure), test);
    return {
      what,
      circuit: `${capacitance} F with two R-C branches a decade across it, ${seconds(times)}`,
      netlist: soakageNetlist({
        capacitance,
        perDecade: perDecade.typ,
        step,
        times,
        span: spanFor(times, 2),
      }),
      simulated: (waves) => valueAt(waves, 'v(hold)', endOf(times)),
      engine: absorptionError(step, perDecade, times).typ,
      unit: 'V',
      ratio: within(0.01),
      because:
        'the law is first order in absorption: settled branches share the charge, 0.1 % a decade of them',
    };
  },
);

/** The same recovery with ladders of growing fineness. */
export const finerLadders = [0.5, 1, 2, 4].map((branchesPerDecade) => ({
  branchesPerDecade,
  netlist: soakageNetlist({
    capacitance: 1e-6,
    perDecade: 1e-4,
    step: 100,
    times: LONG_TEST,
    span: spanFor(LONG_TEST, branchesPerDecade),
  }),
}));

/** What the law gives for them, V, and when they are read, s. */
export const finestRecovery = {
  law: absorptionError(100, exactly(1e-4), LONG_TEST).typ,
  at: endOf(LONG_TEST),
};
