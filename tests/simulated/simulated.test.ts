import { beforeAll, describe, expect, it, vi } from 'vitest';
import { agrees } from './case.ts';
import { simulatedCases } from './cases.ts';
import { finerLadders, finestRecovery } from './circuits/absorption.ts';
import {
  drives,
  drivesAtCorner,
  estimateFor,
  quadraticNetlist,
  thirdAtLoad,
  thirdByHand,
  type Drive,
} from './circuits/distortion.ts';
import { marginsOf, regulatorNetlist, resistances } from './circuits/regulator.ts';
import { startSimulator, type Simulator } from './simulate.ts';
import { lastOf, valueAt } from './waves.ts';

let simulator: Simulator;

beforeAll(async () => {
  simulator = await startSimulator();
});

describe.each(Object.entries(simulatedCases))('%s', (_subject, cases) => {
  it.each(cases)('$what ($circuit)', async (check) => {
    const simulated = check.simulated(await simulator.run(check.netlist));
    const { engine, ratio, unit, because } = check;
    expect(
      simulated / engine,
      `simulated ${simulated} ${unit}, engine ${engine} ${unit}; bounds because ${because}`,
    ).toSatisfy((of: number) => of >= ratio.low && of <= ratio.high);
  });

  it.each(cases)('a wrong equation is caught: $what', async (check) => {
    const simulated = check.simulated(await simulator.run(check.netlist));
    const factor = check.catches ?? 2;
    expect(agrees(simulated, check.engine * factor, check.ratio)).toBe(false);
    expect(agrees(simulated, check.engine / factor, check.ratio)).toBe(false);
    expect(agrees(simulated, -check.engine, check.ratio)).toBe(false);
  });
});

describe('absorption ladder', () => {
  it('comes nearer to the law with every doubling of its branches', async () => {
    const recovered: number[] = [];
    for (const { netlist } of finerLadders) {
      recovered.push(valueAt(await simulator.run(netlist), 'v(hold)', finestRecovery.at));
    }
    const finest = recovered.at(-1) ?? NaN;
    // The law is first order in absorption: seven settled decades of 0.01 % are 0.07 %.
    expect(Math.abs(finest / finestRecovery.law - 1)).toBeLessThan(0.001);
    const [half, one, two] = recovered.map((volt) => Math.abs(volt / finest - 1));
    expect(half).toBeGreaterThan(0.005);
    expect(one).toBeLessThan((half ?? NaN) / 4);
    expect(two).toBeLessThan((one ?? NaN) / 4);
  });
});

describe('distortion by voltage', () => {
  it.each(drives)(
    'of a part bent by the square of voltage: $frequency Hz, $peakShare of rated',
    async (drive) => {
      const simulated = thirdAtLoad(await simulator.run(quadraticNetlist(drive)), drive);
      // First order in a change of 1 %.
      expect(Math.abs(simulated / thirdByHand(drive) - 1)).toBeLessThan(0.02);
    },
  );

  it('falls with the square of voltage, where the estimate falls with voltage', async () => {
    const third = async (drive: Drive): Promise<number> =>
      thirdAtLoad(await simulator.run(quadraticNetlist(drive)), drive);
    const { full, half, quarter } = drivesAtCorner;
    expect((await third(full)) / (await third(half))).toBeCloseTo(4, 1);
    expect((await third(half)) / (await third(quarter))).toBeCloseTo(4, 1);
    expect(estimateFor(full) / estimateFor(half)).toBeCloseTo(2, 9);
    expect(estimateFor(half) / estimateFor(quarter)).toBeCloseTo(2, 9);
  });
});

describe('series resistance of a regulator, for plausibility', () => {
  it('too little and too much both leave no phase; between them lies plenty', async () => {
    const margins = marginsOf(await simulator.run(regulatorNetlist));
    const best = margins.indexOf(Math.max(...margins));
    expect(margins[0]).toBeLessThan(5);
    expect(margins.at(-1)).toBeLessThan(20);
    expect(margins[best]).toBeGreaterThan(60);
    expect(resistances[best]).toBeGreaterThan(0.1);
    expect(resistances[best]).toBeLessThan(5);
  });
});

describe('the simulator', () => {
  const divider = (ohm: number): string =>
    `divider\nV1 top 0 10\nR1 top out ${ohm}\nR2 out 0 1k\n.op\n.end\n`;

  it('says that a netlist is faulty rather than giving what was left over', async () => {
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const faulty = 'unknown model\nV1 a 0 1\nD1 a 0 nothing\n.op\n.end\n';
    await expect(simulator.run(faulty)).rejects.toThrow('nothing');
    quiet.mockRestore();
    expect(lastOf(await simulator.run(divider(1000)), 'v(out)')).toBeCloseTo(5, 9);
  });

  it('does not mix up netlists that are asked for at once', async () => {
    const ohms = [1000, 3000, 4000];
    const waves = await Promise.all(ohms.map((ohm) => simulator.run(divider(ohm))));
    waves.forEach((one, index) => {
      expect(lastOf(one, 'v(out)')).toBeCloseTo(1e4 / ((ohms[index] ?? NaN) + 1000), 9);
    });
  });

  it('has no value where nothing was simulated', async () => {
    const waves = await simulator.run('ramp\nV1 a 0 PWL(0 0 1 1)\nR1 a 0 1\n.tran 0.1 1\n.end\n');
    expect(valueAt(waves, 'v(a)', 0.3217)).toBeCloseTo(0.3217, 9);
    expect(() => valueAt(waves, 'v(a)', 1.5)).toThrow('not simulated');
    expect(() => valueAt(waves, 'v(b)', 0.5)).toThrow('no column v(b)');
  });
});
