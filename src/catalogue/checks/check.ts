import type { Fault } from '../fault.ts';
import type { TableName, Tables } from '../read-folder.ts';
import type { Row } from '../read-table.ts';

/** One rule that tables keep among themselves. */
export interface Check {
  /** Stands in every fault that it finds. */
  id: string;
  /** What the rule asks, in a sentence. */
  about: string;
  /** Tables that must be readable for the rule to make sense; it is not run without them. */
  needs: readonly TableName[];
  check: (tables: Tables) => Fault[];
  /** What it finds only looks wrong: it is kept to itself where a firm rule speaks of the line. */
  guess?: true;
}

/** Whether all tables can be read that a rule needs. */
export const canRun = ({ needs }: Pick<Check, 'needs'>, tables: Tables): boolean =>
  needs.every((file) => tables[file].readable);

/** A fault of one cell of a row. */
export const cellFault = (
  rule: string,
  file: TableName,
  row: Row<unknown>,
  column: string,
  said: Pick<Fault, 'wrong' | 'expected' | 'how'> & { got?: string },
): Fault => ({
  file,
  line: row.line,
  column: row.columns[column] ?? 1,
  rule,
  got: row.cells[column] ?? '',
  ...said,
});
