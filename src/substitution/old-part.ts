import { parseQuantity, type Evidence, type Unit } from '../engine/index.ts';

/** What was found out about the old part itself, as fields of a form and keys of the address. */
interface EvidenceField {
  key: string;
  /** The reading that it fills in. */
  reading: Exclude<keyof Evidence, 'signs' | 'age'>;
  label: string;
  unit: Unit;
  /** Unit of a number without one. */
  bare?: string;
  hint: string;
}

export const evidenceFields: readonly EvidenceField[] = [
  {
    key: 'idle',
    reading: 'idle',
    label: 'Without power for',
    unit: 's',
    bare: 'years',
    hint: 'years',
  },
  {
    key: 'reads',
    reading: 'capacitance',
    label: 'Capacitance that it reads',
    unit: 'F',
    hint: 'out of circuit, such as 8.2 µF',
  },
  {
    key: 'd120',
    reading: 'loss120hz',
    label: 'Loss D at 100 or 120 Hz',
    unit: 'fraction',
    bare: '%',
    hint: 'per cent',
  },
  {
    key: 'd1k',
    reading: 'loss1khz',
    label: 'Loss D at 1 kHz',
    unit: 'fraction',
    bare: '%',
    hint: 'per cent',
  },
  {
    key: 'esr',
    reading: 'esr',
    label: 'Series resistance (ESR)',
    unit: 'ohm',
    hint: 'as a meter reads it near 100 kHz',
  },
  {
    key: 'leak',
    reading: 'leakage',
    label: 'Leakage current',
    unit: 'A',
    hint: 'after five minutes at rated voltage, such as 20 µA',
  },
  {
    key: 'ins',
    reading: 'insulation',
    label: 'Insulation at working voltage',
    unit: 'ohm',
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

/** Longest text that one reading may have. */
const LONGEST = 60;

/** The readings that an address carries; what cannot be understood is passed over and reported. */
export const readEvidence = (query: URLSearchParams): FoundOut => {
  const found: FoundOut = { evidence: { signs: readSigns(query) }, rejected: {} };
  for (const { key, reading, unit, bare } of evidenceFields) {
    const text = (query.get(key) ?? '').trim().slice(0, LONGEST);
    if (text === '') continue;
    const parsed = parseQuantity(text, unit, bare);
    if (!parsed.ok) found.rejected[key] = parsed.fault.message;
    else if (parsed.value.typ < 0) found.rejected[key] = 'Please give a value of zero or above.';
    else found.evidence[reading] = parsed.value.typ;
  }
  return found;
};
