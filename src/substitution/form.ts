import { h, type Markup } from '../markup/node.ts';
import type { Field, FieldGroup } from './address.ts';

/** How a number came about, in a word. */
const ORIGIN = { given: 'yours', default: 'usual', derived: 'from the old part' } as const;

/** The line under a field: how its number came about, or what is wrong with it. */
export const fieldNote = ({ from, message }: Field): { text: string; fault: boolean } => ({
  text: message ?? ORIGIN[from],
  fault: message !== undefined,
});

const fieldMarkup = (field: Field): Markup => {
  const { text, fault } = fieldNote(field);
  const noteId = `${field.key}-note`;
  return h(
    'p',
    { class: 'field', 'data-from': field.from },
    h('label', { for: `field-${field.key}` }, field.label),
    h('input', {
      id: `field-${field.key}`,
      name: field.key,
      value: field.text,
      // Nothing answers to it until the script of the page is there.
      readonly: true,
      autocomplete: 'off',
      autocapitalize: 'off',
      spellcheck: 'false',
      'aria-describedby': noteId,
      'aria-invalid': fault ? 'true' : undefined,
    }),
    h('small', { id: noteId, class: fault ? 'fault' : 'hint', 'aria-live': 'polite' }, text),
  );
};

/** Some of the numbers that a page rests on, under one heading. */
export interface FieldSet {
  group: FieldGroup;
  title: string;
  fields: Field[];
}

const TITLES: Record<FieldGroup, string> = {
  part: 'The old part',
  voltage: 'Voltage across it',
  circuit: 'The circuit around it',
  surroundings: 'Heat and time',
  place: 'The room on the board',
};

const GROUPS = Object.keys(TITLES) as FieldGroup[];

/** All numbers that a page rests on, in the order in which one fills them in. */
export const fieldSets = (fields: readonly Field[]): FieldSet[] =>
  GROUPS.map((group) => ({
    group,
    title: TITLES[group],
    fields: fields.filter((field) => field.group === group),
  })).filter((set) => set.fields.length > 0);

/** The inputs of some numbers. */
export const fieldsMarkup = (fields: readonly Field[]): Markup[] => fields.map(fieldMarkup);

/** What is to be said of the old part's own numbers; conditions are told of at their position. */
export const partNotes = (fields: readonly Field[]): { label: string; note: string }[] =>
  fields
    .filter(({ group, note }) => group === 'part' && note !== '')
    .map(({ label, note }) => ({ label, note }));
