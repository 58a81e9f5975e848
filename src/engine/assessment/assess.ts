import { combinedParts, isWorthMaking } from '../candidates/combinations.ts';
import { offeredParts, unofferedPart } from '../candidates/generate.ts';
import type { TypeRow } from '../../schemas/types.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import type { Circumstances } from '../findings/model.ts';
import { bodyOf } from '../sizes/body-of.ts';
import type { Shape } from '../sizes/body.ts';
import { explain, type Finding } from './finding.ts';
import { rowNamed } from './original.ts';
import type { Candidate, OfferedPart, Part, Request } from './parts.ts';
import {
  byConcern,
  compareScores,
  decisiveDemand,
  MARKETS,
  score,
  type Scored,
  type Tried,
} from './rank.ts';
import { bestOf, firstThatFits, servesBetter, settingFor, tryPart, type Setting } from './trial.ts';
import { compareVerdicts, type Verdict } from './verdict.ts';

/** What one stand-in comes to in a position. */
export interface Assessment<P = Part> {
  candidate: P;
  verdict: Verdict;
  /** One a demand of the position, the weightiest and worst first. */
  findings: Finding[];
  /** Demand id of the finding that decides. */
  worst: string;
  /** What to order; nothing where no such part is made. */
  buy?: {
    style: string;
    /** Lead pitches on offer, mm. */
    pitch: number[];
    series: string;
    /** The smallest listed body that takes the part, where one is listed. */
    body?: {
      shape: Shape;
      /** Sides, mm; the diameter of a can or disc is its length, of a tube its width. */
      length: number;
      width: number;
      height: number;
      /** Lead pitches as the parts come, mm. */
      pitch: number[];
      /** Thickest lead, mm, where it is said. */
      lead?: number;
    };
  };
}

const isOffered = (part: Part | OfferedPart): part is OfferedPart => 'style' in part;

const toBuy = (part: OfferedPart, { catalogue }: Circumstances): NonNullable<Assessment['buy']> => {
  const row = bodyOf(catalogue, part)?.row;
  return {
    style: part.style,
    pitch: part.pitch,
    series: part.series,
    ...(row === undefined
      ? {}
      : {
          body: {
            shape: row.shape,
            length: row.length_mm,
            width: row.width_mm,
            height: row.height_mm,
            pitch: row.pitch_mm,
            ...(row.lead_mm === undefined ? {} : { lead: row.lead_mm }),
          },
        }),
  };
};

const plainPart = ({
  type,
  capacitance,
  tolerance,
  ratedVoltage,
  voltageKind,
  made,
}: Part): Part => ({
  type,
  capacitance,
  tolerance,
  ratedVoltage,
  voltageKind,
  ...(made === undefined ? {} : { made }),
});

const findingsOf = (
  { part, judged }: Tried,
  { circumstances, demands }: Setting,
): Assessment['findings'] => {
  const findings: Finding[] = [];
  for (const [index, prepared] of demands.entries()) {
    const one = judged[index];
    if (one !== undefined) findings.push(explain(prepared, one, part, circumstances));
  }
  return findings.sort(byConcern);
};

/**
 * Findings are put into words when they are first read: of a whole board few ever are. A class, for
 * a getter of its own in each object would give each a hidden class of its own, which keeps all that
 * was tried in memory until the engine next collects everything.
 */
class TriedAssessment implements Assessment {
  readonly candidate: Part;
  readonly verdict: Verdict;
  readonly worst: string;
  declare readonly buy?: NonNullable<Assessment['buy']>;
  readonly #tried: Tried;
  readonly #setting: Setting;
  #findings: Finding[] | undefined;

  constructor(tried: Tried, setting: Setting) {
    const { part, judged, verdict } = tried;
    this.candidate = plainPart(part);
    this.verdict = verdict;
    this.worst = decisiveDemand(judged, verdict);
    if (isOffered(part)) this.buy = toBuy(part, setting.circumstances);
    this.#tried = tried;
    this.#setting = setting;
  }

