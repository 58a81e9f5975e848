import { meterFrequency } from '../markings/ranking/measured.ts';
import type { Reading, Sureness } from '../markings/meanings/reading.ts';
import { say } from '../markings/meanings/say.ts';
import type { Candidate } from './candidate.ts';
import { allUnderstood, inRange, leadingNought, preferenceWeight, weights } from './weigh.ts';

/** A candidate with its reading, before it is set among its rivals. */
export interface Ranked {
  candidate: Candidate;
  reading: Reading;
}

/** From the other end a reading is shown only this far behind the best. */
const TURNED_WITHIN = 3.2;
/** Leads over the next reading that make a reading sure or likely. */
const SURE_LEAD = 2.5;
const LIKELY_LEAD = 1;
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

/** The other end is left out where it is far behind, or makes no better sense than the given one. */
const worthShowing = (all: readonly Candidate[]): Candidate[] => {
  const best = Math.max(...all.map(({ score }) => score));
  return all.filter(
    (one) =>
      !one.turned ||
      (one.score >= best - TURNED_WITHIN && preferenceWeight(one) > weights.noSeries) ||
      !all.some(({ turned }) => !turned),
  );
};

/** Candidates that are worth a look, best first. */
export const shortlist = (candidates: readonly Candidate[]): Candidate[] =>
  worthShowing(sound(candidates)).toSorted((a, b) => b.score - a.score);

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
  preferenceWeight(candidate) > weights.tooFineSeries;

const surenessOf = ({ candidate, reading }: Ranked, next: Ranked | undefined): Sureness => {
  const lead = candidate.score - (next?.candidate.score ?? -Infinity);
  if (lead < LIKELY_LEAD || !makesSense(candidate)) return 'possible';
  const known = candidate.guessed.length === 0 && reading.notUnderstood.length === 0;
  const { scheme, taking } = candidate;
  const plain =
    scheme.row.basis !== 'memory' &&
    taking.taken.every(({ meanings }) => meanings[0]?.use !== 'rare');
  return known && plain && lead >= SURE_LEAD ? 'sure' : 'likely';
};

const measuring = (all: readonly Ranked[]): string[] => {
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
  const at = farads.length === 0 ? '' : ` at ${meterFrequency(Math.min(...farads))}`;
  return [`measure${at}: ${named.join(' or ')}${more}`];
};

/** What tells schemes apart, where several are left. */
const tellingApart = (all: readonly Ranked[], { candidate }: Ranked): string[] =>
  all.some((other) => other.candidate.scheme.row.id !== candidate.scheme.row.id)
    ? [candidate.scheme.row.about]
    : [];

/** Says of each reading how far it is to be trusted and what would settle it. */
export const settled = (all: readonly Ranked[]): Reading[] => {
  const [best] = all;
  const measure = measuring(all);
  return all.map((ranked) => ({
    ...ranked.reading,
    sure: ranked === best ? surenessOf(ranked, all[1]) : 'possible',
    settleBy: [...measure, ...tellingApart(all, ranked)],
  }));
};
