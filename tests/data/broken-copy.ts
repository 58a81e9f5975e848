import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { checkTables } from '../../src/catalogue/checks/index.ts';
import { readFolder, tableNames, type Fault, type TableName } from '../../src/catalogue/index.ts';
import { inReadingOrder } from '../../src/catalogue/fault.ts';
import { readContents } from '../../src/catalogue/read-folder.ts';

/** The data of this project, which the copies are made of. */
export const realFolder = join(import.meta.dirname, '../../data');

/** A cell as it stands in its file; found without the reader that is being tested. */
export interface Cell {
  text: string;
  /** Line from 1. */
  line: number;
  /** Character of the line from 1. */
  column: number;
  /** Where its characters, with any quotes, start and end in the file. */
  from: number;
  to: number;
}

export type CellsOfRow = Record<string, Cell>;

/** Takes a well-formed table apart, character by character. */
export const cellsOf = (text: string): CellsOfRow[] => {
  const lines: Cell[][] = [[]];
  let [line, lineStart, from, quoted] = [1, 0, 0, false];
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (character === '"') quoted = !quoted;
    if (quoted || (character !== ',' && character !== '\n')) continue;
    const raw = text.slice(from, at);
    const bare = raw.startsWith('"') ? raw.slice(1, -1).replaceAll('""', '"') : raw;
    const before = [...text.slice(lineStart, from)].length;
    lines.at(-1)?.push({ text: bare, line, column: before + 1, from, to: at });
    from = at + 1;
    if (character === '\n') {
      line += 1;
      lineStart = from;
      lines.push([]);
    }
  }
  const [header = [], ...rows] = lines.filter((cells) => cells.length > 0);
  return rows.map((cells) =>
    Object.fromEntries(
      header.map((name, index) => {
        const cell = cells[index];
        if (cell === undefined) throw new Error(`a ragged row in the real data: line ${line}`);
        return [name.text, cell];
      }),
    ),
  );
};

/** A row as plain texts, to be picked by what it says. */
export type Pick = (row: Record<string, string>, rows: Record<string, string>[]) => boolean;

const textsOf = (row: CellsOfRow): Record<string, string> =>
  Object.fromEntries(Object.entries(row).map(([column, cell]) => [column, cell.text]));

/** The first row that is picked. */
export const findRow = (text: string, pick: Pick): CellsOfRow => {
  const rows = cellsOf(text);
  const texts = rows.map(textsOf);
  const index = texts.findIndex((row) => pick(row, texts));
  const found = rows[index];
  if (found === undefined) throw new Error('the real data have no row to break in this way');
  return found;
};

/** The tables as they were when the tests began, so that copies and originals always agree. */
const originals: ReadonlyMap<string, Uint8Array> = new Map(
  readdirSync(realFolder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.csv'))
    .map((file) => [file, readFileSync(join(realFolder, file))]),
);

export const realBytes = (file: string): Uint8Array => {
  const bytes = originals.get(file);
  if (bytes === undefined) throw new Error(`no table ${file}`);
  return bytes;
};

export const realText = (file: string): string => new TextDecoder().decode(realBytes(file));

/** Contents of some files of a copy; null for a file that is not there. */
export type Changes = Readonly<Record<string, string | Uint8Array | null>>;

/** Runs something on a copy of the real data in which some files are changed. */
export const onCopy = <Result>(changes: Changes, run: (folder: string) => Result): Result => {
  const folder = mkdtempSync(join(tmpdir(), 'data-'));
  try {
    for (const [file, original] of originals) {
      const content = changes[file] === undefined ? original : changes[file];
      if (content === null) continue;
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), content);
    }
    return run(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

/** Where a fault is and which rule it breaks. */
export const placeOf = ({ file, line, column, rule }: Fault): string =>
  `${file}:${line}:${column}: ${rule}`;

const isTable = (file: string): file is TableName => (tableNames as string[]).includes(file);

const real = readFolder(realFolder);

/**
 * Every fault of the real data with some of their files changed. Only those are read again, so that
 * a rule that looks at none of them need not be asked again.
 */
const placesAfter = (changes: Changes): string[] => {
  const read = Object.entries(changes).map(([file, content]) => {
    if (!isTable(file)) throw new Error(`no table ${file}`);
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    return { file, ...readContents(file, bytes ?? undefined) };
  });
  const tables = {
    ...real.tables,
    ...Object.fromEntries(read.map(({ file, table }) => [file, table])),
  };
  const faults = [...read.flatMap((table) => table.faults), ...checkTables(tables)];
  return inReadingOrder(faults).map(placeOf);
};

const before = new Set([...real.faults.map(placeOf), ...placesAfter({})]);

/** Places of the faults that changes bring about. */
export const newFaults = (changes: Changes): string[] =>
  placesAfter(changes).filter((place) => !before.has(place));
