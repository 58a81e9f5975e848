import type { Part } from '../assessment/parts.ts';
import { allowedShare } from '../equations/derating.ts';
import { exactly, scale, type Range } from '../quantities/range.ts';
import { formatValue } from '../quantities/index.ts';
import { conditionOr, type Circumstances, type FindingModel } from './model.ts';

/** Peak (V) of DC and AC together, over the spread of both. */
export const peakVoltage = (circumstances: Circumstances): Range => {
  const direct = conditionOr(circumstances, 'vdc', 0);
  const alternating = conditionOr(circumstances, 'vac', 0);
  const peak = (pick: (range: Range) => number): number =>
    pick(direct) + Math.SQRT2 * pick(alternating);
  return {
    min: peak((range) => range.min),
    typ: peak((range) => range.typ),
    max: peak((range) => range.max),
  };
};

/**
 * Voltage (V) to hold against the rating of a part: the effective value for a part rated for AC,
 * the peak for one rated for DC.
 */
export const ratingStress = (
  part: Pick<Part, 'voltageKind'>,
  circumstances: Circumstances,
): Range =>
  part.voltageKind === 'ac' ? conditionOr(circumstances, 'vac', 0) : peakVoltage(circumstances);

/** Highest voltage (V) that can stand across the part for a while: in use or at switch-on. */
export const highestStress = (
  part: Pick<Part, 'voltageKind'>,
  circumstances: Circumstances,
): Range => {
  const use = ratingStress(part, circumstances);
  if (part.voltageKind === 'ac') return use;
  const start = conditionOr(circumstances, 'v-surge', 0);
  return {
    min: Math.max(use.min, start.min),
    typ: Math.max(use.typ, start.typ),
    max: Math.max(use.max, start.max),
  };
};

/** Highest temperature (degC) beside the part. */
const warmest = (circumstances: Circumstances): number =>
  conditionOr(circumstances, 't-max', 25).max;

/** Guideline that holds the makers' own ceilings. */
const MAKER = 'maker';

const shareOf = (part: Part, circumstances: Circumstances, guideline: string): number | undefined =>
  allowedShare(circumstances.catalogue.derating, guideline, part.type, warmest(circumstances))
    ?.share;

/** Share for a type that the guideline does not name: the whole rating, as nothing was said. */
const sharesFor = (part: Part, circumstances: Circumstances, guideline: string): number => {
  const members = circumstances.catalogue.types[part.type]?.union_of ?? [];
  const shares = (members.length === 0 ? [part.type] : members)
    .map((type) => shareOf({ ...part, type }, circumstances, guideline))
    .filter((share) => share !== undefined);
  return shares.length === 0 ? 1 : Math.min(...shares);
};

/** Rows of the derating table that a finding rests on, as source ids. */
const sourcesFor = (part: Part, circumstances: Circumstances, guideline: string): string[] => {
  const found = allowedShare(
    circumstances.catalogue.derating,
    guideline,
    part.type,
    warmest(circumstances),
  );
  return found === undefined ? [] : [found.row.source];
};

/** Lowest rating (V) that passes both the maker's ceiling and the guideline. */
export const neededRating = (
  part: Pick<Part, 'type' | 'voltageKind'>,
  circumstances: Circumstances,
): number => {
  const probe: Part = {
    ...part,
    capacitance: 1,
    tolerance: { minus: 0, plus: 0 },
    ratedVoltage: 1,
  };
  const ceiling = sharesFor(probe, circumstances, MAKER);
  const guide = sharesFor(probe, circumstances, circumstances.guideline);
  return Math.max(
    highestStress(probe, circumstances).max / ceiling,
    ratingStress(probe, circumstances).max / guide,
  );
};

const stressModel = (
  stressOf: (part: Part, circumstances: Circumstances) => Range,
  guidelineOf: (circumstances: Circumstances) => string,
): FindingModel => ({
  measure: (part, circumstances) => {
    const share = sharesFor(part, circumstances, guidelineOf(circumstances));
    const stress = stressOf(part, circumstances);
    const value =
      share > 0
        ? scale(stress, 1 / (part.ratedVoltage * share))
        : exactly(stress.max > 0 ? Number.MAX_VALUE : 0);
    return {
      status: 'known',
      value,
      properties: [],
      sources: sourcesFor(part, circumstances, guidelineOf(circumstances)),
    };
  },
  working: (part, circumstances, value) => {
    const share = sharesFor(part, circumstances, guidelineOf(circumstances));
    const stress = formatValue(stressOf(part, circumstances).typ, 'V');
    const rated = formatValue(part.ratedVoltage, 'V');
    if (share === 0) return `${stress} on a part that may not be used at this temperature`;
    return `${stress} / (${rated} × ${formatValue(share, 'ratio')}) = ${formatValue(value.typ, 'fraction')}`;
  },
});

/** Highest voltage against what the maker's rating allows. */
export const ratedVoltage: FindingModel = stressModel(highestStress, () => MAKER);

/** Working voltage against the chosen derating guideline. */
export const voltageMargin: FindingModel = stressModel(ratingStress, ({ guideline }) => guideline);
