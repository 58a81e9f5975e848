import { verdictWords } from '../components/verdict-shape.ts';
import { verdictOrder, type Assessment } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { capital } from '../text/words.ts';
import { HAVE } from './comparison.ts';
import { isNotMade, type AnyPart } from './phrases.ts';
import { typeName, type Shown } from './shown.ts';

/** The stand-ins and kept-out parts that stand in the page one by one, with their findings. */
const listedOf = <P extends AnyPart>(assessments: readonly Assessment<P>[]): Assessment<P>[] =>
  assessments.filter((one) => !isNotMade(one));

/** Names of the parts that can be chosen. */
export const choiceNames = <P extends AnyPart>({ assessments, having }: Shown<P>): string[] => [
  ...listedOf(assessments).map(({ candidate }) => candidate.type),
  ...(having === undefined ? [] : [HAVE]),
];

/** The parts that can be chosen, by verdict, in the order of the ranking. */
export const choiceOptions = <P extends AnyPart>({
  catalogue,
  assessments,
  having,
}: Shown<P>): Markup[] =>
  [
    h('option', { value: '' }, 'choose …'),
    having !== undefined &&
      h('option', { value: HAVE }, `Yours: ${midSentence(typeName(catalogue, having))}`),
    ...verdictOrder.flatMap((verdict) => {
      const group = listedOf(assessments).filter((one) => one.verdict === verdict);
      return group.length === 0
        ? []
        : [
            h(
              'optgroup',
              { label: verdictWords[verdict] },
              ...group.map((one) =>
                h('option', { value: one.candidate.type }, capital(typeName(catalogue, one))),
              ),
            ),
          ];
    }),
  ].filter((piece) => piece !== false);

const choiceField = (letter: 'a' | 'b'): Markup =>
  h(
    'p',
    { class: 'field field-wide' },
    h('label', { for: `field-compare-${letter}` }, letter.toUpperCase()),
    h('select', {
      id: `field-compare-${letter}`,
      name: letter,
      'aria-describedby': `compare-${letter}-note`,
    }),
    h('small', { id: `compare-${letter}-note`, class: 'hint', 'aria-live': 'polite' }),
  );

/** The form that asks which two parts to put side by side; their names are put in as they come. */
export const choiceForm = (): Markup[] => [
  h('fieldset', {}, h('legend', {}, 'Which two'), choiceField('a'), choiceField('b')),
];
