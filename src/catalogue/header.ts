import type { Fault } from './fault.ts';
import { splitLine } from './split-line.ts';

/** The header of a table: the columns it names, and whether they are the right ones. */
export interface Header {
  columns: string[];
  right: boolean;
  faults: Fault[];
}

/** Reads the first line of a table and compares it with the columns that it should name. */
export const readHeader = (file: string, line: string, expected: readonly string[]): Header => {
  const split = splitLine(line);
  const names = split.cells;
  const faults: Fault[] = [];
  const add = (index: number, fault: Pick<Fault, 'rule' | 'wrong' | 'got' | 'expected'>): void => {
    const start = split.starts[index];
    const column = start === undefined ? [...line].length + 1 : start + 1;
    faults.push({ file, line: 1, column, ...fault });
  };
  expected.forEach((name, index) => {
    if (names.includes(name)) return;
    add(index, {
      rule: 'missing-column',
      wrong: `no column ${name}`,
      got: names[index] ?? '',
      expected: name,
    });
  });
  names.forEach((name, index) => {
    if (expected.includes(name) && names.indexOf(name) === index) return;
    add(index, {
      rule: 'extra-column',
      wrong: 'a column that the table does not have',
      got: name,
      expected: 'only the columns of the schema',
    });
  });
  if (faults.length === 0) {
    const index = names.findIndex((name, at) => name !== expected[at]);
    if (index >= 0) {
      add(index, {
        rule: 'column-order',
        wrong: 'the columns are not in order',
        got: names[index] ?? '',
        expected: expected[index] ?? 'nothing more',
      });
    }
  }
  return { columns: names, right: faults.length === 0, faults };
};
