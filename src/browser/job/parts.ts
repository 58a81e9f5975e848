import {
  COLUMNS,
  partRow,
  partRowOnPaper,
  type CellText,
  type Column,
} from '../../job-view/parts-view.ts';
import { emptyLine, LONGEST_TEXT, MOST_LINES, type Line, type Mapping } from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { countOf } from '../../text/words.ts';
import { byId } from '../page/by-id.ts';
import { downloadTable } from './download-table.ts';
import { startFindRow } from './find-row.ts';
import { idOf, nameOf } from './names.ts';
import { rowWindow } from './row-window.ts';
import { change, changeLines, current, listenForChange } from './state.ts';
import { withTables, type TableIn } from './tables.ts';

/** The parts list: rows to type in, by keyboard as in a spreadsheet, and pasted tables. */

const body = byId('part-rows', HTMLTableSectionElement);
const shown = byId('rows-shown', HTMLElement);
const picked = new Set<string>();
/** Ids of the lines that somebody has typed in: narrow screens show all fields of these alone. */
const goneInto = new Set<string>();
const pickListeners: (() => void)[] = [];
const table = rowWindow(body, COLUMNS.length + 1);

/** Ids of the selected lines. */
export const pickedLines = (): ReadonlySet<string> => picked;
/** Calls whenever other rows are picked. */
export const listenForPicks = (listener: () => void): void => {
  pickListeners.push(listener);
};
const tellPicks = (): void => {
  for (const listener of pickListeners) listener();
};

const textOf: CellText = (line, field) =>
  field === 'type' || field === 'position' ? nameOf(field, line[field]) : line[field];
const meant = (field: Column['field'], text: string): string =>
  field === 'type' || field === 'position' ? idOf(field, text) : text;

const cellOf = (
  target: EventTarget | null,
): { line: string; field: Column['field']; input: HTMLInputElement } | undefined => {
  if (!(target instanceof HTMLInputElement)) return undefined;
  const line = target.closest('tr')?.dataset.line;
  const column = COLUMNS.find(({ field }) => field === target.dataset.field);
  return line === undefined || column === undefined
    ? undefined
    : { line, field: column.field, input: target };
};

const rowOf = (markup: ReturnType<typeof partRow>): HTMLTableRowElement => {
  const row = toDom(markup);
  if (!(row instanceof HTMLTableRowElement)) throw new TypeError('a row of the list is a row');
  return row;
};

const lineAt = (index: number): Line => {
  const line = current().lines[index];
  if (line === undefined) throw new RangeError(`no line ${String(index)}`);
  return line;
};

const makeRow = (index: number): HTMLTableRowElement => {
  const line = lineAt(index);
  const row = rowOf(partRow(line, index + 1, textOf));
  const box = row.querySelector<HTMLInputElement>('[data-pick]');
  if (box !== null) box.checked = picked.has(line.id);
  row.classList.toggle('gone-into', goneInto.has(line.id));
  return row;
};

const inputAt = (index: number, field: string): HTMLInputElement | undefined =>
  table.reach(index)?.querySelector<HTMLInputElement>(`[data-field="${field}"]`) ?? undefined;

const draw = (): void => {
  const { lines } = current();
  const focused = cellOf(document.activeElement);
  table.show({
    count: lines.length,
    make: makeRow,
    onPaper: (index) => rowOf(partRowOnPaper(lineAt(index), textOf)),
  });
  body.closest('table')?.setAttribute('aria-rowcount', String(lines.length + 1));
  // Whoever takes a step back by the keyboard stays in the same cell.
  const index = focused === undefined ? -1 : lines.findIndex(({ id }) => id === focused.line);
  if (focused !== undefined && index >= 0)
    inputAt(index, focused.field)?.focus({ preventScroll: true });
  shown.textContent = lines.length === 0 ? 'No rows yet.' : `${countOf(lines.length, 'row')}.`;
};

const newLines = (count: number): Line[] =>
  Array.from({ length: count }, () => emptyLine(crypto.randomUUID()));

const focusCell = (index: number, field: string): void => {
  if (index in current().lines) inputAt(index, field)?.focus();
};

const addRow = (): void => {
  const job = current();
  if (job.lines.length >= MOST_LINES) return;
  change({ ...job, lines: [...job.lines, ...newLines(1)] });
  focusCell(current().lines.length - 1, 'designators');
};

body.addEventListener('focusin', ({ target }) => {
  const cell = cellOf(target);
  if (cell === undefined) return;
  goneInto.add(cell.line);
  // It stays so when another row is gone into, or what is pressed below would move away.
  cell.input.closest('tr')?.classList.add('gone-into');
});

body.addEventListener('input', ({ target }) => {
  const cell = cellOf(target);
  if (cell === undefined) return;
  const { line, field, input } = cell;
  changeLines(
    new Set([line]),
    (before) => ({ ...before, [field]: meant(field, input.value) }),
    `${line} ${field}`,
  );
});

