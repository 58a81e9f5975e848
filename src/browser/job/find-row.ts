import { COLUMNS, type CellText } from '../../job-view/parts-view.ts';
import type { Line } from '../../job/index.ts';
import { byId } from '../page/by-id.ts';
import { current } from './state.ts';

/** Finds rows of the parts list by what stands in them: a browser's own search seldom looks into fields. */

const FOUND = 'is-found';

/** Makes the search work: Enter shows the next row that holds the text, after the last from the top. */
export const startFindRow = (
  reach: (index: number) => HTMLElement | undefined,
  textOf: CellText,
): void => {
  const input = byId('find-row', HTMLInputElement);
  const said = byId('row-found', HTMLElement);
  let found = -1;
  let marked: HTMLElement | undefined;

  const findNext = (): void => {
    const sought = input.value.trim().toLowerCase();
    const { lines } = current();
    if (sought === '') return;
    const holds = (line: Line): boolean =>
      COLUMNS.some(({ field }) => textOf(line, field).toLowerCase().includes(sought));
    const next = lines.findIndex((line, index) => index > found && holds(line));
    found = next >= 0 ? next : lines.findIndex(holds);
    marked?.classList.remove(FOUND);
    marked = found < 0 ? undefined : reach(found);
    marked?.classList.add(FOUND);
    marked?.scrollIntoView({ block: 'center' });
    said.textContent =
      found < 0 ? 'No row holds this.' : `Row ${String(found + 1)}; Enter finds the next.`;
  };
  input.addEventListener('input', () => {
    found = -1;
  });
  input.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.isComposing) return;
    event.preventDefault();
    findNext();
  });
};
