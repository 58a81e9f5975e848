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

/** A cell of comma-separated values, quoted where it must be (RFC 4180), safe in a spreadsheet. */
export const safeCell = (text: string): string => {
  const cell = harmless(text);
  return /[",\r\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
};

/** A whole table of comma-separated values, the names of its columns first. */
export const safeTable = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map(safeCell).join(',')}\r\n`).join('');
