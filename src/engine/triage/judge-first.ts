import type { TriageRow } from '../../schemas/triage.ts';
import type { Basis, Catalogue, PositionId, SourceId, TypeId } from '../catalogue.ts';
import { formatValue, type Unit } from '../quantities/index.ts';

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
  /** Insulation resistance at working voltage, ohm. */
  insulation?: number | undefined;
}

/** What to do with the old part. */
export type Advice = TriageRow['advice'];

/** One rule that applies, with the number that it went by. */
export interface TriageReason {
  advice: Advice;
  why: string;
  /** The reading against the limit; nothing where the rule goes by no reading. */
  working: string;
  source: SourceId;
  basis: Basis;
  note: string;
}

export interface Judgement {
  advice: Advice;
  /** The weightiest first. */
  reasons: TriageReason[];
}

/** A reading in the SI unit of the rules that go by it. */
const readingFor = (row: TriageRow, evidence: Evidence, marked: number): number | undefined => {
  const { age, capacitance, loss120hz, loss1khz, insulation } = evidence;
  switch (row.reading) {
    case 'none':
      return undefined;
    case 'age':
      return age;
    case 'capacitance':
      return capacitance === undefined ? undefined : capacitance / marked;
    case 'loss-120hz':
      return loss120hz;
    case 'loss-1khz':
      return loss1khz;
    case 'insulation':
      return insulation;
    case 'insulation-rc':
      return insulation === undefined ? undefined : insulation * marked;
  }
};

const reasonFor = (
  catalogue: Catalogue,
  row: TriageRow,
  evidence: Evidence,
  marked: number,
): TriageReason | undefined => {
  const { advice, why, source, basis, note } = row;
  const reason = (working: string): TriageReason => ({ advice, why, working, source, basis, note });
  if (row.reading === 'none') return reason('');
  const value = readingFor(row, evidence, marked);
  if (value === undefined || row.limit === undefined) return undefined;
  const unit = catalogue.units[row.unit];
  const limit = row.limit * (unit?.factor ?? 1);
  const holds = row.comparison === 'below' ? value < limit : value >= limit;
  const print = (number: number): string => formatValue(number, (unit?.si ?? 'ratio') as Unit);
  return holds
    ? reason(
        `${print(value)}, ${row.comparison === 'below' ? 'below' : 'at least'} ${print(limit)}`,
      )
    : undefined;
};

/** Readings weigh more than age, and age more than what is true of the type in general. */
const strength = (row: TriageRow): number =>
  row.reading === 'none' ? Number(row.positions.length > 0) : row.reading === 'age' ? 2 : 3;

const GRAVITY: readonly Advice[] = ['leave', 'test', 'replace'];

/**
 * Whether an old part needs replacing at all: replace, test or leave, with the reasons.
 *
 * Rules are taken from the strongest kind that applies: readings first, then age, then what holds
 * for the type in the position, then for the type. Among rules of one kind the gravest counts, and a
 * rule to replace always counts, since no reading can clear a part that is condemned by its kind.
 *
 * @param marked capacitance on the part, F
 */
export const judgeFirst = (
  catalogue: Catalogue,
  type: TypeId,
  position: PositionId,
  marked: number,
  evidence: Evidence,
): Judgement => {
  const applying = catalogue.triage
    .filter((row) => row.types.includes(type))
    .filter((row) => row.positions.length === 0 || row.positions.includes(position))
    .flatMap((row) => {
      const reason = reasonFor(catalogue, row, evidence, marked);
      return reason === undefined ? [] : [{ reason, strength: strength(row) }];
    })
    .toSorted(
      (a, b) =>
        b.strength - a.strength ||
        GRAVITY.indexOf(b.reason.advice) - GRAVITY.indexOf(a.reason.advice),
    );
  const reasons = applying.map(({ reason }) => reason);
  const condemned = reasons.some(({ advice }) => advice === 'replace');
  return {
    // Without any rule nothing is known, and what is not known is tested.
    advice: condemned ? 'replace' : (reasons[0]?.advice ?? 'test'),
    reasons: condemned
      ? reasons.toSorted((a, b) => GRAVITY.indexOf(b.advice) - GRAVITY.indexOf(a.advice))
      : reasons,
  };
};
