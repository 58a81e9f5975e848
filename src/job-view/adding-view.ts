import { standInWords, type StandIn } from '../job/index.ts';
import { href } from '../components/links.ts';
import { verdictWords } from '../components/verdict-shape.ts';
import type { Habit } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';

/** The form that adds the part of a substitution page to a job. */

const field = (key: string, label: string, hint: string, input: Markup, wide = false): Markup =>
  h(
    'p',
    { class: wide ? 'field field-wide' : 'field' },
    h('label', { for: `add-${key}` }, label),
    input,
    h('small', { class: 'hint' }, hint),
  );

const text = (key: string, label: string, hint: string): Markup =>
  field(
    key,
    label,
    hint,
    h('input', { id: `add-${key}`, name: key, maxlength: '2000', autocomplete: 'off' }),
  );

const choice = (key: string, label: string, hint: string): Markup =>
  field(key, label, hint, h('select', { id: `add-${key}`, name: key }), true);

/** The form, its lists of choices still empty. */
export const addingForm = (): Markup[] => [
  h(
    'fieldset',
    {},
    h('legend', { class: 'hidden-text' }, 'What goes into the job'),
    text('designators', 'Designators', 'such as C12, or C3, C7-C9'),
    text('marking', 'Printed on it', 'as it can be read, if you like'),
    choice('job', 'Job', 'kept in this browser'),
    choice('standIn', 'To be fitted', 'can be changed in the plan'),
  ),
  h(
    'p',
    { class: 'small quiet' },
    'Its type, its place and all numbers of yours on this page go with it. ',
    h('button', {}, 'Add it'),
  ),
];

/** A stand-in as an answer to choose. */
export const standInChoice = (
  one: StandIn,
  nameOf: (id: string) => string,
  habit?: Habit,
): string => `${standInWords(one, nameOf, habit)}: ${verdictWords[one.verdict]}`;

/** What was added, and where it is now. */
export interface AddedWords {
  designators: string;
  /** The type and the position, in words. */
  part: string;
  /** The stand-in that was chosen, in words; nothing where the plan says. */
  standIn: string | undefined;
  job: string;
  /** Which row of the job it is. */
  row: number;
  /** What there is to say besides, in sentences. */
  said: readonly string[];
}

/** Says what was added, with links to it. */
export const addedMarkup = ({
  designators,
  part,
  standIn,
  job,
  row,
  said,
}: AddedWords): Markup[] => [
  `Added to “${job}” as row ${String(row)}: ${designators === '' ? '' : `${designators}, `}${part}${standIn === undefined ? '' : `; to be fitted: ${standIn}`}. `,
  ...said.map((sentence) => `${sentence} `),
  h('a', { href: href('/job/#parts') }, 'Open the job'),
  ' ',
  h('a', { href: href('/job/#plan') }, 'Its plan'),
];
