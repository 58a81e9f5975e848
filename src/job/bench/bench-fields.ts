import { formatQuantity, type Catalogue, type Range, type Unit } from '../../engine/index.ts';
import type { BenchFieldRow } from '../../schemas/job.ts';
import { meterDisplay } from '../../substitution/meter-display.ts';
import { readReading } from '../../substitution/old-part.ts';
import type { Read } from '../../substitution/typed-numbers.ts';
import type { Fitted } from '../model/job.ts';
import type { PartOfLine } from '../understanding/part-of-line.ts';

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
  /** The number that it is, SI; nothing where it is none. */
  range: Range | undefined;
  /** Whether the meter showed more than it can, no number, or nothing at all; kept as typed. */
  display: '' | 'over' | 'more' | 'none';
  /** Why it could not be understood; nothing where it could. */
  fault: string;
  /** How it lies outside what the new part may be; nothing where it does not. */
  outside: string;
}

type Understood = Pick<BenchField, 'read' | 'range' | 'display' | 'fault'>;

const nothing: Understood = { read: '', range: undefined, display: '', fault: '' };

const numberOf = ({ unit, bare, lowest, highest }: BenchFieldRow, text: string): Read<Range> => {
  const least = lowest ?? -Infinity;
  const read = readReading(text, {
    unit: unit as Unit,
    bare: bare === '' ? undefined : bare,
    lowest: least,
    highest: highest ?? Infinity,
  });
  return 'value' in read || least !== 0 || !/^\s*[-−]/u.test(text)
    ? read
    : { message: 'Please give zero or more.' };
};

/** As many digits as were typed, or what the meter gave would be lost on the record. */
const digitsOf = (text: string): number =>
  Math.min(Math.max(text.match(/\d/gu)?.length ?? 0, 3), 9);

/** How a reading is understood: a quantity in its unit, what meters show besides, or the words. */
const understood = (row: BenchFieldRow, text: string): Understood => {
  if (text.trim() === '' || row.unit === '') return { ...nothing, read: text.trim() };
  const shown = meterDisplay(text);
  if (shown?.is === 'over') return { ...nothing, read: 'over range', display: 'over' };
  if (shown?.is === 'none') return { ...nothing, read: 'no reading', display: 'none' };
  const read = numberOf(row, shown?.than ?? text);
  if (!('value' in read)) return { ...nothing, fault: read.message };
  const said = formatQuantity(read.value, row.unit as Unit, { digits: digitsOf(text) });
  return shown === undefined
    ? { ...nothing, read: said, range: read.value }
    : { ...nothing, read: `more than ${said}`, display: 'more' };
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
    .map(({ row, text, read, display, outside }) => {
      const typed = text.trim();
      const said = `${row.label} ${read === '' ? typed : display === '' ? read : `${typed} (${read})`}`;
      return outside === '' ? said : `${said}, ${outside}`;
    })
    .join('; ');
