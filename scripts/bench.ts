/**
 * Times what users and the build wait for and prints one table: `npm run bench`. Each figure is the
 * median of several runs, in processor time, so that other work on the machine counts for little;
 * compare figures of an idle machine all the same.
 */
import { cpus, loadavg } from 'node:os';
import { checkFolder, loadCatalogue } from '../src/catalogue/index.ts';
import {
  findStandIns,
  formatValue,
  parseQuantity,
  readMarking,
  type Catalogue,
  type Unit,
} from '../src/engine/index.ts';

import { newPlanCache, planJob } from '../src/job/index.ts';
import { emptyJob, emptyLine, type Job } from '../src/job/model.ts';

type Row = readonly [what: string, figure: string, unit: string];

const RUNS = 5;
/** Processor time is counted too coarsely for one reading. */
const READINGS_AT_ONCE = 40;
/** A run over every pair takes long; a few will do. */
const MATRIX_RUNS = 3;
/** In a second, and as many microseconds in each. */
const MILLISECONDS = 1000;

const quantile = (values: readonly number[], share: number): number => {
  const rising = values.toSorted((a, b) => a - b);
  return rising[Math.round((rising.length - 1) * share)] ?? NaN;
};

const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Processor time that some work takes, ms. */
const timed = (work: () => unknown): number => {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / MILLISECONDS;
};

const repeat = (times: number, work: () => unknown): number[] =>
  Array.from({ length: times }, () => timed(work));

const show = (value: number): string =>
  value.toLocaleString('en', { maximumSignificantDigits: value < 1000 ? 3 : 4 });

/** Calls per second of something that is done to each of some inputs, many times over. */
const rate = <Input>(
  what: string,
  unit: string,
  inputs: readonly Input[],
  rounds: number,
  work: (input: Input) => unknown,
): Row => {
  const everyInput = (): void => {
    for (let round = 0; round < rounds; round += 1) inputs.forEach(work);
  };
  everyInput();
  const perSecond = (inputs.length * rounds * MILLISECONDS) / median(repeat(RUNS, everyInput));
  return [what, show(perSecond), unit];
};

const UNITS: readonly Unit[] = ['F', 'V', 'ohm', 's', 'fraction', 'A', 'ratio', 'degC'];

/** Values of many sizes with as many digits as arithmetic leaves, each in each unit. */
const VALUES = Array.from({ length: 500 }, (_, step) => ({
  value: 1.0471 ** ((step * 37) % 500) * 1e-12,
  unit: UNITS[step % UNITS.length] ?? 'F',
}));

/** Made up in the ways that people write. */
const QUANTITIES: readonly (readonly [string, Unit])[] = [
  ['4n7', 'F'],
  ['0.0047 µF', 'F'],
  ['.01 MFD', 'F'],
  ['100 nF +80/-20 %', 'F'],
  ['10 nF ±5 %', 'F'],
  ['4k7', 'ohm'],
  ['2.2 Mohm', 'ohm'],
  ['10..12..20', 'V'],
  ['600 VDC', 'V'],
  ['-40..85', 'degC'],
  ['12 kHz', 'Hz'],
  ['10 years', 's'],
];

/** Made up; of every kind that parts carry, one of them worn and one of no sense. */
const MARKINGS: readonly string[] = [
  '104',
  '473K',
  '2A102J',
  '0.047 MFD 400 VDC',
  '.01 M 1KV',
  '4n7 J 630',
  '10 µF 63 V',
  '22/35',
  'n33 K',
  '222 Z5U 1kV',
  'X2 0.1 µF 275~',
  '6800 10% 160V',
  '1_4 K',
  'qwerty',
];

/** Pieces of which much can be made in a marking, each over and over up to its longest. */
const HEAVY: readonly string[] = [
  '104K',
  '.1K',
  '47 ',
  '1,',
  '10 000 ',
  'MKP ',
  '4?7K ',
  '1?3 ',
  '??1 ',
  '?',
  'l0 ',
  '16+',
  'К73-17 ',
];
/** Characters of the longest marking that must be read at once. */
const LONGEST = 200;

