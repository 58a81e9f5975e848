import { LARGEST_FILE, LONGEST_TEXT, MOST_LINES } from '../model/job.ts';

/** What may stand between cells. */
export const DELIMITERS = ['\t', ',', ';', '|'] as const;
export type Delimiter = (typeof DELIMITERS)[number];

/** One row, with its place in the text, from one; empty rows are counted and left out. */
export interface Row {
  row: number;
  cells: string[];
}

/** A table as it was pasted, with a sentence for each thing that is not as it was. */
export type Delimited =
  { ok: true; delimiter: Delimiter; rows: Row[]; said: string[] } | { ok: false; message: string };

interface Split {
  rows: string[][];
  /** Row, from one, of a quote that nothing closes. */
  unclosed?: number;
  /** Whether rows were left once there were `most`. */
  more: boolean;
}

/** Splits by RFC 4180; a quote inside a cell is itself, and so is one that nothing closes. */
const split = (text: string, delimiter: string, most: number): Split => {
  const rows: string[][] = [];
  let cells: string[] = [];
  let at = 0;
  let unclosed: number | undefined;
  const ends = new RegExp(`[${delimiter === '|' ? '\\|' : delimiter}\r\n]`, 'gu');

  const closingQuote = (from: number): number => {
    for (let quote = text.indexOf('"', from); quote >= 0; quote = text.indexOf('"', quote + 2))
      if (text[quote + 1] !== '"') return quote;
    return -1;
  };
  while (at < text.length && rows.length < most) {
    let cell = '';
    if (text[at] === '"' && unclosed === undefined) {
      const close = closingQuote(at + 1);
      if (close < 0) unclosed = rows.length + 1;
      else {
        cell = text.slice(at + 1, close).replaceAll('""', '"');
        at = close + 1;
      }
    }
    ends.lastIndex = at;
    const end = ends.exec(text)?.index ?? text.length;
    cells.push(cell + text.slice(at, end));
    at = end + 1;
    if (text[end] === delimiter) {
      // A delimiter that ends the text has one more, empty, cell behind it.
      if (at >= text.length) cells.push('');
      else continue;
    }
    if (text[end] === '\r' && text[at] === '\n') at++;
    rows.push(cells);
    cells = [];
  }
  if (cells.length > 0) rows.push(cells);
  return { rows, more: at < text.length, ...(unclosed === undefined ? {} : { unclosed }) };
};

const SAMPLE = 40;

/** The delimiter that cuts the first rows into the most cells, alike from row to row. */
const guessDelimiter = (text: string): Delimiter => {
  const score = (delimiter: Delimiter): number => {
    const rows = split(text, delimiter, SAMPLE).rows.filter((cells) => cells.join('') !== '');
    const width = rows[0]?.length ?? 1;
    const alike = rows.filter((cells) => cells.length === width).length;
    return width < 2 ? 0 : (alike / rows.length) * Math.log(width);
  };
  const scored = DELIMITERS.map((delimiter) => ({ delimiter, score: score(delimiter) }));
  const best = scored.reduce((a, b) => (b.score > a.score ? b : a));
  // A single column has nothing to cut; a tab is the least likely to stand in a cell.
  return best.score === 0 ? '\t' : best.delimiter;
};

const clean = (text: string): { text: string; said: string[] } => {
  const withoutMark = text.replace(/^\uFEFF/u, '');
  if (!withoutMark.includes('\0')) return { text: withoutMark, said: [] };
  return { text: withoutMark.replaceAll('\0', ''), said: ['Zero bytes in the text are left out.'] };
};

/**
 * The rows of a pasted or saved table. What stands between cells is guessed where it is not given.
 * Text over 50 MB is refused; rows past 20,000 and what is past 2,000 characters of a cell are cut,
 * and said to be. Cells are kept as typed. Never throws.
 */
export const readDelimited = (typed: string, given?: Delimiter): Delimited => {
  if (typed.length > LARGEST_FILE)
    return { ok: false, message: 'This text is larger than 50 MB; no table of parts is.' };
  const { text, said } = clean(typed);
  const delimiter = given ?? guessDelimiter(text);
  // One more than a job's lines, since the first may be the header.
  const { rows, unclosed, more } = split(text, delimiter, MOST_LINES + 1);
  if (unclosed !== undefined)
    said.push(
      `The quote in row ${String(unclosed)} is never closed; quotes from there on are read as they stand.`,
    );
  if (more) said.push('Only the first 20,000 rows are read; bring in the rest as another job.');
  let cut = 0;
  const short = (cell: string): string => {
    if (cell.length <= LONGEST_TEXT) return cell;
    cut++;
    return cell.slice(0, LONGEST_TEXT);
  };
  const kept = rows.flatMap((cells, at) =>
    cells.every((cell) => cell.trim() === '') ? [] : [{ row: at + 1, cells: cells.map(short) }],
  );
  if (cut > 0) said.push(`Cells cut to 2,000 characters: ${String(cut)}.`);
  return { ok: true, delimiter, rows: kept, said };
};
