import {
  guessColumns,
  linesFromRows,
  readDelimited,
  textOfBytes,
  type ColumnField,
  type Line,
  type Mapping,
  type Row,
} from '../../job/index.ts';
import { COLUMN_WORDS, columnsMarkup } from '../../job-view/columns-view.ts';
import { toDom } from '../../markup/to-dom.ts';
import { byId } from '../by-id.ts';
import { cataloguePart } from '../catalogue-part.ts';
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

/** Whether a line is still as it was begun. */
const isBlank = ({ designators, marking, type, value, note }: Line): boolean =>
  [designators, marking, type, value, note].every((text) => text === '');

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

/** Offers rows to be added; the guess of their columns can be changed. */
export const offerRows = async (rows: readonly Row[]): Promise<void> => {
  const common = await cataloguePart('job');
  offered = { rows, mapping: guessColumns(rows, common.job.columnWords) };
  draw();
  byId('table-title', HTMLElement).focus();
};

const openTable = async (file: File): Promise<void> => {
  const decoded = textOfBytes(new Uint8Array(await file.arrayBuffer()));
  const read = decoded.ok ? readDelimited(decoded.text) : decoded;
  said.textContent = read.ok ? read.said.join(' ') : read.message;
  if (!read.ok) return;
  try {
    await offerRows(read.rows);
  } catch {
    said.textContent = 'The data for reading tables could not be fetched.';
  }
};

const isField = (text: string): text is ColumnField => Object.hasOwn(COLUMN_WORDS, text);

/** Makes tables from files work. */
export const startTables = (): void => {
  const input = byId('table-file', HTMLInputElement);
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file !== undefined) void openTable(file);
    input.value = '';
  });
  const parts = byId('parts', HTMLElement);
  parts.addEventListener('dragover', (event) => {
    event.preventDefault();
  });
  parts.addEventListener('drop', (event) => {
    const [file] = event.dataTransfer?.files ?? [];
    if (file === undefined) return;
    event.preventDefault();
    void openTable(file);
  });
  place.addEventListener('change', ({ target }) => {
    if (offered === undefined) return;
    const { rows, mapping } = offered;
    if (target instanceof HTMLInputElement) {
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
};
