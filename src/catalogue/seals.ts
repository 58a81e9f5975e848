import { createHash } from 'node:crypto';
import type { Fault } from './fault.ts';

/**
 * Seals: a short print of every line of every table as it was when somebody last compared it with
 * its source. A cell that changes by accident (a stray key, a spreadsheet that knows better) is
 * often still a plausible number; its line no longer has its print.
 */
export type Seals = ReadonlyMap<string, readonly string[]>;

/** Where a data folder keeps its seals. */
export const SEALS_FILE = 'seals.txt';

/** Hexadecimal digits of a print: one change in 16 million would go unseen. */
const DIGITS = 6;

const printOf = (line: string): string =>
  createHash('sha256').update(line).digest('hex').slice(0, DIGITS);

/** The prints of the lines of one table. */
export const sealOf = (bytes: Uint8Array): string[] =>
  Buffer.from(bytes).toString('latin1').split('\n').map(printOf);

/** Seals as they are kept: a line a table, its name and its prints. */
export const writeSeals = (seals: Seals): string =>
  [...seals].map(([file, prints]) => `${[file, ...prints].join(' ')}\n`).join('');

/** The same read back. A line that is no seal seals nothing. */
export const readSeals = (text: string): Seals =>
  new Map(
    text.split('\n').flatMap((line): [string, string[]][] => {
      const [file = '', ...prints] = line.split(' ');
      return file === '' ? [] : [[file, prints]];
    }),
  );

/** The longest run of lines, not necessarily beside each other, that two lists share: its places in each. */
const shared = (old: readonly string[], now: readonly string[]): [number, number][] => {
  const lengths = Array.from({ length: old.length + 1 }, () => new Uint32Array(now.length + 1));
  const at = (i: number, j: number): number => lengths[i]?.[j] ?? 0;
  for (let i = old.length - 1; i >= 0; i -= 1) {
    for (let j = now.length - 1; j >= 0; j -= 1) {
      const row = lengths[i];
      if (row === undefined) continue;
      row[j] = old[i] === now[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const pairs: [number, number][] = [];
  let [i, j] = [0, 0];
  while (i < old.length && j < now.length) {
    if (old[i] === now[j]) pairs.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i += 1;
    else j += 1;
  }
  return pairs;
};

/** What became of the lines of a table since it was sealed, lines counted from 1. */
export interface Broken {
  /** Lines that are not as any sealed line was. */
  changed: number[];
  /** Lines before which a sealed line is gone without another in its place. */
  gone: number[];
}

/** Compares a table with its seal. */
export const brokenSeals = (old: readonly string[], now: readonly string[]): Broken => {
  let start = 0;
  while (start < old.length && start < now.length && old[start] === now[start]) start += 1;
  let end = 0;
  const most = Math.min(old.length, now.length) - start;
  while (end < most && old.at(-1 - end) === now.at(-1 - end)) end += 1;
  const [was, is] = [old.slice(start, old.length - end), now.slice(start, now.length - end)];
  const broken: Broken = { changed: [], gone: [] };
  let [i, j] = [0, 0];
  for (const [nextI, nextJ] of [...shared(was, is), [was.length, is.length] as const]) {
    for (let line = j; line < nextJ; line += 1) broken.changed.push(start + line + 1);
    if (nextI - i > nextJ - j) broken.gone.push(start + nextJ + 1);
    [i, j] = [nextI + 1, nextJ + 1];
  }
  return broken;
};

const HOW = 'compare it with its source, then run `npm run seal`';

/** The faults of one table against its seal. */
export const sealFaults = (
  file: string,
  bytes: Uint8Array,
  seal: readonly string[] | undefined,
): Fault[] => {
  const lines = Buffer.from(bytes).toString('utf8').split('\n');
  const { changed, gone } = brokenSeals(seal ?? [], sealOf(bytes));
  const fault = (line: number, wrong: string): Fault => ({
    file,
    line,
    column: 1,
    rule: 'seal',
    wrong,
    got: lines[line - 1] ?? '',
    expected: 'the line as it was sealed',
    how: HOW,
  });
  if (seal === undefined) return [fault(1, 'a table without a seal')];
  return [
    ...changed.map((line) => fault(line, 'a line that changed since it was sealed')),
    ...gone.map((line) => fault(line, 'a sealed line before this one is gone')),
  ];
};
