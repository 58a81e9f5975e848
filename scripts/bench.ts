/**
 * Times what users and the build wait for and prints one table: `npm run bench [-- GROUP …]`. Each
 * figure is the median of several runs, in processor time, so that other work on the machine counts
 * for little; compare figures of an idle machine all the same.
 */
import { globSync, readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { dataFolder } from '../src/catalogue/data-folder.ts';
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
import { weights } from './bench/weights.ts';

const machine = (): Row[] => {
  const cores = cpus();
  return [
    ['processor', cores[0]?.model.trim() ?? 'unknown', ''],
    ['cores', String(cores.length), ''],
    ['Node', process.version, ''],
    ['load at the start', show(loadavg()[0] ?? NaN), 'tasks'],
  ];
};

/** The check of the tables beside what only reads their cells, as fast as the same library can. */
const checking = (): Row[] => {
  const folder = dataFolder();
  const read = (): void => {
    for (const file of globSync('**/*.csv', { cwd: folder }))
      parse(readFileSync(join(folder, file), 'utf8'));
  };
  const [check, reading] = [() => checkFolder(), read].map((work) => median(repeat(RUNS, work)));
  return [
    ['check of the data', show(check ?? NaN), 'ms'],
    [
      'only reading the same cells by csv-parse',
      show(reading ?? NaN),
      'ms',
      `the check takes ${show((check ?? NaN) / (reading ?? NaN))} times that`,
    ],
  ];
};

/** Reading the tables and checking them. */
const data = (): Row[] => [
  // The catalogue is kept once it is loaded, so only the first time counts.
  ['loadCatalogue', show(timed(() => loadCatalogue())), 'ms'],
  ...checking(),
];

/** What can be timed alone, in the order of the table. */
const GROUPS: Readonly<Record<string, (catalogue: Catalogue) => Row[] | Promise<Row[]>>> = {
  readings,
  assessments,
  boards,
  building,
  'on-a-phone': onAPhone,
  searching,
  weights,
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
