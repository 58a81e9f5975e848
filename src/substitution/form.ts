import { h, type Markup } from '../markup/node.ts';
import { countOf } from '../text/words.ts';
import type { Field, FieldGroup } from './field.ts';

/** How a number came about, in a word. */
const ORIGIN = { given: 'yours', default: 'usual', derived: 'from the old part' } as const;

/** The line under a field: how its number came about, or what is wrong with it. */
export const fieldNote = ({ from, message }: Field): { text: string; fault: boolean } => ({
  text: message ?? ORIGIN[from],
  fault: message !== undefined,
});

/** One input with its label above it and a line below. */
export interface Input {
  key: string;
  label: string;
  /** The line below: a hint, how the number came about, or what is wrong with it. */
  note: string;
  fault: boolean;
  /** What stands in it, and how that came about; nothing where a script fills it in. */
  filled?: { text: string; from: Field['from'] };
}

/**
 * The line under an input. Of a field that stands filled in the page its script ties the two together
 * (`browser/page/typed-forms.ts`): nothing can be typed before, and pages have two dozen of them.
 */
export const noteMarkup = ({ key, note, fault, filled }: Omit<Input, 'label'>): Markup =>
  h(
    'small',
    {
      id: filled === undefined ? `${key}-note` : undefined,
      class: fault ? 'fault' : 'hint',
      'aria-live': filled === undefined ? 'polite' : undefined,
    },
    note,
  );

/** A field with its label and what is said below it. */
export const inputMarkup = (input: Input): Markup => {
  const { key, label, fault, filled } = input;
  return h(
    'p',
    { class: 'field', 'data-from': filled?.from === 'given' ? 'given' : undefined },
    h('label', { for: `field-${key}` }, label),
    h('input', {
      id: `field-${key}`,
      name: key,
      value: filled?.text,
      // Nothing answers to it until the script of the page is there.
      readonly: filled !== undefined,
      'aria-describedby': filled === undefined ? `${key}-note` : undefined,
      'aria-invalid': fault ? 'true' : undefined,
    }),
    noteMarkup(input),
  );
};

const fieldMarkup = (field: Field): Markup => {
  const { key, label, from } = field;
  const { text: note, fault } = fieldNote(field);
  return inputMarkup({ key, label, note, fault, filled: { text: field.text, from } });
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

/** Most numbers that are told of where none is of the old part. */
const MOST_TOLD = 3;

/**
 * What a page goes by, in short, where the numbers themselves are folded away: those of the old part,
 * and what the visitor said besides.
 */
export const numbersInShort = (fields: readonly Field[]): string => {
  const read = fields.filter(({ message }) => message === undefined);
  const ofPart = read.filter(({ group }) => group === 'part');
  const others = read.filter(({ group }) => group !== 'part');
  const said = others.filter(({ from }) => from === 'given');
  const told = ofPart.length === 0 && said.length === 0 ? others.slice(0, MOST_TOLD) : said;
  const words = [
    ...ofPart.map(({ text }) => text),
    ...told.map(({ label, text }) => `${label}: ${text}`),
  ].join(', ');
  const left = others.length - told.length;
  const unread = fields.length - read.length;
  return [
    `Numbers: ${words}`,
    left > 0 && ` and ${countOf(left, 'usual one')}`,
    unread > 0 && `; ${countOf(unread, 'number')} cannot be read`,
  ]
    .filter((text) => text !== false)
    .join('');
};

/** The inputs of some numbers. */
export const fieldsMarkup = (fields: readonly Field[]): Markup[] => fields.map(fieldMarkup);

/** What is to be said of the old part's own numbers; conditions are told of at their position. */
export const partNotes = (fields: readonly Field[]): { label: string; note: string }[] =>
  fields
    .filter(({ group, note }) => group === 'part' && note !== '')
    .map(({ label, note }) => ({ label, note }));
