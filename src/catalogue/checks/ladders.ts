import type { z } from 'zod';
import { FLOAT_ERROR } from '../../engine/quantities/within.ts';
import type { ladderRow } from '../../schemas/ladders.ts';
import { valuesOf, type TableName, type Tables } from '../read-folder.ts';
import type { Fault } from '../fault.ts';
import type { Row } from '../read-table.ts';
import { cellFault, type Check } from './check.ts';
import { numbersOf } from './plausible.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'out-of-step';
const FILE = 'ladders.csv';

type Ladder = z.output<typeof ladderRow>;

/** One row of a table by the two numbers that go together. */
interface Rung {
  row: Row<unknown>;
  at: number;
  value: number;
}

const rungsOf = (tables: Tables, file: TableName, { among, by, column }: Ladder): Rung[][] => {
  const groups = new Map<string, Rung[]>();
  for (const row of tables[file].rows) {
    const [at] = numbersOf(row, by);
    const [value] = numbersOf(row, column);
    if (at === undefined || value === undefined) continue;
    const key = among.map((name) => row.cells[name] ?? '').join('|');
    groups.set(key, [...(groups.get(key) ?? []), { row, at, value }]);
  }
  return [...groups.values()].map((rungs) => rungs.sort((a, b) => a.at - b.at));
};

/** Whether two rungs may follow each other. */
const inStep = (low: Rung | undefined, high: Rung | undefined, { goes, step }: Ladder): boolean => {
  if (low === undefined || high === undefined) return true;
  const [from, to] = [low.value, high.value];
  if (from <= 0 || to <= 0) return Math.sign(from) === Math.sign(to);
  const ratio = to / from;
  if (Math.max(ratio, 1 / ratio) > step * (1 + FLOAT_ERROR)) return false;
  if (low.at === high.at || goes === 'near') return true;
  return goes === 'up' ? ratio >= 1 - FLOAT_ERROR : ratio <= 1 + FLOAT_ERROR;
};

/** Of two neighbours that do not follow each other, those without which their neighbours do. */
const toBlame = (rungs: readonly Rung[], at: number, ladder: Ladder): Rung[] => {
  const [before, low, high, after] = [-1, 0, 1, 2].map((offset) => rungs[at + offset]);
  if (low === undefined || high === undefined || inStep(low, high, ladder)) return [];
  const blamed = [
    ...(inStep(before, high, ladder) && inStep(high, after, ladder) ? [low] : []),
    ...(inStep(before, low, ladder) && inStep(low, after, ladder) ? [high] : []),
  ];
  return blamed.length === 0 ? [low, high] : blamed;
};

const faultsOf = (tables: Tables, file: TableName, ladder: Ladder): Fault[] => {
  const { by, column, goes, step } = ladder;
  const way = { up: 'not falling', down: 'not rising', near: 'near it' }[goes];
  return rungsOf(tables, file, ladder).flatMap((rungs) => {
    const blamed = new Set(rungs.flatMap((_, at) => toBlame(rungs, at, ladder)));
    return [...blamed].map(({ row }) =>
      cellFault(rule, file, row, column, {
        wrong: `${column} beside the rows of the next ${by}`,
        expected: `${way} as ${by} rises, and within a factor of ${String(step)}`,
        how: `where it is right all the same, change the row of ${FILE}`,
      }),
    );
  });
};

export const ladders: Check = {
  id: rule,
  about: 'A number that goes steadily with another does so from row to row.',
  needs: [FILE],
  guess: true,
  check: ofEachTable((tables, file) =>
    valuesOf(tables, FILE)
      .filter((ladder) => ladder.file === file)
      .flatMap((ladder) => faultsOf(tables, file, ladder)),
  ),
};
