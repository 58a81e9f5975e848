import type { ConditionDefinitionRow } from '../schemas/positions.ts';
import type { Rejected } from './typed-numbers.ts';

/** What a number is about: the old part itself, or what conditions are grouped by. */
export type FieldGroup = 'part' | ConditionDefinitionRow['group'];

/** One number that the visitor may change. */
export interface Field {
  key: string;
  group: FieldGroup;
  label: string;
  /** What stands in the field: the visitor's own text, or the default written out. */
  text: string;
  /** Whether the text is the visitor's, a default, or follows from the old part. */
  from: 'given' | 'default' | 'derived';
  message?: string;
  note: string;
}

/** Whether a number is the visitor's or the usual one. */
export const saidOr = (value: unknown): Field['from'] =>
  value === undefined ? 'default' : 'given';

/** Shows a field as it was typed, with what is wrong with it, where it could not be understood. */
export const fieldWith =
  (rejected: Readonly<Record<string, Rejected>>) =>
  (own: Omit<Field, 'message'>): Field => {
    const fault = rejected[own.key];
    return fault === undefined
      ? own
      : {
          ...own,
          text: fault.text,
          message: `${fault.message} Until then ${own.text} counts.`,
          from: 'given',
        };
  };
