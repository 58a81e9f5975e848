import {
  assess,
  judgeFirst,
  rankStandIns,
  resolveSituation,
  verdictOrder,
  type Advice,
  type Assessment,
  type Candidate,
  type Catalogue,
  type Finding,
  type Leaning,
  type PositionId,
  type RankedStandIn,
  type TypeId,
} from '../engine/index.ts';
import { strangeness, strangenessOfType } from '../substitution/strangeness.ts';
import { readCandidate } from './choice.ts';
import { doubledDesignators } from './doubled.ts';
import { foundOf } from './found-at.ts';
import type { Choice, Job, Line } from './model.ts';
import { atDesignators, partAsTyped, type PartOfLine, type Understand } from './part-of-line.ts';
import { newMemory, type Memory } from './plan-cache.ts';
import type { Missing, Plan, PlannedLine, Rest, Worked } from './planned.ts';
import { questionOf, type Question } from './question.ts';

/**
 * Stand-ins in the order in which one would order them for a board: by verdict, then, as the answer of
 * a substitution page names them, single stocked parts of the old one's family first.
 */
const asOrdered = (
  catalogue: Catalogue,
  type: TypeId,
  all: readonly RankedStandIn[],
): readonly RankedStandIn[] => {
  const oddness = ({ candidate, style }: RankedStandIn): number =>
    strangeness(catalogue, type, { candidate, buy: { style } });
  return all.toSorted(
    (a, b) =>
      verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) || oddness(a) - oddness(b),
  );
};

/** Stand-ins that are kept for each line: the best, and others to choose from. */
const MOST_STAND_INS = 8;

/** What was worked out before, by what it rests on; one belongs to one edition of the catalogue. */
export interface PlanCache {
  parts: Memory<PartOfLine>;
  questions: Memory<{ question: Question; key: string }>;
  worked: Memory<Worked>;
  chosen: Memory<Assessment>;
}

/** A cache with nothing in it. */
export const newPlanCache = (): PlanCache => ({
  parts: newMemory(),
  questions: newMemory(),
  worked: newMemory(),
  chosen: newMemory(),
});

/** What a plan is made with. */
export interface PlanTools {
  /** The catalogue of a position; nothing while it is not there yet. */
  catalogueAt: (position: PositionId) => Catalogue | undefined;
  cache?: PlanCache | undefined;
  understand?: Understand | undefined;
  /**
   * Asked before each assessment that has to be worked out but the first, so that a page can stop in time, show
   * what there is and go on with the same cache; always unless given.
   */
  mayWork?: (() => boolean) | undefined;
}

/** What speaks against a part like the old one in its place, other than that none is made. */
const misfitOf = ({ verdict, explain }: RankedStandIn): Finding | undefined =>
  verdict === 'fits' || verdict === 'fits-if'
    ? undefined
    : explain().findings.find((one) => one.finding !== 'availability' && one.verdict === verdict);

/** Leans towards what the answer of a substitution page names first. */
const leaningFrom = (catalogue: Catalogue, type: TypeId): Leaning => ({
  ofType: (other) => strangenessOfType(catalogue, type, other),
  ofPart: (candidate, style) => strangeness(catalogue, type, { candidate, buy: { style } }),
});

const work = (catalogue: Catalogue, { request, evidence }: Question): Worked => {
  const { original } = resolveSituation(catalogue, request);
  const ranking = rankStandIns(catalogue, request);
  const first = ranking.first(leaningFrom(catalogue, original.type));
  const likeForLike = ranking.asked({
    type: original.type,
    capacitance: original.capacitance,
    tolerance: original.tolerance,
    ratedVoltage: original.ratedVoltage,
    voltageKind: original.voltageKind,
  });
  let rest: Rest | undefined;
  const findRest = (): Rest => {
    const all = ranking.standIns();
    return {
      standIns: asOrdered(catalogue, original.type, all)
        .filter(({ verdict }) => verdict !== 'keep-out')
        .slice(0, MOST_STAND_INS)
        .map(({ explain }) => explain()),
      keptOut: all.find(({ verdict }) => verdict === 'keep-out')?.explain(),
    };
  };
  return {
    request,
    judgement: judgeFirst(catalogue, original, request.position, evidence),
    best: first === undefined || first.verdict === 'keep-out' ? undefined : first.explain(),
    misfit: misfitOf(likeForLike),
    rest: () => (rest ??= findRest()),
  };
};

/** What the assessment of a line is understood from, its designators apart. */
const saidKey = ({ kind, marking, type, value, tolerance, volts, position }: Line) =>
  JSON.stringify([kind, marking, type, value, tolerance, volts, position]);

const missingOf = ({ designators, type, position }: PartOfLine): Missing[] => [
  ...(type === undefined ? ['type' as const] : []),
  ...(position === undefined ? ['position' as const] : []),
  ...(designators.length === 0 ? ['designators' as const] : []),
];

