import type { Judged } from '../assessment/finding.ts';
import type { Made, OfferedPart, Part, Tolerance } from '../assessment/parts.ts';
import { fallsLessShort, type Tried } from '../assessment/rank.ts';
import type { Standing } from '../assessment/trial.ts';
import { isBetter, worse, type Verdict } from '../assessment/verdict.ts';
import type { PropertyId, TypeId } from '../catalogue.ts';
import { worstShare } from '../equations/combinations.ts';
import { resistanceForLevel } from '../findings/level.ts';
import { conditionOf, type Circumstances } from '../findings/model.ts';
import { reverseWithstood } from '../findings/reverse.ts';
import { isSetByHand } from '../findings/set-by-hand.ts';
import { resistanceOf } from '../findings/series-resistance.ts';
import { TABLE_FREQUENCY } from '../sizes/esr-of.ts';
import { backToBack, inSeries, inParallel } from './combine.ts';
import { nearestPairs } from './in-parallel.ts';
import { allowedSpan, singlesWithin } from './singles.ts';
import { withResistor, type Wanted } from './with-resistor.ts';

type Kind = Made['kind'];

/** What must be known of a type to make up pairs of it, whatever the position asks. */
export const PROPERTIES_FOR_COMBINING: readonly PropertyId[] = [
  'insulation-rc',
  'insulation-cap',
  'insulation-halving',
  'leakage-floor',
  'reverse-voltage',
  'reverse-voltage-most',
];

/** Combinations of each kind that are tried, which bounds the time that they take. */
const TRIED = 2;

const isMains = ({ position }: Circumstances): boolean => position.safety.length > 0;

/** The few parts of which two in series come nearest to the old value. */
const halves = (
  type: TypeId,
  circumstances: Circumstances,
  share?: (tolerance: Tolerance) => number,
): OfferedPart[] => {
  const [low, high] = allowedSpan(circumstances);
  const wanted = 2 * circumstances.original.capacitance;
  const distance = ({ capacitance }: OfferedPart): number =>
    Math.round(Math.abs(Math.log(capacitance / wanted)) * 100);
  return singlesWithin(type, [2 * low, 2 * high], circumstances, share)
    .toSorted((a, b) => distance(a) - distance(b) || a.ratedVoltage - b.ratedVoltage)
    .slice(0, TRIED);
};

/** Never where a safety class is asked: an approval is for one part, not for half of one. */
const pairsInARow = (type: TypeId, circumstances: Circumstances): OfferedPart[] =>
  isMains(circumstances)
    ? []
    : halves(type, circumstances, worstShare)
        .filter(({ voltageKind }) => voltageKind === 'dc')
        .flatMap((part) => inSeries(part, circumstances));

/**
 * Only of types that bear a little reverse voltage, and not where the voltage alternates all the
 * time, which heats an electrolytic whichever way round it is.
 */
const pairsBackToBack = (type: TypeId, circumstances: Circumstances): OfferedPart[] => {
  if (circumstances.position.voltage_sense === 'ac' || isMains(circumstances)) return [];
  return halves(type, circumstances)
    .filter((part) => (reverseWithstood(part, circumstances)?.min ?? 0) > 0)
    .map(backToBack);
};

const isOffered = (part: Part): part is OfferedPart => 'style' in part;

/** Series resistance that a lacking finding asks for, by the finding and the frequency (Hz) of both. */
const wantedBy = (
  { row, limit }: Judged,
  circumstances: Circumstances,
): { wanted: Wanted; hertz: number } | undefined => {
  switch (row.id) {
    case 'esr-window':
      return {
        wanted: { low: limit.low ?? 0, high: limit.high ?? Infinity },
        hertz: TABLE_FREQUENCY,
      };
    case 'level-shift':
      return {
        wanted: resistanceForLevel(limit, circumstances),
        hertz: conditionOf(circumstances, 'f-work').typ,
      };
    default:
      return undefined;
  }
};

/** Effective current (A) of a full signal through a part in the path of a load, where it is in one. */
const signalCurrent = ({ conditions }: Circumstances): number | undefined => {
  const { signal, load } = conditions;
  return signal === undefined || load === undefined ? undefined : signal.max / load.min;
};

const partsWithResistor = (
  { part, judged }: Tried,
  circumstances: Circumstances,
): OfferedPart[] => {
  if (!isOffered(part)) return [];
  return judged
    .filter(({ verdict }) => verdict !== 'fits')
    .flatMap((one) => {
      const asked = wantedBy(one, circumstances);
      if (asked === undefined) return [];
      const own = resistanceOf(part, circumstances, asked.hertz);
      return own === undefined
        ? []
        : withResistor(
            circumstances.catalogue,
            part,
            own.range,
            asked.wanted,
            signalCurrent(circumstances),
          );
    });
};

const worstOf = (judged: readonly Judged[]): Verdict =>
  judged.reduce<Verdict>((worst, one) => worse(worst, one.verdict), 'fits');

/** Nobody solders two parts together for a stopgap. */
const isWorthwhile = (verdict: Verdict): boolean => isBetter(verdict, 'stopgap');

/** A resistor is worth its joint for less than a better verdict; a second capacitor is not. */
const isCheap = (kind: Kind): boolean => kind === 'with-resistor';

/**
 * Whether a combination is better than what one has: by its verdict, or, where all it takes is a
 * resistor, by falling less short.
 */
export const isWorthMaking = (next: Standing, best: Standing): boolean => {
  if (!isWorthwhile(next.verdict)) return false;
  if (isBetter(next.verdict, best.verdict)) return true;
  const kind = next.part.made?.kind;
  return (
    next.verdict === best.verdict &&
    kind !== undefined &&
    isCheap(kind) &&
    fallsLessShort(next, best)
  );
};

/** Ways that may mend what a single part lacks, provided that nothing else keeps it from serving. */
const kindsFor = ({ judged, verdict }: Tried, { catalogue }: Circumstances): Set<Kind> => {
  const ways = Object.values(catalogue.combinations);
  const mending = ({ row }: Judged): Kind[] =>
    ways.filter(({ mends }) => mends.includes(row.id)).map(({ id }) => id);
  const lacking = judged.filter((one) => one.verdict !== 'fits');
  const beyondMending = worstOf(lacking.filter((one) => mending(one).length === 0));
  if (!isWorthwhile(beyondMending)) return new Set();
  const kinds = lacking.flatMap(mending);
  return new Set(isBetter(beyondMending, verdict) ? kinds : kinds.filter(isCheap));
};

/**
 * Stand-ins made of two parts of a type, or of one and a resistor, where the best single part of
 * the type lacks something that this can mend; few, in the order in which one would choose, each
 * made up only when it is asked for.
 * @param single the best single part of the type
 * @param nonPolarServes whether a single part for both signs does: two back to back are a makeshift
 */
export function* combinedParts(
  single: Tried,
  circumstances: Circumstances,
  nonPolarServes: () => boolean,
): Generator<OfferedPart, void, undefined> {
  const { type } = single.part;
  const kinds = kindsFor(single, circumstances);
  if (kinds.has('with-resistor')) yield* partsWithResistor(single, circumstances);
  // Two that are set by hand would have to be turned as one.
  if (kinds.has('parallel') && !isSetByHand(single.part, circumstances))
    for (const pair of nearestPairs(type, circumstances, TRIED)) yield inParallel(pair);
  if (kinds.has('series')) yield* pairsInARow(type, circumstances);
  if (kinds.has('back-to-back') && !nonPolarServes()) yield* pairsBackToBack(type, circumstances);
}
