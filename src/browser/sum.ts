import './older-browsers.ts';
import { readInputs, readSeed } from '../engine/sums/read-inputs.ts';
import { answerTo, resultWith } from '../engine/sums/run-sum.ts';
import type { Sum } from '../engine/sums/sum.ts';
import type { Markup } from '../markup/node.ts';
import { hintOf, SEED_HINT } from '../sums/form.ts';
import { answerOf, outputsMarkup, resultMarkup } from '../sums/result.ts';
import { inHabit } from '../text/in-habit.ts';
import { dropGiven, given, keepGiven } from './address/address-bar.ts';
import { fetchedOnce } from './fetched/fetched-once.ts';
import { siteFile } from './fetched/site-file.ts';
import { habit, hasHabit, listenForHabit } from './kept/habits.ts';
import { byId } from './page/by-id.ts';
import { copyLinkButton } from './page/copy-link.ts';
import { drawerIn } from './page/drawn-place.ts';
import { fieldOf } from './page/field-of.ts';
import { writeNote } from './page/note.ts';
import { drawingInTurns, type Steps } from './page/turns.ts';
import { loadSum } from './sum-loaders.ts';

/** Brings the page of a sum to life: works it out with the visitor's numbers, kept in the address. */

const form = byId('sum', HTMLFormElement);
const place = byId('result', HTMLElement);
const answer = byId('answer', HTMLElement);
const { sum: id = '', group = '', facts: hasFacts } = form.dataset;

interface Loaded {
  sum: Sum;
  facts: unknown;
}

/** The sum with its facts. */
const loaded = fetchedOnce(async (): Promise<Loaded> => {
  const [sum, facts] = await Promise.all([
    loadSum(group, id),
    hasFacts === undefined ? undefined : siteFile(`/sums/${id}/facts.json`),
  ]);
  return { sum, facts };
});

const showFault = (key: string, fault: string | undefined, hint: string): void => {
  writeNote(key, fault ?? hint, fault !== undefined, fieldOf(form, key));
};

/** The pieces that the result shows; nothing yet while it shows those that were built. */
let shown: Markup[] | undefined;

const drawPieces = drawerIn(place);

/** What the keyboard can be at, among what is drawn. */
const reachable = (): HTMLElement[] => [
  ...place.querySelectorAll<HTMLElement>('summary, input, a[href]'),
];

/** Draws in the place of what was built, and leaves open what stood open, and the keyboard where it was. */
const drawFirst = (pieces: Markup[]): void => {
  const at = reachable().findIndex((one) => one === document.activeElement);
  const open = [...place.querySelectorAll('details')].map((details) => details.open);
  drawPieces(pieces);
  for (const [index, details] of place.querySelectorAll('details').entries()) {
    details.open = open[index] ?? false;
  }
  reachable()[at]?.focus();
};

/** Shows other pieces. */
const draw = (pieces: Markup[]): void => {
  if (shown === undefined) drawFirst(pieces);
  else drawPieces(pieces);
  shown = pieces;
};

/** Leaves the field of the seed as it was written, and lets one write into it. */
const showSeed = (written: string): void => {
  const field = fieldOf(form, 'seed');
  if (!(field instanceof HTMLInputElement)) return;
  field.readOnly = false;
  if (field !== document.activeElement) field.value = written;
};

/** Shows what the sum comes to with the numbers as they are now: first what it answers. */
function* show({ sum, facts }: Loaded): Steps {
  const { given: values, faults } = readInputs(sum, facts, Object.fromEntries(given));
  for (const [key, input] of Object.entries(sum.inputs)) {
    showFault(key, faults[key], inHabit(hintOf(input), habit()));
  }
  const answered = answerTo(sum, values, facts, habit());
  const said = answerOf(sum, answered, habit());
  if (answer.textContent !== said) answer.textContent = said;
  if (shown !== undefined) draw([outputsMarkup(sum, answered, habit()), ...shown.slice(1)]);
  yield;
  const { seed, fault } = readSeed(given.get('seed') ?? '');
  const result = resultWith(answered, sum, facts, { habit: habit(), seed });
  yield;
  draw(resultMarkup(sum, result, habit()));
  showSeed(given.get('seed') ?? String(seed));
  showFault('seed', fault, SEED_HINT);
}

const showInTurns = drawingInTurns(place);

const update = (): void => {
  loaded().then(
    (found) => void showInTurns(show(found)),
    () => {
      answer.textContent =
        'What this sum needs could not be fetched; the result below is for the numbers that stood here at first.';
    },
  );
};

const take = ({ target }: Event): void => {
  if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
  keepGiven(target.name, target.value);
  update();
};
form.addEventListener('input', take);
// The field of the seed stands beside what is drawn.
place.addEventListener('input', take);

form.addEventListener('reset', () => {
  dropGiven([...given.keys()]);
  setTimeout(update);
});

form.addEventListener('submit', (event) => {
  event.preventDefault();
});

for (const field of form.elements) {
  if (field instanceof HTMLInputElement) field.readOnly = false;
  if (field instanceof HTMLSelectElement) field.disabled = false;
}
for (const [key, text] of given) {
  const field = fieldOf(form, key);
  if (field !== undefined) field.value = text;
}
for (const element of document.querySelectorAll<HTMLElement>('.script-only')) {
  element.hidden = false;
}
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
const printButton = byId('print', HTMLButtonElement);
printButton.addEventListener('click', () => {
  print();
});
printButton.hidden = false;
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
