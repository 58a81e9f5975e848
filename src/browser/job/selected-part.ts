import { lineFieldsMarkup } from '../../job-view/line-fields-view.ts';
import {
  commonFields,
  withField,
  withSign,
  type LineFields,
  type PlannedLine,
} from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { countOf } from '../../text/words.ts';
import { byId } from '../page/by-id.ts';
import { fieldsOf } from './fields-of.ts';
import { listenForPicks, pickedLines } from './parts.ts';
import { changeLines } from './state.ts';

/** Voltages, conditions and readings of all rows that are selected, set at once. */

const box = byId('selected-fields', HTMLDetailsElement);
const form = byId('selected-form', HTMLFormElement);
const place = byId('selected-inputs', HTMLElement);
const said = byId('selected-said', HTMLElement);
/** Fields and signs that were written in since the rows were selected. */
const touched = new Set<HTMLInputElement>();
let planned: readonly PlannedLine[] = [];

/** Rows that are named before the rest is left to be counted. */
const MOST_NAMED = 12;

const namesOf = (chosen: readonly PlannedLine[]): string =>
  chosen
    .slice(0, MOST_NAMED)
    .map(({ line }) => line.designators.slice(0, 40) || 'no designator')
    .concat(chosen.length > MOST_NAMED ? ['…'] : [])
    .join('; ');

const draw = (): void => {
  touched.clear();
  if (!box.open) return;
  const picked = pickedLines();
  const chosen = planned.filter(({ line }) => picked.has(line.id));
  const known = chosen.flatMap((one) => fieldsOf(one) ?? []);
  place.replaceChildren(...lineFieldsMarkup(commonFields(known)).map((one) => toDom(one)));
  const unknown = chosen.length - known.length;
  said.textContent =
    chosen.length === 0
      ? 'Select rows in the list above.'
      : `${countOf(chosen.length, 'row')} selected: ${namesOf(chosen)}. What you do not touch stays as it is.` +
        (unknown === 0
          ? ''
          : ` ${countOf(unknown, 'row')} without a known type and position: nothing is asked of them yet.`);
  byId('selected-set', HTMLButtonElement).hidden = known.length === 0;
};

/** What may be set of a line: keys of its fields, ids of its signs. */
const keysOf = (asked: LineFields | undefined): string[] =>
  asked === undefined
    ? []
    : [...asked.fields.map(({ key }): string => key), ...asked.signs.map(({ id }) => id)];

/** Takes the lines of a plan; what is being written stays. */
export const takeLines = (lines: readonly PlannedLine[]): void => {
  planned = lines;
  if (touched.size === 0 && !form.contains(document.activeElement)) draw();
};

/** Makes the fields of the selected rows work. */
export const startSelected = (): void => {
  box.addEventListener('toggle', draw);
  listenForPicks(draw);
  form.addEventListener('input', ({ target }) => {
    if (target instanceof HTMLInputElement) touched.add(target);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const ids = new Set(pickedLines());
    if (ids.size === 0 || touched.size === 0) return;
    const known = new Map(
      planned
        .filter(({ line }) => ids.has(line.id))
        .map((one) => [one.line.id, new Set(keysOf(fieldsOf(one)))]),
    );
    // A row takes only what is asked of its own type in its own position.
    changeLines(ids, (line) =>
      [...touched].reduce((made, { dataset, value, checked }) => {
        const { fieldKey, sign } = dataset;
        const asked = known.get(line.id);
        if (fieldKey !== undefined)
          return asked?.has(fieldKey) === true ? withField(made, fieldKey, value) : made;
        return sign !== undefined && asked?.has(sign) === true
          ? withSign(made, sign, checked)
          : made;
      }, line),
    );
    said.textContent = `Set in ${countOf(ids.size, 'row')}.`;
    touched.clear();
  });
};