body.addEventListener('keydown', (event) => {
  const cell = cellOf(event.target);
  if (cell === undefined || event.isComposing) return;
  const index = current().lines.findIndex(({ id }) => id === cell.line);
  const lists = cell.input.hasAttribute('list');
  const last = index === current().lines.length - 1;
  if (event.key === 'Enter') {
    event.preventDefault();
    if (last) addRow();
    else focusCell(index + 1, cell.field);
  } else if (event.key === 'ArrowDown' && !lists) {
    event.preventDefault();
    focusCell(index + 1, cell.field);
  } else if (event.key === 'ArrowUp' && !lists) {
    event.preventDefault();
    focusCell(index - 1, cell.field);
  }
});

/** Lays a pasted table onto the rows from a cell on; what is below the last row becomes new rows. */
const lay = (index: number, column: number, rows: readonly (readonly string[])[]): void => {
  const job = current();
  const room = Math.min(rows.length, MOST_LINES - index);
  const more = newLines(Math.max(0, index + room - job.lines.length));
  const lines = [...job.lines, ...more].map((line, at) => {
    const cells = rows[at - index];
    if (cells === undefined || at >= index + room) return line;
    const said = cells.flatMap((text, offset) => {
      const field = COLUMNS[column + offset]?.field;
      return field === undefined
        ? []
        : [[field, meant(field, text.slice(0, LONGEST_TEXT))] as const];
    });
    return { ...line, ...Object.fromEntries(said) };
  });
  change({ ...job, lines });
};

/** Whether columns that are guessed are those that a table laid from this one on would fill. */
const fitsFrom = (column: number, { hasHeader, fields }: Mapping): boolean =>
  !hasHeader &&
  fields.length <= COLUMNS.length - column &&
  fields.every((field, at) => field === undefined || field === COLUMNS[column + at]?.field);

/** Lays rows from a cell on; where their columns seem to hold something else, they are offered. */
const layOrOffer = async (
  { line, field }: { line: string; field: Column['field'] },
  text: string,
  { guessMapping, offerRows, readPasted }: TableIn,
): Promise<void> => {
  const rows = readPasted(text);
  if (rows.length === 0) return;
  const column = COLUMNS.findIndex((one) => one.field === field);
  // Without the words for columns they are laid as they are.
  const mapping = await guessMapping(rows).catch(() => undefined);
  if (mapping !== undefined && !fitsFrom(column, mapping)) {
    offerRows(rows, mapping);
    return;
  }
  const index = current().lines.findIndex(({ id }) => id === line);
  if (index >= 0)
    lay(
      index,
      column,
      rows.map(({ cells }) => cells),
    );
};

body.addEventListener('paste', (event) => {
  const cell = cellOf(event.target);
  const text = event.clipboardData?.getData('text/plain') ?? '';
  if (cell === undefined || !/[\t\n]/u.test(text.trimEnd())) return;
  event.preventDefault();
  void withTables((tables) => layOrOffer(cell, text, tables));
});

body.addEventListener('change', ({ target }) => {
  if (!(target instanceof HTMLInputElement) || target.dataset.pick === undefined) return;
  if (target.checked) picked.add(target.dataset.pick);
  else picked.delete(target.dataset.pick);
  tellPicks();
});

/** Makes the parts list work. */
export const startParts = (): void => {
  byId('add-row', HTMLButtonElement).addEventListener('click', addRow);
  startFindRow(table.reach, textOf);
  byId('parts-csv', HTMLButtonElement).addEventListener('click', () => {
    const { lines } = current();
    void downloadTable('parts', ({ tableOut }) => tableOut(lines));
  });
  byId('pick-all', HTMLButtonElement).addEventListener('click', () => {
    const { lines } = current();
    const all = picked.size >= lines.length;
    picked.clear();
    if (!all) for (const { id } of lines) picked.add(id);
    draw();
    tellPicks();
  });
  byId('drop-rows', HTMLButtonElement).addEventListener('click', () => {
    const job = current();
    if (picked.size === 0) return;
    change({ ...job, lines: job.lines.filter(({ id }) => !picked.has(id)) });
    picked.clear();
    tellPicks();
  });
  byId('set-rows', HTMLFormElement).addEventListener('submit', (event) => {
    event.preventDefault();
    const column = COLUMNS.find(
      ({ field }) => field === byId('set-field', HTMLSelectElement).value,
    );
    if (column === undefined || picked.size === 0) return;
    const text = meant(column.field, byId('set-text', HTMLInputElement).value);
    changeLines(picked, (line) => ({ ...line, [column.field]: text }));
  });
  listenForChange(({ typed }) => {
    if (typed) return;
    const ids = new Set(picked.size === 0 ? [] : current().lines.map(({ id }) => id));
    for (const id of picked) if (!ids.has(id)) picked.delete(id);
    draw();
  });
  draw();
};
