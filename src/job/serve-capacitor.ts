import {
  assess,
  judgeFirst,
  rankStandIns,
  resolveSituation,
  type Catalogue,
} from '../engine/index.ts';
import { ok } from '../engine/result.ts';
import { leaningFrom } from '../substitution/strangeness.ts';
import { asOrdered, misfitOf, restOf, type Server } from './asked.ts';
import { readCandidate } from './choice.ts';
import type { Rest, Worked } from './planned.ts';
import { questionOf, type Question } from './question.ts';

const work = (catalogue: Catalogue, { request, evidence }: Question): Worked => {
  const { original } = resolveSituation(catalogue, request);
  const ranking = rankStandIns(catalogue, request);
  const leaning = leaningFrom(catalogue, original.type);
  const first = ranking.first(leaning);
  const likeForLike = ranking.asked({
    type: original.type,
    capacitance: original.capacitance,
    tolerance: original.tolerance,
    ratedVoltage: original.ratedVoltage,
    voltageKind: original.voltageKind,
  });
  let rest: Rest | undefined;
  const findRest = (): Rest =>
    restOf(
      asOrdered(ranking.standIns(), ({ candidate, style }) => leaning.ofPart(candidate, style)),
      ({ explain }) => explain(),
    );
  return {
    request,
    judgement: judgeFirst(catalogue, original, request.position, evidence),
    best: first === undefined || first.verdict === 'keep-out' ? undefined : first.explain(),
    misfit: misfitOf(likeForLike.verdict, () => likeForLike.explain().findings),
    rest: () => (rest ??= findRest()),
  };
};

/** Capacitors: judged by the rules first, then assessed. */
export const capacitors: Server = {
  knowsType: ({ types }, type) => Object.hasOwn(types, type),
  knowsPosition: ({ positions }, position) => Object.hasOwn(positions, position),
  ask: ({ catalogue, line, ...rest }) => {
    const question = questionOf(catalogue, line, rest);
    return {
      key: JSON.stringify([question.request, question.evidence]),
      rejected: question.rejected,
      work: () => work(catalogue, question),
      choose: (choice) => {
        const read = readCandidate(catalogue, choice);
        if (!read.ok) return read;
        const candidate = read.value;
        return ok({
          key: JSON.stringify(candidate),
          assess: () => assess(catalogue, question.request, candidate),
        });
      },
    };
  },
};
