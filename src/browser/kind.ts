import {
  filledKindSum,
  findKindStandIns,
  kindCircumstances,
  resolveKindSituation,
  type Catalogue,
  type KindAssessment,
  type KindPart,
} from '../engine/index.ts';
import { answerSentence } from '../substitution/answer.ts';
import { kindFieldsFor, readKindAddress, type KindAsked } from '../substitution/kind-address.ts';
import type { Shown } from '../substitution/shown.ts';
import { given } from './address-bar.ts';
import { sayNotFetched, showAnswer } from './answer.ts';
import { byId } from './by-id.ts';
import { cataloguePart } from './catalogue-part.ts';
import { copyLinkButton } from './copy-link.ts';
import { showCautions } from './due-cautions.ts';
import { habit, hasHabit, listenForHabit } from './habits.ts';
import { askedNow, enlivenNumbers, position, showFields, type } from './number-fields.ts';
import { listenForSetting, showSetting } from './setting.ts';
import { listenForSought, showSought } from './sought.ts';
import { listenForOpening, openTypes, showStandIns } from './stand-ins.ts';

/** Brings a page about stand-ins of a kind besides capacitors to life. */

const readAsked = (catalogue: Catalogue): KindAsked =>
  readKindAddress(catalogue, type, position, askedNow());

const showNumbers = (catalogue: Catalogue): void => {
  showFields(kindFieldsFor(catalogue, readAsked(catalogue), habit()));
};

const shownOf = (catalogue: Catalogue, { request }: KindAsked): Shown<KindPart> => {
  const assessments = findKindStandIns(catalogue, request);
  const circumstances = kindCircumstances(catalogue, request);
  const wanted = openTypes();
  return {
    catalogue,
    assessments,
    sumOf: (finding, one) => filledKindSum(finding, one, circumstances),
    isFull: (one: KindAssessment) => one === assessments[0] || wanted.has(one.candidate.type),
    habit: habit(),
  };
};

const recompute = (catalogue: Catalogue): void => {
  const asked = readAsked(catalogue);
  showNumbers(catalogue);
  const shown = shownOf(catalogue, asked);
  showAnswer(answerSentence(catalogue, type, shown.assessments, shown.habit));
  showStandIns(shown);
  showSetting(shown, asked);
  const { conditions } = resolveKindSituation(catalogue, asked.request);
  showCautions({ conditions, assessments: shown.assessments });
  showSought();
};

const update = (): void => {
  cataloguePart(position).then(recompute, sayNotFetched);
};

listenForSetting(update);
listenForOpening(update);
listenForSought(update);
enlivenNumbers({
  update,
  showFields: () => {
    cataloguePart(position).then(showNumbers, () => undefined);
  },
  prepare: () => {
    cataloguePart(position).catch(() => undefined);
  },
});
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
