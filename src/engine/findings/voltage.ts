import type { Part } from '../assessment/parts.ts';
import type { Basis, Catalogue, GuidelineId, SourceId, TypeId } from '../catalogue.ts';
import { peakOfSine, rmsOfSine } from '../equations/sine.ts';
import {
  allowedShare,
  DEFAULT_GUIDELINE,
  MAKERS,
  printedShare,
  ratingBorders,
  type Rated,
} from '../equations/derating.ts';
import { REFERENCE_CELSIUS } from '../equations/reference.ts';
import { exactly, scale, type Range } from '../quantities/range.ts';
import { formatValue } from '../quantities/index.ts';
import { conditionOr, type Circumstances, type FindingModel } from './model.ts';

/** Peak (V) of DC and AC together, over the spread of both. */
export const peakVoltage = (circumstances: Circumstances): Range => {
  const direct = conditionOr(circumstances, 'vdc', 0);
  const alternating = conditionOr(circumstances, 'vac', 0);
  const peak = (pick: (range: Range) => number): number =>
    peakOfSine(pick(alternating), pick(direct));
  return {
    min: peak((range) => range.min),
    typ: peak((range) => range.typ),
    max: peak((range) => range.max),
  };
};

/** Highest voltage (V) that a rating speaks of: the peak of one for AC. */
const ratedPeak = ({ voltageKind, ratedVoltage }: Pick<Part, 'voltageKind' | 'ratedVoltage'>) =>
  voltageKind === 'ac' ? peakOfSine(ratedVoltage) : ratedVoltage;

/**
 * Highest voltage (V) that can stand across the part for a while: in use or at switch-on. What comes
 * with AC voltage at switch-on, a part that is rated for it is made to bear.
 */
const highestStress = (part: Pick<Part, 'voltageKind'>, circumstances: Circumstances): Range => {
  const use = peakVoltage(circumstances);
  if (part.voltageKind === 'ac' && circumstances.position.voltage_sense === 'ac') return use;
  const start = conditionOr(circumstances, 'v-surge', 0);
  return {
    min: Math.max(use.min, start.min),
    typ: Math.max(use.typ, start.typ),
    max: Math.max(use.max, start.max),
  };
};

/** What a guideline says of a type at the highest temperature of the position. */
interface Allowed {
  /** Share of the rated voltage; the whole rating where no guideline speaks of the type. */
  share: number;
  sources: SourceId[];
  bases: Basis[];
  /** What stands in where the guideline is silent on the type. */
  instead?: string;
}

/** Highest temperature (degC) of the position. */
const warmest = ({ conditions }: Circumstances): number =>
  conditions['t-max']?.max ?? REFERENCE_CELSIUS;

/** For a part of unknown class, the strictest of what it can be. */
const ruleFor = (
  { type, rated }: Rated,
  circumstances: Circumstances,
  guideline: string,
): Allowed | undefined => {
  const { catalogue } = circumstances;
  const members = catalogue.types[type]?.union_of ?? [];
  const warm = warmest(circumstances);
  const found = (members.length === 0 ? [type] : members)
    .flatMap(
      (member) => allowedShare(catalogue.derating, guideline, { type: member, rated }, warm) ?? [],
    )
    .toSorted((a, b) => a.share - b.share);
  const strictest = found[0];
  return (
    strictest && {
      share: strictest.share,
      sources: [strictest.row.source],
      bases: [strictest.row.basis],
    }
  );
};

/** The rule of the guideline, or of the usual one where that is silent. */
const lookUp = (part: Rated, circumstances: Circumstances, guideline: string): Allowed => {
  const own = ruleFor(part, circumstances, guideline);
  if (own !== undefined) return own;
  const usual = ruleFor(part, circumstances, DEFAULT_GUIDELINE);
  return usual === undefined
    ? {
        share: 1,
        sources: [],
        bases: ['memory'],
        instead: 'no guideline speaks of this type, so its whole rating',
      }
    : { ...usual, instead: 'the guideline is silent on this type, so the usual one' };
};

type ByRating = Map<TypeId, Map<number, Allowed>>;

/** How many pairs of a guideline and a temperature are remembered; with more, all are forgotten. */
const MOST_REMEMBERED = 200;

/** What guidelines say at a temperature: an edit seldom moves that, and every part asks again. */
const saidAt = new WeakMap<Catalogue, Map<string, ByRating>>();

const saidBy = (guideline: GuidelineId, circumstances: Circumstances): ByRating => {
  const { catalogue } = circumstances;
  const all = saidAt.get(catalogue) ?? new Map<string, ByRating>();
  saidAt.set(catalogue, all);
  const key = `${guideline} ${warmest(circumstances)}`;
  const known: ByRating = all.get(key) ?? new Map();
  if (!all.has(key) && all.size >= MOST_REMEMBERED) all.clear();
  all.set(key, known);
  return known;
};

