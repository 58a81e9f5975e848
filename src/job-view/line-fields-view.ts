import type { LineField, LineFields } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital } from '../text/words.ts';

const TITLES: Readonly<Record<LineField['group'], string>> = {
  part: 'The old part',
  voltage: 'Voltage across it',
  circuit: 'The circuit around it',
  surroundings: 'Heat and time',
  place: 'The room on the board',
  found: 'What was found out about it',
};

const GROUPS = Object.keys(TITLES) as LineField['group'][];

/** How text is typed into a field, whole: nothing is completed or corrected. */
const AS_TYPED = { autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false' } as const;

const fieldMarkup = ({ key, label, text, hint }: LineField): Element =>
  h(
    'label',
    { class: 'bench-field' },
    h('span', { class: 'small' }, label),
    h('input', { 'data-field-key': key, value: text || undefined, maxlength: 60, ...AS_TYPED }),
    h('span', { class: 'small quiet' }, hint),
  );

/** What may be said of a line besides the cells of the parts list, by what it is about. */
export const lineFieldsMarkup = ({ fields, signs }: LineFields): Element[] => [
  ...GROUPS.flatMap((group) => {
    const own = fields.filter((field) => field.group === group);
    return own.length === 0
      ? []
      : [
          h(
            'fieldset',
            { class: 'line-fields' },
            h('legend', {}, TITLES[group]),
            h('div', { class: 'bench-fields' }, own.map(fieldMarkup)),
          ),
        ];
  }),
  ...(signs.length === 0
    ? []
    : [
        h(
          'fieldset',
          { class: 'line-fields' },
          h('legend', {}, 'What is seen on it'),
          signs.map(({ id, sign, seen }) =>
            h(
              'label',
              { class: 'tick' },
              h('input', { type: 'checkbox', 'data-sign': id, checked: seen }),
              ` ${capital(sign)}`,
            ),
          ),
        ),
      ]),
];
