import { basisMark } from '../components/basis-mark.ts';
import { link } from '../components/link.ts';
import { deviceCircumstances, type Catalogue, type DeviceAssessment } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';
import { numbersForm } from '../substitution/numbers-form.ts';
import {
  addingPart,
  cautionsPart,
  dangerStrip,
  opening,
  part,
} from '../substitution/page-pieces.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { sentence } from '../text/words.ts';
import { deviceAnswer } from './answer.ts';
import { asksList } from './asks.ts';
import { deviceFieldsFor } from './numbers.ts';
import { citedBy, deviceResults } from './results.ts';
import { socketFigure } from './socket-drawing.ts';

/** The title of a page about a device in a use, what it answers, and what stands in it. */
export interface DevicePage {
  title: string;
  answer: string;
  main: Markup[];
}

/** The page of a device in a use, at the usual numbers. */
export const devicePage = (
  catalogue: Catalogue,
  old: DeviceRow,
  use: UseRow,
  assessments: readonly DeviceAssessment[],
): DevicePage => {
  const title = `${old.name} as ${midSentence(use.name)}`;
  const answer = deviceAnswer(old, use, assessments);
  const cited = citedBy(catalogue.sources, assessments);
  const circumstances = deviceCircumstances(catalogue, { original: old, use });
  const shown = { catalogue, circumstances, assessments, cited };
  // A use names the cautions that always hold in it.
  const cautions = catalogue.cautions
    .filter(({ id }) => use.cautions.includes(id))
    .map((caution) => ({ caution, trigger: {}, due: true }));
  const main = [
    opening(
      title,
      answer,
      [
        { id: 'stand-ins', word: 'Stand-ins' },
        { id: 'asks', word: 'What is asked' },
        { id: 'add', word: 'Add to a job', scripted: true },
      ],
      link(`/devices/${old.id}/`, `About the ${old.name}`),
    ),
    dangerStrip(cautions),
    numbersForm({
      about: { device: old.id, use: use.id, family: old.family },
      fields: deviceFieldsFor(catalogue, { old, use }, { given: {}, rejected: {} }),
      usual: `/devices/uses/${use.id}/#numbers`,
    }),
    h('div', { id: 'results', class: 'results' }, ...deviceResults(shown)),
    addingPart(),
    part(
      'asks',
      'What is asked here',
      h(
        'p',
        {},
        sentence(use.decisive),
        ' ',
        basisMark(use),
        ' ',
        link(`/devices/uses/${use.id}/`, 'More about this use'),
      ),
      ...asksList(catalogue, use),
      h('p', {}, `Trap: ${sentence(use.trap)}`),
      ...socketFigure(catalogue, old),
    ),
    cautionsPart(cautions),
  ].filter((piece) => piece !== undefined);
  return { title, answer, main };
};
