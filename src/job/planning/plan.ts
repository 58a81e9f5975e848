import { type Advice, type Catalogue, compareVerdicts } from '../../engine/index.ts';
import { doubledDesignators } from '../model/doubled.ts';
import { foundOf } from '../model/found-at.ts';
import { isNoteAlone } from '../model/is-blank.ts';
import type { Choice, Job, Line } from '../model/job.ts';
import {
  atDesignators,
  partAsTyped,
  unreadOf,
  type PartOfLine,
  type Understand,
} from '../understanding/part-of-line.ts';
import type { Asked, Asking, Server } from './asked.ts';
import { newMemory, type Memory } from './memory.ts';
import type { Missing, Plan, PlannedLine, Worked } from './planned.ts';
import { SERVERS } from './servers.ts';
import { presetOf } from './setting-of-line.ts';
import { isSame, type StandIn } from './stand-in.ts';
import { finished, type Steps } from './steps.ts';

/** What was worked out before, by what it rests on; one belongs to one edition of the catalogue. */
export interface PlanCache {
  parts: Memory<PartOfLine>;
  questions: Memory<Asked>;
  worked: Memory<Worked>;
  chosen: Memory<StandIn>;
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
  /** A part of the catalogue, such as that of a position; nothing while it is not there yet. */
  catalogueAt: (slice: string) => Catalogue | undefined;
  cache?: PlanCache | undefined;
  understand?: Understand | undefined;
}

/** Of designators what tells of the part: their letters, with a number for all. */
const withoutNumbers = (designators: string): string => {
  const [letters = ''] = /^\s*\p{L}+/u.exec(designators) ?? [];
  return letters.trim() === '' ? '' : `${letters.trim()}1`;
};

/** What the assessment of a line is understood from. */
const saidKey = ({ kind, marking, type, value, tolerance, volts, position, note }: Line) =>
  JSON.stringify([kind, marking, type, value, tolerance, volts, position, note]);

/** Whether a part that goes by its value has none; the usual one of its place is no answer to that. */
const hasNoValue = ({ kinds }: Catalogue, part: PartOfLine): boolean => {
  if (part.family === 'capacitor') return part.capacitance === undefined;
  if (part.family === 'device' || part.value !== undefined) return false;
  return Object.hasOwn(kinds, part.kind) && kinds[part.kind]?.unit !== '';
};

const missingOf = ({ designators, type, position }: PartOfLine): Missing[] => [
  ...(type === undefined ? ['type' as const] : []),
  ...(position === undefined ? ['position' as const] : []),
  ...(designators.length === 0 ? ['designators' as const] : []),
];

/** What of a type and a position the catalogue does not have. */
const unknownIn = (
  server: Server,
  catalogue: Catalogue,
  { type, position }: { type: string; position: string },
): Missing | undefined => {
  if (!server.knowsType(catalogue, type)) return 'type';
  return server.knowsPosition(catalogue, position) ? undefined : 'position';
};

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
  if (advice === 'leave' && worked?.misfit()?.verdict === 'keep-out') {
    return { decision: 'test', decidedBy: 'place', wantsReason: false };
  }
  // What nothing is known of is tested.
  return {
    decision: advice ?? 'test',
    decidedBy: advice === undefined ? 'nobody' : 'rules',
    wantsReason: false,
  };
};

type Fitting = Pick<
  PlannedLine,
  'standIn' | 'chosenBy' | 'differsFromBest' | 'choiceFault' | 'setAside'
>;

/**
 * A choice that is locked or has a reason holds. One that has neither gives way once another earns a
 * better verdict, since nobody said why it should not.
 */
const givesWay = ({ locked, reason }: Choice, chosen: StandIn, best: StandIn | undefined) =>
  !locked &&
  reason.trim() === '' &&
  best !== undefined &&
  compareVerdicts(best.verdict, chosen.verdict) < 0;

interface FittingTools {
  /** Whether the old value is known; without it nothing goes in but what the visitor names. */
  isSized: boolean;
  remember: (key: string, assess: () => StandIn) => StandIn;
}

const fittingOf = (
  { choice }: Line,
  { best }: Worked,
  asked: Asked,
  { isSized, remember }: FittingTools,
): Fitting => {
  const byRules: Fitting = {
    differsFromBest: false,
    ...(best === undefined || !isSized ? {} : { standIn: best, chosenBy: 'rules' }),
  };
  if (choice === null) return byRules;
  const read = asked.choose(choice);
  if (!read.ok) return { ...byRules, choiceFault: read.fault.message };
  const standIn = remember(read.value.key, read.value.assess);
  if (givesWay(choice, standIn, best)) return { ...byRules, setAside: standIn };
  return { standIn, chosenBy: 'visitor', differsFromBest: !isSame(standIn, best) };
};

