import {
  filledKindSum,
  kindCircumstances,
  resolveKindSituation,
  type Catalogue,
  type Finding,
  type KindAssessment,
  type PositionId,
  type TypeId,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { partInPosition } from '../text/part-in-position.ts';
import { cautionsAt } from './cautions.ts';
import { groundsMarkup } from './grounds.ts';
import { kindFieldsFor, readKindAddress } from './kind-address.ts';
import { kindAnswer } from './kind-answer.ts';
import { judgeOldKind } from './kind-judged.ts';
import { kindPath } from './kind-path.ts';
import { carriesSetting, newTrimmerForm } from './new-trimmer.ts';
import { numbersForm } from './numbers-form.ts';
import {
  belowResults,
  dangerStrip,
  judgeFirstPart,
  opening,
  part,
  type Leads,
  type SubstitutionPage,
} from './page-pieces.ts';
import { resultsMarkup } from './results.ts';
import { settingMarkup } from './setting-view.ts';

const leads = (hasSetting: boolean, hasCautions: boolean): Leads[] => [
  { id: 'stand-ins', word: 'Stand-ins' },
  { id: 'keep-out', word: 'Keep out' },
  { id: 'have', word: 'A part that you have', scripted: true },
  { id: 'add', word: 'Add to a job', scripted: true },
  ...(hasSetting ? [{ id: 'setting', word: 'The setting, carried over' }] : []),
  ...(hasCautions ? [{ id: 'cautions', word: 'Cautions' }] : []),
];

/** A trimmer's old setting, with a form for what is measured on the new one. */
const settingPart = (inside: readonly Markup[]): Markup =>
  part(
    'setting',
    'The setting, carried over',
    h('div', { id: 'carried' }, ...inside),
    h(
      'p',
      { class: 'small quiet script-only', hidden: true },
      'Give the old reading and the old total above, and here what you measure on the new one.',
    ),
    h(
      'div',
      { class: 'script-only', hidden: true },
      h('form', { id: 'new-trimmer', class: 'numbers' }, newTrimmerForm()),
    ),
  );

/**
 * The page of a type of some kind in a position, for the usual numbers.
 * @param assessments the ranked stand-ins at those
 * @throws if the catalogue has no such type or position
 */
export const kindPage = (
  catalogue: Catalogue,
  typeId: TypeId,
  positionId: PositionId,
  assessments: readonly KindAssessment[],
): SubstitutionPage => {
  const type = catalogue.kindTypes[typeId];
  const position = catalogue.kindPositions[positionId];
  const kind = catalogue.kinds[type?.kind ?? ''];
  if (type === undefined || position === undefined || kind === undefined)
    throw new Error(`no type ${typeId} or position ${positionId}`);
  const asked = readKindAddress(catalogue, typeId, positionId, new URLSearchParams());
  const answer = kindAnswer(catalogue, asked.request, assessments);
  const { conditions } = resolveKindSituation(catalogue, asked.request);
  const circumstances = kindCircumstances(catalogue, asked.request);
  const shown = {
    catalogue,
    position: positionId,
    assessments,
    sumOf: (finding: Finding, one: KindAssessment) => filledKindSum(finding, one, circumstances),
    isFull: (one: KindAssessment) => one === assessments[0],
  };
  const cautions = cautionsAt(catalogue, type, position, { conditions, assessments });
  const hasSetting = carriesSetting(circumstances);
  const figures = `${kindPath(kind, typeId, positionId).replace(/\/$/, '')}.json` as `/${string}`;
  const main = [
    opening(
      partInPosition(type.name, position.name),
      answer,
      leads(
        hasSetting,
        cautions.some(({ due }) => due),
      ),
    ),
    dangerStrip(cautions),
    judgeFirstPart(judgeOldKind(catalogue, asked.request, {})),
    numbersForm({
      about: { position: positionId, type: typeId },
      usual: `/positions/${positionId}/#conditions`,
      fields: kindFieldsFor(catalogue, asked),
      figures,
    }),
    hasSetting ? settingPart(settingMarkup(shown, circumstances)) : undefined,
    h('div', { id: 'results', class: 'results' }, resultsMarkup(shown)),
    ...belowResults({ position, cautions, grounds: groundsMarkup(shown), figures }),
  ].filter((piece) => piece !== undefined);
  return { title: `${partInPosition(type.short_name, position.name)}: what to fit`, answer, main };
};
