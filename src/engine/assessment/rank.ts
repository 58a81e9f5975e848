import type { TypeRow } from '../../schemas/types.ts';
import type { TypeId } from '../catalogue.ts';
import type { Circumstances } from '../findings/model.ts';
import { isChip } from './mounting.ts';
import type { OfferedPart, Part } from './parts.ts';
import type { Finding, Judged } from './finding.ts';
import { isBetter, verdictOrder, worse, type Verdict } from './verdict.ts';

/** What the demands judged so far come to; each further one can only make it worse. */
export interface Tally {
  /** The worst of the demands. */
  verdict: Verdict;
  /** Decades by which a part falls short of the demands of each weight, summed, the heaviest first. */
  short: number[];
  /** Whether it misses a demand that it ought to meet whatever else it does. */
  missesHeavy: boolean;
}

/** A part with what all demands of the position come to for it. */
export interface Tried<P = Part> extends Tally {
  part: P;
  judged: Judged[];
}

/** A part that has been tried, with its place among others. */
export interface Scored<P = Part> extends Tried<P> {
  /** What parts are ordered by, the weightiest first; a smaller number stands first. */
  order: number[];
}

/** Being ten times better than needed earns no more. */
const MOST_MARGIN = 1;

/** Margins closer than this (decades) are alike: data are not known better than to a quarter. */
const STEP = 0.1;

/** Margin in decades: 0 at the limit, positive inside it, capped inside, rounded to steps. */
const marginOf = ({ beyond, row }: Judged): number => {
  const ratio = Math.max(beyond.unfavourable, 1e-12);
  const decades = -Math.log10(ratio);
  // Where a limit met is met, there is nothing to be gained beyond it.
  const most = row.graded ? MOST_MARGIN : 0;
  return Math.round(Math.max(-12, Math.min(most, decades)) / STEP) * STEP;
};

/** The least margin (decades) of the demands of a weight. */
export const worstMargin = (judged: readonly Judged[], weight: string): number => {
  let worst = MOST_MARGIN;
  for (const one of judged) {
    // An ungraded demand that is met says nothing about which of two parts is the better.
    const tells = one.row.graded || one.beyond.unfavourable > 1;
    if (one.demand.weight === weight && tells) worst = Math.min(worst, marginOf(one));
  }
  return worst;
};

/** Mean of all graded margins of a weight: what is left to tell apart where the worst are alike. */
export const meanMargin = (judged: readonly Judged[], weight: string): number => {
  let sum = 0;
  let count = 0;
  for (const one of judged) {
    if (one.demand.weight !== weight || !one.row.graded) continue;
    sum += marginOf(one);
    count += 1;
  }
  return count === 0 ? 0 : sum / count;
};

/** Distance in decades from the old value, counted in tenths so that rounding does not decide. */
export const valueDistance = (value: number, old: number): number =>
  Math.round(Math.abs(Math.log10(value / old)) * 10);

/** How a type can be had, the easiest first; what is in none of these cannot be bought. */
export const MARKETS: readonly TypeRow['market'][] = ['common', 'current', 'niche'];

/** What a part is ordered by besides what its findings come to. */
export interface Standing {
  /** Whether it takes more than one part. */
  made: boolean;
  /** From `valueDistance`; 0 for parts without a value. */
  distance: number;
  chip: boolean;
  market: TypeRow['market'] | undefined;
  /** What is left to tell alike parts apart by, a smaller number first. */
  last: readonly number[];
}

/**
 * What a part is ordered by: verdict, whether it is a single part, the worst hard margin, closeness
 * to the old value (so that no type gains by a value that others would gain by as well), whether it
 * has leads, the worst strong margin, how widely it is stocked, the mean of the strong and of the mild
 * margins, then the looser tolerance and the lower rating, which are easier to buy and smaller.
 */
const orderOf = (
  judged: Judged[],
  verdict: Verdict,
  { made, distance, chip, market, last }: Standing,
): number[] => [
  verdictOrder.indexOf(verdict),
  // Two parts never stand before a single one that does as well.
  Number(made),
  -worstMargin(judged, 'hard'),
  distance,
  Number(chip),
  -worstMargin(judged, 'strong'),
  MARKETS.indexOf(market ?? 'niche'),
  -meanMargin(judged, 'strong'),
  -meanMargin(judged, 'mild'),
  ...last,
];

/** Weights of demands, the heaviest first. */
const WEIGHTS = ['hard', 'strong', 'mild'];

