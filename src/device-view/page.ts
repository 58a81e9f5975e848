import { basisMark } from '../components/basis-mark.ts';
import { cautionMarkup } from '../components/caution-markup.ts';
import { deviceCircumstances, type Catalogue, type DeviceAssessment } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';
import { link } from '../substitution/shown.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { sentence } from '../text/words.ts';
import { deviceAnswer } from './answer.ts';
import { asksTable } from './asks.ts';
import { deviceNumbers } from './numbers.ts';
import { citedBy, deviceResults } from './results.ts';
import { socketFigure } from './socket-drawing.ts';

const part = (id: string, title: string, ...inside: Markup[]): Markup =>
  h(
    'section',
    { class: 'part', 'aria-labelledby': id },
    h('div', { class: 'part-head' }, h('h2', { id }, title)),
    h('div', { class: 'part-body' }, ...inside),
  );

const dangerStrip = (cautions: readonly CautionRow[]): Markup[] => {
  const dangers = cautions.filter(({ severity }) => severity === 'danger');
  if (dangers.length === 0) return [];
  const links = dangers.flatMap(({ id, title }) => [' ', h('a', { href: `#${id}` }, title)]);
  const words = h('strong', { class: 'caution-word' }, 'Danger');
  return [h('div', { class: 'caution caution-danger danger-strip' }, h('p', {}, words, ...links))];
};

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
  const circumstances = deviceCircumstances(catalogue, old, use);
  const shown = { catalogue, circumstances, assessments, cited };
  const cautions = catalogue.cautions.filter(({ id }) => use.cautions.includes(id));
  const main: Markup[] = [
    h(
      'div',
      { class: 'opening' },
      h('h1', {}, title),
      h('p', { class: 'lead', id: 'answer', 'aria-live': 'polite' }, answer),
      h(
        'p',
        { class: 'actions' },
        h('a', { href: '#stand-ins' }, 'Stand-ins'),
        ' ',
        h('a', { href: '#asks' }, 'What is asked'),
        ' ',
        link(`/devices/${old.id}/`, `About the ${old.name}`),
      ),
    ),
    ...dangerStrip(cautions),
    deviceNumbers(catalogue, old, use),
    h('div', { id: 'results', class: 'results' }, ...deviceResults(shown)),
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
      asksTable(catalogue, use),
      h('p', {}, `Trap: ${sentence(use.trap)}`),
      ...socketFigure(catalogue, old),
    ),
    ...(cautions.length === 0
      ? []
      : [part('cautions', 'Cautions', ...cautions.map((one) => cautionMarkup(one, { brief: true })))]),
  ];
  return { title, answer, main };
};
