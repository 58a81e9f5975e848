import {
  circumstancesOf,
  findStandIns,
  resolveSituation,
  type Assessment,
  type Catalogue,
} from '../engine/index.ts';
import {
  fieldsFor,
  guidelineKey,
  readAddress,
  type Asked,
  type Field,
} from '../substitution/address.ts';
import { answerSentence } from '../substitution/answer.ts';
import { isDue } from '../substitution/cautions.ts';
import { fieldNote } from '../substitution/form.ts';
import type { Shown } from '../substitution/shown.ts';
import { fragment, listenForFragment } from './address.ts';
import { dropGiven, given, keepGiven } from './address-bar.ts';
import { byId } from './by-id.ts';
import { cataloguePart } from './catalogue-part.ts';
import { copyLinkButton } from './copy-link.ts';
import { comparedTypes, listenForComparing, showComparison } from './comparing.ts';
import { listenForDrawing, showDrawn } from './drawn-parts.ts';
import { likedGuideline, likeGuideline } from './liked-guideline.ts';
import { habit, hasHabit, listenForHabit } from './habits.ts';
import { assessHaving, listenForHaving, showHaving } from './having.ts';
import { listenForEvidence, showJudgement } from './judge-first.ts';
import { writeNote } from './note.ts';
import { listenForOpening, openTypes, showStandIns } from './stand-ins.ts';

/** Brings a substitution page to life: reckons with the visitor's numbers, kept in the address. */

const form = byId('numbers', HTMLFormElement);
const answer = byId('answer', HTMLElement);
const { type = '', position = '' } = form.dataset;

const inputFor = (key: string): HTMLInputElement | HTMLSelectElement | undefined => {
  const element = form.elements.namedItem(key);
  return element instanceof HTMLInputElement || element instanceof HTMLSelectElement
    ? element
    : undefined;
};

const showField = (field: Field): void => {
  const input = inputFor(field.key);
  if (input === undefined) return;
  if (input !== document.activeElement) input.value = field.text;
  const { text, fault } = fieldNote(field);
  writeNote(field.key, text, fault);
  if (fault) input.setAttribute('aria-invalid', 'true');
  else input.removeAttribute('aria-invalid');
  input.closest('.field')?.setAttribute('data-from', field.from);
};

/** What the page shows of all that was reckoned: findings of the first, the open, the compared. */
const shownOf = (catalogue: Catalogue, asked: Asked): Shown => {
  const assessments = findStandIns(catalogue, asked.request);
  const wanted = new Set([...openTypes(), ...comparedTypes()]);
  return {
    catalogue,
    assessments,
    circumstances: circumstancesOf(catalogue, asked.request),
    having: assessHaving(catalogue, asked),
    isFull: (one: Assessment) => one === assessments[0] || wanted.has(one.candidate.type),
    ledTo: true,
    habit: habit(),
  };
};

const showResults = (shown: Shown, asked: Asked): void => {
  const words = answerSentence(shown.catalogue, type, shown.assessments, shown.habit);
  if (answer.textContent !== words) answer.textContent = words;
  showStandIns(shown);
  showHaving(shown, asked);
  showComparison(shown, asked);
  showDrawn(shown, asked);
};

/** Cautions that a condition or a stand-in brings up come and go with it. */
const showCautions = ({ catalogue, assessments }: Shown, asked: Asked): void => {
  const { conditions } = resolveSituation(catalogue, asked.request);
  for (const element of document.querySelectorAll<HTMLElement>('[data-condition], [data-made]')) {
    const { condition, from, made } = element.dataset;
    const trigger = { condition, from: Number(from ?? 0), made: made?.split(' ') };
    element.hidden = !isDue(trigger, { conditions, assessments });
  }
};

/** The guideline that this reader likes goes into the address, so that a shared link shows the same. */
const takeLikedGuideline = (): void => {
  const liked = likedGuideline();
  const options = inputFor(guidelineKey)?.querySelectorAll('option') ?? [];
  const isOffered = [...options].some(({ value }) => value === liked);
  if (!given.has(guidelineKey) && isOffered && liked !== usualGuideline)
    keepGiven(guidelineKey, liked);
};

const askedNow = (catalogue: Catalogue): Asked =>
  readAddress(catalogue, type, position, new URLSearchParams([...given]));

const showFields = (catalogue: Catalogue): void => {
  fieldsFor(catalogue, askedNow(catalogue), habit()).forEach(showField);
};

/** Numbers of the address must be seen, even those that are folded away otherwise. */
const unfoldGiven = (): void => {
  for (const element of form.elements) {
    const folded = element.closest('details:not([open])');
    if (folded instanceof HTMLDetailsElement && given.has(element.getAttribute('name') ?? ''))
      folded.open = true;
  }
};

/** The place in the page that a link leads to, until it is there to be shown. */
let sought = '';

const showSought = (): boolean => {
  const target = document.getElementById(sought);
  if (target === null) return false;
  const around = target.closest('details');
  if (around) {
    around.open = true;
    target.scrollIntoView();
  }
  sought = '';
  return true;
};

const recompute = (catalogue: Catalogue): void => {
  const asked = askedNow(catalogue);
  showFields(catalogue);
  const guideline = inputFor(guidelineKey);
  if (guideline !== undefined) guideline.value = asked.request.guideline ?? guideline.value;
  const shown = shownOf(catalogue, asked);
  showResults(shown, asked);
  showCautions(shown, asked);
  showJudgement(catalogue, asked);
  showSought();
};

const update = (): void => {
  cataloguePart(position).then(recompute, () => {
    answer.textContent =
      'The data for reckoning could not be fetched. What stands below is for the usual numbers; your own stay in the address.';
  });
};

/** The guideline that holds when the address names none, as the page was built. */
const usualGuideline = inputFor(guidelineKey)?.value;

form.addEventListener('input', ({ target }) => {
  if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
  const isUsual = target.name === guidelineKey && target.value === usualGuideline;
  if (target.name === guidelineKey) likeGuideline(isUsual ? '' : target.value);
  keepGiven(target.name, isUsual ? '' : target.value);
  update();
});

// On leaving a field its number is written out as it was understood, or the usual one put back.
// The results stay as they are: what is being clicked on there may not be replaced meanwhile.
form.addEventListener('focusout', () => {
  cataloguePart(position).then(showFields, () => undefined);
});

listenForEvidence(update);
listenForHaving(update);
listenForComparing(update);
listenForOpening(update);
listenForDrawing(update);

form.addEventListener('reset', () => {
  dropGiven(
    [...form.elements].flatMap((element) => {
      const name = element.getAttribute('name');
      return name === null ? [] : [name];
    }),
  );
  setTimeout(update);
});

form.addEventListener('submit', (event) => {
  event.preventDefault();
});

/** Shows what a link leads to, which must be open for that; a finding is drawn first. */
const openTarget = (): void => {
  sought = fragment();
  if (sought === '' || showSought()) return;
  const [part = ''] = sought.split('--');
  const details = document.getElementById(part)?.querySelector('details');
  if (!details) return;
  details.open = true;
  update();
};
listenForFragment(openTarget);
openTarget();

form.addEventListener('focusin', () => void cataloguePart(position).catch(() => undefined), {
  once: true,
});

for (const element of form.elements) {
  if (element instanceof HTMLInputElement) element.readOnly = false;
  if (element instanceof HTMLSelectElement) element.disabled = false;
}
for (const element of document.querySelectorAll<HTMLElement>('.script-only')) {
  element.hidden = false;
}
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
takeLikedGuideline();
unfoldGiven();
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
