import { hasMadeUp, type Candidate, type Scored } from './candidate.ts';
import { given } from '../../given.ts';
import { measuredAmong, type Metering } from './measured.ts';
import type { Parse } from '../ways/parse.ts';
import type { Reading, Sureness } from '../meanings/reading.ts';
import { said } from '../composing/said.ts';
import { settling } from './settling.ts';
import { isWornSign } from '../text/text.ts';

/** Which readings are worth showing beside the best. */
interface Limits {
  /** A rival with another value scores no more than this below the best. */
  withinOfValue: number;
  /** A rival with the same value, but another tolerance or voltage, comes closer to its like. */
  withinOfRest: number;
  least: number;
  most: number;
}

const USUALLY: Limits = { withinOfValue: 2.4, withinOfRest: 1.25, least: 0.4, most: 8 };
/** Where characters had to be made up, all that they may be is shown. */
const WHERE_WORN: Limits = { withinOfValue: 2.4, withinOfRest: 2, least: -0.5, most: 24 };

/** Least score, lead and share of understood characters that make a reading sure. */
const SURE = { score: 5, lead: 2.8, understood: 0.6 };
/** Least score and lead that make a reading likely, and share understood where figures are not. */
const LIKELY = { score: 2.5, lead: 1.5, understood: 0.65 };

const valueKey = ({ parse }: Scored): string => {
  const content = parse.value?.meaning.content;
  if (content?.says === 'sections') return content.values.join('+');
  return content?.says === 'capacitance' || content?.says === 'resistance'
    ? `${content.says} ${content.value.toPrecision(6)}`
    : '-';
};

const wholeKey = ({ value, reading }: Candidate): string => {
  const { tolerance, ratedVoltage, temperatureCharacteristic, taper } = reading;
  const { capacitanceChange, coefficient } = temperatureCharacteristic ?? {};
  return JSON.stringify([
    value,
    tolerance,
    ratedVoltage,
    temperatureCharacteristic?.code,
    capacitanceChange,
    coefficient,
    taper,
  ]);
};

/** What of a way goes into the meaning that it is told by, as far as the marking says so. */
const partsKey = (way: Scored): string =>
  way.parse.taken.reduce(
    (key, { meaning: { slot, content } }) => {
      switch (content.says) {
        case 'tolerance':
          return `${key} ${content.tolerance.minus}/${content.tolerance.plus}${content.tolerance.unit}`;
        case 'voltage':
          return `${key} ${slot ?? ''}${content.volts.min}-${content.volts.max}`;
        case 'temperature':
          return `${key} ${JSON.stringify(content.characteristic)}`;
        case 'taper':
          return `${key} ${content.taper}`;
        default:
          return key;
      }
    },
    `${valueKey(way)} ${JSON.stringify(way.parse.value?.meaning.implies)}`,
  );

/** The best way of each meaning, of ways that stand best first. */
const bestOfEach = (ways: readonly Scored[]): Scored[] => {
  const known = new Set<string>();
  return ways.filter((way) => {
    const key = partsKey(way);
    return !known.has(key) && known.add(key);
  });
};

/** How far a part may be above its value; of equals the tighter one comes first. */
const spread = ({ reading }: Candidate): number => reading.tolerance?.plus ?? Infinity;

/** The best candidate of each meaning, best first. */
const distinct = (candidates: readonly Candidate[]): Candidate[] => {
  const best = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const key = wholeKey(candidate);
    if ((best.get(key)?.score ?? -Infinity) < candidate.score) best.set(key, candidate);
  }
  return [...best.values()].sort((a, b) => b.score - a.score || spread(a) - spread(b));
};

const letters = (text: string): number => text.replace(/[^\p{L}\d]/gu, '').length;

/** How many letters and figures a reading leaves without a meaning. */
const lettersLost = ({ notUnderstood }: Reading): number =>
  notUnderstood.reduce((sum, text) => sum + letters(text), 0);

/** The best candidate of each value, of candidates that stand best first. */
const leaders = (candidates: readonly Candidate[]): Map<string, Candidate> => {
  const first = new Map<string, Candidate>();
  for (const candidate of candidates) {
    if (!first.has(candidate.value)) first.set(candidate.value, candidate);
  }
  return first;
};

/** Leaves out what is too far behind to be worth a look. */
const worthShowing = (candidates: readonly Candidate[], limits: Limits): Candidate[] => {
  const [top] = candidates;
  if (top === undefined) return [];
  const leaderOf = leaders(candidates);
  return candidates
    .filter((candidate) => {
      if (candidate === top) return true;
      const leader = leaderOf.get(candidate.value) ?? candidate;
      const near = top.score - leader.score <= limits.withinOfValue && leader.score >= limits.least;
      if (!near || leader.score - candidate.score > limits.withinOfRest) return false;
      // Leaving more of the marking aside makes no rival of a reading that is behind already.
      return candidate.lost <= Math.min(leader.lost, top.lost);
    })
    .slice(0, limits.most);
};

