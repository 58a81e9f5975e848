import * as z from 'zod/mini';

// The pages' policy forbids making code from text, which zod would otherwise try.
z.config({ jitless: true });

/**
 * A job: one board's worth of work, from survey to record. What a person typed is kept as it was
 * typed, so that nothing is lost that cannot be understood yet; what it means is worked out anew
 * each time (`understanding/`, `planning/`). Dates are ISO 8601 in UTC.
 */

/** Longest text that one field takes; what is longer is cut by whoever reads it in, and said so. */
export const LONGEST_TEXT = 2000;
/** Largest file that is opened, of a job or of a parts list, bytes or characters. */
export const LARGEST_FILE = 50_000_000;
/** Most lines that one job holds. */
export const MOST_LINES = 20_000;

const text = z.string().check(z.maxLength(LONGEST_TEXT));
const texts = z.array(text);
/** Keys are ids of the catalogue or designators; anything else is kept and left unused. */
const textByKey = z.record(z.string(), text);

/** What to do with the part of a line; `judge` leaves it to the rules. */
const decision = z.enum(['judge', 'replace', 'test', 'leave']);
export type Decision = z.infer<typeof decision>;

/** What was found out about the old part, as typed: `12 %`, `0.3 ohm`, `30 years`. */
const found = z.object({
  age: text,
  idle: text,
  capacitance: text,
  loss120hz: text,
  loss1khz: text,
  esr: text,
  leakage: text,
  insulation: text,
  resistance: text,
  /** Ids of triage rules whose sign is seen. */
  signs: texts,
});
export type Found = z.infer<typeof found>;

/** A stand-in that the visitor chose; numbers as typed or as formatted by this tool. */
const choice = z.object({
  /** Id of the type, or of the device. */
  type: text,
  /** Marked value and rating, in whatever unit its family has; nothing where it has none. */
  value: text,
  tolerance: text,
  rating: text,
  /** Why this one and not the one that ranks first. */
  reason: text,
  /** Kept even if another would rank first now. */
  locked: z.boolean(),
});
export type Choice = z.infer<typeof choice>;

/** A trimmer's setting, to be carried over between the same two terminals. */
const preset = z.object({
  /** Names of the terminals, such as `1` and `wiper`. */
  from: text,
  to: text,
  /** Whether two terminals are used or three: of a divider the ratio counts. */
  use: z.enum(['rheostat', 'divider']),
  /** Reading of the old one between them, as typed: `2.687 k`, and from end to end. */
  old: text,
  oldTotal: text,
  /** Reading of the new one as supplied. */
  supplied: text,
  /** Nominal resistance and turns of the new one. */
  total: text,
  turns: text,
});
export type Preset = z.infer<typeof preset>;

/** What was done to one designator on the bench. */
const fitted = z.object({
  done: z.boolean(),
  /** What was ticked as done, `test` or `replace`: a tested part may have to be replaced after all. */
  did: text,
  /** Readings by the id of their row in the data, as typed: of the old part, and after the work. */
  found: textByKey,
  measured: textByKey,
  /** The same in words, for parts that the data have no readings for. */
  before: text,
  after: text,
  preset: z.nullable(preset),
  note: text,
  /** When it was ticked; nothing until then. */
  at: text,
});
export type Fitted = z.infer<typeof fitted>;

/** One line, as a file that is broken elsewhere may still hold it whole. */
export const lineSchema = z.object({
  /** Unique in its job. */
  id: text,
  /** As typed: `C1-C16, C22`. */
  designators: text,
  /** Family of parts: `capacitor`, `resistor`, `trimmer`, `ic`, … ; nothing where unknown. */
  kind: text,
  /** What is printed on it. */
  marking: text,
  /** Id of the type, where it is known or confirmed. */
  type: text,
  value: text,
  tolerance: text,
  volts: text,
  /** Id of the position; nothing until the visitor says or accepts one. */
  position: text,
  /** Conditions of this line that differ from those of the whole board, by id, as typed. */
  conditions: textByKey,
  found,
  decision,
  /** Why the visitor decides otherwise than the rules. */
  decisionReason: text,
  choice: z.nullable(choice),
  /** By designator. */
  fitted: z.record(z.string(), fitted),
  note: text,
  /** Cells that no column was found for, by their header. */
  rest: textByKey,
});
export type Line = z.infer<typeof lineSchema>;

