import type {
  Advice,
  Assessment,
  Finding,
  Judgement,
  Request,
  ResolvedCondition,
} from '../../engine/index.ts';
import type { Line } from '../model/job.ts';
import type { PartOfLine } from '../understanding/part-of-line.ts';
import type { StandIn } from './stand-in.ts';

/**
 * How far a line can be planned: `assessed`; `waiting` for the catalogue of its position; `open`
 * while its type or position is not known; `other` for parts that no rules here serve.
 */
export type PlanState = 'assessed' | 'waiting' | 'open' | 'other';

/** What is missing before a line can be assessed; without its value only the old part is. */
export type Missing = 'type' | 'position' | 'designators' | 'value';

/** What else might be fitted, and what not. */
export interface Rest {
  /** Best first; those to keep out are not among them. */
  standIns: readonly StandIn[];
  /** The best of those to keep out, for the reasons; nothing where none is kept out. */
  keptOut: StandIn | undefined;
}

/** What is known of a part by the rules, once it is assessed. */
export interface Worked {
  /** Conditions that cautions go by, and cautions that the use names; of capacitors by the request. */
  conditions?: readonly ResolvedCondition[];
  cautions?: readonly string[];
  /** What was asked of the engine; of capacitors alone. */
  request?: Request;
  /** Whether it has to go at all. */
  judgement: Judgement;
  /** The best stand-in; nothing where all are to be kept out. */
  best: StandIn | undefined;
  /**
   * The finding that speaks against the old type in this place, however sound the part is; nothing
   * where it serves or is only no longer made. Worked out when it is first asked for.
   */
  misfit: () => Finding | undefined;
  /** That what goes in is sold as the words of the list say the old part is mounted; of capacitors alone. */
  soldAsOld?: (standIn: Assessment, words: string) => string;
  /** What is looked at of few lines only, worked out when it is first asked for. */
  rest: () => Rest;
}

/** A line with what is to be done with its part. */
export interface PlannedLine {
  line: Line;
  part: PartOfLine;
  state: PlanState;
  missing: readonly Missing[];
  /** What could not be understood, by field or condition. */
  rejected: Readonly<Record<string, string>>;
  /** Designators that stand in another line as well; missing where none does. */
  doubled?: readonly string[];
  worked?: Worked;
  /**
   * What to do: the visitor's decision, else that of the rules, else test. What the rules would leave
   * is tested where its place keeps such a part out, as a bead that sits the wrong way round.
   */
  decision: Advice;
  decidedBy: 'visitor' | 'rules' | 'place' | 'nobody';
  /** The visitor decides otherwise than the rules without saying why. */
  wantsReason: boolean;
  /** What to fit: the visitor's choice, else the best stand-in; nothing where none serves. */
  standIn?: StandIn;
  chosenBy?: 'visitor' | 'rules';
  /** What ranks first differs from what the visitor chose. */
  differsFromBest: boolean;
  /** An unlocked choice without a reason that another now outranks by its verdict. */
  setAside?: StandIn;
  /** The choice could not be understood and is left unused: why. */
  choiceFault?: string;
}

/** A whole board's plan, in the order of its lines. */
export interface Plan {
  lines: readonly PlannedLine[];
  /** Positions whose catalogue is still to be fetched. */
  wanted: readonly string[];
}
