import { link } from '../components/link.ts';
import type { Catalogue } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { capital, countOf, sentence } from '../text/words.ts';
import type { Field } from './field.ts';
import { fieldSets, fieldsMarkup, numbersInShort, partNotes, type FieldSet } from './form.ts';
import { guidelineKey } from './keys.ts';

/** Which derating guideline holds; capacitors alone have them. */
export const guidelineChoice = ({ guidelines }: Catalogue, chosen: string | undefined): Markup =>
  h(
    'p',
    { class: 'field' },
    h('label', { for: 'field-g' }, 'Derating guideline'),
    h(
      'select',
      { id: 'field-g', name: guidelineKey, disabled: true },
      Object.values(guidelines).map(({ id, name }) =>
        h('option', { value: id, selected: id === chosen }, capital(name)),
      ),
    ),
    h('small', { class: 'hint' }, 'how much of a rating to use'),
  );

/**
 * Numbers below the line that folds them, not within it: a style can then show them whole where there is
 * room and on paper in any browser, for what stands within a closed `details` only newer ones can show.
 */
const foldedNumbers = (
  { kind, summary }: { kind: 'assumed' | 'place'; summary: Markup },
  inside: Markup,
): Markup[] => [h('details', { class: kind }, summary), inside];

/** Most boards have room enough, so its numbers stay out of the way until they are wanted. */
const placeFields = ({ title, fields }: FieldSet): Markup[] =>
  foldedNumbers(
    {
      kind: 'place',
      summary: h('summary', {}, `${title}: ${countOf(fields.length, 'number')}`),
    },
    h('fieldset', {}, h('legend', { class: 'hidden-text' }, title), fieldsMarkup(fields)),
  );

/** What a page says for whose browser runs no scripts, with what that leaves out where it does. */
const withoutScripts = (figures: `/${string}` | undefined): Markup =>
  h(
    'noscript',
    {},
    h(
      'p',
      { class: 'small quiet' },
      'Shown for these usual numbers. With scripts allowed, the page calculates with yours.',
      figures !== undefined && [
        ' Without them it shows all findings of the first stand-in, of others what decides; ',
        link(figures, 'the figures as JSON'),
        ' hold the rest.',
      ],
    ),
  );

/** What a form of numbers is about. */
export interface NumbersForm {
  /** What its script is told: the old type and its position, or a device with its use and family. */
  about: Readonly<Record<string, string>>;
  fields: readonly Field[];
  /** Where the usual numbers are told of. */
  usual: `/${string}`;
  /** What else is asked beside the voltages. */
  withVoltage?: Markup;
  /** Where what the page leaves out is told as JSON; nothing where it leaves out nothing. */
  figures?: `/${string}`;
}

/** The form of all numbers that a page rests on, which its script brings to life. */
export const numbersForm = ({
  about,
  fields,
  usual,
  withVoltage,
  figures,
}: NumbersForm): Markup => {
  const sets = fieldSets(fields);
  const place = sets.find(({ group }) => group === 'place');
  return h(
    'form',
    {
      id: 'numbers',
      class: 'numbers',
      ...Object.fromEntries(Object.entries(about).map(([name, id]) => [`data-${name}`, id])),
    },
    ...foldedNumbers(
      {
        kind: 'assumed',
        summary: h('summary', { id: 'in-short' }, numbersInShort(fields)),
      },
      h(
        'div',
        {},
        h(
          'div',
          { class: 'sets' },
          sets
            .filter((set) => set !== place)
            .map((set) =>
              h(
                'fieldset',
                {},
                h('legend', {}, set.title),
                fieldsMarkup(set.fields),
                set.group === 'voltage' && withVoltage,
              ),
            ),
        ),
        ...(place === undefined ? [] : placeFields(place)),
        h(
          'p',
          { class: 'small quiet script-only', hidden: true },
          'Everything follows as you type; a copied link carries your numbers. ',
          h('button', { type: 'reset' }, 'Back to the usual numbers'),
        ),
        h(
          'p',
          { class: 'small quiet' },
          link(usual, 'Where the usual numbers come from'),
          '. ',
          partNotes(fields)
            .map(({ label, note }) => `${label}: ${sentence(note)}`)
            .join(' '),
        ),
      ),
    ),
    withoutScripts(figures),
  );
};