/** A row of a table that could not become a line: kept and shown with the reason. */
const badRow = z.object({ row: z.number(), cells: texts, reason: text });
export type BadRow = z.infer<typeof badRow>;

/** A closing check of the whole board. */
const check = z.object({ done: z.boolean(), reading: text, note: text, at: text });
export type Check = z.infer<typeof check>;

/** An adjustment of the whole board, in the order in which it is made. */
const adjustment = z.object({
  /** Unique in its job; the designator of a trimmer of the parts list. */
  id: text,
  /** What is turned, and what it sets. */
  what: text,
  before: text,
  after: text,
  done: z.boolean(),
  at: text,
});
export type Adjustment = z.infer<typeof adjustment>;

export const jobSchema = z.object({
  format: z.literal('understudy-job'),
  version: z.literal(4),
  id: text,
  title: text,
  /** What the board belongs to, its serial, its owner: whatever the record should name. */
  equipment: text,
  note: text,
  created: text,
  changed: text,
  /** Holds for every line that does not say otherwise. */
  whole: z.object({
    guideline: text,
    conditions: textByKey,
    /** Spares: a share of each quantity, as typed (`10 %`), and at least so many (`1`). */
    spareShare: text,
    spareLeast: text,
  }),
  lines: z.array(lineSchema).check(z.maxLength(MOST_LINES)),
  badRows: z.array(badRow),
  /** Closing checks by the id of their row in the data. */
  checks: z.record(z.string(), check),
  /** In the order of the work; empty until one is written down. */
  adjustments: z.array(adjustment),
  /** Names the demonstration it was made from, which is invented; nothing for a job of one's own. */
  invented: text,
});
export type Job = z.infer<typeof jobSchema>;

const nothingFound = (): Found => ({
  age: '',
  idle: '',
  capacitance: '',
  loss120hz: '',
  loss1khz: '',
  esr: '',
  leakage: '',
  insulation: '',
  resistance: '',
  signs: [],
});

/** A designator at which nothing was done yet. */
export const emptyFitted = (): Fitted => ({
  done: false,
  did: '',
  found: {},
  measured: {},
  before: '',
  after: '',
  preset: null,
  note: '',
  at: '',
});

/** A check that was not made yet. */
export const emptyCheck = (): Check => ({ done: false, reading: '', note: '', at: '' });

/** A trimmer of which nothing was read yet. */
export const emptyPreset = (): Preset => ({
  from: '',
  to: '',
  use: 'rheostat',
  old: '',
  oldTotal: '',
  supplied: '',
  total: '',
  turns: '',
});

/** A line with nothing said. */
export const emptyLine = (id: string): Line => ({
  id,
  designators: '',
  kind: '',
  marking: '',
  type: '',
  value: '',
  tolerance: '',
  volts: '',
  position: '',
  conditions: {},
  found: nothingFound(),
  decision: 'judge',
  decisionReason: '',
  choice: null,
  fitted: {},
  note: '',
  rest: {},
});

/** A job with no lines; `now` is when it was begun. */
export const emptyJob = (id: string, now: Date): Job => ({
  format: 'understudy-job',
  version: 4,
  id,
  title: '',
  equipment: '',
  note: '',
  created: now.toISOString(),
  changed: now.toISOString(),
  whole: { guideline: '', conditions: {}, spareShare: '', spareLeast: '1' },
  lines: [],
  badRows: [],
  checks: {},
  adjustments: [],
  invented: '',
});
