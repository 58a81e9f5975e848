import type { z } from 'zod';
import { cellExpectation } from './cell-expectation.ts';
import type { Fault } from './fault.ts';

/** What is wrong with one cell of a row. */
export interface CellFault extends Pick<Fault, 'rule' | 'wrong' | 'expected'> {
  name: string;
}

/** Characters that no cell may hold, with the rule that forbids each. */
const forbidden = [
  {
    rule: 'utf-8',
    pattern: /\uFFFD/,
    wrong: 'bytes that are not UTF-8',
    expected: 'valid UTF-8',
  },
  {
    rule: 'control-character',
    pattern: /\p{Cc}/u,
    wrong: 'a character that cannot be seen',
    expected: 'text without tabs and other control characters',
  },
  {
    rule: 'space-around',
    pattern: /^\s|\s$/,
    wrong: 'space before or after the text of a cell',
    expected: 'a cell without space around it',
  },
] as const;

/** Cells that hold what no cell of any table may. */
export const forbiddenCharacters = (cells: Readonly<Record<string, string>>): CellFault[] =>
  Object.entries(cells).flatMap(([name, cell]) => {
    const found = forbidden.find(({ pattern }) => pattern.test(cell));
    if (found === undefined) return [];
    const { rule, wrong, expected } = found;
    return [{ name, rule, wrong, expected }];
  });

/** Cells that their schema does not accept. */
export const schemaFaults = (
  cells: Readonly<Record<string, string>>,
  issues: readonly z.core.$ZodIssue[],
): CellFault[] =>
  issues.map((issue) => {
    const name = String(issue.path[0]);
    const empty = cells[name] === '';
    return {
      name,
      rule: empty ? 'empty-cell' : 'cell',
      wrong: empty ? `nothing in ${name}` : `${name} is not as it should be`,
      expected: cellExpectation(issue),
    };
  });

/** One fault a cell: what a schema says of a mangled cell would only repeat the first. */
export const firstOfEachCell = (faults: readonly CellFault[]): CellFault[] =>
  faults.filter(
    (fault, index) => faults.findIndex((earlier) => earlier.name === fault.name) === index,
  );
