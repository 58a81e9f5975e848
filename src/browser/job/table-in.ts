import { COLUMN_WORDS, columnsMarkup } from '../../job-view/columns-view.ts';
import {
  guessColumns,
  isBlank,
  guessDecimal,
  LARGEST_FILE,
  linesFromRows,
  readDelimited,
  tableOfList,
  textOfBytes,
  type ColumnField,
  type Delimited,
  type Mapping,
  type Row,
} from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { cataloguePart } from '../fetched/catalogue-part.ts';
import { byId } from '../page/by-id.ts';
import { idOf } from './names.ts';
import { change, current } from './state.ts';

/** Tables from files and from the clipboard, whose columns are confirmed before rows are added. */

const place = byId('table-in', HTMLElement);
const said = byId('job-said', HTMLElement);
let offered: { rows: readonly Row[]; mapping: Mapping } | undefined;

const linesOf = (rows: readonly Row[], mapping: Mapping) =>
  linesFromRows(rows, mapping, () => crypto.randomUUID());

const draw = (): void => {
  if (offered === undefined) {
    place.replaceChildren();
    return;
  }
  const { rows, mapping } = offered;
  const parts = columnsMarkup(rows, mapping, linesOf(rows, mapping));
  place.replaceChildren(...parts.map((one) => toDom(one)));
};

const take = (): void => {
  if (offered === undefined) return;
  const job = current();
  const { lines, badRows } = linesOf(offered.rows, offered.mapping);
  const named = lines.map((line) => ({
    ...line,
    type: idOf('type', line.type),
    position: idOf('position', line.position),
  }));
  offered = undefined;
  draw();
  change({
    ...job,
    lines: [...job.lines.filter((line) => !isBlank(line)), ...named],
    badRows: [...job.badRows, ...badRows],
  });
  byId('add-row', HTMLButtonElement).focus();
};

/** What the columns of a table seem to hold, and its decimal sign. */
export const guessMapping = async (rows: readonly Row[]): Promise<Mapping> => {
  // Words for kinds of part travel with what reads markings, which a plan fetches anyway.
  const [common, reading] = await Promise.all([cataloguePart('job'), cataloguePart('reading')]);
  const columns = guessColumns(rows, common.job.columnWords, reading.job.kindWords);
  return { ...columns, decimal: guessDecimal(rows, columns) };
};

/** Offers rows to be added; the guess of their columns can be changed. */
export const offerRows = (rows: readonly Row[], mapping: Mapping): void => {
  offered = { rows, mapping };
  draw();
  byId('table-title', HTMLElement).focus();
};

/** Offers the rows of a table that was read, with what there is to say of it. */
const offerText = async (read: Delimited): Promise<void> => {
  said.textContent = read.ok ? read.said.join(' ') : read.message;
  if (!read.ok || read.rows.length === 0) return;
  try {
    offerRows(read.rows, await guessMapping(read.rows));
  } catch {
    said.textContent = 'The data for reading tables could not be fetched.';
  }
};

/** Reads a table, or a list as people type one. */
const readTable = (text: string): Delimited => {
  const list = tableOfList(text);
  return list === undefined ? readDelimited(text) : readDelimited(list, '\t');
};

/** The rows of a text that was pasted onto a cell; what there is to say of them is said. */
export const readPasted = (text: string): readonly Row[] => {
  const read = text.includes('\t') ? readDelimited(text, '\t') : readTable(text);
  said.textContent = read.ok ? read.said.join(' ') : read.message;
  return read.ok ? read.rows : [];
};

/** Offers the rows of a text that was pasted. */
export const offerPasted = (text: string): Promise<void> => offerText(readTable(text));

/** Offers the rows of a file. */
export const openTable = async (file: File): Promise<void> => {
  // A file that is too large is refused before it is read.
  if (file.size > LARGEST_FILE) {
    said.textContent = 'This file is larger than 50 MB; no table of parts is.';
    return;
  }
  const decoded = textOfBytes(new Uint8Array(await file.arrayBuffer()));
  const read = decoded.ok ? readTable(decoded.text) : decoded;
  await offerText(
    read.ok && decoded.ok ? { ...read, said: [...decoded.said, ...read.said] } : read,
  );
};

const isField = (text: string): text is ColumnField => Object.hasOwn(COLUMN_WORDS, text);

place.addEventListener('change', ({ target }) => {
  if (offered === undefined) return;
  const { rows, mapping } = offered;
  if (target instanceof HTMLSelectElement && target.dataset['decimal'] !== undefined) {
    const decimal = (['point', 'comma'] as const).find((one) => one === target.value);
    offered = { rows, mapping: { ...mapping, decimal } };
  } else if (target instanceof HTMLInputElement) {
    offered = { rows, mapping: { ...mapping, hasHeader: target.checked } };
  } else if (target instanceof HTMLSelectElement) {
    const at = Number(target.dataset['column']);
    const field = isField(target.value) ? target.value : undefined;
    // A field is held by one column; the one that held it before lets go.
    const fields = mapping.fields.map((one, index) =>
      index === at ? field : one === field ? undefined : one,
    );
    offered = { rows, mapping: { ...mapping, fields } };
  }
  draw();
});
place.addEventListener('click', ({ target }) => {
  if (!(target instanceof HTMLButtonElement)) return;
  if (target.dataset['table'] === 'take') take();
  else {
    offered = undefined;
    draw();
  }
});
