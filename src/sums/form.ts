import { optionsOf } from '../engine/sums/read-inputs.ts';
import type { ChoiceInput, Input, QuantityInput, Sum } from '../engine/sums/sum.ts';
import { h, type Markup } from '../markup/node.ts';
import { typeset } from '../text/words.ts';

/** What a field says under it when nothing is wrong. */
export const hintOf = (input: Input): string =>
  typeset(input.hint ?? (input.kind === 'quantity' && input.optional ? 'may stay empty' : ''));

const quantityField = (key: string, input: QuantityInput): Markup =>
  h('input', {
    id: `field-${key}`,
    name: key,
    value: input.usual,
    // Nothing answers to it until the script of the page is there.
    readonly: true,
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: 'false',
    'aria-describedby': `${key}-note`,
  });

const choiceField = (key: string, input: ChoiceInput, facts: unknown): Markup =>
  h(
    'select',
    {
      id: `field-${key}`,
      name: key,
      disabled: true,
      autocomplete: 'off',
      'aria-describedby': `${key}-note`,
    },
    ...optionsOf(input, facts).map(({ id, name }) =>
      h('option', { value: id, selected: id === input.usual }, name),
    ),
  );

/** Longest name of a choice, in characters, that a field of usual width shows whole. */
const NARROW = 14;

const isWide = (input: Input, facts: unknown): boolean =>
  input.kind === 'choice' && optionsOf(input, facts).some(({ name }) => name.length > NARROW);

/** The fields of a sum, filled with what stands in them at first. */
export const sumFields = (sum: Sum, facts: unknown): Markup[] =>
  Object.entries(sum.inputs).map(([key, input]) =>
    h(
      'p',
      { class: isWide(input, facts) ? 'field field-wide' : 'field' },
      h('label', { for: `field-${key}` }, typeset(input.label)),
      input.kind === 'quantity' ? quantityField(key, input) : choiceField(key, input, facts),
      h('small', { id: `${key}-note`, class: 'hint', 'aria-live': 'polite' }, hintOf(input)),
    ),
  );

/** What the field of the seed says under it when nothing is wrong. */
export const SEED_HINT = 'a whole number; the same one draws the same parts';

/** The field of the seed, which stands beside what is drawn and belongs to the form all the same. */
export const seedField = (seed: number): Markup =>
  h(
    'p',
    { class: 'field' },
    h('label', { for: 'field-seed' }, 'Seed of the draw'),
    h('input', {
      id: 'field-seed',
      name: 'seed',
      form: 'sum',
      value: String(seed),
      readonly: true,
      inputmode: 'numeric',
      autocomplete: 'off',
      'aria-describedby': 'seed-note',
    }),
    h('small', { id: 'seed-note', class: 'hint', 'aria-live': 'polite' }, SEED_HINT),
  );
