import type { KindCircumstances, NewTrimmer, Unit } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { inputMarkup, type Input } from './form.ts';
import { readRange, takerOf, type Measure, type Rejected } from './typed-numbers.ts';

/** What may be said of the new trimmer on the bench, as keys of the address. */
interface NewField {
  key: string;
  of: keyof NewTrimmer;
  label: string;
  hint: string;
  measure: Measure;
}

const OHM: Unit = 'ohm';

export const newTrimmerFields: readonly NewField[] = [
  {
    key: 'new-total',
    of: 'total',
    label: 'Total of the new one',
    hint: 'measured end to end; its mark until then',
    measure: { unit: OHM, lowest: 1, highest: 1e8 },
  },
  {
    key: 'new-now',
    of: 'now',
    label: 'It reads now',
    hint: 'between the same two terminals',
    measure: { unit: OHM, lowest: 0, highest: 1e8 },
  },
  {
    key: 'new-turns',
    of: 'turns',
    label: 'Turns from end to end',
    hint: 'of its type until then; a turn of 270° is 0.75',
    measure: { unit: 'number', bare: 'turns', lowest: 0.2, highest: 100 },
  },
];

/** What an address says of the new trimmer, and what of it could not be understood. */
export const readNewTrimmer = (
  query: URLSearchParams,
): { measured: NewTrimmer; rejected: Record<string, Rejected> } => {
  const { take, rejected } = takerOf(query);
  const measured: NewTrimmer = {};
  for (const { key, of, measure } of newTrimmerFields) {
    const range = take(key, (text) => readRange(text, measure));
    if (range !== undefined) measured[of] = range.typ;
  }
  return { measured, rejected };
};

/** The fields of the new trimmer with the line below each. */
export const newTrimmerInputs = (
  rejected: Readonly<Record<string, Rejected>>,
  measured: NewTrimmer,
): Input[] =>
  newTrimmerFields.map(({ key, of, label, hint }) => {
    const fault = rejected[key];
    const said = measured[of] === undefined ? hint : 'yours';
    return { key, label, note: fault?.message ?? said, fault: fault !== undefined };
  });

/** The form that asks what is measured on the new trimmer. */
export const newTrimmerForm = (): Markup =>
  h(
    'fieldset',
    {},
    h('legend', {}, 'The new one, as measured'),
    ...newTrimmerInputs({}, {}).map(inputMarkup),
  );

/** Whether a position is one of trimmers whose setting is carried over. */
export const carriesSetting = ({ position }: Pick<KindCircumstances, 'position'>): boolean =>
  position.wiring !== '';
