import type { EsrOfNewRow, TriageRow } from '../../schemas/triage.ts';
import { usualAge } from '../assessment/original.ts';
import type { Tolerance } from '../assessment/parts.ts';
import { readTolerance } from '../candidates/generate.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { lostToDate } from '../findings/service-capacitance.ts';
import { esrOfNew } from './esr-of-new.ts';
import { leakageLimit } from './leakage-limit.ts';

/** What is known of the old part itself, SI units; all of it may be missing. */
export interface Evidence {
  /** s */
  age?: number | undefined;
  /** Without voltage, s. */
  idle?: number | undefined;
  /** Measured, F. */
  capacitance?: number | undefined;
  /** Dissipation factor at 100 or 120 Hz, fraction. */
  loss120hz?: number | undefined;
  /** Dissipation factor at 1 kHz, fraction. */
  loss1khz?: number | undefined;
  /** Series resistance as a meter reads it near 100 kHz, ohm. */
  esr?: number | undefined;
  /** Leakage at rated voltage after minutes, A. */
  leakage?: number | undefined;
  /** Insulation resistance at working voltage, ohm. */
  insulation?: number | undefined;
  /** Ids of the rules whose sign is seen on the part. */
  signs?: readonly string[] | undefined;
}

/** The old part as it is marked. */
export interface Marked {
  type: TypeId;
  /** F */
  capacitance: number;
  /** V */
  ratedVoltage: number;
  /** What is usual for the type unless given. */
  tolerance?: Tolerance | undefined;
  /** s; what is usual for the type unless given. */
  age?: number | undefined;
}

/** A reading as a rule compares it, and what it was compared with on the way, both SI. */
export interface Compared {
  value: number;
  /** What a new part may have, where the reading is set against that. */
  ofNew?: number | undefined;
  /** The reading itself, where it was set against something. */
  read?: number | undefined;
}

const against = (read: number | undefined, ofNew: number | undefined): Compared | undefined =>
  read === undefined || ofNew === undefined ? undefined : { value: read / ofNew, ofNew, read };

const plain = (value: number | undefined): Compared | undefined =>
  value === undefined ? undefined : { value };

/**
 * Least capacitance (F) that tolerance and ageing by decades leave of a sound part at room
 * temperature; nothing for types that do not age so.
 */
const leastForAge = (
  { type, capacitance, tolerance, age }: Marked,
  known: number | undefined,
  catalogue: Catalogue,
): number | undefined => {
  const row = catalogue.types[type];
  if (row === undefined) return undefined;
  const old = { type, age: known ?? age ?? usualAge(catalogue, row) };
  const lost = lostToDate(old, { catalogue });
  const { minus } = tolerance ?? readTolerance(row.old_tolerance);
  return lost && capacitance * (1 - minus) * (1 - lost.max);
};

type Reader = (evidence: Evidence, marked: Marked, catalogue: Catalogue) => Compared | undefined;

const nothing: Reader = () => undefined;

const esrAgainst =
  (grade: EsrOfNewRow['grade']): Reader =>
  ({ esr }, { capacitance, ratedVoltage }, catalogue) =>
    against(esr, esrOfNew(catalogue.esrOfNew, grade, capacitance, ratedVoltage));

/** How each kind of rule takes its reading. */
const readers: Record<TriageRow['reading'], Reader> = {
  none: nothing,
  sign: nothing,
  age: ({ age }) => plain(age),
  // Leakage at rated voltage shows whether the oxide is there, whatever the time without.
  idle: ({ idle, leakage }) => plain(leakage === undefined ? idle : undefined),
  capacitance: ({ capacitance }, marked) => against(capacitance, marked.capacitance),
  'capacitance-for-age': ({ capacitance, age }, marked, catalogue) =>
    against(capacitance, leastForAge(marked, age, catalogue)),
  'loss-120hz': ({ loss120hz }) => plain(loss120hz),
  'loss-1khz': ({ loss1khz }) => plain(loss1khz),
  'loss-ratio': ({ loss120hz, loss1khz }) =>
    plain(loss120hz === undefined || !loss1khz ? undefined : loss120hz / loss1khz),
  esr: ({ esr }) => plain(esr),
  'esr-of-new': esrAgainst('worst-case'),
  'esr-of-standard': esrAgainst('standard-grade'),
  'leakage-of-new': ({ leakage }, { type, capacitance, ratedVoltage }, catalogue) =>
    against(leakage, leakageLimit(catalogue.leakageLimits, type, capacitance, ratedVoltage)),
  insulation: ({ insulation }) => plain(insulation),
  'insulation-rc': ({ insulation }, { capacitance }) =>
    plain(insulation === undefined ? undefined : insulation * capacitance),
};

/** A reading in the way that a rule goes by it; nothing where it was not taken. */
export const compared = (
  catalogue: Catalogue,
  rule: TriageRow,
  evidence: Evidence,
  marked: Marked,
): Compared | undefined => readers[rule.reading](evidence, marked, catalogue);
