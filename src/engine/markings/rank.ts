import type { Parse } from './parse.ts';
import type { Reading, Sureness } from './reading.ts';
import { say } from './say.ts';

/** A way to take the marking, with how far it is to be believed. */
export interface Scored {
  parse: Parse;
  score: number;
}

/** A reading with what it was made from, before it is set among its rivals. */
interface Candidate extends Scored {
  reading: Reading;
}

/** A rival with another value is shown if it scores no more than this below the best. */
const WITHIN_OF_VALUE = 2.4;
/** A rival with the same value, but another tolerance or voltage, must come closer. */
const WITHIN_OF_REST = 1;
/** Least score of a reading that is worth showing. */
const LEAST = 0.4;
/** Least score, lead and share of understood characters that make a reading sure. */
const SURE = { score: 5, lead: 2.8, understood: 0.6 };
/** Least score and lead that make a reading likely. */
const LIKELY = { score: 2.5, lead: 1.5 };
/** Readings shown at most. */
const MOST = 6;

const valueKey = ({ parse }: Scored): string => {
  const content = parse.value?.meaning.content;
  return content?.says === 'capacitance' || content?.says === 'resistance'
    ? `${content.says} ${content.value.toPrecision(6)}`
    : '-';
};

const wholeKey = (candidate: Candidate): string => {
  const { tolerance, ratedVoltage, temperatureCharacteristic } = candidate.reading;
  const { capacitanceChange, coefficient } = temperatureCharacteristic ?? {};
  return JSON.stringify([
    valueKey(candidate),
    tolerance,
    ratedVoltage,
    temperatureCharacteristic?.code,
    capacitanceChange,
    coefficient,
  ]);
};

/** The best candidate of each meaning, best first. */
const distinct = (candidates: readonly Candidate[]): Candidate[] => {
  const best = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const key = wholeKey(candidate);
    if ((best.get(key)?.score ?? -Infinity) < candidate.score) best.set(key, candidate);
  }
  return [...best.values()].sort((a, b) => b.score - a.score);
};

const letters = (text: string): number => text.replace(/[^\p{L}\d]/gu, '').length;

/** How many letters and figures a reading leaves without a meaning. */
const lost = ({ reading }: Candidate): number =>
  reading.notUnderstood.reduce((sum, text) => sum + letters(text), 0);

/** Leaves out what is too far behind to be worth a look. */
const worthShowing = (candidates: readonly Candidate[]): Candidate[] => {
  const [top] = candidates;
  if (top === undefined) return [];
  return candidates
    .filter((candidate) => {
      if (candidate === top) return true;
      const rival = candidates.find((other) => valueKey(other) === valueKey(candidate));
      const leader = rival ?? candidate;
      const near = top.score - leader.score <= WITHIN_OF_VALUE && leader.score >= LEAST;
      if (!near || leader.score - candidate.score > WITHIN_OF_REST) return false;
      // Leaving more of the marking aside makes no rival of a reading that is behind already.
      return lost(candidate) <= Math.min(lost(leader), lost(top));
    })
    .slice(0, MOST);
};

/** Share of the letters and figures of a marking that a reading gives a meaning to. */
const understood = ({ reading }: Candidate): number => {
  const known = reading.evidence.reduce((sum, { text }) => sum + letters(text), 0);
  const unknown = reading.notUnderstood.reduce((sum, text) => sum + letters(text), 0);
  return known + unknown === 0 ? 0 : known / (known + unknown);
};

const hasValue = ({ reading }: Candidate): boolean =>
  reading.capacitance !== undefined || reading.resistance !== undefined;

/** The only reading worth showing, far ahead and of most of the marking, is sure. */
const surenessOfBest = (best: Candidate, rival: Scored | undefined, alone: boolean): Sureness => {
  const lead = best.score - (rival?.score ?? -Infinity);
  const share = understood(best);
  if (!hasValue(best) || best.score < LIKELY.score || lead < LIKELY.lead) return 'possible';
  const figuresLost = best.reading.notUnderstood.some((text) => /\d/.test(text));
  return alone &&
    !figuresLost &&
    best.score >= SURE.score &&
    lead >= SURE.lead &&
    share >= SURE.understood
    ? 'sure'
    : 'likely';
};

const sayValue = ({ reading }: Candidate): string =>
  reading.capacitance !== undefined
    ? say(reading.capacitance.typ, 'F')
    : say(reading.resistance?.typ ?? 0, 'Ω');

/** Above this a capacitance is measured at mains-ripple frequency, F. */
const LARGE = 1e-6;

const measuring = (candidates: readonly Candidate[]): string[] => {
  const byValue = new Map(
    candidates
      .filter(({ reading }) => reading.capacitance !== undefined)
      .map((candidate) => [valueKey(candidate), candidate]),
  );
  const rivals = [...byValue.values()];
  if (rivals.length < 2) return [];
  const smallest = Math.min(...rivals.map(({ reading }) => reading.capacitance?.typ ?? Infinity));
  const at = smallest > LARGE ? '100 or 120 Hz' : '1 kHz';
  return [`measure at ${at}: ${rivals.map(sayValue).join(' or ')}`];
};

/** Stretches that a rival with the same value takes otherwise, with both meanings. */
const otherwise = (candidates: readonly Candidate[], candidate: Candidate): string[] =>
  candidates
    .filter((other) => other !== candidate && valueKey(other) === valueKey(candidate))
    .flatMap((other) =>
      candidate.reading.evidence.flatMap((own) =>
        other.reading.evidence
          .filter(
            ({ at, text, means }) => at === own.at && text === own.text && means !== own.means,
          )
          .map(
            ({ means }) => `where and when it was made: ${own.text} is ${own.means}, or ${means}`,
          ),
      ),
    );

/** What would settle between a reading and its rivals. */
const settling = (candidates: readonly Candidate[], candidate: Candidate): string[] => {
  const own = candidate.parse.value?.meaning.settle ?? '';
  const fromTables = candidates
    .filter((other) => valueKey(other) !== valueKey(candidate))
    .map((other) => other.parse.value?.meaning.settle ?? '');
  const texts = fromTables.length === 0 ? [] : [own, ...fromTables];
  return [
    ...new Set([...measuring(candidates), ...texts, ...otherwise(candidates, candidate)]),
  ].filter((text) => text !== '');
};

/**
 * Sets the ways to take a marking in order, puts readings together of those that are worth showing,
 * and says how far each is to be trusted.
 */
export const ranked = (ways: readonly Scored[], compose: (parse: Parse) => Reading): Reading[] => {
  const ordered = ways.toSorted((a, b) => b.score - a.score);
  const least = (ordered[0]?.score ?? 0) - WITHIN_OF_VALUE - WITHIN_OF_REST;
  const candidates = ordered
    .filter(({ score }) => score >= least)
    .map((way) => ({ ...way, reading: compose(way.parse) }));
  const shown = worthShowing(distinct(candidates));
  const [best] = shown;
  if (best === undefined) return [];
  const rival = ordered.find((other) => valueKey(other) !== valueKey(best));
  return shown.map((candidate) => ({
    ...candidate.reading,
    sure: candidate === best ? surenessOfBest(best, rival, shown.length === 1) : 'possible',
    settleBy: settling(shown, candidate),
  }));
};
