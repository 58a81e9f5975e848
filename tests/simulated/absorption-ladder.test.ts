import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  absorptionError,
  absorptionPerDecade,
  recoveryDecades,
  type AbsorptionTimes,
} from '../../src/engine/equations/absorption.ts';
import { absorptionLadder, type RelaxationBranch } from './circuits/absorption-ladder.ts';
import { exactly } from '../../src/engine/quantities/range.ts';

/** What the branches give back into a main capacitor, each by itself, as a share of the soak. */
const recovered = (
  branches: readonly RelaxationBranch[],
  capacitance: number,
  { soak = Infinity, short, open }: AbsorptionTimes,
): number =>
  branches.reduce((sum, branch) => {
    const timeConstant = branch.resistance * branch.capacitance;
    const held = (1 - Math.exp(-soak / timeConstant)) * Math.exp(-short / timeConstant);
    const given = 1 - Math.exp(-open / timeConstant);
    return sum + (held * given * branch.capacitance) / capacitance;
  }, 0);

const duration = fc.double({ min: -6, max: 4, noNaN: true }).map((decade) => 10 ** decade);
const times = fc.oneof(
  fc.record({ short: duration, open: duration }),
  fc.record({ soak: duration, short: duration, open: duration }),
);

describe('absorption ladder', () => {
  it('holds the absorption per decade in every decade', () => {
    const ladder = absorptionLadder(2e-6, 0.003, {
      fastest: 1e-3,
      slowest: 1e3,
      branchesPerDecade: 3,
    });
    expect(ladder).toHaveLength(18);
    const total = ladder.reduce((sum, { capacitance }) => sum + capacitance, 0);
    expect(total / (6 * 0.003 * 2e-6)).toBeCloseTo(1, 12);
  });

  it('spaces time constants evenly, in the middle of their parts', () => {
    const ladder = absorptionLadder(1e-6, 0.001, {
      fastest: 1,
      slowest: 100,
      branchesPerDecade: 2,
    });
    const decades = ladder.map(({ resistance, capacitance }) =>
      Math.log10(resistance * capacitance),
    );
    [0.25, 0.75, 1.25, 1.75].forEach((decade, index) => {
      expect(decades[index]).toBeCloseTo(decade, 12);
    });
  });

  it('gives back what the log-time law says, whatever the times', () => {
    fc.assert(
      fc.property(times, (trial) => {
        const ladder = absorptionLadder(1e-6, 0.001, {
          fastest: trial.short / 100,
          slowest: 1e4 * (trial.short + trial.open),
          branchesPerDecade: 4,
        });
        const law = absorptionError(1, exactly(0.001), trial).typ;
        // Only what is slower than the slowest branch is missing: a ten-thousandth of a neper.
        expect(Math.abs(recovered(ladder, 1e-6, trial) - law)).toBeLessThan(
          1e-3 * law + 1e-4 * 0.001,
        );
      }),
    );
  });
});

describe('soak of finite length', () => {
  it.each([
    { test: { soak: 900, short: 10, open: 900 }, decades: 1.66 },
    { test: { soak: 3600, short: 10, open: 900 }, decades: 1.862 },
    { test: { soak: 60, short: 6, open: 60 }, decades: 0.761 },
  ])('$test.soak s soak, $test.short s short, $test.open s open', ({ test, decades }) => {
    expect(recoveryDecades(test)).toBeCloseTo(decades, 3);
  });

  it('charges less than a longer one, and nearly all when very long', () => {
    fc.assert(
      fc.property(duration, duration, duration, (soak, short, open) => {
        const endless = recoveryDecades({ short, open });
        const finite = recoveryDecades({ soak, short, open });
        const longer = recoveryDecades({ soak: 10 * soak, short, open });
        expect(finite).toBeLessThan(longer);
        expect(longer).toBeLessThan(endless);
        expect(recoveryDecades({ soak: 1e9 * open, short, open })).toBeCloseTo(endless, 8);
      }),
    );
  });

  it('gives a figure back in its own test', () => {
    fc.assert(
      fc.property(times, (test) => {
        const perDecade = absorptionPerDecade(exactly(0.002), test);
        expect(absorptionError(100, perDecade, test).typ).toBeCloseTo(0.2, 9);
      }),
    );
  });
});