/** Characters that noise is drawn from: worn signs, figures, letters of codes and units, gaps. */
const NOISE_SIGNS: readonly string[] = [
  '??_#▯… 01AK',
  '?0123456789pnKJM VµF.,',
  '? 1K',
  '?ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789',
];
const NOISE_TEXTS = 1000;
const LONGEST_SHORT_NOISE = 12;

/** The same noise each time, half of it short: numbers of a linear congruential generator. */
const noise = (): string[] => {
  let seed = 473;
  const below = (bound: number): number => {
    seed = (seed * 1664525 + 1013904223) % 2 ** 32;
    return Math.floor((seed / 2 ** 32) * bound);
  };
  return Array.from({ length: NOISE_TEXTS }, () => {
    const signs = [...(NOISE_SIGNS[below(NOISE_SIGNS.length)] ?? '')];
    const length = 1 + below(below(2) === 0 ? LONGEST_SHORT_NOISE : LONGEST);
    return Array.from({ length }, () => signs[below(signs.length)] ?? '').join('');
  });
};

/** The least of some runs, so that other work on the machine counts for little. */
const leastTime = (catalogue: Catalogue, text: string): number =>
  Math.min(
    ...Array.from({ length: RUNS }, () => {
      const start = performance.now();
      readMarking(catalogue, text);
      return performance.now() - start;
    }),
  );

/** How long single markings take: usual ones, and the slowest that are known. */
const readingTimes = (catalogue: Catalogue): Row[] => {
  const read = (text: string): number =>
    median(repeat(RUNS, () => repeatedly(text))) / READINGS_AT_ONCE;
  const repeatedly = (text: string): void => {
    for (let time = 0; time < READINGS_AT_ONCE; time += 1) readMarking(catalogue, text);
  };
  const longest = HEAVY.map((piece) => piece.repeat(LONGEST).slice(0, LONGEST));
  const ofNoise = noise().map((text) => leastTime(catalogue, text));
  return [
    ['noise to 200 characters, median', show(median(ofNoise)), 'ms'],
    ['noise, slowest of 1,000', show(Math.max(...ofNoise)), 'ms'],
    ['one marking, median', show(median(MARKINGS.map(read))), 'ms'],
    ['one marking, slowest of them', show(Math.max(...MARKINGS.map(read))), 'ms'],
    [`${String(LONGEST)} characters, slowest`, show(Math.max(...longest.map(read))), 'ms'],
  ];
};

const pairsOf = ({ types, positions }: Catalogue): [type: string, position: string][] =>
  Object.keys(types).flatMap((type) =>
    Object.keys(positions).map((position): [string, string] => [type, position]),
  );

/** Every type assessed in every position at reference conditions. */
const matrix = (catalogue: Catalogue): Row[] => {
  const pairs = pairsOf(catalogue);
  const assessAll = (): number[] =>
    pairs.map(([type, position]) =>
      timed(() => findStandIns(catalogue, { original: { type }, position })),
    );
  const runs = Array.from({ length: MATRIX_RUNS }, assessAll);
  const seconds = median(runs.map((run) => run.reduce((sum, ms) => sum + ms, 0))) / MILLISECONDS;
  return [
    ['assessments', show(pairs.length / seconds), 'pairs/s'],
    ['one pair, median', show(median(runs.map(median))), 'ms'],
    ['one pair, 95th percentile', show(median(runs.map((run) => quantile(run, 0.95)))), 'ms'],
    [`all ${String(pairs.length)} pairs`, show(seconds), 's'],
  ];
};

