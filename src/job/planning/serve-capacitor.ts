import {
  assess,
  judgeFirst,
  rankStandIns,
  resolveSituation,
  type Assessment,
  type Catalogue,
  type Finding,
  type Judgement,
  compareVerdicts,
} from '../../engine/index.ts';
import { ok } from '../../engine/result.ts';
import { leaningFrom } from '../../substitution/strangeness.ts';
import { asOrdered, misfitOf, restOf, type Server } from './asked.ts';
import { readCandidate } from './choice.ts';
import { requestOfLine, type LineRequest } from './line-request.ts';
import type { Rest, Worked } from './planned.ts';
import { soldAsOldNote } from './sold-as-old.ts';
import { isCapacitor } from './stand-in.ts';

/** Whether one part earns as good a verdict as another. */
const servesNoWorse = (one: Assessment, other: Assessment): boolean =>
  compareVerdicts(one.verdict, other.verdict) <= 0;

const judged = (catalogue: Catalogue, { request, evidence }: LineRequest): Judgement => {
  const { original } = resolveSituation(catalogue, request);
  return judgeFirst(catalogue, original, request.position, evidence);
};

const work = (catalogue: Catalogue, asked: LineRequest): Worked => {
  const { request } = asked;
  const ranking = rankStandIns(catalogue, request);
  const { original } = ranking;
  const leaning = leaningFrom(catalogue, { original, position: request.position });
  const first = ranking.first(leaning);
  const findMisfit = (): Finding | undefined => {
    const { type, capacitance, tolerance, ratedVoltage, voltageKind } = original;
    const likeForLike = ranking.asked({ type, capacitance, tolerance, ratedVoltage, voltageKind });
    return misfitOf(likeForLike.verdict, () => likeForLike.explain().findings);
  };
  let misfit: { found: Finding | undefined } | undefined;
  let rest: Rest | undefined;
  const findRest = (): Rest =>
    restOf(
      asOrdered(ranking.standIns(), ({ candidate, style }) => leaning.ofPart(candidate, style)),
      ({ explain }) => explain(),
    );
  return {
    request,
    judgement: judged(catalogue, asked),
    best: first === undefined || first.verdict === 'keep-out' ? undefined : first.explain(),
    misfit: () => (misfit ??= { found: findMisfit() }).found,
    soldAsOld: (standIn, words) =>
      soldAsOldNote(catalogue, words, () => {
        const others = (rest ??= findRest()).standIns.filter(isCapacitor);
        return [standIn, ...others.filter((other) => servesNoWorse(other, standIn))];
      }),
    rest: () => (rest ??= findRest()),
  };
};

/** Capacitors: judged by the rules first, then assessed. */
export const capacitors: Server = {
  knowsType: ({ types }, type) => Object.hasOwn(types, type),
  knowsPosition: ({ positions }, position) => Object.hasOwn(positions, position),
  ask: ({ catalogue, line, ...rest }) => {
    const asked = requestOfLine(catalogue, line, rest);
    return {
      key: JSON.stringify([asked.request, asked.evidence]),
      rejected: asked.rejected,
      work: () => work(catalogue, asked),
      judge: () => judged(catalogue, asked),
      choose: (choice) => {
        const read = readCandidate(catalogue, choice);
        if (!read.ok) return read;
        const candidate = read.value;
        return ok({
          key: JSON.stringify(candidate),
          assess: () => assess(catalogue, asked.request, candidate),
        });
      },
    };
  },
};
