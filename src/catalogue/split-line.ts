import { CsvError, parse } from 'csv-parse/sync';

/** One line of a table taken apart, or why that cannot be done. */
export type SplitLine =
  | { ok: true; cells: string[]; starts: number[] }
  /** `open`: a quoted cell is not closed at the end of the line; `stray`: a quote where none may be. */
  | { ok: false; reason: 'open' | 'stray'; cells: string[]; starts: number[]; cell: number };

/** The character, from 0, at which each cell of a line starts. */
const cellStarts = (line: string): number[] => {
  const starts = [0];
  let quoted = false;
  let at = 0;
  for (const character of line) {
    at += 1;
    if (character === '"') quoted = !quoted;
    if (character === ',' && !quoted) starts.push(at);
  }
  return starts;
};

/** The cells of a line whose quotes are broken, as near as can be told. */
const roughCells = (line: string, starts: readonly number[]): string[] => {
  const characters = [...line];
  return starts.map((start, index) => {
    const next = starts[index + 1];
    const end = next === undefined ? characters.length : next - 1;
    return characters.slice(start, end).join('').replaceAll('"', '');
  });
};

const options = { record_delimiter: '\n', relax_column_count: true };

/** Takes one line of comma-separated values apart, by the rules of RFC 4180. */
export const splitLine = (line: string): SplitLine => {
  const starts = cellStarts(line);
  try {
    const records = parse(line, options);
    return { ok: true, cells: records[0] ?? [''], starts };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const cell = typeof error['column'] === 'number' ? error['column'] : 0;
    const reason = error.code === 'CSV_QUOTE_NOT_CLOSED' ? 'open' : 'stray';
    return { ok: false, reason, cells: roughCells(line, starts), starts, cell };
  }
};

/**
 * Takes lines apart, each by itself: a fault in one does not reach into the next. All at once where
 * that comes to the same, since the parser takes longer to set up than to read a line.
 */
export const splitLines = (lines: readonly string[]): SplitLine[] => {
  try {
    const records = parse(lines.join('\n'), options);
    // A cell that goes on over the end of its line makes fewer records than lines, never more.
    if (records.length === lines.length) {
      return records.map((cells, index) => ({
        ok: true,
        cells,
        starts: cellStarts(lines[index] ?? ''),
      }));
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
  }
  return lines.map(splitLine);
};
