import {
  assess,
  circumstancesOf,
  filledSum,
  findStandIns,
  judgeFirst,
  resolveSituation,
  type Assessment,
  type Catalogue,
} from '../../engine/index.ts';
import { fieldsFor, readAddress, type Asked } from '../../substitution/address.ts';
import { answerSentence } from '../../substitution/answer.ts';
import { capacitorJudged } from '../../substitution/capacitor-judged.ts';
import { havingFields, readHaving } from '../../substitution/having.ts';
import { guidelineKey } from '../../substitution/keys.ts';
import { partRows } from '../../substitution/part-rows.ts';
import type { Shown } from '../../substitution/shown.ts';
import { answeredFirst } from '../../substitution/strangeness.ts';
import { showSought } from '../address/sought.ts';
import { habit } from '../kept/habits.ts';
import type { Steps } from '../page/turns.ts';
import { listenForAdding, showAdding } from './adding.ts';
import { showAnswer } from './answer.ts';
import { comparedTypes, listenForComparing, showComparison } from './comparing.ts';
import { listenForDrawing, showDrawn } from './drawn-parts.ts';
import { showCautions } from './due-cautions.ts';
import { listenForHaving, showHaving } from './having.ts';
import { listenForEvidence, showJudgement } from './judge-first.ts';
import { askedNow, inputFor, position, type } from './number-fields.ts';
import { showFields } from './shown-fields.ts';
import { listenForOpening, openTypes, showGrounds, showStandIns } from './stand-ins.ts';

/** Reckons a substitution page with the visitor's numbers: a `Reckoning` (waking.ts). */

const readHad = (catalogue: Catalogue) => readHaving(catalogue, askedNow());

/** What the page shows of all that was reckoned: findings of the first, the open, the compared. */
const shownOf = (catalogue: Catalogue, asked: Asked): Shown => {
  const assessments = answeredFirst(
    catalogue,
    asked.request,
    findStandIns(catalogue, asked.request),
  );
  const circumstances = circumstancesOf(catalogue, asked.request);
  const wanted = new Set([...openTypes(), ...comparedTypes()]);
  const { candidate } = readHad(catalogue);
  return {
    catalogue,
    position: asked.request.position,
    assessments,
    sumOf: (finding, one) => filledSum(finding, one, circumstances),
    having: candidate && assess(catalogue, asked.request, candidate),
    isFull: (one: Assessment) => one === assessments[0] || wanted.has(one.candidate.type),
    ledTo: true,
    habit: habit(),
  };
};

/** What the visitor asks about besides the list. */
const showBesides = (shown: Shown, asked: Asked): void => {
  const { catalogue, having, habit } = shown;
  const { position: at } = asked.request;
  showHaving(shown, {
    types: Object.values(catalogue.types),
    fields: havingFields(readHad(catalogue), having, habit),
    judgement: having && judgeFirst(catalogue, having.candidate, at, {}),
  });
  const { original } = resolveSituation(catalogue, asked.request);
  showComparison(shown, (a, b) => partRows(original, a, b, habit));
  showDrawn(shown, asked);
  showAdding({ catalogue, standIns: shown.assessments, habit });
};

const readAsked = (catalogue: Catalogue): Asked =>
  readAddress(catalogue, type, position, askedNow());

/** Puts into the form what each number is read or taken as. */
export const showNumbers = (catalogue: Catalogue): void => {
  showFields(fieldsFor(catalogue, readAsked(catalogue), habit()));
};

/** Draws what the address asks: the answer first. */
export function* recompute(catalogue: Catalogue): Steps {
  const asked = readAsked(catalogue);
  const shown = shownOf(catalogue, asked);
  showAnswer(
    answerSentence(catalogue, asked.request, shown.assessments, {
      habit: shown.habit,
      asked: asked.request,
    }),
  );
  yield;
  showNumbers(catalogue);
  const guideline = inputFor(guidelineKey);
  if (guideline !== undefined) guideline.value = asked.request.guideline ?? guideline.value;
  yield;
  showStandIns(shown);
  yield;
  showGrounds(shown);
  yield;
  showBesides(shown, asked);
  const { conditions } = resolveSituation(catalogue, asked.request);
  showCautions({ conditions, assessments: shown.assessments });
  showJudgement(capacitorJudged(catalogue, asked.request, askedNow()));
  showSought();
}

/** Calls whenever something but the numbers asks for another drawing. */
export const listen = (update: () => void): void => {
  listenForEvidence(update);
  listenForHaving(update);
  listenForComparing(update);
  listenForOpening(update);
  listenForDrawing(update);
  listenForAdding(update);
};
