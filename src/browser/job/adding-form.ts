import { addedMarkup, addingForm, standInChoice } from '../../job-view/adding-view.ts';
import { DEFAULT_GUIDELINE, type Catalogue, type Habit } from '../../engine/index.ts';
import type { Line, StandIn } from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { typeRowOf } from '../../substitution/any-kind.ts';
import { guidelineKey, kindPartKeys, partKeys } from '../../substitution/keys.ts';
import { midSentence } from '../../text/mid-sentence.ts';
import { byId } from '../page/by-id.ts';
import { fieldOf } from '../page/field-of.ts';
import { askedNow, device, inputFor, position, type, use } from '../reckoning/number-fields.ts';
import { addToJob, jobsToChoose } from './adding.ts';

/** The form on a substitution page that adds what it is about to a job; fetched when it is opened. */

const form = byId('adding', HTMLFormElement);
const said = byId('added', HTMLElement);

/** What a page adds. */
export interface Adding {
  catalogue: Catalogue;
  /** What may be chosen to go in. */
  standIns: readonly StandIn[];
  habit: Habit | undefined;
}

let now: Adding | undefined;

const nameIn =
  (catalogue: Catalogue) =>
  (id: string): string =>
    typeRowOf(catalogue, id)?.short_name ??
    catalogue.devices.devices.find((row) => row.id === id)?.name ??
    id;

/** What the page is about, as a line of a job has it: a type in a position, or a device in a use. */
const about = device === '' ? { type, position } : { type: device, position: use };

/** The same in words: `wax paper in interstage coupling`, `BC109 as low-noise input stage`. */
const aboutWords = (catalogue: Catalogue): string => {
  const usedAs = catalogue.devices.uses.find(({ id }) => id === about.position);
  const place = usedAs ?? catalogue.positions[position] ?? catalogue.kindPositions[position];
  const words = [nameIn(catalogue)(about.type), place?.name ?? ''].map((name) => midSentence(name));
  return words.join(usedAs === undefined ? ' in ' : ' as ');
};

const textOf = (name: string): string => fieldOf(form, name)?.value.trim() ?? '';

/** Puts choices into a list; what was chosen stays chosen as long as it is there. */
const offer = (name: string, choices: readonly { id: string; name: string }[]): void => {
  const list = fieldOf(form, name);
  if (!(list instanceof HTMLSelectElement)) return;
  const { value } = list;
  const wasEmpty = list.options.length === 0;
  list.replaceChildren(...choices.map(({ id, name: word }) => new Option(word, id)));
  if (!wasEmpty && choices.some(({ id }) => id === value)) list.value = value;
};

const offerJobs = async (chosen?: string): Promise<void> => {
  offer('job', await jobsToChoose());
  const list = fieldOf(form, 'job');
  if (chosen !== undefined && list !== undefined) list.value = chosen;
};

/** What the guideline of the page means for a job that goes by another; devices go by none. */
const guidelineWords = (ofPage: string, ofJob: string): string[] =>
  device !== '' || (ofPage || DEFAULT_GUIDELINE) === (ofJob || DEFAULT_GUIDELINE)
    ? []
    : ['The job goes by another derating guideline than this page.'];

const addButton = (): HTMLButtonElement | null => form.querySelector('button');
const allow = (isAllowed: boolean): void => {
  addButton()?.toggleAttribute('disabled', !isAllowed);
};

/** A value that nobody said is not made up: the page went by a usual one. */
const valueWords = (line: Line | undefined): string[] =>
  [partKeys.capacitance, kindPartKeys.value].some((key) => inputFor(key) !== undefined) &&
  line?.value === '' &&
  line.marking === ''
    ? ['Its value is still to be said there, as this page goes by a usual one.']
    : [];

const add = async (adding: Adding): Promise<void> => {
  const { catalogue, habit } = adding;
  const choice = inputFor(guidelineKey);
  const guideline = {
    chosen: askedNow().get(guidelineKey) ?? '',
    offered: choice instanceof HTMLSelectElement ? choice.options : [],
  };
  const standIn = adding.standIns.find(({ candidate }) => candidate.type === textOf('standIn'));
  const typed = { designators: textOf('designators'), marking: textOf('marking') };
  const asked = { catalogue, ...about, query: askedNow(), typed, standIn, guideline };
  const added = await addToJob(textOf('job'), asked);
  if (!added.ok) {
    said.textContent = added.message;
    allow(true);
    return;
  }
  const { job, name } = added;
  said.replaceChildren(
    ...addedMarkup({
      designators: typed.designators,
      part: aboutWords(catalogue),
      standIn: standIn && standInChoice(standIn, nameIn(catalogue), habit),
      job: name,
      row: job.lines.length,
      said: [
        ...added.said,
        ...valueWords(job.lines.at(-1)),
        ...guidelineWords(guideline.chosen, job.whole.guideline),
      ],
    }).map((piece) => toDom(piece)),
  );
  await offerJobs(job.id);
};

/** Adds once for each press: the same once more has to be asked for by typing something. */
form.addEventListener('input', () => {
  allow(true);
});
form.addEventListener('submit', (event) => {
  event.preventDefault();
  if (now === undefined || addButton()?.disabled === true) return;
  allow(false);
  void add(now);
});

/** Shows the form, drawn once, with what may go in for the numbers as they are now. */
export const showForm = (adding: Adding): void => {
  now = adding;
  if (form.elements.length === 0) {
    form.replaceChildren(...addingForm().map((piece) => toDom(piece)));
    void offerJobs();
  }
  const { catalogue, habit } = adding;
  offer('standIn', [
    { id: '', name: 'what the plan puts first' },
    ...adding.standIns
      .filter(({ verdict }) => verdict !== 'keep-out')
      .map((one) => ({
        id: one.candidate.type,
        name: standInChoice(one, nameIn(catalogue), habit),
      })),
  ]);
};
