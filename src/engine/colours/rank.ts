import { meterFrequency } from '../markings/ranking/measured.ts';
import type { Reading, Sureness } from '../markings/meanings/reading.ts';
import { say } from '../markings/meanings/say.ts';
import type { Candidate } from './candidate.ts';
import { standingOf, type Standing } from './preferred.ts';
import { allUnderstood, inRange, leadingNought, type ColourWeights } from './weigh.ts';

/** A candidate with its reading, before it is set among its rivals. */
export interface Ranked {
  candidate: Candidate;
  reading: Reading;
}

/** What readings are judged by beside each other. */
export interface Judging {
  weights: ColourWeights;
  /** Largest capacitance that is measured at 1 kHz, F. */
  largestAt1kHz: number;
}

/** Values named in a sentence. */
const MOST_NAMED = 4;

const valueKey = ({ reading }: Ranked): string => {
  const value = reading.capacitance?.typ ?? reading.resistance?.typ;
  return `${reading.kind} ${value?.toPrecision(6) ?? '-'}`;
};

const wholeKey = (ranked: Ranked): string => {
  const { tolerance, ratedVoltage, temperatureCharacteristic, temperatureCoefficient, types } =
    ranked.reading;
  return JSON.stringify([
    valueKey(ranked),
    tolerance,
    ratedVoltage,
    temperatureCharacteristic?.code,
    temperatureCoefficient,
    types,
    ranked.reading.notUnderstood.length,
  ]);
};

/** Those that a rule holds for, or all where it holds for none. */
const preferring = <Item>(all: readonly Item[], rule: (item: Item) => boolean): readonly Item[] => {
  const kept = all.filter(rule);
  return kept.length > 0 ? kept : all;
};

/** Sound ones where there are any: a value that is met, no nought in front, every colour understood. */
const sound = (all: readonly Candidate[]): readonly Candidate[] =>
  [inRange, (one: Candidate) => !leadingNought(one), allUnderstood].reduce(preferring, all);

/** Whether the value of a candidate is of one of some standings to the series. */
const stands = ({ preference }: Candidate, standings: readonly Standing[]): boolean =>
  preference !== undefined && standings.includes(standingOf(preference));

/** The other end is left out where it is far behind, or makes no better sense than the given one. */
const worthShowing = (weights: ColourWeights, all: readonly Candidate[]): Candidate[] => {
  const best = Math.max(...all.map(({ score }) => score));
  return all.filter(
    (one) =>
      !one.turned ||
      (one.score >= best - weights['turned-within'] && !stands(one, ['no-series'])) ||
      !all.some(({ turned }) => !turned),
  );
};

/** Candidates that are worth a look, best first. */
export const shortlist = (weights: ColourWeights, candidates: readonly Candidate[]): Candidate[] =>
  worthShowing(weights, sound(candidates)).toSorted((a, b) => b.score - a.score);

/** The first of each meaning, in the same order. */
export const distinct = (all: readonly Ranked[]): Ranked[] => {
  const keys = all.map(wholeKey);
  return all.filter((_, at) => keys.indexOf(keys[at] ?? '') === at);
};

/** A value that is made, where a value is marked at all. */
const makesSense = (candidate: Candidate): boolean =>
  (candidate.taking.value !== undefined || candidate.scheme.row.quantity === '') &&
  inRange(candidate) &&
  !leadingNought(candidate) &&
  !stands(candidate, ['no-series', 'too-fine-series']);

const surenessOf = (
  weights: ColourWeights,
  { candidate, reading }: Ranked,
  next: Ranked | undefined,
): Sureness => {
  const lead = candidate.score - (next?.candidate.score ?? -Infinity);
  if (lead < weights['likely-lead'] || !makesSense(candidate)) return 'possible';
  const known = candidate.guessed.length === 0 && reading.notUnderstood.length === 0;
  const { scheme, taking } = candidate;
  const plain =
    scheme.row.basis !== 'memory' &&
    taking.taken.every(({ meanings }) => meanings[0]?.use !== 'rare');
  return known && plain && lead >= weights['sure-lead'] ? 'sure' : 'likely';
};

const measuring = (largestAt1kHz: number, all: readonly Ranked[]): string[] => {
  const values = [...new Map(all.map((ranked) => [valueKey(ranked), ranked])).values()].flatMap(
    ({ reading }) => {
      const value = reading.capacitance?.typ ?? reading.resistance?.typ;
      return value === undefined ? [] : [{ value, unit: reading.capacitance ? 'F' : 'Ω' } as const];
    },
  );
  if (values.length < 2) return [];
  const named = values.slice(0, MOST_NAMED).map(({ value, unit }) => say(value, unit));
  const more = values.length > named.length ? ', …' : '';
  const farads = values.filter(({ unit }) => unit === 'F').map(({ value }) => value);
  const at = farads.length === 0 ? '' : ` at ${meterFrequency(Math.min(...farads), largestAt1kHz)}`;
  return [`measure${at}: ${named.join(' or ')}${more}`];
};

/** What tells schemes apart, where several are left. */
const tellingApart = (all: readonly Ranked[], { candidate }: Ranked): string[] =>
  all.some((other) => other.candidate.scheme.row.id !== candidate.scheme.row.id)
    ? [candidate.scheme.row.about]
    : [];

/** Says of each reading how far it is to be trusted and what would settle it. */
export const settled = ({ weights, largestAt1kHz }: Judging, all: readonly Ranked[]): Reading[] => {
  const [best] = all;
  const measure = measuring(largestAt1kHz, all);
  return all.map((ranked) => ({
    ...ranked.reading,
    sure: ranked === best ? surenessOf(weights, ranked, all[1]) : 'possible',
    settleBy: [...measure, ...tellingApart(all, ranked)],
  }));
};