/** Share of the letters and figures of a marking that a reading gives a meaning to. */
const understood = ({ reading, lost }: Candidate): number => {
  const known = reading.evidence.reduce((sum, { text }) => sum + letters(text), 0);
  return known + lost === 0 ? 0 : known / (known + lost);
};

const hasValue = ({ reading }: Candidate): boolean =>
  reading.capacitance !== undefined ||
  reading.resistance !== undefined ||
  reading.sections !== undefined;

/** Whether every character could be read and was taken for what is written. */
const isAsWritten = ({ reading }: Candidate): boolean =>
  reading.evidence.every(({ assumed }) => assumed === undefined) &&
  !reading.notUnderstood.some((text) => text.split('').some(isWornSign));

/** Whether the taper is told by a letter alone, which makers differ about. */
const hasDisputedTaper = ({ parse }: Candidate): boolean =>
  said(parse, 'taper').some(({ settle }) => settle !== '');

/** Whether nothing was taken for something else, and nothing is left to find out. */
const isSettled = (best: Candidate): boolean => isAsWritten(best) && !hasDisputedTaper(best);

/** Whether a stretch of a kind stays without a meaning. */
const leaves = ({ reading }: Candidate, pattern: RegExp): boolean =>
  reading.notUnderstood.some((text) => pattern.test(text));

const WHOLE = /^\d+$/;
const WORD = /^\p{L}+$/u;

/** Characters that may part a number from its unit: a blank or two. */
const MOST_BETWEEN = 2;

/**
 * Whether whole figures are the value and a word that nobody knows stands at once behind, where their unit
 * would be, as in `10 apples`.
 */
const hasStrangeUnit = ({ parse: { value, skipped }, reading }: Candidate): boolean => {
  const written = reading.evidence.find(({ at }) => at === value?.at)?.text ?? '';
  if (value === undefined || !WHOLE.test(written)) return false;
  return skipped.some(
    ({ at }, index) =>
      at >= value.end &&
      at - value.end <= MOST_BETWEEN &&
      WORD.test(reading.notUnderstood[index] ?? ''),
  );
};

/** Whether what a reading leaves, or what is beside its value, speaks against it. */
const isDoubtful = (best: Candidate, share: number): boolean =>
  (leaves(best, /^\d/) && share < LIKELY.understood) || hasStrangeUnit(best);

/** The only reading worth showing, far ahead and of most of the marking, is sure. */
const surenessOfBest = (best: Candidate, rival: Scored | undefined, alone: boolean): Sureness => {
  const lead = best.score - (rival?.score ?? -Infinity);
  const share = understood(best);
  if (!hasValue(best) || best.score < LIKELY.score || lead < LIKELY.lead) return 'possible';
  if (!alone && hasMadeUp(best.parse)) return 'possible';
  if (isDoubtful(best, share)) return 'possible';
  return alone &&
    !leaves(best, /\d/) &&
    isSettled(best) &&
    best.score >= SURE.score &&
    lead >= SURE.lead &&
    share >= SURE.understood
    ? 'sure'
    : 'likely';
};

/**
 * Sets the ways to take a marking in order, puts readings together of those that are worth showing,
 * and says how far each is to be trusted.
 */
export const ranked = (
  metering: Metering,
  ways: readonly Scored[],
  compose: (parse: Parse) => Reading,
): Reading[] => {
  const ordered = ways.toSorted((a, b) => b.score - a.score);
  const limits = ordered.some(({ parse }) => hasMadeUp(parse)) ? WHERE_WORN : USUALLY;
  const least = (ordered[0]?.score ?? 0) - limits.withinOfValue - limits.withinOfRest;
  const candidates = bestOfEach(ordered.filter(({ score }) => score >= least)).map(
    (way): Candidate => {
      const reading = compose(way.parse);
      return { ...way, reading, value: valueKey(way), lost: lettersLost(reading) };
    },
  );
  const shown = worthShowing(distinct(candidates), limits);
  const [best] = shown;
  if (best === undefined) return [];
  const rival = ordered.find((other) => valueKey(other) !== best.value);
  const readings = shown.map(({ reading }) => reading);
  return shown.map((candidate) => ({
    ...candidate.reading,
    ...given('measured', measuredAmong(metering, readings, candidate.reading)),
    sure: candidate === best ? surenessOfBest(best, rival, shown.length === 1) : 'possible',
    settleBy: settling(metering, shown, candidate),
  }));
};
