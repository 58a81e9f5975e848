import {
  formatValue,
  parseQuantity,
  readMarking,
  type Catalogue,
  type Unit,
} from '../../src/engine/index.ts';
import { mixedMarkings } from './mixed-markings.ts';
import { median, rate, repeat, RUNS, show, type Row } from './measuring.ts';

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
/** Processor time is counted too coarsely for one reading. */
const READINGS_AT_ONCE = 40;
/** Characters of the longest marking that must be read at once. */
const LONGEST = 200;
/** What a string of so many may take, ms. */
const AT_MOST = 5;

const NOISE_TEXTS = 5000;
/** Read beforehand, so that the code is compiled; none of them is measured. */
const WARMING = 1000;

/** How long one reading takes, ms. */
const timeOf = (catalogue: Catalogue, text: string): number => {
  const start = performance.now();
  readMarking(catalogue, text);
  return performance.now() - start;
};

/** The least of some runs, so that other work on the machine counts for little. */
const leastTime = (catalogue: Catalogue, text: string): number =>
  Math.min(...Array.from({ length: RUNS }, () => timeOf(catalogue, text)));

/** Strings that were never read before: the first time of each, and the least of some runs. */
const noiseTimes = (catalogue: Catalogue): Row[] => {
  const texts = mixedMarkings(WARMING + NOISE_TEXTS);
  for (const text of texts.slice(0, WARMING)) readMarking(catalogue, text);
  const measured = texts.slice(WARMING);
  const first = measured.map((text) => timeOf(catalogue, text));
  const least = measured.map((text) => leastTime(catalogue, text));
  return [
    ['mixed strings to 200 characters, first time, median', show(median(first)), 'ms'],
    ['the slowest of 5,000, least of some runs', show(Math.max(...least)), 'ms', show(AT_MOST)],
    ['those beyond it the first time', String(first.filter((ms) => ms > AT_MOST).length), ''],
  ];
};

/** How long single markings take: usual ones, and the slowest that are known. */
const readingTimes = (catalogue: Catalogue): Row[] => {
  const read = (text: string): number =>
    median(repeat(RUNS, () => repeatedly(text))) / READINGS_AT_ONCE;
  const repeatedly = (text: string): void => {
    for (let time = 0; time < READINGS_AT_ONCE; time += 1) readMarking(catalogue, text);
  };
  const longest = HEAVY.map((piece) => piece.repeat(LONGEST).slice(0, LONGEST));
  return [
    ...noiseTimes(catalogue),
    ['one marking, median', show(median(MARKINGS.map(read))), 'ms'],
    ['one marking, slowest of them', show(Math.max(...MARKINGS.map(read))), 'ms'],
    [`${String(LONGEST)} characters, slowest`, show(Math.max(...longest.map(read))), 'ms'],
  ];
};

/** Quantities and markings: how many a second, and the slowest. */
export const readings = (catalogue: Catalogue): Row[] => [
  rate('formatValue', 'calls/s', VALUES, 400, ({ value, unit }) => formatValue(value, unit)),
  rate('parseQuantity', 'calls/s', QUANTITIES, 2000, ([text, unit]) => parseQuantity(text, unit)),
  rate('readMarking', 'readings/s', MARKINGS, 20, (text) => readMarking(catalogue, text)),
  ...readingTimes(catalogue),
];
