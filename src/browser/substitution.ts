import './older-browsers.ts';
import { guidelineKey } from '../substitution/keys.ts';
import { given, keepGiven } from './address/address-bar.ts';
import { listenForSought } from './address/sought.ts';
import { hasHabit, listenForHabit } from './kept/habits.ts';
import { likedGuideline, likeGuideline } from './kept/liked-guideline.ts';
import { byId } from './page/by-id.ts';
import { copyLinkButton } from './page/copy-link.ts';
import { enlivenNumbers, inputFor, position } from './reckoning/number-fields.ts';
import { reckonerOn } from './reckoning/waking.ts';

/** Brings a substitution page to life: reckons with the visitor's numbers, kept in the address. */

const { update, showFields } = reckonerOn(position, () => import('./reckoning/capacitor.ts'));

/** The guideline that holds when the address names none, as the page was built. */
const usualGuideline = inputFor(guidelineKey)?.value;

/** The guideline that this reader likes goes into the address, so that a shared link shows the same. */
const takeLikedGuideline = (): void => {
  const liked = likedGuideline();
  const options = inputFor(guidelineKey)?.querySelectorAll('option') ?? [];
  const isOffered = [...options].some(({ value }) => value === liked);
  if (!given.has(guidelineKey) && isOffered && liked !== usualGuideline)
    keepGiven(guidelineKey, liked);
};

enlivenNumbers({
  update,
  showFields,
  written: ({ name, value }) => {
    const isUsual = name === guidelineKey && value === usualGuideline;
    if (name === guidelineKey) likeGuideline(isUsual ? '' : value);
    return isUsual ? '' : value;
  },
});
listenForSought(update);
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
takeLikedGuideline();
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