  get findings(): Finding[] {
    return (this.#findings ??= findingsOf(this.#tried, this.#setting));
  }
}

const assessmentOf = (tried: Tried, setting: Setting): Assessment =>
  new TriedAssessment(tried, setting);

/** Parts of a type in the order in which one would choose, one at least. */
const singleParts = (type: TypeId, { circumstances }: Setting): readonly Part[] => {
  const offered = offeredParts(circumstances.catalogue, type, circumstances);
  return offered.length > 0 ? offered : [unofferedPart(type, circumstances)];
};

const findBestSingle = (type: TypeId, setting: Setting): Tried => {
  const parts = singleParts(type, setting);
  const start = tryPart(parts[0] ?? unofferedPart(type, setting.circumstances), setting);
  return start.verdict === 'fits' ? start : bestOf(start, parts.slice(1), setting, servesBetter);
};

/**
 * The part of a type with the best verdict; of several, the one that one would choose anyway. Being
 * far inside a limit is no reason to buy another value or a tighter tolerance than usual, but
 * falling less short of one is a reason for another rating or tolerance.
 */
const bestSingle = (type: TypeId, setting: Setting): Tried => {
  const best = setting.singles.get(type) ?? findBestSingle(type, setting);
  setting.singles.set(type, best);
  return best;
};

/**
 * Types that may be offered in a position: those that one can buy, save parts made for the mains
 * where the position is not at the mains.
 */
const offeredTypes = ({ catalogue, position }: Circumstances): TypeRow[] =>
  Object.values(catalogue.types)
    .filter(({ market }) => MARKETS.includes(market))
    .filter(
      (type) =>
        type.safety_classes.length === 0 ||
        position.safety.length > 0 ||
        position.voltage_sense === 'ac',
    );

/**
 * Whether some single part for both signs serves: one that fits, or, of the families that are mostly
 * polar, one that fits on a condition, for two polar ones would meet the same condition.
 */
const nonPolarServes = (setting: Setting): boolean => {
  const types = Object.values(setting.circumstances.catalogue.types);
  const polar = new Set(
    types.filter(({ polarity }) => polarity === 'polar').map(({ family }) => family),
  );
  return offeredTypes(setting.circumstances)
    .filter(({ polarity }) => polarity === 'non-polar')
    .some(({ id, family }) => {
      const { verdict } = bestSingle(id, setting);
      return verdict === 'fits' || (polar.has(family) && verdict === 'fits-if');
    });
};

/**
 * What of a type suits best: a single part, unless one made of two earns a better verdict. More
 * parts for the same verdict are more joints and more room for nothing.
 */
const bestOfType = (type: TypeId, setting: Setting): Tried => {
  const single = bestSingle(type, setting);
  if (single.verdict === 'fits') return single;
  const pairs = combinedParts(single, setting.circumstances, () => nonPolarServes(setting));
  return bestOf(single, pairs, setting, isWorthMaking);
};

const rank = (setting: Setting): Scored[] =>
  offeredTypes(setting.circumstances)
    .map(({ id }): Scored => {
      const { part, judged } = bestOfType(id, setting);
      return score(part, judged, setting.circumstances);
    })
    .toSorted(compareScores);

/**
 * Stand-ins for an old part in a position: of every type on the market the part that suits best,
 * best first, kept-out ones last. Each carries all findings with their working.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const findStandIns = (catalogue: Catalogue, request: Request): Assessment[] => {
  const setting = settingFor(catalogue, request);
  return rank(setting).map((scored) => assessmentOf(scored, setting));
};

const sameTolerance = (a: Part['tolerance'], b: Part['tolerance']): boolean =>
  Math.abs(a.minus - b.minus) < 1e-9 && Math.abs(a.plus - b.plus) < 1e-9;

/** A part that is asked about, with what the visitor leaves open filled in. */
const tryAsked = (setting: Setting, candidate: Candidate): Tried => {
  rowNamed(setting.circumstances.catalogue.types, candidate.type, 'type');
  const { capacitance, tolerance, ratedVoltage, voltageKind } = candidate;
  const open = [capacitance, tolerance, ratedVoltage, voltageKind].every(
    (said) => said === undefined,
  );
  if (open) return bestOfType(candidate.type, setting);
  const best = bestSingle(candidate.type, setting).part;
  const wanted: Part = {
    type: candidate.type,
    capacitance: capacitance ?? best.capacitance,
    tolerance: tolerance ?? best.tolerance,
    ratedVoltage: ratedVoltage ?? best.ratedVoltage,
    voltageKind: voltageKind ?? best.voltageKind,
  };
  const isBest =
    wanted.capacitance === best.capacitance &&
    wanted.ratedVoltage === best.ratedVoltage &&
    wanted.voltageKind === best.voltageKind &&
    sameTolerance(wanted.tolerance, best.tolerance);
  return tryPart(isBest ? best : wanted, setting);
};

/**
 * One stand-in in a position, whatever its type: what the visitor leaves open is filled with the
 * best part that the market offers.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const assess = (
  catalogue: Catalogue,
  request: Request,
  candidate: Candidate,
): Assessment => {
  const setting = settingFor(catalogue, request);
  return assessmentOf(tryAsked(setting, candidate), setting);
};

/** A stand-in in its rank, whose findings are put into words only when they are asked for. */
export interface RankedStandIn {
  candidate: Part;
  verdict: Verdict;
  /** How it is built, where it is offered. */
  style: string;
  explain: () => Assessment;
}

/**
 * Which of several parts with one verdict is named first, a smaller number first. A single part stands
 * before every one that is made of several.
 */
export interface Leaning {
  /** The least that a part of a type may come to. */
  ofType: (type: TypeId) => number;
  ofPart: (part: Part, style: string) => number;
}

const styleOf = (part: Part | OfferedPart): string => (isOffered(part) ? part.style : '');

/**
 * The part that stands first by verdict, leaning and rank. Once a single part fits, only types that
 * might come before it are looked at, and of those only what fits as well.
 */
const firstBy = (leaning: Leaning, setting: Setting): Scored | undefined => {
  const { circumstances, demands } = setting;
  const types = offeredTypes(circumstances)
    .map(({ id }) => ({ id, least: leaning.ofType(id) }))
    .toSorted((a, b) => a.least - b.least);
  const places = [...demands.keys()];
  let best: { scored: Scored; lean: number } | undefined;
  for (const { id, least } of types) {
    const fits = best?.scored.verdict === 'fits' && best.scored.part.made === undefined;
    if (fits && best !== undefined && least > best.lean) break;
    const tried = fits
      ? firstThatFits(singleParts(id, setting), setting, places)
      : bestOfType(id, setting);
    if (tried === undefined) continue;
    const scored = score(tried.part, tried.judged, circumstances);
    const lean = leaning.ofPart(scored.part, styleOf(scored.part));
    const difference =
      best === undefined
        ? -1
        : compareVerdicts(scored.verdict, best.scored.verdict) ||
          lean - best.lean ||
          compareScores(scored, best.scored);
    if (difference < 0) best = { scored, lean };
  }
  return best?.scored;
};

/** The ranking of `findStandIns`, and parts asked about in the same circumstances, for whoever needs few of them. */
export interface Ranking {
  /** The old part with what its request leaves open. */
  original: Part;
  /** All of them, worked out when they are first asked for. */
  standIns: () => readonly RankedStandIn[];
  /** Only the one that stands first by verdict, then by a leaning, then by rank; much sooner known. */
  first: (leaning: Leaning) => RankedStandIn | undefined;
  /** A part that is asked about. */
  asked: (candidate: Candidate) => RankedStandIn;
}

/**
 * As `findStandIns`, without the work of explaining every one.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const rankStandIns = (catalogue: Catalogue, request: Request): Ranking => {
  const setting = settingFor(catalogue, request);
  const ranked = (tried: Tried): RankedStandIn => ({
    candidate: plainPart(tried.part),
    verdict: tried.verdict,
    style: styleOf(tried.part),
    explain: () => assessmentOf(tried, setting),
  });
  let all: readonly RankedStandIn[] | undefined;
  return {
    original: setting.circumstances.original,
    standIns: () => (all ??= rank(setting).map(ranked)),
    first: (leaning) => {
      const first = firstBy(leaning, setting);
      return first === undefined ? undefined : ranked(first);
    },
    asked: (candidate) => ranked(tryAsked(setting, candidate)),
  };
};