/** Demands that a part ought to meet whatever else it does. */
const HEAVY = ['hard', 'strong'];

/** What no demand at all comes to. */
export const emptyTally = (): Tally => ({
  verdict: 'fits',
  short: WEIGHTS.map(() => 0),
  missesHeavy: false,
});

/** Counts one more demand in. */
export const countIn = (tally: Tally, one: Judged): void => {
  if (one.verdict === 'fits') return;
  const { weight } = one.demand;
  const place = WEIGHTS.indexOf(weight);
  tally.verdict = worse(tally.verdict, one.verdict);
  tally.short[place] = (tally.short[place] ?? 0) - Math.min(0, marginOf(one));
  tally.missesHeavy ||= HEAVY.includes(weight);
};

/** A part with its verdict. */
export const tryOut = <P>(part: P, judged: Judged[]): Tried<P> => {
  const tally = emptyTally();
  for (const one of judged) countIn(tally, one);
  return { part, judged, ...tally };
};

/** A part with its verdict and its place in the order. */
export const scoreBy = <P>(tried: Tried<P>, standing: Standing): Scored<P> => ({
  ...tried,
  order: orderOf(tried.judged, tried.verdict, standing),
});

/** A capacitor with its verdict and its place in the order. */
export const score = <P extends Part | OfferedPart>(
  part: P,
  judged: Judged[],
  { catalogue, original }: Circumstances,
): Scored<P> =>
  scoreBy(tryOut(part, judged), {
    made: part.made !== undefined,
    distance: valueDistance(part.capacitance, original.capacitance),
    chip:
      'style' in part && (part.made?.parts ?? [part]).some(({ style }) => isChip(catalogue, style)),
    market: catalogue.types[part.type]?.market,
    last: [-part.tolerance.plus, part.ratedVoltage],
  });

/** Compares two scored parts; the better one first. */
export const compareScores = <P extends { type: TypeId }>(a: Scored<P>, b: Scored<P>): number => {
  for (let index = 0; index < a.order.length; index += 1) {
    const difference = (a.order[index] ?? 0) - (b.order[index] ?? 0);
    if (Math.abs(difference) > 1e-9) return difference;
  }
  return a.part.type < b.part.type ? -1 : Number(a.part.type > b.part.type);
};

/** Whether a part falls less short of its demands than another; the heavier demands decide. */
export const fallsLessShort = (a: Tally, b: Tally): boolean => {
  for (let place = 0; place < a.short.length; place += 1) {
    const difference = (a.short[place] ?? 0) - (b.short[place] ?? 0);
    if (Math.abs(difference) > STEP / 2) return difference < 0;
  }
  return false;
};

/** Whether a part meets all demands that weigh, where another misses one. */
const meetsWhatWeighs = (a: Tally, b: Tally): boolean => !a.missesHeavy && b.missesHeavy;

/**
 * Whether a part serves better than one that one would rather choose: by its verdict, being of the
 * same value by falling less short, or by missing only what would be nice to have.
 */
export const improves = (next: Tally, best: Tally, sameValue: boolean): boolean => {
  if (next.verdict !== best.verdict) return isBetter(next.verdict, best.verdict);
  if (sameValue) return fallsLessShort(next, best);
  return meetsWhatWeighs(next, best);
};

const VERDICTS: readonly Verdict[] = verdictOrder.toReversed();

/** Compares two findings of a part; the weightiest and worst first. */
export const byConcern = (a: Finding, b: Finding): number =>
  VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) ||
  WEIGHTS.indexOf(a.weight) - WEIGHTS.indexOf(b.weight) ||
  a.margin - b.margin;

/** The demand that decides a part: of those with its verdict, the one furthest beyond its limit. */
export const decisiveDemand = (judged: readonly Judged[], verdict: Verdict): string => {
  const own = judged.filter((one) => one.verdict === verdict);
  const deciding = own.length > 0 ? own : judged;
  // Where all is well, the demand with the least to spare is one that has degrees at all.
  const graded = verdict === 'fits' ? deciding.filter(({ row }) => row.graded) : [];
  const [first] = (graded.length > 0 ? graded : deciding)
    .map((one) => ({ demand: one.demand, margin: marginOf(one) }))
    .toSorted(
      (a, b) =>
        a.margin - b.margin || WEIGHTS.indexOf(a.demand.weight) - WEIGHTS.indexOf(b.demand.weight),
    );
  return first?.demand.id ?? '';
};
