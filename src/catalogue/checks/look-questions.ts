import type { QuestionRow } from '../../schemas/look.ts';
import type { Fault } from '../fault.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'look-question';
const FILE = 'look/questions.csv';

/** What a question that takes a number is placed on its scale by. */
const NEEDED = ['unit', 'scale', 'sign', 'lowest', 'highest', 'near'] as const;

/** Columns with a number that a logarithmic scale does not have, each with what it may be. */
const offScale = ({ scale, lowest = 1, near = 2 }: QuestionRow) =>
  [
    { column: 'lowest', expected: 'a number above zero', isOff: lowest <= 0 },
    { column: 'near', expected: 'a factor above one', isOff: near <= 1 },
  ].filter(({ isOff }) => scale === 'log' && isOff);

export const lookQuestions: Check = {
  id: rule,
  about: 'A question that takes a number has its unit, its scale and the ends of it.',
  needs: [FILE],
  check: (tables) =>
    goodRows(tables, FILE).flatMap((row): Fault[] => {
      const { kind } = row.value;
      if (kind !== 'range' && kind !== 'score') return [];
      const fault = (column: string, wrong: string, expected: string): Fault =>
        cellFault(rule, FILE, row, column, { wrong, expected });
      return [
        ...NEEDED.filter((column) => row.cells[column] === '').map((column) =>
          fault(column, `a question of kind ${kind} without its ${column}`, `its ${column}`),
        ),
        ...offScale(row.value).map(({ column, expected }) =>
          fault(column, 'not on a logarithmic scale', expected),
        ),
      ];
    }),
};
