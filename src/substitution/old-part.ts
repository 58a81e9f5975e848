import { parseQuantity, type Evidence, type Unit } from '../engine/index.ts';

/** What was found out about the old part itself, as fields of a form and keys of the address. */
interface EvidenceField {
  key: string;
  /** The reading that it fills in. */
  reading: keyof Evidence;
  label: string;
  unit: Unit;
  /** Unit of a number without one. */
  bare?: string;
  hint: string;
}

export const evidenceFields: readonly EvidenceField[] = [
  {
    key: 'age',
    reading: 'age',
    label: 'Age',
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
    key: 'ins',
    reading: 'insulation',
    label: 'Insulation at working voltage',
    unit: 'ohm',
    hint: 'such as 500 MΩ',
  },
];

/** Readings of an address, and what of them could not be understood, by key. */
export interface FoundOut {
  evidence: Evidence;
  rejected: Record<string, string>;
}

/** Longest text that one reading may have. */
const LONGEST = 60;

/** The readings that an address carries; what cannot be understood is passed over and reported. */
export const readEvidence = (query: URLSearchParams): FoundOut => {
  const found: FoundOut = { evidence: {}, rejected: {} };
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