const decide = (
  line: Line,
  worked: Worked | undefined,
): Pick<PlannedLine, 'decision' | 'decidedBy' | 'wantsReason'> => {
  const advice: Advice | undefined = worked?.judgement.advice;
  if (line.decision !== 'judge') {
    const differs = advice !== undefined && advice !== line.decision;
    const wantsReason = differs && line.decisionReason.trim() === '';
    return { decision: line.decision, decidedBy: 'visitor', wantsReason };
  }
  if (advice === 'leave' && worked?.misfit?.verdict === 'keep-out') {
    return { decision: 'test', decidedBy: 'place', wantsReason: false };
  }
  // What nothing is known of is tested.
  return {
    decision: advice ?? 'test',
    decidedBy: advice === undefined ? 'nobody' : 'rules',
    wantsReason: false,
  };
};

const same = (a: Assessment, b: Assessment | undefined): boolean =>
  JSON.stringify(a.candidate) === JSON.stringify(b?.candidate);

type Fitting = Pick<
  PlannedLine,
  'standIn' | 'chosenBy' | 'differsFromBest' | 'choiceFault' | 'setAside'
>;

/**
 * A choice that is locked or has a reason holds. One that has neither gives way once another earns a
 * better verdict, since nobody said why it should not.
 */
const givesWay = ({ locked, reason }: Choice, chosen: Assessment, best: Assessment | undefined) =>
  !locked &&
  reason.trim() === '' &&
  best !== undefined &&
  verdictOrder.indexOf(best.verdict) < verdictOrder.indexOf(chosen.verdict);

const fittingOf = (
  { choice }: Line,
  { best }: Worked,
  assessChoice: (candidate: Candidate) => Assessment,
  catalogue: Catalogue,
): Fitting => {
  const byRules: Fitting = {
    differsFromBest: false,
    ...(best === undefined ? {} : { standIn: best, chosenBy: 'rules' }),
  };
  if (choice === null) return byRules;
  const read = readCandidate(catalogue, choice);
  if (!read.ok) return { ...byRules, choiceFault: read.fault.message };
  const standIn = assessChoice(read.value);
  if (givesWay(choice, standIn, best)) return { ...byRules, setAside: standIn };
  return { standIn, chosenBy: 'visitor', differsFromBest: !same(standIn, best) };
};

/**
 * What is to be done with every part of a board. Lines that ask the same are worked out once, and
 * with a cache that is handed in again only what changed.
 */
export const planJob = (
  job: Job,
  {
    catalogueAt,
    cache = newPlanCache(),
    understand = partAsTyped,
    mayWork = () => true,
  }: PlanTools,
): Plan => {
  const before = cache.worked.worked();
  const wanted = new Set<PositionId>();
  let unfinished = 0;
  const wholeKey = JSON.stringify(job.whole);

  const plan = (line: Line): PlannedLine => {
    const said = saidKey(line);
    const alike = cache.parts.get(said, () => understand({ ...line, designators: '' }));
    const part = atDesignators(alike, line.designators);
    const base = { line, part, missing: [], rejected: part.rejected, differsFromBest: false };
    const { type, position } = part;
    if (part.kind !== 'capacitor' && part.kind !== '') {
      return { ...base, state: 'other', ...decide(line, undefined) };
    }
    if (type === undefined || position === undefined) {
      return { ...base, state: 'open', missing: missingOf(part), ...decide(line, undefined) };
    }
    const catalogue = catalogueAt(position);
    if (catalogue === undefined) {
      wanted.add(position);
      return { ...base, state: 'waiting', ...decide(line, undefined) };
    }
    if (catalogue.types[type] === undefined || catalogue.positions[position] === undefined) {
      const missing: Missing = catalogue.types[type] === undefined ? 'type' : 'position';
      return { ...base, state: 'open', missing: [missing], ...decide(line, undefined) };
    }
    const found = foundOf(line, part.designators);
    const asked = cache.questions.get(
      JSON.stringify([said, line.conditions, found, wholeKey]),
      () => {
        const question = questionOf(
          catalogue,
          { ...line, found },
          {
            type,
            position,
            part: alike,
            whole: job.whole,
          },
        );
        return { question, key: JSON.stringify([question.request, question.evidence]) };
      },
    );
    const { question, key } = asked;
    // One at least is worked out each time, so that even the longest board comes to its end.
    const isBegun = cache.worked.worked() > before;
    if (!cache.worked.has(key) && isBegun && !mayWork()) {
      unfinished += 1;
      return { ...base, state: 'waiting', ...decide(line, undefined) };
    }
    const worked = cache.worked.get(key, () => work(catalogue, question));
    const assessChoice = (candidate: Candidate): Assessment =>
      cache.chosen.get(key + JSON.stringify(candidate), () =>
        assess(catalogue, question.request, candidate),
      );
    return {
      ...base,
      state: 'assessed',
      missing: missingOf(part),
      rejected: { ...question.rejected, ...part.rejected },
      worked,
      ...decide(line, worked),
      ...fittingOf(line, worked, assessChoice, catalogue),
    };
  };

  const planned = job.lines.map(plan);
  const twice = doubledDesignators(planned.map(({ part }) => part));
  const lines = planned.map((one, at) => {
    const doubled = twice.get(at);
    return doubled === undefined ? one : { ...one, doubled };
  });
  for (const memory of Object.values(cache) as Memory<unknown>[]) memory.sweep();
  return { lines, wanted: [...wanted], unfinished, workedOut: cache.worked.worked() - before };
};
