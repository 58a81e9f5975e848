import type { Apart, Catalogue, Expected } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { capital, sentence, typeset } from '../text/words.ts';
import { kindName, styleName } from './names.ts';
import { answerName, questionOf, rangeText } from './phrases.ts';

const expectedText = (catalogue: Catalogue, question: string, expected: Expected): string => {
  if ('unmarked' in expected) return 'not marked so';
  return 'answer' in expected
    ? answerName(catalogue, question, expected.answer)
    : rangeText(catalogue, expected.range);
};

/** What to call the two sides: by what is inside, or by style where that is the same. */
const sideNames = (catalogue: Catalogue, { first, second }: Apart): [string, string] =>
  first.style === second.style
    ? [capital(kindName(catalogue, first.kind)), capital(kindName(catalogue, second.kind))]
    : [styleName(catalogue, first.style), styleName(catalogue, second.style)];

/** What would tell the two likeliest apart. */
export const apartMarkup = (catalogue: Catalogue, apart: Apart): Markup | undefined => {
  const [first, second] = sideNames(catalogue, apart);
  if (apart.tellings.length === 0 && apart.disguises.length === 0) return undefined;
  return h(
    'section',
    { class: 'apart' },
    h('h3', {}, `${first} or ${midSentence(second)}?`),
    apart.disguises.map((row) => h('p', {}, sentence(row.settled_by))),
    apart.tellings.length > 0 &&
      h(
        'div',
        {
          class: 'table-scroll',
          tabindex: 0,
          role: 'region',
          'aria-label': 'What tells them apart',
        },
        h(
          'table',
          {},
          h('caption', { class: 'hidden-text' }, 'What to expect of each'),
          h(
            'thead',
            {},
            h(
              'tr',
              {},
              h('th', { scope: 'col' }, 'Look for'),
              h('th', { scope: 'col' }, first),
              h('th', { scope: 'col' }, second),
            ),
          ),
          h(
            'tbody',
            {},
            apart.tellings.map(({ question, first: one, second: two }) =>
              h(
                'tr',
                {},
                h(
                  'th',
                  { scope: 'row' },
                  h(
                    'a',
                    { href: `#question-${question}` },
                    questionOf(catalogue, question)?.name ?? question,
                  ),
                ),
                h('td', {}, typeset(expectedText(catalogue, question, one))),
                h('td', {}, typeset(expectedText(catalogue, question, two))),
              ),
            ),
          ),
        ),
      ),
  );
};
