import './older-browsers.ts';
import { toDom } from '../markup/to-dom.ts';
import { readAskedValue } from '../values/asked.ts';
import { nearestMarkup } from '../values/series-view.ts';
import { given, keepGiven } from './address/address-bar.ts';
import { habit, hasHabit, listenForHabit } from './kept/habits.ts';
import { byId } from './page/by-id.ts';
import { writeNote } from './page/note.ts';

/** Brings the page of preferred values to life. */

const form = byId('value', HTMLFormElement);
const field = byId('field-value', HTMLInputElement);
const kinds = byId('field-of', HTMLSelectElement);
const place = byId('nearest', HTMLElement);

const show = (): void => {
  const { kind, value, fault } = readAskedValue(given.get('of'), given.get('value') ?? '');
  writeNote('value', fault ?? '', fault !== undefined, field);
  field.placeholder = kind.usual;
  place.replaceChildren(...nearestMarkup(value, kind.unit, habit()).map((piece) => toDom(piece)));
};

form.addEventListener('input', () => {
  keepGiven('value', field.value);
  keepGiven('of', kinds.value);
  show();
});
form.addEventListener('submit', (event) => {
  event.preventDefault();
});
listenForHabit(show);

field.readOnly = false;
kinds.disabled = false;
field.value = given.get('value') ?? field.value;
kinds.value = readAskedValue(given.get('of'), '').kind.id;
if (given.size > 0 || hasHabit()) show();
