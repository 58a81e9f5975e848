/**
 * What makes a spreadsheet take a cell for a formula, spaces before it included. With apostrophes
 * before it, it gets one more, so that taking one away gives back what was there.
 */
const FORMULA = /^'*(?:\s*[=+\-@＝＋－＠]|[\t\r])/u;

/** A cell that no spreadsheet runs: what looks like a formula gets an apostrophe before it. */
const harmless = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);

/** What a cell held before it was made harmless. */
export const plainCell = (cell: string): string =>
  cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;

/** What stands between the cells: a comma in files, a tab in what is pasted into a spreadsheet. */
type Between = ',' | '\t';

/** A cell of a table, quoted where it must be (RFC 4180), safe in a spreadsheet. */
export const safeCell = (text: string, between: Between = ','): string => {
  const cell = harmless(text);
  return /["\r\n]/u.test(cell) || cell.includes(between) ? `"${cell.replaceAll('"', '""')}"` : cell;
};

/** A whole table of comma-separated values, or of others, the names of its columns first. */
export const safeTable = (rows: readonly (readonly string[])[], between: Between = ','): string =>
  rows.map((cells) => `${cells.map((cell) => safeCell(cell, between)).join(between)}\r\n`).join('');