/** What the lines of one run are planned with. */
interface Run {
  whole: Job['whole'];
  /** The same as a key of what was worked out. */
  wholeKey: string;
  catalogueAt: PlanTools['catalogueAt'];
  cache: PlanCache;
  understand: Understand;
  /** Slices of the catalogue that are still to be fetched; lines add theirs. */
  wanted: Set<string>;
}

/** A line that can be asked about. */
interface Askable extends Pick<Asking, 'catalogue' | 'type' | 'position'> {
  line: Line;
  part: PartOfLine;
  /** The part without its designators, which all lines share that say the same. */
  alike: PartOfLine;
  /** What those lines say, as a key. */
  said: string;
  server: Server;
}

const baseOf = (line: Line, part: PartOfLine) =>
  ({ line, part, missing: [], rejected: part.rejected, differsFromBest: false }) as const;

const assessedLine = (
  { line, part, alike, said, catalogue, server, type, position }: Askable,
  { whole, wholeKey, cache }: Run,
): PlannedLine => {
  const found = foundOf(line, part.designators);
  const preset = presetOf(line, part.designators);
  const asked = cache.questions.get(
    JSON.stringify([said, line.conditions, found, preset, wholeKey]),
    () => {
      const own = { ...alike, designators: part.designators };
      return server.ask({ catalogue, line: { ...line, found }, part: own, type, position, whole });
    },
  );
  const { key } = asked;
  const worked = cache.worked.get(key, asked.work);
  const isSized = !hasNoValue(catalogue, part);
  return {
    ...baseOf(line, part),
    state: 'assessed',
    missing: [...missingOf(part), ...(isSized ? [] : ['value' as const])],
    rejected: { ...asked.rejected, ...part.rejected },
    worked,
    ...decide(line, worked),
    ...fittingOf(line, worked, asked, {
      isSized,
      remember: (chosen, assess) => cache.chosen.get(key + chosen, assess),
    }),
  };
};

/** One line: as far as it says what it is, and where the catalogue knows that, with what may stand in. */
const planLine = (line: Line, run: Run): PlannedLine => {
  const { cache, catalogueAt, understand, wanted } = run;
  const designators = withoutNumbers(line.designators);
  const said = designators + saidKey(line);
  const alike = cache.parts.get(said, () => understand({ ...line, designators }));
  const part = atDesignators(alike, line.designators);
  const base = baseOf(line, part);
  const { type, position, slice, family } = part;
  if (isNoteAlone(line))
    return { ...base, state: 'other', decision: 'leave', decidedBy: 'nobody', wantsReason: false };
  const undecided = { ...base, ...decide(line, undefined) };
  if (family === undefined && part.kind !== '') return { ...undecided, state: 'other' };
  if (
    family === undefined ||
    type === undefined ||
    position === undefined ||
    unreadOf(part) !== undefined
  )
    return { ...undecided, state: 'open', missing: missingOf(part) };
  const catalogue = slice === undefined ? undefined : catalogueAt(slice);
  if (catalogue === undefined) {
    if (slice !== undefined) wanted.add(slice);
    return { ...undecided, state: 'waiting' };
  }
  const server = SERVERS[family];
  const unknown = unknownIn(server, catalogue, { type, position });
  if (unknown !== undefined) return { ...undecided, state: 'open', missing: [unknown] };
  return assessedLine({ line, part, alike, said, catalogue, server, type, position }, run);
};

/**
 * Plans line by line, so that a page may pause after each. Lines that ask the same are worked out
 * once, and with a cache that is handed in again only what changed; what a run that was broken off
 * has worked out stays in the cache.
 */
export function* planSteps(
  { lines: all, whole }: Job,
  { catalogueAt, cache = newPlanCache(), understand = partAsTyped }: PlanTools,
): Steps<Plan> {
  const wanted = new Set<string>();
  const wholeKey = JSON.stringify(whole);
  const run: Run = { whole, wholeKey, catalogueAt, cache, understand, wanted };
  const planned: PlannedLine[] = [];
  for (const line of all) {
    planned.push(planLine(line, run));
    yield;
  }
  const twice = doubledDesignators(planned.map(({ part }) => part));
  const lines = planned.map((one, at) => {
    const doubled = twice.get(at);
    return doubled === undefined ? one : { ...one, doubled };
  });
  for (const memory of Object.values(cache) as Memory<unknown>[]) memory.sweep();
  return { lines, wanted: [...wanted] };
}

/** What is to be done with every part of a board. */
export const planJob = (job: Job, tools: PlanTools): Plan => finished(planSteps(job, tools));
