import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { agrees } from '../tests/simulated/case.ts';
import { simulatedCases } from '../tests/simulated/cases.ts';
import { startSimulator } from '../tests/simulated/simulate.ts';
import type { Waves } from '../tests/simulated/waves.ts';

/**
 * Runs the circuits of the simulation tests through the ngspice of this machine as well, and prints
 * how far engine, WebAssembly and native simulation lie apart. Fails where the native one falls
 * outside the bounds of a case.
 */

/** Numbers of one line of values, as `real` or `real,imaginary`, after an index on the first. */
const numbersIn = (line: string): [number, number] => {
  const [real, imaginary = '0'] = (line.trim().split(/\s+/).at(-1) ?? '').split(',');
  return [Number(real), Number(imaginary)];
};

/** Reads a raw file of ngspice in its text form. */
const parseRaw = (text: string): Waves => {
  const lines = text.split('\n');
  const variablesAt = lines.findIndex((line) => line.startsWith('Variables:'));
  const valuesAt = lines.findIndex((line) => line.startsWith('Values:'));
  const complex = lines.some((line) => /^Flags:.*complex/.test(line));
  if (variablesAt < 0 || valuesAt < 0) throw new Error('not a raw file of ngspice in text form');
  const names = lines
    .slice(variablesAt + 1, valuesAt)
    .map((line) => (line.trim().split(/\s+/)[1] ?? '').toLowerCase());
  const values = lines
    .slice(valuesAt + 1)
    .filter((line) => line.trim() !== '')
    .map(numbersIn);
  const part = (which: 0 | 1): Map<string, number[]> =>
    new Map(
      names.map((name, column) => [
        name,
        values.filter((_, index) => index % names.length === column).map((pair) => pair[which]),
      ]),
    );
  return { real: part(0), imaginary: complex ? part(1) : new Map() };
};

const runNatively = (netlist: string, folder: string): Waves => {
  const [circuit, raw] = [join(folder, 'circuit.cir'), join(folder, 'circuit.raw')];
  const control = `.control\nset filetype=ascii\nset numdgt=12\nrun\nwrite ${raw}\n.endc\n.end`;
  rmSync(raw, { force: true });
  writeFileSync(circuit, netlist.replace(/\.end\n$/, `${control}\n`));
  const { error, stdout, stderr } = spawnSync('ngspice', ['-b', circuit], { encoding: 'utf8' });
  if (error !== undefined) throw error;
  try {
    return parseRaw(readFileSync(raw, 'utf8'));
  } catch (cause) {
    throw new Error(`ngspice gave no result:\n${stdout}\n${stderr}`, { cause });
  }
};

if (spawnSync('ngspice', ['--version']).error !== undefined) {
  console.error('ngspice is not on the path; on Debian: apt-get install ngspice');
  process.exit(1);
}

const folder = mkdtempSync(join(tmpdir(), 'simulate-'));
const simulator = await startSimulator();
const natively = new Map<string, Waves>();
let outside = 0;
let widest = 0;
for (const [subject, cases] of Object.entries(simulatedCases)) {
  console.log(`\n${subject}`);
  for (const { what, netlist, simulated, engine, unit, ratio } of cases) {
    const waves = natively.get(netlist) ?? runNatively(netlist, folder);
    natively.set(netlist, waves);
    const [inside, native] = [simulated(await simulator.run(netlist)), simulated(waves)];
    const apart = native / inside - 1;
    const fits = agrees(native, engine, ratio);
    outside += fits ? 0 : 1;
    widest = Math.max(widest, Math.abs(apart));
    console.log(
      `${fits ? '  ' : '! '}${what}: engine ${engine.toPrecision(5)} ${unit}, ` +
        `WebAssembly ${inside.toPrecision(6)}, native ${native.toPrecision(6)}, ` +
        `apart ${(apart * 100).toFixed(4)} %`,
    );
  }
}
rmSync(folder, { recursive: true, force: true });
console.log(
  `\n${natively.size} circuits; farthest apart ${(widest * 100).toFixed(3)} %; ` +
    `${outside} outside the bounds`,
);
process.exit(outside === 0 ? 0 : 1);
