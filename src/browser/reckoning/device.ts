import {
  deviceCircumstances,
  deviceStandIns,
  formatValue,
  parseQuantity,
  type Catalogue,
} from '../../engine/index.ts';
import { deviceAnswer } from '../../device-view/answer.ts';
import { deviceFields, type DeviceField } from '../../device-view/numbers.ts';
import { citedBy, deviceResults } from '../../device-view/results.ts';
import { given } from '../address-bar.ts';
import { showAnswer } from '../answer.ts';
import { byId } from '../by-id.ts';
import { drawerIn } from '../drawn-place.ts';
import { habit } from '../habits.ts';
import { writeNote } from '../note.ts';
import type { Steps } from '../turns.ts';

/** Reckons the page of a device in a use with the visitor's numbers: a `Reckoning` (waking.ts). */

const form = byId('device-numbers', HTMLFormElement);
const results = byId('results', HTMLElement);
const { device = '', use = '' } = form.dataset;

const drawResults = drawerIn(results);

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
  const { definition, unit, usual, from } = field;
  const input = inputOf(definition.id);
  if (input === undefined) return undefined;
  const written = given.get(definition.id) ?? '';
  if (input !== document.activeElement)
    input.value = written === '' ? formatValue(usual, unit, habit()) : written;
  const factor = catalogue.units[definition.unit]?.factor ?? 1;
  const { value, fault } = readWritten(field, factor, written);
  writeNote(definition.id, fault ?? (value === undefined ? from : 'yours'), fault !== undefined);
  if (fault === undefined) input.removeAttribute('aria-invalid');
  else input.setAttribute('aria-invalid', 'true');
  input.closest('.field')?.setAttribute('data-from', value === undefined ? 'default' : 'given');
  return value;
};

const openItems = (): Set<string> =>
  new Set([...results.querySelectorAll('li:has(> details[open])')].map(({ id }) => id));

const sourceList = (): HTMLDetailsElement | null => results.querySelector('#source-list');

export function* recompute(catalogue: Catalogue): Steps {
  const old = catalogue.devices.devices.find(({ id }) => id === device);
  const place = catalogue.devices.uses.find(({ id }) => id === use);
  if (old === undefined || place === undefined) return;
  const numbers = deviceFields(catalogue, place, old).flatMap((field) => {
    const value = readField(field, catalogue);
    return value === undefined ? [] : [[field.definition.id, value] as const];
  });
  const mine = Object.fromEntries(numbers);
  const assessments = deviceStandIns(catalogue, old, place, mine);
  showAnswer(deviceAnswer(old, place, assessments, habit()));
  yield;
  const open = openItems();
  const cited = citedBy(catalogue.sources, assessments);
  const circumstances = deviceCircumstances(catalogue, old, place, mine);
  const shown = { catalogue, circumstances, assessments, cited, habit: habit() };
  const sourcesOpen = sourceList()?.open ?? false;
  drawResults(deviceResults(shown, (id) => open.has(id)));
  sourceList()?.toggleAttribute('open', sourcesOpen);
}
