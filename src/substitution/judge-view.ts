import { href } from '../components/links.ts';
import {
  reformingInWords,
  type Advice,
  type Judgement,
  type ReformingPlan,
  type TriageReason,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { sentence } from '../text/words.ts';

const WORDS: Record<Advice, string> = {
  replace: 'Replace it',
  test: 'Test it before you replace it',
  leave: 'Leave it, unless it is in the way',
};

/** Documents that are none: a rule of the trade says so by its basis already. */
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
      : [' ', h('a', { href: href(`/sources/${source}/`) }, 'Source'), '.'],
  );

/** How to re-form the old part before it meets its supply. */
const reformingPart = (plan: ReformingPlan | undefined): Markup | false =>
  plan !== undefined &&
  h(
    'p',
    {},
    h('strong', {}, 'Before power: '),
    `${reformingInWords(plan)}. `,
    h('a', { href: href('/cautions/#reform-old-stock') }, 'What to mind'),
    '. ',
    ...plan.sources
      .filter((source) => !NO_DOCUMENT.includes(source))
      .flatMap((source, index) => [
        index === 0 ? 'Sources: ' : ', ',
        h('a', { href: href(`/sources/${source}/`) }, String(index + 1)),
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
