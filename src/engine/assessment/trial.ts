import type { Catalogue, TypeId } from '../catalogue.ts';
import type { Circumstances } from '../findings/model.ts';
import { circumstancesOf } from './circumstances.ts';
import { judge, prepareDemands, type Judged, type PreparedDemand } from './finding.ts';
import type { Part, Request } from './parts.ts';
import { countIn, emptyTally, improves, tryOut, type Tally, type Tried } from './rank.ts';

/** What parts are tried in, looked up once a request. */
export interface Setting {
  circumstances: Circumstances;
  demands: PreparedDemand[];
  /** The best single part of each type, as far as it has been asked for. */
  singles: Map<TypeId, Tried>;
}

/**
 * What a request is assessed in.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const settingFor = (catalogue: Catalogue, request: Request): Setting => {
  const circumstances = circumstancesOf(catalogue, request);
  return { circumstances, demands: prepareDemands(circumstances), singles: new Map() };
};

/** A part judged by every demand of the position. */
export const tryPart = <P extends Part>(part: P, { circumstances, demands }: Setting): Tried<P> =>
  tryOut(
    part,
    demands.map((demand) => judge<Part, Circumstances>(demand, part, circumstances)),
  );

/** Places of all demands, first those that a part does not meet: what hinders one hinders the next. */
const hardestFirst = ({ judged }: Tried): number[] => {
  const [unmet, met]: [number[], number[]] = [[], []];
  for (let place = 0; place < judged.length; place += 1)
    (judged[place]?.verdict === 'fits' ? met : unmet).push(place);
  return unmet.concat(met);
};

/** A part as far as it has been judged. */
export interface Standing extends Tally {
  part: Part;
}

/** Whether a part is better than another, as far as both have been judged. */
export type IsBetter = (next: Standing, best: Standing) => boolean;

/** Whether a capacitor serves better than one that one would rather choose. */
export const servesBetter: IsBetter = (next, best) =>
  improves(next, best, next.part.capacitance === best.part.capacitance);

/**
 * The best of several parts, starting from one that has been tried and has to be beaten. A part is
 * given up at the first demand after which it is not better any more, so `isBetter` must be such
 * that no further demand could turn its no into a yes.
 */
export const bestOf = (
  first: Tried,
  others: Iterable<Part>,
  { circumstances, demands }: Setting,
  isBetter: IsBetter,
): Tried => {
  let best = first;
  let places = hardestFirst(best);
  const attempt = (part: Part): Tried | undefined => {
    const tried: Tried = { ...emptyTally(), part, judged: [] };
    for (const place of places) {
      const demand = demands[place];
      if (demand === undefined) continue;
      const one = judge<Part, Circumstances>(demand, part, circumstances);
      tried.judged[place] = one;
      countIn(tried, one);
      if (!isBetter(tried, best)) return undefined;
    }
    return tried;
  };
  for (const part of others) {
    const better = attempt(part);
    if (better === undefined) continue;
    best = better;
    if (best.verdict === 'fits') break;
    places = hardestFirst(best);
  }
  return best;
};

/**
 * The first of several parts that fits; nothing where none does.
 * @param places of the demands, in the order in which to judge by them: the one that ruled a part out
 *   is put first, since it mostly rules the next one out as well
 */
export const firstThatFits = (
  parts: Iterable<Part>,
  { circumstances, demands }: Setting,
  places: number[],
): Tried | undefined => {
  const fit = (part: Part): Judged[] | undefined => {
    const judged: Judged[] = [];
    for (let turn = 0; turn < places.length; turn += 1) {
      const place = places[turn] ?? 0;
      const demand = demands[place];
      if (demand === undefined) continue;
      const one = judge<Part, Circumstances>(demand, part, circumstances);
      judged[place] = one;
      if (one.verdict === 'fits') continue;
      places.splice(turn, 1);
      places.unshift(place);
      return undefined;
    }
    return judged;
  };
  for (const part of parts) {
    const judged = fit(part);
    if (judged !== undefined) return tryOut(part, judged);
  }
  return undefined;
};
