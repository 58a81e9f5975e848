import {
  circumstancesOf,
  filledSum,
  judgeFirst,
  type Assessment,
  type Catalogue,
  type Finding,
  type PositionId,
  type TypeId,
} from '../engine/index.ts';
import { h } from '../markup/node.ts';
import { partInPosition } from '../text/part-in-position.ts';
import { fieldsFor, readAddress } from './address.ts';
import { answerSentence } from './answer.ts';
import { cautionsFor } from './cautions.ts';
import { groundsMarkup } from './grounds.ts';
import { guidelineChoice, numbersForm } from './numbers-form.ts';
import {
  belowResults,
  dangerStrip,
  judgeFirstPart,
  folded,
  opening,
  type Leads,
  type SubstitutionPage,
} from './page-pieces.ts';
import { resultsMarkup } from './results.ts';

/** A substitution page as it is before anyone has said anything, for build and browser. */

const LEADS: readonly Leads[] = [
  { id: 'stand-ins', word: 'Stand-ins' },
  { id: 'keep-out', word: 'Keep out' },
  { id: 'have', word: 'A part that you have', scripted: true },
  { id: 'add', word: 'Add to a job', scripted: true },
  { id: 'cautions', word: 'Cautions' },
];

/**
 * The page of a type in a position, for the usual numbers.
 * @param assessments the ranked stand-ins at those
 * @throws if the catalogue has no such type or position
 */
export const substitutionPage = (
  catalogue: Catalogue,
  typeId: TypeId,
  positionId: PositionId,
  assessments: readonly Assessment[],
): SubstitutionPage => {
  const type = catalogue.types[typeId];
  const position = catalogue.positions[positionId];
  if (type === undefined || position === undefined)
    throw new Error(`no type ${typeId} or position ${positionId}`);
  const asked = readAddress(catalogue, typeId, positionId, new URLSearchParams());
  const { request } = asked;
  const answer = answerSentence(catalogue, request, assessments);
  const circumstances = circumstancesOf(catalogue, request);
  const shown = {
    catalogue,
    position: positionId,
    assessments,
    sumOf: (finding: Finding, one: Assessment) => filledSum(finding, one, circumstances),
    isFull: (one: Assessment) => one === assessments[0],
  };
  const cautions = cautionsFor(catalogue, type, position, { request, assessments });
  const figures = `/replace/${typeId}/in/${positionId}.json` as const;
  const main = [
    opening(partInPosition(type.name, position.name), answer, LEADS),
    dangerStrip(cautions),
    judgeFirstPart(judgeFirst(catalogue, circumstances.original, positionId, {})),
    numbersForm({
      about: { position: positionId, type: typeId },
      usual: `/positions/${positionId}/#conditions`,
      fields: fieldsFor(catalogue, asked),
      withVoltage: guidelineChoice(catalogue, request.guideline),
      figures,
    }),
    folded(
      'drawn',
      'The old part and the first stand-in, drawn to scale',
      h('div', { id: 'drawn-parts' }),
    ),
    h('div', { id: 'results', class: 'results' }, resultsMarkup(shown)),
    ...belowResults({ position, cautions, grounds: groundsMarkup(shown), figures }),
  ].filter((piece) => piece !== undefined);
  return { title: `${partInPosition(type.short_name, position.name)}: what to fit`, answer, main };
};
