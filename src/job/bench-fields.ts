import { formatQuantity, parseQuantity, type Catalogue, type Unit } from '../engine/index.ts';
import type { BenchFieldRow } from '../schemas/job.ts';
import type { Fitted } from './model.ts';
import type { PartOfLine } from './part-of-line.ts';

/** When a part is read: before the work on it, or after. */
export type Time = 'before' | 'after';

/** Something that can be written down about a part, with what stands there. */
export interface BenchField {
  row: BenchFieldRow;
  time: Time;
  /** As typed. */
  text: string;
  /** How it is understood; nothing where it is empty or words. */
  read: string;
  /** Why it could not be understood; nothing where it could. */
  fault: string;
  /** How it lies outside what the new part may be; nothing where it does not. */
  outside: string;
}

/** How a reading is understood: a quantity in its unit, or the words themselves. */
const understood = (
  { unit, bare }: BenchFieldRow,
  text: string,
): { read: string; fault: string } => {
  if (text.trim() === '' || unit === '') return { read: text.trim(), fault: '' };
  const parsed = parseQuantity(text, unit as Unit, bare === '' ? undefined : bare);
  if (!parsed.ok) return { read: '', fault: parsed.fault.message };
  if (parsed.value.typ < 0) return { read: '', fault: 'Please give zero or more.' };
  return { read: formatQuantity(parsed.value, unit as Unit), fault: '' };
};

/** Whether something can be written down about such a part. */
const isFor = ({ kinds, families }: BenchFieldRow, kind: string, family: string): boolean =>
  kinds.includes(kind) && (families.length === 0 || family === '' || families.includes(family));

/** What can be written down about a part, and what was; the reading before ahead of that after. */
export const benchFieldsOf = (
  { kind, type }: PartOfLine,
  fitted: Fitted,
  { job, types }: Catalogue,
): BenchField[] => {
  const family = types[type ?? '']?.family ?? '';
  const texts: Readonly<Record<Time, Fitted['found']>> = {
    before: fitted.found,
    after: fitted.measured,
  };
  return job.benchFields
    .filter(
      (row) => isFor(row, kind, family) || row.id in fitted.found || row.id in fitted.measured,
    )
    .toSorted((a, b) => a.place - b.place)
    .flatMap((row) =>
      (['before', 'after'] as const)
        .filter((time) => row.times.includes(time))
        .map((time) => {
          const text = texts[time][row.id] ?? '';
          return { row, time, text, ...understood(row, text), outside: '' };
        }),
    );
};

/** What was read of a part at one time, in words for paper: `Capacitance 9.1 µF; leakage 3 µA`. */
export const readInWords = (fields: readonly BenchField[], time: Time): string =>
  fields
    .filter((field) => field.time === time && field.text.trim() !== '')
    .map(({ row, text, read, outside }) => {
      const said = `${row.label} ${read === '' ? text.trim() : read}`;
      return outside === '' ? said : `${said}, ${outside}`;
    })
    .join('; ');