/** The same in one set of circumstances, found once for each guideline. */
const heard = new WeakMap<Circumstances, Map<GuidelineId, ByRating>>();

const heardIn = (circumstances: Circumstances, guideline: GuidelineId): ByRating => {
  const all = heard.get(circumstances) ?? new Map<GuidelineId, ByRating>();
  heard.set(circumstances, all);
  const byType = all.get(guideline) ?? saidBy(guideline, circumstances);
  all.set(guideline, byType);
  return byType;
};

const allowedFor = (part: Rated, circumstances: Circumstances, guideline: GuidelineId): Allowed => {
  const byType = heardIn(circumstances, guideline);
  const own = byType.get(part.type) ?? new Map<number, Allowed>();
  byType.set(part.type, own);
  const allowed = own.get(part.rated) ?? lookUp(part, circumstances, guideline);
  own.set(part.rated, allowed);
  return allowed;
};

/** The same for a part: of the maker's ceiling what is printed for its very rating, if anything is. */
const allowedForPart = (
  { type, ratedVoltage: rated }: Part,
  circumstances: Circumstances,
  guideline: GuidelineId,
): Allowed => {
  const { categoryVoltages } = circumstances.catalogue;
  const warm = warmest(circumstances);
  const printed = printedShare(categoryVoltages, guideline, { type, rated }, warm);
  return printed === undefined
    ? allowedFor({ type, rated }, circumstances, guideline)
    : { share: printed.share, sources: [printed.row.source], bases: [printed.row.basis] };
};

type RatedPart = Pick<Part, 'type' | 'voltageKind'>;

const findNeededRating = (part: RatedPart, circumstances: Circumstances): number => {
  const { type, voltageKind } = part;
  const byPeak = (peak: number): number => (voltageKind === 'ac' ? rmsOfSine(peak) : peak);
  const highest = byPeak(highestStress(part, circumstances).max);
  const working = byPeak(peakVoltage(circumstances).max);
  let above = 0;
  for (const border of ratingBorders(circumstances.catalogue.derating, type)) {
    const upToBorder = { type, rated: border };
    const ceiling = allowedFor(upToBorder, circumstances, MAKERS).share;
    const guide = allowedFor(upToBorder, circumstances, circumstances.guideline).share;
    const needed = Math.max(above, highest / ceiling, working / guide);
    if (needed <= border) return needed;
    above = border;
  }
  return Infinity;
};

/** What has been worked out, by kind of voltage and type: every offer of a type asks again. */
const needed = new WeakMap<Circumstances, Record<Part['voltageKind'], Map<TypeId, number>>>();

/** Lowest rating (V) that passes both the maker's ceiling and the guideline. */
export const neededRating = (part: RatedPart, circumstances: Circumstances): number => {
  const all = needed.get(circumstances) ?? { dc: new Map(), ac: new Map() };
  needed.set(circumstances, all);
  const own = all[part.voltageKind];
  const rating = own.get(part.type) ?? findNeededRating(part, circumstances);
  own.set(part.type, rating);
  return rating;
};

const stressModel = (
  stressOf: (part: Part, circumstances: Circumstances) => Range,
  guidelineOf: (circumstances: Circumstances) => string,
): FindingModel => ({
  measure: (part, circumstances) => {
    const { share, sources, bases } = allowedForPart(
      part,
      circumstances,
      guidelineOf(circumstances),
    );
    const stress = stressOf(part, circumstances);
    const value =
      share > 0
        ? scale(stress, 1 / (ratedPeak(part) * share))
        : exactly(stress.max > 0 ? Number.MAX_VALUE : 0);
    return { status: 'known', value, properties: [], sources, bases };
  },
  working: (part, circumstances, value) => {
    const { share, instead } = allowedForPart(part, circumstances, guidelineOf(circumstances));
    const stress = formatValue(stressOf(part, circumstances).typ, 'V');
    const prefix = part.voltageKind === 'ac' ? '√2 × ' : '';
    const rated = prefix + formatValue(part.ratedVoltage, 'V');
    if (share === 0) return `${stress} on a part that may not be used at this temperature`;
    const silent = instead === undefined ? '' : `; ${instead}`;
    return `${stress} / (${rated} × ${formatValue(share, 'grade')}) = ${formatValue(value.typ, 'fraction')}${silent}`;
  },
});

/** Highest voltage against what the maker's rating allows. */
export const ratedVoltage: FindingModel = stressModel(highestStress, () => MAKERS);

/** Working voltage against the chosen derating guideline. */
export const voltageMargin: FindingModel = stressModel(
  (_part, circumstances) => peakVoltage(circumstances),
  ({ guideline }) => guideline,
);
