import type { Assessment } from '../../engine/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { choiceForm, choiceNames, choiceOptions } from '../../substitution/comparison-form.ts';
import {
  besideSentence,
  comparisonMarkup,
  type Beside,
} from '../../substitution/comparison-view.ts';
import {
  besideRows,
  compareKey,
  HAVE,
  readChosen,
  writeChosen,
  type Chosen,
} from '../../substitution/comparison.ts';
import { havingId } from '../../substitution/keys.ts';
import type { PartRow } from '../../substitution/part-rows.ts';
import type { AnyPart } from '../../substitution/phrases.ts';
import type { Shown } from '../../substitution/shown.ts';
import { given, keepGiven } from '../address/address-bar.ts';
import { byId } from '../page/by-id.ts';
import { drawerIn } from '../page/drawn-place.ts';
import { foldedIn } from '../page/folded.ts';
import { writeNote } from '../page/note.ts';

/** The part of a substitution page that puts two parts side by side. */

const place = byId('compare', HTMLDetailsElement);
const folded = foldedIn(place);
const form = byId('comparing', HTMLFormElement);
const said = byId('compared', HTMLElement);
const drawComparison = drawerIn(byId('comparison', HTMLElement));

const chosenIn = <P extends AnyPart>(shown: Shown<P>): Chosen =>
  readChosen(given.get(compareKey) ?? '', choiceNames(shown));

/** Types that stand side by side, whose findings the comparison leads to. */
export const comparedTypes = (): Set<string> => {
  const { a, b } = readChosen(given.get(compareKey) ?? '', []);
  return new Set([a, b]);
};

const selectOf = (letter: 'a' | 'b'): HTMLSelectElement | undefined => {
  const select = form.elements.namedItem(letter);
  return select instanceof HTMLSelectElement ? select : undefined;
};

/** Puts the parts that can be chosen into a field, without a change where they are the same. */
const showChoice = <P extends AnyPart>(letter: 'a' | 'b', value: string, shown: Shown<P>): void => {
  const select = selectOf(letter);
  if (select === undefined) return;
  const options = choiceOptions(shown).map((piece) => toDom(piece) as Element);
  const same =
    select.children.length === options.length &&
    options.every((option, at) => select.children[at]?.isEqualNode(option));
  if (!same) select.replaceChildren(...options);
  select.value = value;
  if (select.selectedIndex < 0) select.value = '';
};

const showForm = <P extends AnyPart>(shown: Shown<P>, { a, b, faults }: Chosen): void => {
  if (form.elements.length === 0) {
    form.replaceChildren(...choiceForm().map((piece) => toDom(piece)));
  }
  // One of the two is nearly always the first stand-in; it counts once the other is chosen.
  const first = shown.assessments[0]?.candidate.type ?? '';
  for (const [letter, name] of [
    ['a', a === '' && b === '' ? first : a],
    ['b', b],
  ] as const) {
    showChoice(letter, name, shown);
    const fault = faults[letter];
    writeNote(`compare-${letter}`, fault ?? '', fault !== undefined, selectOf(letter));
  }
};

const besideOf = <P extends AnyPart>(
  letter: 'A' | 'B',
  name: string,
  shown: Shown<P>,
): Beside<P> | undefined => {
  const assessment =
    name === HAVE
      ? shown.having
      : shown.assessments.find(({ candidate }) => candidate.type === name);
  return assessment && { letter, id: name === HAVE ? havingId : name, assessment };
};

/** Writes what is read out, and only where it changes. */
const say = (words: string): void => {
  if (said.textContent !== words) said.textContent = words;
};

/**
 * Shows the two parts that the address names side by side, or what is wrong with it.
 * @param partRows what is said of the old part and of the two before anything is judged
 */
export const showComparison = <P extends AnyPart>(
  shown: Shown<P>,
  partRows: (a: Assessment<P>, b: Assessment<P>) => PartRow[],
): void => {
  folded.openIf(given.has(compareKey));
  if (!folded.isDrawn()) return;
  const chosen = chosenIn(shown);
  showForm(shown, chosen);
  const a = besideOf('A', chosen.a, shown);
  const b = besideOf('B', chosen.b, shown);
  const fault = chosen.faults.a ?? chosen.faults.b;
  if (a === undefined || b === undefined || fault !== undefined) {
    drawComparison([]);
    say('');
    return;
  }
  const rows = partRows(a.assessment, b.assessment);
  drawComparison(comparisonMarkup(shown, rows, [a, b]));
  say(besideSentence(besideRows(a.assessment, b.assessment)));
};

/** Keeps the two in the address, and has the page reckon again. */
export const listenForComparing = (update: () => void): void => {
  folded.listen(update);
  form.addEventListener('input', () => {
    const [a = '', b = ''] = [selectOf('a')?.value, selectOf('b')?.value];
    keepGiven(compareKey, writeChosen(a, b));
    update();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
  // A button in the findings of a part puts it beside the first of the stand-ins.
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest('[data-beside]') : null;
    if (!(button instanceof HTMLElement)) return;
    const first = document.querySelector('#results ol > li[id]')?.id ?? '';
    keepGiven(compareKey, writeChosen(first, button.dataset['beside'] ?? ''));
    update();
    place.open = true;
    place.scrollIntoView();
    place.querySelector('summary')?.focus({ preventScroll: true });
  });
};
