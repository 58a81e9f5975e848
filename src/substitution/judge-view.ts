import { link } from '../components/link.ts';
import {
  reformingInWords,
  type Advice,
  type Judgement,
  type ReformingPlan,
  type Sign,
  type TriageReason,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { inputMarkup, type Input } from './form.ts';
import { signsKey } from './old-part.ts';

const WORDS: Record<Advice, string> = {
  replace: 'Replace it',
  test: 'Test it before you replace it',
  leave: 'Leave it, unless it is in the way',
};

/** Ids of sources that are no documents: a rule of the trade says so by its basis already. */
const NO_DOCUMENT = ['trade', 'identity'];

const reasonItem = ({ why, working, source, note }: TriageReason): Markup =>
  h(
    'li',
    {},
    working !== '' && `${working}: `,
    sentence(why),
    note !== '' && ` ${sentence(note)}`,
    NO_DOCUMENT.includes(source)
      ? ' Common practice.'
      : [' ', link(`/sources/${source}/`, 'Source'), '.'],
  );

/** How to re-form the old part before it meets its supply. */
export const reformingPart = (plan: ReformingPlan | undefined): Markup | false =>
  plan !== undefined &&
  h(
    'p',
    {},
    h('strong', {}, 'Before power: '),
    `${reformingInWords(plan)}. `,
    link('/cautions/#reform-old-stock', 'What to mind'),
    '. ',
    ...plan.sources
      .filter((source) => !NO_DOCUMENT.includes(source))
      .flatMap((source, index) => [
        index === 0 ? 'Sources: ' : ', ',
        link(`/sources/${source}/`, String(index + 1)),
      ]),
    '.',
  );

/** What to do with the old part and why, and what replacing a good one risks. */
export const judgementMarkup = ({ advice, reasons, reforming }: Judgement): Markup[] =>
  [
    h('p', {}, h('strong', {}, `${WORDS[advice]}.`)),
    h('ul', {}, ...reasons.map(reasonItem)),
    advice !== 'replace' && reformingPart(reforming),
    advice !== 'replace' &&
      h(
        'p',
        { class: 'quiet small' },
        'Replacing what is good has its own risk: lifted pads, a part the wrong way round, a joint that was sound.',
      ),
  ].filter((piece) => piece !== false);

const signBox = ({ id, sign }: Sign): Markup =>
  h(
    'p',
    { class: 'check' },
    h('input', { type: 'checkbox', id: `seen-${id}`, name: signsKey, value: id }),
    h('label', { for: `seen-${id}` }, capital(sign)),
  );

/** What is known of an old part, as its page asks for it and judges by it. */
export interface JudgedFirst {
  judgement: Judgement;
  /** What was measured, each with what is said below its field. */
  inputs: readonly Input[];
  /** What else counts, or where it is given. */
  besides: string;
  /** What may be seen on it. */
  signs: readonly Sign[];
  /** Ids of the signs that were seen. */
  seen: readonly string[];
}

/** The form that asks what was found out about the old part, and what is seen on it. */
export const evidenceForm = ({ inputs, besides, signs }: JudgedFirst): Markup[] =>
  [
    h('fieldset', {}, h('legend', {}, 'What is known of it'), ...inputs.map(inputMarkup)),
    h('p', { class: 'small quiet' }, besides),
    signs.length > 0 &&
      h('fieldset', {}, h('legend', {}, 'What is seen on it'), ...signs.map(signBox)),
  ].filter((piece) => piece !== false);
