import type { KindTypeRow } from '../../schemas/kinds.ts';
import type { Assessment } from '../assessment/assess.ts';
import { demandsBy, explain, judge, type PreparedDemand } from '../assessment/finding.ts';
import { rowNamed } from '../assessment/original.ts';
import {
  byConcern,
  compareScores,
  decisiveDemand,
  improves,
  MARKETS,
  scoreBy,
  tryOut,
  valueDistance,
  type Tried,
} from '../assessment/rank.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { isChip } from '../assessment/mounting.ts';
import { kindModels } from './findings/index.ts';
import { offeredKindParts, unofferedKindPart } from './offered.ts';
import type {
  KindCandidate,
  KindCircumstances,
  KindPart,
  KindRequest,
  OfferedKindPart,
} from './part.ts';
import { kindCircumstances } from './situation.ts';

/** What a stand-in of a kind besides capacitors comes to in a position. */
export type KindAssessment = Assessment<KindPart>;

type AnyPart = KindPart | OfferedKindPart;

interface Setting {
  circumstances: KindCircumstances;
  demands: PreparedDemand<KindPart, KindCircumstances>[];
}

const settingFor = (catalogue: Catalogue, request: KindRequest): Setting => {
  const circumstances = kindCircumstances(catalogue, request);
  return { circumstances, demands: demandsBy(circumstances, kindModels) };
};

const tryPart = (part: AnyPart, { circumstances, demands }: Setting): Tried<AnyPart> =>
  tryOut(
    part,
    demands.map((demand) => judge<KindPart, KindCircumstances>(demand, part, circumstances)),
  );

const isOffered = (part: AnyPart): part is OfferedKindPart => 'style' in part;

const plainPart = ({ type, value, unit, tolerance, rating, ratingUnit }: KindPart): KindPart => ({
  type,
  ...(value === undefined ? {} : { value }),
  ...(unit === undefined ? {} : { unit }),
  ...(tolerance === undefined ? {} : { tolerance }),
  ...(rating === undefined ? {} : { rating }),
  ...(ratingUnit === undefined ? {} : { ratingUnit }),
});

const assessmentOf = (
  { part, judged, verdict }: Tried<AnyPart>,
  { circumstances, demands }: Setting,
): KindAssessment => ({
  candidate: plainPart(part),
  verdict,
  findings: demands
    .flatMap((prepared, index) => {
      const one = judged[index];
      return one === undefined
        ? []
        : [explain<KindPart, KindCircumstances>(prepared, one, part, circumstances)];
    })
    .toSorted(byConcern),
  worst: decisiveDemand(judged, verdict),
  ...(isOffered(part)
    ? { buy: { style: part.style, pitch: part.pitch, series: part.series } }
    : {}),
});

/** The part of a type with the best verdict; of several, the one that one would choose anyway. */
const bestOfType = (type: TypeId, setting: Setting): Tried<AnyPart> => {
  const { circumstances } = setting;
  const [first, ...rest] = offeredKindParts(type, circumstances);
  let best = tryPart(first ?? unofferedKindPart(type, circumstances), setting);
  for (const part of rest) {
    if (best.verdict === 'fits') break;
    const next = tryPart(part, setting);
    if (improves(next, best, next.part.value === best.part.value)) best = next;
  }
  return best;
};

/**
 * Types of the kind that one can buy, save those that are made for a duty alone where the position
 * does not ask for it.
 */
const offeredTypes = ({ catalogue, kind, position }: KindCircumstances): KindTypeRow[] =>
  Object.values(catalogue.kindTypes).filter(
    (type) =>
      type.kind === kind.id &&
      MARKETS.includes(type.market) &&
      (!type.only_asked || type.duties.every((duty) => position.duties.includes(duty))),
  );

const scored = (tried: Tried<AnyPart>, { catalogue, original }: KindCircumstances) => {
  const { part } = tried;
  return scoreBy(tried, {
    made: false,
    distance:
      part.value === undefined || original.value === undefined
        ? 0
        : valueDistance(part.value, original.value),
    chip: isOffered(part) && isChip(catalogue, part.style),
    market: catalogue.kindTypes[part.type]?.market,
    last: [-(part.tolerance?.plus ?? 0), part.rating ?? 0],
  });
};

/**
 * Stand-ins for an old part in a position: of every type of its kind on the market the part that
 * suits best, best first, kept-out ones last.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const findKindStandIns = (catalogue: Catalogue, request: KindRequest): KindAssessment[] => {
  const setting = settingFor(catalogue, request);
  return offeredTypes(setting.circumstances)
    .map(({ id }) => scored(bestOfType(id, setting), setting.circumstances))
    .toSorted(compareScores)
    .map((tried) => assessmentOf(tried, setting));
};

/**
 * One stand-in in a position: what the visitor leaves open is filled with the best part that the
 * market offers of the type.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const assessKind = (
  catalogue: Catalogue,
  request: KindRequest,
  { type, value, tolerance, rating }: KindCandidate,
): KindAssessment => {
  const setting = settingFor(catalogue, request);
  rowNamed(catalogue.kindTypes, type, 'type');
  const best = bestOfType(type, setting);
  if (value === undefined && tolerance === undefined && rating === undefined)
    return assessmentOf(best, setting);
  const wanted: KindPart = {
    ...plainPart(best.part),
    ...(value === undefined ? {} : { value }),
    ...(tolerance === undefined ? {} : { tolerance }),
    ...(rating === undefined ? {} : { rating }),
  };
  return assessmentOf(tryPart(wanted, setting), setting);
};
