/**
 * Times what users and the build wait for and prints one table: `npm run bench [-- GROUP …]`. Each
 * figure is the median of several runs, in processor time, so that other work on the machine counts
 * for little; compare figures of an idle machine all the same.
 */
import { cpus, loadavg } from 'node:os';
import { checkFolder, loadCatalogue } from '../src/catalogue/index.ts';
import type { Catalogue } from '../src/engine/index.ts';
import { assessments } from './bench/assessments.ts';
import { boards } from './bench/boards.ts';
import { building } from './bench/building.ts';
import { growth } from './bench/growth.ts';
import { median, repeat, RUNS, show, timed, type Row } from './bench/measuring.ts';
import { onAPhone } from './bench/on-a-phone.ts';
import { readings } from './bench/readings.ts';
import { searching } from './bench/searching.ts';

const machine = (): Row[] => {
  const cores = cpus();
  return [
    ['processor', cores[0]?.model.trim() ?? 'unknown', ''],
    ['cores', String(cores.length), ''],
    ['Node', process.version, ''],
    ['load at the start', show(loadavg()[0] ?? NaN), 'tasks'],
  ];
};

/** Reading the tables and checking them. */
const data = (): Row[] => [
  // The catalogue is kept once it is loaded, so only the first time counts.
  ['loadCatalogue', show(timed(() => loadCatalogue())), 'ms'],
  ['check of the data', show(median(repeat(RUNS, () => checkFolder()))), 'ms'],
];

/** What can be timed alone, in the order of the table. */
const GROUPS: Readonly<Record<string, (catalogue: Catalogue) => Row[] | Promise<Row[]>>> = {
  readings,
  assessments,
  boards,
  building,
  'on-a-phone': onAPhone,
  searching,
  growth,
};

/** Groups that take too long to be run unless they are asked for. */
const ONLY_ASKED: readonly string[] = ['growth'];

const print = (rows: readonly Row[]): void => {
  const width = (column: 0 | 1 | 2): number => Math.max(...rows.map((row) => row[column].length));
  const widths = [width(0), width(1), width(2)] as const;
  for (const [what, figure, unit, beside = ''] of rows)
    console.log(
      `${what.padEnd(widths[0])}  ${figure.padStart(widths[1])}  ${unit.padEnd(widths[2])}  ${beside}`.trimEnd(),
    );
};

const main = async (asked: readonly string[]): Promise<void> => {
  const unknown = asked.filter((name) => GROUPS[name] === undefined);
  if (unknown.length > 0) {
    console.error(`No group ${unknown.join(', ')}; there are ${Object.keys(GROUPS).join(', ')}.`);
    process.exitCode = 1;
    return;
  }
  const about = machine();
  const faults = checkFolder();
  if (faults.length > 0) {
    console.error('The data have faults; see them by `npm run check-data`.');
    process.exitCode = 1;
    return;
  }
  const ofData = data();
  const catalogue = loadCatalogue();
  const groups = Object.entries(GROUPS).filter(([name]) =>
    asked.length === 0 ? !ONLY_ASKED.includes(name) : asked.includes(name),
  );
  const measured: Row[] = [];
  // One after the other: what is measured together slows each other down.
  for (const [, rows] of groups) measured.push(...(await rows(catalogue)));
  print([...about, ...ofData, ...measured]);
};

await main(process.argv.slice(2));
