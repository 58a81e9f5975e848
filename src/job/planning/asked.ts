import {
  type Catalogue,
  type Finding,
  type Judgement,
  type Verdict,
  compareVerdicts,
} from '../../engine/index.ts';
import type { Result } from '../../engine/result.ts';
import type { Choice, Job, Line } from '../model/job.ts';
import type { PartOfLine } from '../understanding/part-of-line.ts';
import type { Rest, Worked } from './planned.ts';
import type { StandIn } from './stand-in.ts';

/** What is asked for one line, whose type and position are known. */
export interface Asking {
  catalogue: Catalogue;
  line: Line;
  part: PartOfLine;
  type: string;
  position: string;
  whole: Job['whole'];
}

/** A choice that is understood, ready to be worked out. */
export interface Chosen {
  key: string;
  assess: () => StandIn;
}

/** What one line asks of the engine, ready to be worked out. */
export interface Asked {
  /** What it rests on: lines with the same are worked out once. */
  key: string;
  /** What of its numbers could not be understood, by key. */
  rejected: Readonly<Record<string, string>>;
  work: () => Worked;
  /** Whether the old part has to go, by what was found of it. */
  judge: () => Judgement;
  choose: (choice: Choice) => Result<Chosen>;
}

/** How the lines of one family of parts are served. */
export interface Server {
  knowsType: (catalogue: Catalogue, type: string) => boolean;
  knowsPosition: (catalogue: Catalogue, position: string) => boolean;
  ask: (asking: Asking) => Asked;
}

/** Stand-ins that are kept for each line: the best, and others to choose from. */
const MOST_STAND_INS = 8;

/** By verdict, then by how odd it would be to order. */
export const asOrdered = <One extends { verdict: Verdict }>(
  all: readonly One[],
  oddness: (one: One) => number,
): One[] =>
  all.toSorted((a, b) => compareVerdicts(a.verdict, b.verdict) || oddness(a) - oddness(b));

/** What speaks against a part like the old one in its place, other than that none is made. */
export const misfitOf = (
  verdict: Verdict,
  findingsOf: () => readonly Finding[],
): Finding | undefined =>
  verdict === 'fits' || verdict === 'fits-if'
    ? undefined
    : findingsOf().find((one) => one.finding !== 'availability' && one.verdict === verdict);

/** What may be fitted and what not, of all in their order, each made once it is wanted. */
export const restOf = <One extends { verdict: Verdict }>(
  ordered: readonly One[],
  made: (one: One) => StandIn,
): Rest => {
  const keptOut = ordered.find(({ verdict }) => verdict === 'keep-out');
  return {
    standIns: ordered
      .filter(({ verdict }) => verdict !== 'keep-out')
      .slice(0, MOST_STAND_INS)
      .map(made),
    keptOut: keptOut && made(keptOut),
  };
};
