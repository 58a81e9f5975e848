import { parseQuantity, type Evidence, type Range, type Unit } from '../engine/index.ts';
import { YEAR } from '../engine/quantities/si.ts';
import { meterDisplay } from './meter-display.ts';
import { readRange, type Measure, type Read } from './typed-numbers.ts';

/** What was found out about the old part itself, as fields of a form and keys of the address. */
interface EvidenceField {
  key: string;
  /** The reading that it fills in. */
  reading: Exclude<keyof Evidence, 'signs' | 'age'>;
  label: string;
  unit: Unit;
  /** Unit of a number without one. */
  bare?: string;
  /** What no meter goes beyond, SI. */
  highest: number;
  hint: string;
}

export const evidenceFields: readonly EvidenceField[] = [
  {
    key: 'idle',
    reading: 'idle',
    label: 'Without power for',
    unit: 's',
    bare: 'years',
    highest: 150 * YEAR,
    hint: 'years',
  },
  {
    key: 'reads',
    reading: 'capacitance',
    label: 'Capacitance that it reads',
    unit: 'F',
    highest: 10,
    hint: 'out of circuit, such as 8.2 µF',
  },
  {
    key: 'd120',
    reading: 'loss120hz',
    label: 'Loss D at 100 or 120 Hz',
    unit: 'fraction',
    bare: '%',
    highest: 100,
    hint: 'per cent',
  },
  {
    key: 'd1k',
    reading: 'loss1khz',
    label: 'Loss D at 1 kHz',
    unit: 'fraction',
    bare: '%',
    highest: 100,
    hint: 'per cent',
  },
  {
    key: 'esr',
    reading: 'esr',
    label: 'ESR',
    unit: 'ohm',
    highest: 1e9,
    hint: 'as a meter reads it near 100 kHz',
  },
  {
    key: 'leak',
    reading: 'leakage',
    label: 'Leakage current',
    unit: 'A',
    highest: 100,
    hint: 'after five minutes at rated voltage, such as 20 µA',
  },
  {
    key: 'ins',
    reading: 'insulation',
    label: 'Insulation at working voltage',
    unit: 'ohm',
    highest: 1e17,
    hint: 'such as 500 MΩ',
  },
];

/** Key of the address that carries the signs seen, joined by commas. */
export const signsKey = 'seen';

/** Signs that an address says were seen; what is no id of a rule has no effect. */
const readSigns = (query: URLSearchParams): string[] =>
  (query.get(signsKey) ?? '').split(',').filter((id) => id !== '');

/** Readings of an address, and what of them could not be understood, by key. */
export interface FoundOut {
  evidence: Evidence;
  rejected: Record<string, string>;
}

/**
 * A capacitance without its unit: 1 000 is one of pF on a disc and one of µF on a can, and meters
 * show either.
 */
const lacksUnit = (text: string, unit: Unit): boolean => {
  if (unit !== 'F') return false;
  const [pico, micro] = [parseQuantity(text, unit, 'pF'), parseQuantity(text, unit, 'µF')];
  return pico.ok && micro.ok && pico.value.typ !== micro.value.typ && !/\de/iu.test(text);
};

/** Reads a number off a meter; a capacitance has to have its unit. */
export const readReading = (text: string, measure: Measure): Read<Range> =>
  lacksUnit(text, measure.unit)
    ? {
        message: `The unit is missing: is that ${text.trim()} pF, nF or µF? Write it behind the number.`,
      }
    : readRange(text, measure);

const evidenceOf = (text: string, { reading, highest, ...field }: EvidenceField): Read<number> => {
  const shown = meterDisplay(text);
  // A meter that shows more than a number still proves that insulation is no worse.
  const isBound = shown?.is === 'more' && reading === 'insulation';
  if (shown !== undefined && !isBound)
    return { message: `“${text}” is no number to judge by; it is kept as it is written.` };
  const read = readReading(isBound ? shown.than : text, { ...field, lowest: 0, highest });
  return 'value' in read ? { value: read.value.typ } : read;
};

/** The readings that an address carries; what cannot be understood is passed over and reported. */
export const readEvidence = (query: URLSearchParams): FoundOut => {
  const found: FoundOut = { evidence: { signs: readSigns(query) }, rejected: {} };
  for (const field of evidenceFields) {
    const { key, reading } = field;
    const text = (query.get(key) ?? '').trim();
    if (text === '') continue;
    const read = evidenceOf(text, field);
    if ('value' in read) found.evidence[reading] = read.value;
    else found.rejected[key] = read.message;
  }
  return found;
};
