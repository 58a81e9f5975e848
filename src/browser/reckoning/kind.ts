import {
  assessKind,
  filledKindSum,
  findKindStandIns,
  kindCircumstances,
  resolveKindSituation,
  type Catalogue,
  type KindAssessment,
  type KindPart,
} from '../../engine/index.ts';
import { kindAnswer } from '../../substitution/kind-answer.ts';
import { kindFieldsFor, readKindAddress, type KindAsked } from '../../substitution/kind-address.ts';
import { kindHavingFields, readKindHaving } from '../../substitution/kind-having.ts';
import { kindJudged } from '../../substitution/kind-judged.ts';
import { kindPartRows } from '../../substitution/part-rows.ts';
import type { Shown } from '../../substitution/shown.ts';
import { answeredFirst } from '../../substitution/strangeness.ts';
import { showSought } from '../address/sought.ts';
import { habit } from '../kept/habits.ts';
import type { Steps } from '../page/turns.ts';
import { listenForAdding, showAdding } from './adding.ts';
import { showAnswer } from './answer.ts';
import { comparedTypes, listenForComparing, showComparison } from './comparing.ts';
import { showCautions } from './due-cautions.ts';
import { listenForHaving, showHaving } from './having.ts';
import { listenForEvidence, showJudgement } from './judge-first.ts';
import { askedNow, position, type } from './number-fields.ts';
import { showFields } from './shown-fields.ts';
import { showSetting } from './setting.ts';
import { listenForOpening, openTypes, showGrounds, showStandIns } from './stand-ins.ts';

/** Reckons a page about stand-ins of a kind besides capacitors: a `Reckoning` (waking.ts). */

const readAsked = (catalogue: Catalogue): KindAsked =>
  readKindAddress(catalogue, type, position, askedNow());

/** Puts into the form what each number is read or taken as. */
export const showNumbers = (catalogue: Catalogue): void => {
  showFields(kindFieldsFor(catalogue, readAsked(catalogue), habit()));
};

const shownOf = (catalogue: Catalogue, { request }: KindAsked): Shown<KindPart> => {
  const assessments = answeredFirst(catalogue, request, findKindStandIns(catalogue, request));
  const circumstances = kindCircumstances(catalogue, request);
  const wanted = new Set([...openTypes(), ...comparedTypes()]);
  const { candidate } = readKindHaving(catalogue, circumstances.kind, askedNow());
  return {
    catalogue,
    position: request.position,
    assessments,
    sumOf: (finding, one) => filledKindSum(finding, one, circumstances),
    having: candidate && assessKind(catalogue, request, candidate),
    isFull: (one: KindAssessment) => one === assessments[0] || wanted.has(one.candidate.type),
    ledTo: true,
    habit: habit(),
  };
};

/** The part that the visitor has, and two parts side by side. */
const showBesides = (shown: Shown<KindPart>, { request }: KindAsked): void => {
  const { catalogue, having, habit } = shown;
  const { kind, original } = kindCircumstances(catalogue, request);
  showHaving(shown, {
    types: Object.values(catalogue.kindTypes).filter((type) => type.kind === kind.id),
    fields: kindHavingFields(kind, readKindHaving(catalogue, kind, askedNow()), having, habit),
  });
  showComparison(shown, (a, b) => kindPartRows(kind, original, a, b, habit));
  const standIns = shown.assessments.map((one) => ({ ...one, details: [] }));
  showAdding({ catalogue, standIns, habit });
};

/** Draws what the address asks: the answer first. */
export function* recompute(catalogue: Catalogue): Steps {
  const asked = readAsked(catalogue);
  const shown = shownOf(catalogue, asked);
  showAnswer(kindAnswer(catalogue, asked.request, shown.assessments, shown.habit));
  yield;
  showNumbers(catalogue);
  yield;
  showStandIns(shown);
  yield;
  showGrounds(shown);
  yield;
  showBesides(shown, asked);
  showSetting(shown, asked);
  const { conditions } = resolveKindSituation(catalogue, asked.request);
  showCautions({ conditions, assessments: shown.assessments });
  showJudgement(kindJudged(catalogue, asked.request, askedNow()));
  showSought();
}

/** Calls whenever something but the numbers asks for another drawing. */
export const listen = (update: () => void): void => {
  listenForEvidence(update);
  listenForHaving(update);
  listenForComparing(update);
  listenForOpening(update);
  listenForAdding(update);
};
