import { deviceAnswer } from '../../device-view/answer.ts';
import { deviceFieldsFor, readDeviceNumbers } from '../../device-view/numbers.ts';
import { citedBy, deviceResults } from '../../device-view/results.ts';
import { deviceCircumstances, deviceStandIns, type Catalogue } from '../../engine/index.ts';
import type { DeviceRow, UseRow } from '../../schemas/devices.ts';
import { habit } from '../kept/habits.ts';
import { byId } from '../page/by-id.ts';
import { drawerIn } from '../page/drawn-place.ts';
import type { Steps } from '../page/turns.ts';
import { listenForAdding, showAdding } from './adding.ts';
import { showAnswer } from './answer.ts';
import { askedNow, device, use as usedAs } from './number-fields.ts';
import { showFields } from './shown-fields.ts';

/** Reckons the page of a device in a use with the visitor's numbers: a `Reckoning` (waking.ts). */

const results = byId('results', HTMLElement);

const drawResults = drawerIn(results);

/** The device that is being replaced, and what it is used as. */
const placeIn = ({ devices: { devices, uses } }: Catalogue): { old: DeviceRow; use: UseRow } => {
  const [old, use] = [
    devices.find(({ id }) => id === device),
    uses.find(({ id }) => id === usedAs),
  ];
  if (old === undefined || use === undefined) throw new Error(`no ${device} as ${usedAs}`);
  return { old, use };
};

/** Puts into the form what each number is read or taken as. */
export const showNumbers = (catalogue: Catalogue): void => {
  const place = placeIn(catalogue);
  const asked = readDeviceNumbers(catalogue, place.use, askedNow());
  showFields(deviceFieldsFor(catalogue, place, asked, habit()));
};

const openItems = (): Set<string> =>
  new Set([...results.querySelectorAll('li:has(> details[open])')].map(({ id }) => id));

const sourceList = (): HTMLDetailsElement | null => results.querySelector('#source-list');

/** Draws what the address asks: the answer first. */
export function* recompute(catalogue: Catalogue): Steps {
  const { old, use } = placeIn(catalogue);
  const { given } = readDeviceNumbers(catalogue, use, askedNow());
  const assessments = deviceStandIns(catalogue, { original: old, use, given });
  showAnswer(deviceAnswer(old, use, assessments, habit()));
  yield;
  showNumbers(catalogue);
  yield;
  const open = openItems();
  const cited = citedBy(catalogue.sources, assessments);
  const circumstances = deviceCircumstances(catalogue, { original: old, use, given });
  const shown = { catalogue, circumstances, assessments, cited, habit: habit() };
  const sourcesOpen = sourceList()?.open ?? false;
  drawResults(deviceResults(shown, (id) => open.has(id)));
  sourceList()?.toggleAttribute('open', sourcesOpen);
  yield;
  // The plan of the job adds the pins; what is chosen here is the number.
  const standIns = assessments.map(({ device: { id, name }, verdict, findings, worst }) => {
    const candidate = { type: id, number: name, bodies: [], namesBody: false };
    return { candidate, verdict, findings, worst, pins: [], pinNote: '' };
  });
  showAdding({ catalogue, standIns, habit: habit() });
}

/** Calls when the form that adds to a job asks for another drawing. */
export const listen = listenForAdding;
