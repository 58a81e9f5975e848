import { Simulation, type ResultType } from 'eecircuit-engine';
import type { Waves } from './waves.ts';

/** Longest that one circuit may take, ms; a netlist that kills the simulator never answers. */
const PATIENCE = 20_000;

/** Runs netlists, each only once however often it is asked for. */
export interface Simulator {
  /** @throws when the simulator reports an error or does not answer */
  run: (netlist: string) => Promise<Waves>;
}

const toWaves = (result: ResultType): Waves => {
  if (result.dataType === 'real') {
    return {
      real: new Map(result.data.map(({ name, values }) => [name, values])),
      imaginary: new Map(),
    };
  }
  return {
    real: new Map(result.data.map(({ name, values }) => [name, values.map(({ real }) => real)])),
    imaginary: new Map(result.data.map(({ name, values }) => [name, values.map(({ img }) => img)])),
  };
};

const inTime = async <Answer>(answer: Promise<Answer>): Promise<Answer> => {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      reject(new Error(`the simulator has not answered for ${PATIENCE / 1000} s`));
    }, PATIENCE);
  });
  try {
    return await Promise.race([answer, late]);
  } finally {
    clearTimeout(timer);
  }
};

/** Starts ngspice as WebAssembly. It takes about a second and 300 MB, so start one and keep it. */
export const startSimulator = async (): Promise<Simulator> => {
  const simulation = new Simulation();
  await simulation.start();
  const runOne = async (netlist: string): Promise<Waves> => {
    simulation.setNetList(netlist);
    const result = await inTime(simulation.runSim());
    // A faulty netlist does not reject: it answers with what was left over, and reports errors.
    const errors = simulation.getError();
    if (errors.length > 0) throw new Error(`${errors.join('\n')}\nin\n${netlist}`);
    return toWaves(result);
  };
  const asked = new Map<string, Promise<Waves>>();
  // The simulator holds a single netlist, so each run waits for the one before.
  let previous: Promise<unknown> = Promise.resolve();
  return {
    run: (netlist) => {
      const known = asked.get(netlist);
      if (known !== undefined) return known;
      const answer = previous.then(() => runOne(netlist));
      previous = answer.catch(() => undefined);
      asked.set(netlist, answer);
      return answer;
    },
  };
};
