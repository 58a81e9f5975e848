import type { FindingRow } from '../../schemas/positions.ts';
import { BASES, weakestOf } from './basis.ts';
import type { Basis, PropertyId } from '../catalogue.ts';
import {
  knowledgeOf,
  type Circumstances,
  type KnownPart,
  type Limit,
  type Outcome,
} from '../findings/model.ts';
import type { Range } from '../quantities/range.ts';
import { ruleOf, type WithRules } from '../rule-of-thumb.ts';

/** How sure a finding is, and why no more so. */
export interface Sureness {
  sure: 'sure' | 'likely' | 'possible';
  /** The weakest basis that it rests on. */
  basis: Basis;
  /** Properties that are known no better than that. */
  weakest: PropertyId[];
  /** How many times apart its ends lie, where that makes it less sure than its basis does. */
  apart?: number | undefined;
}

const WORDS = ['sure', 'likely', 'possible'] as const;

/**
 * How many times apart the ends of a figure lie, as far as its limit makes that count; nothing for
 * figures that no ratio can be taken of.
 */
export const timesApart = (
  rules: WithRules,
  { min, max }: Range,
  { low, high }: Limit,
): number | undefined => {
  if (min <= 0) return undefined;
  const least = ruleOf(rules, 'as-good-as-nothing') * Math.max(0, high ?? low ?? 0);
  const from = Math.max(min, least);
  return from > 0 ? Math.max(max, least) / from : undefined;
};

/** How sure what rests on a basis is, whose ends lie so many times apart; nothing for what has no ratio. */
export const sureBy = (
  rules: WithRules,
  basis: Basis,
  apart: number | undefined,
): Pick<Sureness, 'sure' | 'basis' | 'apart'> => {
  const bySpread =
    apart === undefined || apart < ruleOf(rules, 'apart-likely')
      ? 0
      : apart < ruleOf(rules, 'apart-possible')
        ? 1
        : 2;
  const byBasis = BASES.indexOf(basis);
  return {
    sure: WORDS[Math.max(byBasis, bySpread)] ?? 'possible',
    basis,
    ...(apart !== undefined && bySpread > byBasis ? { apart } : {}),
  };
};

/**
 * How sure a finding is: by the weakest basis of its figures, rules and tables, or of its equation
 * where that is from memory; and no more than likely, or possible, where its ends lie as far apart
 * as the rules of thumb `apart-likely` and `apart-possible` say.
 */
export const surenessOf = (
  outcome: Outcome,
  limit: Limit,
  row: FindingRow,
  part: KnownPart,
  circumstances: Pick<Circumstances, 'catalogue'>,
): Sureness => {
  const { catalogue } = circumstances;
  if (outcome.status === 'unknown') {
    return { sure: 'possible', basis: 'memory', weakest: outcome.missing };
  }
  const figures = outcome.properties.flatMap((property) => {
    const knowledge = knowledgeOf(circumstances, part, property);
    return knowledge.status === 'known' ? [{ property, basis: knowledge.basis }] : [];
  });
  const bases = [
    ...figures.map(({ basis }) => basis),
    ...(outcome.bases ?? []),
    ...(row.basis === 'memory' ? [row.basis] : []),
  ];
  const basis = weakestOf(bases);
  return {
    ...sureBy(
      catalogue,
      basis,
      row.unit === 'grade' ? undefined : timesApart(catalogue, outcome.value, limit),
    ),
    weakest: figures.filter((figure) => figure.basis === basis).map(({ property }) => property),
  };
};
