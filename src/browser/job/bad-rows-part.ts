import { badRowsMarkup } from '../../job-view/bad-rows-view.ts';
import { emptyLine, LONGEST_TEXT } from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { byId } from '../page/by-id.ts';
import { change, current, listenForChange } from './state.ts';

/** Rows that could not be read, below the parts list until somebody decides. */
export const startBadRows = (): void => {
  const place = byId('bad-rows', HTMLElement);
  let shown = current().badRows;
  listenForChange(() => {
    const { badRows } = current();
    if (badRows === shown) return;
    shown = badRows;
    place.replaceChildren(...badRowsMarkup(badRows).map((one) => toDom(one)));
  });
  place.addEventListener('click', ({ target }) => {
    if (!(target instanceof HTMLButtonElement)) return;
    const at = Number(target.closest<HTMLElement>('[data-bad]')?.dataset['bad'] ?? 'none');
    const job = current();
    const bad = job.badRows[at];
    if (bad === undefined) return;
    const badRows = job.badRows.filter((one) => one !== bad);
    const note = bad.cells.join(' | ').slice(0, LONGEST_TEXT);
    const line = { ...emptyLine(crypto.randomUUID()), note };
    const keeps = target.dataset['badRow'] === 'keep';
    change({ ...job, badRows, lines: keeps ? [...job.lines, line] : job.lines });
    (place.querySelector('button') ?? byId('add-row', HTMLElement)).focus();
  });
};
