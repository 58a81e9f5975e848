import {
  deviceCircumstances,
  deviceStandIns,
  formatValue,
  parseQuantity,
  type Catalogue,
} from '../engine/index.ts';
import { deviceAnswer } from '../device-view/answer.ts';
import { deviceFields, type DeviceField } from '../device-view/numbers.ts';
import { citedBy, deviceResults } from '../device-view/results.ts';
import { toDom } from '../markup/to-dom.ts';
import { given, keepGiven } from './address-bar.ts';
import { byId } from './by-id.ts';
import { cataloguePart } from './catalogue-part.ts';
import { habit, hasHabit, listenForHabit } from './habits.ts';
import { writeNote } from './note.ts';

/** Brings the page of a device in a use to life: reckons with the visitor's numbers. */

const form = byId('device-numbers', HTMLFormElement);
const answer = byId('answer', HTMLElement);
const results = byId('results', HTMLElement);
const { device = '', use = '', family = '' } = form.dataset;

const inputOf = (key: string): HTMLInputElement | undefined => {
  const element = form.elements.namedItem(key);
  return element instanceof HTMLInputElement ? element : undefined;
};

/** What is wrong with a number, or the number, SI; neither where the usual one holds. */
const readWritten = (
  { definition, unit }: DeviceField,
  factor: number,
  written: string,
): { value?: number; fault?: string } => {
  if (written === '') return {};
  const read = parseQuantity(written, unit, definition.unit);
  if (!read.ok) return { fault: read.fault.message };
  const [lowest, highest] = [definition.lowest * factor, definition.highest * factor];
  const { typ } = read.value;
  return typ >= lowest && typ <= highest
    ? { value: typ }
    : { fault: `from ${formatValue(lowest, unit)} to ${formatValue(highest, unit)}` };
};

/** What the visitor means by a field, SI, or nothing where the usual number holds. */
const readField = (field: DeviceField, catalogue: Catalogue): number | undefined => {
  const { definition, unit, usual } = field;
  const input = inputOf(definition.id);
  if (input === undefined) return undefined;
  const written = given.get(definition.id) ?? '';
  if (input !== document.activeElement)
    input.value = written === '' ? formatValue(usual, unit, habit()) : written;
  const factor = catalogue.units[definition.unit]?.factor ?? 1;
  const { value, fault } = readWritten(field, factor, written);
  writeNote(definition.id, fault ?? (value === undefined ? 'usual' : 'yours'), fault !== undefined);
  if (fault === undefined) input.removeAttribute('aria-invalid');
  else input.setAttribute('aria-invalid', 'true');
  input.closest('.field')?.setAttribute('data-from', value === undefined ? 'default' : 'given');
  return value;
};

const openItems = (): Set<string> =>
  new Set([...results.querySelectorAll('li:has(> details[open])')].map(({ id }) => id));

const sourceList = (): HTMLDetailsElement | null => results.querySelector('#source-list');

const show = (catalogue: Catalogue): void => {
  const old = catalogue.devices.devices.find(({ id }) => id === device);
  const place = catalogue.devices.uses.find(({ id }) => id === use);
  if (old === undefined || place === undefined) return;
  const numbers = deviceFields(catalogue, place).flatMap((field) => {
    const value = readField(field, catalogue);
    return value === undefined ? [] : [[field.definition.id, value] as const];
  });
  const mine = Object.fromEntries(numbers);
  const assessments = deviceStandIns(catalogue, old, place, mine);
  const words = deviceAnswer(old, place, assessments, habit());
  if (answer.textContent !== words) answer.textContent = words;
  const open = openItems();
  const cited = citedBy(catalogue.sources, assessments);
  const circumstances = deviceCircumstances(catalogue, old, place, mine);
  const shown = { catalogue, circumstances, assessments, cited, habit: habit() };
  const sourcesOpen = sourceList()?.open ?? false;
  results.replaceChildren(
    ...deviceResults(shown, (id) => open.has(id)).map((piece) => toDom(piece)),
  );
  sourceList()?.toggleAttribute('open', sourcesOpen);
};

const update = (): void => {
  void cataloguePart(`devices-${family}`).then(show, () => {
    answer.textContent = 'The data could not be fetched; please try again.';
  });
};

for (const input of form.querySelectorAll('input')) {
  input.readOnly = false;
  input.addEventListener('input', () => {
    keepGiven(input.name, input.value);
    update();
  });
}
form.addEventListener('submit', (event) => {
  event.preventDefault();
});
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
