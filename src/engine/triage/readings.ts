import type { EsrOfNewRow, TriageRow } from '../../schemas/triage.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { esrOfNew } from './esr-of-new.ts';
import { leakageLimit } from './leakage-limit.ts';

/** What is known of the old part itself, SI units; all of it may be missing. */
export interface Evidence {
  /** s */
  age?: number | undefined;
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
  capacitance: ({ capacitance }, marked) => against(capacitance, marked.capacitance),
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
