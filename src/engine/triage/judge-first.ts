import type { TriageRow } from '../../schemas/triage.ts';
import type { Basis, Catalogue, PositionId, SourceId, TypeId } from '../catalogue.ts';
import { formatValue, type Unit } from '../quantities/index.ts';
import { reformingPlan, type ReformingPlan } from '../reforming/plan.ts';
import { compared, type Compared, type Evidence, type Marked } from './readings.ts';

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
  /** How to re-form it before it meets its supply, where it lay without voltage for too long. */
  reforming?: ReformingPlan;
}

/** Units of the readings that are set against a new part, by what the rule goes by. */
const READ_IN: Partial<Record<TriageRow['reading'], Unit>> = {
  capacitance: 'F',
  'capacitance-for-age': 'F',
  'esr-of-new': 'ohm',
  'esr-of-standard': 'ohm',
  'leakage-of-new': 'A',
};

/** What the readings are set against, where that is not a new part. */
const SET_AGAINST: Partial<Record<TriageRow['reading'], string>> = {
  capacitance: 'marked',
  'capacitance-for-age': 'that tolerance and age leave of a sound one at the least',
};

/** What a reading comes to, and what it was set against: `0.3 Ω, 0.94 × the 0.32 Ω of a new one`. */
const sayCompared = (rule: TriageRow, { value, ofNew, read }: Compared, unit: Unit): string => {
  const own = READ_IN[rule.reading];
  if (own === undefined || ofNew === undefined || read === undefined) {
    return formatValue(value, unit);
  }
  const mark = SET_AGAINST[rule.reading] ?? 'of a new one';
  return `${formatValue(read, own)}, ${formatValue(value, unit)} the ${formatValue(ofNew, own)} ${mark}`;
};

const reasonFor = (
  catalogue: Catalogue,
  row: TriageRow,
  evidence: Evidence,
  marked: Marked,
): TriageReason | undefined => {
  const { advice, why, source, basis, note } = row;
  const reason = (working: string): TriageReason => ({ advice, why, working, source, basis, note });
  if (row.reading === 'none') return reason('');
  if (row.reading === 'sign') {
    return evidence.signs?.includes(row.id) === true ? reason(`Seen: ${row.sign}`) : undefined;
  }
  const reading = compared(catalogue, row, evidence, marked);
  if (reading === undefined || row.limit === undefined) return undefined;
  const unit = catalogue.units[row.unit];
  const limit = row.limit * (unit?.factor ?? 1);
  const below = row.comparison === 'below';
  const si = (unit?.si ?? 'ratio') as Unit;
  return (below ? reading.value < limit : reading.value >= limit)
    ? reason(
        `${sayCompared(row, reading, si)}; ${below ? 'below' : 'at least'} ${formatValue(limit, si)}`,
      )
    : undefined;
};

/** Readings weigh more than age, and age more than what is true of the type in general. */
const strength = (row: TriageRow): number => {
  if (row.reading === 'none') return Number(row.positions.length > 0);
  return row.reading === 'age' ? 2 : 3;
};

/** How to re-form a part that some rule finds to have lain without voltage for too long. */
const reformingFor = (
  catalogue: Catalogue,
  marked: Marked,
  { idle }: Evidence,
  readings: readonly TriageRow['reading'][],
): ReformingPlan | undefined =>
  idle !== undefined && readings.includes('idle')
    ? reformingPlan(catalogue, marked, idle)
    : undefined;

/** Rules of a type in a position, whatever was read. */
const rulesFor = (catalogue: Catalogue, type: TypeId, position: PositionId): TriageRow[] =>
  catalogue.triage
    .filter((row) => row.types.includes(type))
    .filter((row) => row.positions.length === 0 || row.positions.includes(position));

const isForRating = ({ v_from: from, v_to: to }: TriageRow, volt: number): boolean =>
  volt >= (from ?? 0) && volt < (to ?? Infinity);

/** A sign of failure that can be seen or smelled. */
export interface Sign {
  /** Id of the rule that it belongs to. */
  id: string;
  /** What is seen. */
  sign: string;
}

/** What to look for on an old part of a type. */
export const signsOf = (catalogue: Catalogue, type: TypeId, position: PositionId): Sign[] =>
  rulesFor(catalogue, type, position)
    .filter((row) => row.reading === 'sign')
    .map(({ id, sign }) => ({ id, sign }));

const GRAVITY: readonly Advice[] = ['leave', 'test', 'replace'];

/**
 * Whether an old part needs replacing at all: replace, test or leave, with the reasons.
 *
 * Rules are taken from the strongest kind that applies: readings first, then age, then what holds
 * for the type in the position, then for the type. Among rules of one kind the gravest counts, and a
 * rule to replace always counts, since no reading can clear a part that is condemned by its kind.
 */
export const judgeFirst = (
  catalogue: Catalogue,
  marked: Marked,
  position: PositionId,
  evidence: Evidence,
): Judgement => {
  const applying = rulesFor(catalogue, marked.type, position)
    .filter((row) => isForRating(row, marked.ratedVoltage))
    .flatMap((row) => {
      const reason = reasonFor(catalogue, row, evidence, marked);
      return reason === undefined
        ? []
        : [{ reason, reading: row.reading, strength: strength(row) }];
    })
    .toSorted(
      (a, b) =>
        b.strength - a.strength ||
        GRAVITY.indexOf(b.reason.advice) - GRAVITY.indexOf(a.reason.advice),
    );
  const reasons = applying.map(({ reason }) => reason);
  const condemned = reasons.some(({ advice }) => advice === 'replace');
  const reforming = reformingFor(
    catalogue,
    marked,
    evidence,
    applying.map(({ reading }) => reading),
  );
  return {
    ...(reforming === undefined ? {} : { reforming }),
    // Without any rule nothing is known, and what is not known is tested.
    advice: condemned ? 'replace' : (reasons[0]?.advice ?? 'test'),
    reasons: condemned
      ? reasons.toSorted((a, b) => GRAVITY.indexOf(b.advice) - GRAVITY.indexOf(a.advice))
      : reasons,
  };
};
