import type { Judged } from '../assessment/finding.ts';
import type { Made, OfferedPart, Part, Tolerance } from '../assessment/parts.ts';
import type { Tried } from '../assessment/rank.ts';
import { worse, type Verdict } from '../assessment/verdict.ts';
import type { FindingId, PropertyId, TypeId } from '../catalogue.ts';
import { worstShare } from '../equations/combinations.ts';
import type { Circumstances } from '../findings/model.ts';
import { reverseWithstood } from '../findings/reverse.ts';
import { backToBack, inARow, sideBySide, withResistor } from './combine.ts';
import { nearestPairs } from './side-by-side.ts';
import { allowedSpan, singlesWithin } from './singles.ts';

type Kind = Made['kind'];

/** Ways of making a stand-in of two parts that can mend a finding of a single one. */
const MENDING: Readonly<Record<FindingId, readonly Kind[]>> = {
  value: ['parallel'],
  availability: ['parallel'],
  'rated-voltage': ['series'],
  'voltage-margin': ['series'],
  'ac-voltage': ['series'],
  'filter-shift': ['parallel'],
  'tuning-shift': ['parallel'],
  polarity: ['back-to-back'],
  'reverse-voltage': ['back-to-back'],
  'esr-window': ['with-resistor'],
};

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

/** The few parts of which two in a row come nearest to the old value. */
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
        .flatMap((part) => inARow(part, circumstances));

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

const partWithResistor = ({ part, judged }: Tried): OfferedPart[] => {
  const window = judged.find(({ row }) => row.id === 'esr-window');
  if (window?.outcome.status !== 'known' || !isOffered(part)) return [];
  const { low = 0, high = Infinity } = window.limit;
  return withResistor(part, window.outcome.value, { low, high });
};

const worstOf = (judged: readonly Judged[]): Verdict =>
  judged.reduce<Verdict>((worst, one) => worse(worst, one.verdict), 'fits');

/** Whether one verdict is better than another. */
export const isBetter = (a: Verdict, b: Verdict): boolean => a !== b && worse(a, b) === b;

/** Nobody solders two parts together for a stopgap. */
export const isWorthwhile = (verdict: Verdict): boolean => isBetter(verdict, 'stopgap');

/** Ways that may mend what a single part lacks, provided that nothing else keeps it from serving. */
const kindsFor = ({ judged, verdict }: Tried): Set<Kind> => {
  const lacking = judged.filter((one) => one.verdict !== 'fits');
  const beyondMending = worstOf(lacking.filter(({ row }) => MENDING[row.id] === undefined));
  if (!isWorthwhile(beyondMending) || !isBetter(beyondMending, verdict)) return new Set();
  return new Set(lacking.flatMap(({ row }) => MENDING[row.id] ?? []));
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
  const kinds = kindsFor(single);
  if (kinds.has('with-resistor')) yield* partWithResistor(single);
  if (kinds.has('parallel'))
    for (const pair of nearestPairs(type, circumstances, TRIED)) yield sideBySide(pair);
  if (kinds.has('series')) yield* pairsInARow(type, circumstances);
  if (kinds.has('back-to-back') && !nonPolarServes()) yield* pairsBackToBack(type, circumstances);
}
