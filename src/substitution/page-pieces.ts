import { basisMark } from '../components/basis-mark.ts';
import { cautionMarkup } from '../components/caution-markup.ts';
import { link } from '../components/link.ts';
import type { Judgement } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { KindPositionRow } from '../schemas/kinds.ts';
import type { PositionRow } from '../schemas/positions.ts';
import { sentence } from '../text/words.ts';
import type { PageCaution } from './cautions.ts';
import { judgementMarkup } from './judge-view.ts';

/** Pieces that pages about stand-ins for any kind of part are made of. */

/** A place in the page that its opening leads to. */
export interface Leads {
  id: string;
  word: string;
  /** Only where there are scripts. */
  scripted?: boolean;
}

/** Title, answer and what leads further down, or elsewhere. */
export const opening = (
  title: string,
  answer: string,
  leads: readonly Leads[],
  ...elsewhere: Markup[]
): Markup =>
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
      ...leads.flatMap(({ id, word, scripted = false }) => [
        h(
          'a',
          { href: `#${id}`, class: scripted ? 'script-only' : undefined, hidden: scripted },
          word,
        ),
        ' ',
      ]),
      ...elsewhere,
    ),
  );

/** What brings a caution up, where a script finds it. */
const triggerData = ({ trigger, due }: PageCaution) => ({
  hidden: !due,
  'data-condition': trigger.condition,
  'data-from': trigger.from,
  'data-made': trigger.made?.join(' '),
});

/** What can kill, at the top of the page. */
export const dangerStrip = (cautions: readonly PageCaution[]): Markup | undefined => {
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
        h('a', { href: `#${one.caution.id}`, hidden: !one.due }, one.caution.title),
      ]),
    ),
  );
};

/** A part of the page that scripts fill when it is opened. */
export const folded = (id: string, title: string, ...inside: Markup[]): Markup =>
  h(
    'details',
    { id, class: 'aside script-only', hidden: true },
    h('summary', {}, h('h2', {}, title)),
    ...inside,
  );

/** A form that scripts fill. */
export const emptyForm = (id: string): Markup => h('form', { id, class: 'numbers' });

/** Asks first whether the old part needs replacing at all; scripts draw the form once it is opened. */
export const judgeFirstPart = (judgement: Judgement): Markup =>
  h(
    'details',
    { id: 'judge-first', class: 'judge-first' },
    h('summary', {}, 'First: does the old part need replacing?'),
    h('div', { id: 'judgement', 'aria-live': 'polite' }, judgementMarkup(judgement)),
    emptyForm('evidence'),
  );

/** Adds what the page is about to a job. */
export const addingPart = (): Markup =>
  folded('add', 'Add to a job', emptyForm('adding'), h('p', { id: 'added', role: 'status' }));

/** A part that the visitor asks about, two parts side by side, and a job: all filled by scripts. */
const askedBesides = (): Markup[] => [
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
  addingPart(),
];

/** A part of the page under a heading of its own. */
export const part = (id: string, title: string, ...inside: Markup[]): Markup =>
  h(
    'section',
    { class: 'part', 'aria-labelledby': id },
    h('div', { class: 'part-head' }, h('h2', { id }, title)),
    h('div', { class: 'part-body' }, ...inside),
  );

/** Every caution that the page may have to show; scripts show those that fall due. */
export const cautionsPart = (cautions: readonly PageCaution[]): Markup | undefined =>
  cautions.length === 0
    ? undefined
    : part(
        'cautions',
        'Cautions',
        ...cautions.map((one) =>
          cautionMarkup(one.caution, { brief: true, due: triggerData(one) }),
        ),
      );

/** The title of a page and what stands in it. */
export interface SubstitutionPage {
  title: string;
  answer: string;
  main: Markup[];
}

const changedValue = (word: string, said: string): Markup[] =>
  said === '' ? [] : [h('dt', {}, word), h('dd', {}, sentence(said))];

/** What decides in a position, and what another value does there. */
const whatDecides = (position: PositionRow | KindPositionRow): Markup =>
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
      link(`/positions/${position.id}/`, 'All demands of this position'),
    ),
    h(
      'dl',
      { class: 'facts' },
      ...changedValue('A larger value', position.larger),
      ...changedValue('A smaller value', position.smaller),
    ),
  );

/** What stands below the results of a page. */
interface BelowResults {
  position: PositionRow | KindPositionRow;
  cautions: readonly PageCaution[];
  /** What the findings that are shown rest on. */
  grounds: readonly Markup[];
  /** Address of all figures of the page. */
  figures: `/${string}`;
}

/** What may be asked besides, what decides in the position, cautions, sources and all figures. */
export const belowResults = ({
  position,
  cautions,
  grounds,
  figures,
}: BelowResults): (Markup | undefined)[] => [
  ...askedBesides(),
  whatDecides(position),
  cautionsPart(cautions),
  h('div', { id: 'grounds', class: 'results' }, grounds),
  h('p', { class: 'actions' }, link(figures, 'All figures of this page as JSON')),
];
