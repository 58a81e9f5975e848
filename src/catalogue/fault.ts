/** Something wrong in one of the tables, said so that a person can go there and mend it. */
export interface Fault {
  /** The table, as its path inside the data folder. */
  file: string;
  /** Line in the file, from 1. */
  line: number;
  /** Character of the line at which the cell starts, from 1. */
  column: number;
  /** Id of the rule that is broken. */
  rule: string;
  /** What is wrong, in a few words. */
  wrong: string;
  /** What stands there now. */
  got: string;
  /** What should stand there. */
  expected: string;
  /** How to mend it, where that is not plain from what was expected. */
  how?: string;
}

const LONGEST_QUOTE = 80;

const shorten = (text: string): string =>
  text.length <= LONGEST_QUOTE ? text : `${text.slice(0, LONGEST_QUOTE - 1)}…`;

/** A fault as one line: `file:line:column: rule: what is wrong; got "…"; expected …`. */
export const printFault = (fault: Fault): string => {
  const place = `${fault.file}:${fault.line}:${fault.column}`;
  const how = fault.how === undefined ? '' : `; ${fault.how}`;
  return `${place}: ${fault.rule}: ${fault.wrong}; got ${JSON.stringify(shorten(fault.got))}; expected ${fault.expected}${how}`;
};

/** How many faults, in words. */
export const countFaults = (count: number): string =>
  count === 1 ? '1 fault' : `${String(count)} faults`;

/** Faults in the order in which a person walks through the files. */
export const inReadingOrder = (faults: readonly Fault[]): Fault[] =>
  [...faults].sort(
    (a, b) =>
      (a.file < b.file ? -1 : a.file > b.file ? 1 : 0) || a.line - b.line || a.column - b.column,
  );

/** Thrown when a data folder may not be used: carries every fault, and prints them. */
export class DataFaults extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(`${countFaults(faults.length)} in the data:\n${faults.map(printFault).join('\n')}`);
    this.name = 'DataFaults';
    this.faults = faults;
  }
}