/** Lines of a large board, and how many of them differ. */
const LINES = 2000;
const DISTINCT_VALUES = 30;
/** What the parts of a board are, in the places where they are usual. */
const PARTS_IN_PLACES: readonly (readonly [type: string, position: string, unit: string])[] = [
  ['al-electrolytic-wet', 'interstage-coupling', 'µF'],
  ['al-electrolytic-wet', 'bulk-rail', 'µF'],
  ['ta-mno2-solid', 'local-decoupling', 'µF'],
  ['pet-metallized', 'tone-stack', 'nF'],
  ['ceramic-disc-unknown', 'rc-filter-audio', 'nF'],
];

/** A board with many lines of which few differ, as boards are. */
const boardOf = (count: number): Job => ({
  ...emptyJob('bench', new Date(0)),
  lines: Array.from({ length: count }, (_, index) => {
    const [type = '', position = '', unit = ''] =
      PARTS_IN_PLACES[index % PARTS_IN_PLACES.length] ?? [];
    const step = Math.floor(index / PARTS_IN_PLACES.length) % DISTINCT_VALUES;
    return {
      ...emptyLine(String(index)),
      designators: `C${String(index)}`,
      kind: 'capacitor',
      type,
      position,
      value: `${String(10 + step)} ${unit}`,
    };
  }),
});

/** A whole board planned afresh, and again after an edit. */
const planning = (catalogue: Catalogue): Row[] => {
  const job = boardOf(LINES);
  const warm = boardOf(LINES);
  const tools = { catalogueAt: () => catalogue, cache: newPlanCache() };
  const fresh = (): unknown => planJob(job, { catalogueAt: () => catalogue });
  planJob(job, tools);
  const edited = {
    ...warm,
    lines: warm.lines.map((line, index) => (index === 0 ? { ...line, value: '82 µF' } : line)),
  };
  const distinct = PARTS_IN_PLACES.length * DISTINCT_VALUES;
  const again = Array.from({ length: RUNS }, (_, run) =>
    timed(() => planJob(run % 2 === 0 ? edited : job, tools)),
  );
  return [
    [
      `plan of ${String(LINES)} lines, ${String(distinct)} distinct`,
      show(median(repeat(MATRIX_RUNS, fresh))),
      'ms',
    ],
    ['the same after one edit', show(median(again)), 'ms'],
  ];
};

const machine = (): Row[] => {
  const cores = cpus();
  return [
    ['processor', cores[0]?.model.trim() ?? 'unknown', ''],
    ['cores', String(cores.length), ''],
    ['Node', process.version, ''],
    ['load at the start', show(loadavg()[0] ?? NaN), 'tasks'],
  ];
};

const print = (rows: readonly Row[]): void => {
  const [widest, longest] = [0, 1].map((column) =>
    Math.max(...rows.map((row) => (row[column as 0 | 1] ?? '').length)),
  ) as [number, number];
  for (const [what, figure, unit] of rows)
    console.log(`${what.padEnd(widest)}  ${figure.padStart(longest)}  ${unit}`.trimEnd());
};

const main = (): void => {
  const about = machine();
  const faults = checkFolder();
  if (faults.length > 0) {
    console.error('The data have faults; see them by `npm run check-data`.');
    process.exitCode = 1;
    return;
  }
  // The catalogue is kept once it is loaded, so only the first time counts.
  const loading = timed(() => loadCatalogue());
  const catalogue = loadCatalogue();
  print([
    ...about,
    ['loadCatalogue', show(loading), 'ms'],
    ['check of the data', show(median(repeat(RUNS, () => checkFolder()))), 'ms'],
    rate('formatValue', 'calls/s', VALUES, 400, ({ value, unit }) => formatValue(value, unit)),
    rate('parseQuantity', 'calls/s', QUANTITIES, 2000, ([text, unit]) => parseQuantity(text, unit)),
    rate('readMarking', 'readings/s', MARKINGS, 20, (text) => readMarking(catalogue, text)),
    ...readingTimes(catalogue),
    ...matrix(catalogue),
    ...planning(catalogue),
  ]);
};

main();
