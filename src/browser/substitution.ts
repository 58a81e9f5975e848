import {
  circumstancesOf,
  filledSum,
  findStandIns,
  resolveSituation,
  type Assessment,
  type Catalogue,
} from '../engine/index.ts';
import { fieldsFor, guidelineKey, readAddress, type Asked } from '../substitution/address.ts';
import { answerSentence } from '../substitution/answer.ts';
import type { Shown } from '../substitution/shown.ts';
import { given, keepGiven } from './address-bar.ts';
import { sayNotFetched, showAnswer } from './answer.ts';
import { byId } from './by-id.ts';
import { cataloguePart } from './catalogue-part.ts';
import { copyLinkButton } from './copy-link.ts';
import { comparedTypes, listenForComparing, showComparison } from './comparing.ts';
import { listenForDrawing, showDrawn } from './drawn-parts.ts';
import { showCautions } from './due-cautions.ts';
import { likedGuideline, likeGuideline } from './liked-guideline.ts';
import { habit, hasHabit, listenForHabit } from './habits.ts';
import { assessHaving, listenForHaving, showHaving } from './having.ts';
import { listenForEvidence, showJudgement } from './judge-first.ts';
import { askedNow, enlivenNumbers, inputFor, position, showFields, type } from './number-fields.ts';
import { listenForSought, showSought } from './sought.ts';
import { listenForOpening, openTypes, showStandIns } from './stand-ins.ts';

/** Brings a substitution page to life: reckons with the visitor's numbers, kept in the address. */

/** What the page shows of all that was reckoned: findings of the first, the open, the compared. */
const shownOf = (catalogue: Catalogue, asked: Asked): Shown => {
  const assessments = findStandIns(catalogue, asked.request);
  const circumstances = circumstancesOf(catalogue, asked.request);
  const wanted = new Set([...openTypes(), ...comparedTypes()]);
  return {
    catalogue,
    assessments,
    sumOf: (finding, one) => filledSum(finding, one, circumstances),
    having: assessHaving(catalogue, asked),
    isFull: (one: Assessment) => one === assessments[0] || wanted.has(one.candidate.type),
    ledTo: true,
    habit: habit(),
  };
};

const showResults = (shown: Shown, asked: Asked): void => {
  showAnswer(answerSentence(shown.catalogue, type, shown.assessments, shown.habit));
  showStandIns(shown);
  showHaving(shown, asked);
  showComparison(shown, asked);
  showDrawn(shown, asked);
};

/** The guideline that this reader likes goes into the address, so that a shared link shows the same. */
const takeLikedGuideline = (): void => {
  const liked = likedGuideline();
  const options = inputFor(guidelineKey)?.querySelectorAll('option') ?? [];
  const isOffered = [...options].some(({ value }) => value === liked);
  if (!given.has(guidelineKey) && isOffered && liked !== usualGuideline)
    keepGiven(guidelineKey, liked);
};

const readAsked = (catalogue: Catalogue): Asked =>
  readAddress(catalogue, type, position, askedNow());

const showNumbers = (catalogue: Catalogue): void => {
  showFields(fieldsFor(catalogue, readAsked(catalogue), habit()));
};

const recompute = (catalogue: Catalogue): void => {
  const asked = readAsked(catalogue);
  showNumbers(catalogue);
  const guideline = inputFor(guidelineKey);
  if (guideline !== undefined) guideline.value = asked.request.guideline ?? guideline.value;
  const shown = shownOf(catalogue, asked);
  showResults(shown, asked);
  const { conditions } = resolveSituation(catalogue, asked.request);
  showCautions({ conditions, assessments: shown.assessments });
  showJudgement(catalogue, asked);
  showSought();
};

const update = (): void => {
  cataloguePart(position).then(recompute, sayNotFetched);
};

/** The guideline that holds when the address names none, as the page was built. */
const usualGuideline = inputFor(guidelineKey)?.value;

listenForEvidence(update);
listenForHaving(update);
listenForComparing(update);
listenForOpening(update);
listenForDrawing(update);
listenForSought(update);
enlivenNumbers({
  update,
  showFields: () => {
    cataloguePart(position).then(showNumbers, () => undefined);
  },
  prepare: () => {
    cataloguePart(position).catch(() => undefined);
  },
  written: ({ name, value }) => {
    const isUsual = name === guidelineKey && value === usualGuideline;
    if (name === guidelineKey) likeGuideline(isUsual ? '' : value);
    return isUsual ? '' : value;
  },
});
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
takeLikedGuideline();
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
