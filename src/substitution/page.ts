import { basisMark } from '../components/basis-mark.ts';
import { cautionMarkup } from '../components/caution-markup.ts';
import { href } from '../components/links.ts';
import {
  circumstancesOf,
  judgeFirst,
  type Assessment,
  type Catalogue,
  type PositionId,
  type TypeId,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { PositionRow } from '../schemas/positions.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { capital, sentence } from '../text/words.ts';
import { readAddress } from './address.ts';
import { answerSentence } from './answer.ts';
import { cautionsFor, type PageCaution } from './cautions.ts';
import { typedAsIs } from './form.ts';
import { groundsMarkup } from './grounds.ts';
import { judgementMarkup } from './judge-view.ts';
import { numbersForm } from './numbers-form.ts';
import { resultsMarkup } from './results.ts';

/** A substitution page as it is before anyone has said anything, for build and browser. */

const opening = (title: string, answer: string): Markup =>
  h(
    'div',
    { class: 'opening' },
    h('h1', {}, title),
    h('p', { class: 'lead', id: 'answer', 'aria-live': 'polite' }, answer),
    h(
      'p',
      { class: 'actions' },
      h(
        'button',
        { class: 'button', type: 'button', id: 'copy-link', hidden: true },
        'Copy link with these numbers',
      ),
      ' ',
      h('span', { id: 'copied', role: 'status' }),
      ' ',
      h('a', { href: '#stand-ins' }, 'Stand-ins'),
      ' ',
      h('a', { href: '#keep-out' }, 'Keep out'),
      ' ',
      h('a', { href: '#have', class: 'script-only', hidden: true }, 'A part that you have'),
      ' ',
      h('a', { href: '#cautions' }, 'Cautions'),
    ),
  );

/** What brings a caution up, where a script finds it. */
const triggerData = ({ trigger, due }: PageCaution) => ({
  hidden: !due,
  'data-condition': trigger.condition,
  'data-from': trigger.from,
  'data-made': trigger.made?.join(' '),
});

const dangerStrip = (cautions: readonly PageCaution[]): Markup | undefined => {
  const dangers = cautions.filter(({ caution }) => caution.severity === 'danger');
  if (dangers.length === 0) return undefined;
  return h(
    'div',
    { class: 'caution caution-danger danger-strip' },
    h(
      'p',
      {},
      h('strong', { class: 'caution-word' }, 'Danger'),
      dangers.map((one) => [
        ' ',
        h('a', { href: `#${one.caution.id}`, ...triggerData(one) }, one.caution.title),
      ]),
    ),
  );
};

/** A part of the page that scripts fill when it is opened. */
const folded = (id: string, title: string, ...inside: Markup[]): Markup =>
  h(
    'details',
    { id, class: 'aside script-only', hidden: true },
    h('summary', {}, h('h2', {}, title)),
    ...inside,
  );

const emptyForm = (id: string): Markup =>
  h('form', { id, class: 'numbers', novalidate: true, ...typedAsIs });

const part = (id: string, title: string, ...inside: Markup[]): Markup =>
  h(
    'section',
    { class: 'part', 'aria-labelledby': id },
    h('div', { class: 'part-head' }, h('h2', { id }, title)),
    h('div', { class: 'part-body' }, ...inside),
  );

const whatDecides = (position: PositionRow): Markup =>
  part(
    'asks',
    'What decides here',
    h(
      'p',
      {},
      sentence(position.decisive),
      ' ',
      basisMark(position),
      ' ',
      h('a', { href: href(`/positions/${position.id}/`) }, 'All demands of this position'),
    ),
    h(
      'dl',
      { class: 'facts' },
      h('dt', {}, 'A larger value'),
      h('dd', {}, sentence(position.larger)),
      h('dt', {}, 'A smaller value'),
      h('dd', {}, sentence(position.smaller)),
    ),
  );

/** The title of a page and what stands in it. */
export interface SubstitutionPage {
  title: string;
  answer: string;
  main: Markup[];
}

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
  const answer = answerSentence(catalogue, typeId, assessments);
  const circumstances = circumstancesOf(catalogue, request);
  const shown = {
    catalogue,
    assessments,
    circumstances,
    isFull: (one: Assessment) => one === assessments[0],
  };
  const cautions = cautionsFor(catalogue, type, position, { request, assessments });
  const figures = `/replace/${typeId}/in/${positionId}.json` as const;
  const where = midSentence(position.name);
  const main = [
    opening(`${capital(type.name)} in ${where}`, answer),
    dangerStrip(cautions),
    h(
      'details',
      { id: 'judge-first', class: 'judge-first' },
      h('summary', {}, 'First: does the old part need replacing?'),
      h(
        'div',
        { id: 'judgement', 'aria-live': 'polite' },
        judgementMarkup(judgeFirst(catalogue, circumstances.original, positionId, {})),
      ),
      emptyForm('evidence'),
    ),
    numbersForm(catalogue, asked, figures),
    folded(
      'drawn',
      'The old part and the first stand-in, drawn to scale',
      h('div', { id: 'drawn-parts' }),
    ),
    h('div', { id: 'results', class: 'results' }, resultsMarkup(shown)),
    folded(
      'have',
      'Ask about a part that you have',
      emptyForm('having'),
      h('p', { id: 'having-said', class: 'hidden-text', role: 'status' }),
      h('div', { id: 'having-result' }),
    ),
    folded(
      'compare',
      'Two parts side by side',
      emptyForm('comparing'),
      h('p', { id: 'compared', class: 'small quiet', role: 'status' }),
      h('div', { id: 'comparison', class: 'results' }),
    ),
    whatDecides(position),
    cautions.length > 0
      ? part(
          'cautions',
          'Cautions',
          ...cautions.map((one) => h('div', triggerData(one), cautionMarkup(one.caution))),
        )
      : undefined,
    h('div', { id: 'grounds', class: 'results' }, groundsMarkup(shown)),
    h(
      'p',
      { class: 'actions' },
      h('a', { href: href(figures) }, 'All figures of this page as JSON'),
    ),
  ].filter((piece) => piece !== undefined);
  return { title: `${capital(type.short_name)} in ${where}: what to fit`, answer, main };
};
