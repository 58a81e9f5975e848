import { verdictWords } from '../components/verdict-shape.ts';
import {
  formatValue,
  isChip,
  type Assessment,
  type Habit,
  type WithMountings,
  type WithRules,
  decidingFinding,
} from '../engine/index.ts';
import {
  isCapacitor,
  isNoteAlone,
  kindName,
  lowerPowerOfLine,
  lowerRatingOfLine,
  standInWords,
  whyWords,
  type Ask,
  type PlannedLine,
} from '../job/index.ts';
import { needsPads } from '../substitution/any-kind.ts';
import { alternating } from '../substitution/rated-voltage.ts';
import { capital, listed, sentence } from '../text/words.ts';

/** What is said below a line of a plan. */
export interface Remark {
  text: string;
  /** Whether somebody has to look at it before the work goes on. */
  acts: boolean;
}

/** What remarks are made with. */
export interface RemarkWords {
  typeName: (id: string) => string;
  /** What is asked of the line first; nothing where it is understood. */
  askOf: (planned: PlannedLine) => Ask | undefined;
  /** Of the catalogue of papers what remarks go by; nothing before it is fetched. */
  common: (WithRules & WithMountings) | undefined;
  habit?: Habit | undefined;
}

const act = (text: string): Remark => ({ text, acts: true });
const tell = (text: string): Remark => ({ text, acts: false });

/** What no question about a line says by itself is missing: the value only where that is asked for. */
const leftToSay = (
  missing: PlannedLine['missing'],
  ask: Ask | undefined,
): PlannedLine['missing'] => {
  if (ask === undefined) return missing;
  const isAsked = ask.about === 'marking' || ask.about === 'value';
  return missing.filter((one) => one === 'designators' || (one === 'value' && !isAsked));
};

/** What is not understood of a line, or is missing. */
const toSay = (planned: PlannedLine, { askOf }: RemarkWords): Remark[] => {
  const { missing, rejected, state, doubled = [], line, part } = planned;
  if (isNoteAlone(line)) return [tell('A note of the list, and no part.')];
  const ask = askOf(planned);
  const left = leftToSay(missing, ask);
  return [
    ...(left.length > 0 ? [act(`Still to say: ${listed(left)}.`)] : []),
    ...(ask === undefined ? [] : [act(ask.question)]),
    ...Object.entries(rejected).map(([field, why]) => act(`${capital(field)}: ${sentence(why)}`)),
    ...(doubled.length === 0
      ? []
      : [
          act(
            `${listed(doubled)} ${doubled.length === 1 ? 'is' : 'are'} in another row too, and would be counted twice.`,
          ),
        ]),
    // A place that nobody knows has no data; what it is is asked above.
    ...(state === 'waiting' && ask?.about !== 'position'
      ? [act('Waits for the data of its position.')]
      : []),
    ...(state === 'other'
      ? [
          tell(
            `Not assessed (${kindName(part.kind)}): nothing here goes by what is said of it. It is kept and listed as typed.`,
          ),
          ...knownRemarks(part),
          ...(line.decision === 'judge' && ask === undefined
            ? [act('Say what to do with it.')]
            : []),
        ]
      : []),
  ];
};

/** What is known of the number of a part that nothing assesses, and what to look out for. */
const knownRemarks = ({ known }: PlannedLine['part']): Remark[] =>
  known === undefined
    ? []
    : [tell(`${known.what}.`), ...(known.lookOut === '' ? [] : [tell(known.lookOut)])];

/** What speaks against the old type in its place, however sound the part is. */
const ofPlace = (
  { worked, decision, decidedBy, part }: PlannedLine,
  { habit }: RemarkWords,
): Remark[] => {
  const misfit = worked?.misfit();
  if (misfit === undefined) return [];
  const why = sentence(whyWords(misfit, part.family, habit));
  if (decidedBy === 'place')
    return [act(`Tested rather than left, as a part like the old one does not serve here: ${why}`)];
  const stays = decision === 'leave';
  const serves = misfit.verdict === 'keep-out' ? 'does not serve' : 'is only a stopgap';
  const text = `${stays ? 'It may stay, but even new' : 'Even new'} the old type ${serves} here: ${why}`;
  return [{ text, acts: stays && decidedBy === 'rules' }];
};

/** That nothing serves, and why the best of those to keep out does not. */
const nothingServes = ({ worked, part }: PlannedLine, habit: Habit | undefined): Remark => {
  const keptOut = worked?.rest().keptOut;
  const because = keptOut === undefined ? undefined : decidingFinding(keptOut);
  const why = because === undefined ? '.' : `: ${sentence(whyWords(because, part.family, habit))}`;
  return act(`Nothing that is made today serves here${why}`);
};

/** Whether what is said of the old part rates it for AC voltage, such as `275~`. */
const isRatedForAlternating = ({ part, line: { volts, marking } }: PlannedLine): boolean =>
  part.voltageKind === 'ac' ||
  [volts, ...marking.split(/\s+/u)].some((text) => alternating(text) !== undefined);

/** The best single part with leads; a board made for leads has no pads for others. */
const bestWithLeads = (common: WithMountings, { worked }: PlannedLine): Assessment | undefined =>
  worked
    ?.rest()
    .standIns.filter(isCapacitor)
    .find(
      ({ candidate, buy }) =>
        candidate.made === undefined && buy !== undefined && !isChip(common, buy.style),
    );

const onLeads = (
  common: WithMountings,
  planned: PlannedLine,
  { typeName, habit }: RemarkWords,
): Remark => {
  const leaded = bestWithLeads(common, planned);
  const other =
    leaded === undefined
      ? 'None with leads serves.'
      : `With leads: ${standInWords(leaded, typeName, habit)}, ${verdictWords[leaded.verdict]}; take it among the alternatives where there is no room for pads.`;
  return tell(`What goes in is a chip without leads: it needs pads or short wires. ${other}`);
};

/** What the looks and ratings of old and new part do not have in common; nobody has to act on it. */
const ofKind = (planned: PlannedLine, words: RemarkWords): Remark[] => {
  const { standIn } = planned;
  const { common } = words;
  if (common === undefined || standIn === undefined || !isCapacitor(standIn)) return [];
  const isForDc = standIn.candidate.voltageKind === 'dc';
  return [
    ...(needsPads(common, standIn) ? [onLeads(common, planned, words)] : []),
    ...(isForDc && isRatedForAlternating(planned)
      ? [
          tell(
            'The old part is rated for AC voltage, what goes in for DC voltage: right where DC voltage is across it, as assumed here, and never at the mains.',
          ),
        ]
      : []),
  ];
};

/** That what goes in is rated for less than the old part, by no more than a usual voltage of its place. */
const ofLowerRating = (planned: PlannedLine, { common }: RemarkWords): Remark[] => {
  const lower = common && lowerRatingOfLine(common, planned);
  if (lower === undefined) return [];
  const said = `Rated for ${lower.now}, the old part for ${lower.old}: nobody typed the voltage across it.`;
  return [
    lower.isHigh
      ? act(`${said} Measure it and put it in here, above all where valves are near.`)
      : tell(
          `${said} It is enough for what is usual here; measure it, or take as much as the old one.`,
        ),
  ];
};

/** The same of watts: a place that asks for few now may have been given many for a reason. */
const ofLowerPower = (planned: PlannedLine, { habit }: RemarkWords): Remark[] => {
  const lower = lowerPowerOfLine(planned);
  if (lower === undefined) return [];
  const [now, old] = [lower.now, lower.old].map((watts) => formatValue(watts, 'W', habit));
  return [
    tell(
      `Rated for ${now}, the old part for ${old}: nobody typed the voltage across it. It is enough for what is usual here; measure it, or take as much as the old one.`,
    ),
  ];
};

/** What is to be said of the part that goes in. */
const ofStandIn = (planned: PlannedLine, { typeName, habit }: RemarkWords): Remark[] => {
  const { worked, decision, state, missing, standIn, part, chosenBy, setAside, choiceFault } =
    planned;
  const isNeeded = decision === 'replace' && state === 'assessed' && !missing.includes('value');
  return [
    ...(choiceFault === undefined
      ? []
      : [act(`Your choice is left unused: ${sentence(choiceFault)}`)]),
    ...(setAside === undefined
      ? []
      : [
          act(
            `Your choice, ${standInWords(setAside, typeName, habit)}, is set aside as another earns a better verdict. Take it again with a reason, or lock it.`,
          ),
        ]),
    ...(standIn === undefined || part.judgedFor === undefined
      ? []
      : [
          act(
            `Judged as if it were another: the old one is ${part.judgedFor}. Compare ratings, pins and body.`,
          ),
        ]),
    ...(isNeeded && standIn === undefined ? [nothingServes(planned, habit)] : []),
    ...(isNeeded && standIn?.verdict === 'stopgap' && chosenBy === 'rules'
      ? [act('Nothing better than a stopgap is found; take it, or choose another.')]
      : []),
    ...(planned.differsFromBest && worked?.best !== undefined
      ? [tell(`Chosen by you. First in rank: ${standInWords(worked.best, typeName, habit)}.`)]
      : []),
  ];
};

const toLookAt = (planned: PlannedLine, words: RemarkWords): Remark[] => [
  ...toSay(planned, words),
  ...(planned.wantsReason ? [act('This differs from the rules: give the reason.')] : []),
  ...ofStandIn(planned, words),
  ...ofLowerRating(planned, words),
  ...ofLowerPower(planned, words),
  ...ofPlace(planned, words),
];

/** All remarks on a line, what has to be looked at first. */
export const remarksOf = (planned: PlannedLine, words: RemarkWords): Remark[] =>
  [...toLookAt(planned, words), ...ofKind(planned, words)].toSorted(
    (a, b) => Number(b.acts) - Number(a.acts),
  );

/** Whether somebody has to look at a line before the work goes on. */
export const wantsAttention = (planned: PlannedLine, words: RemarkWords): boolean =>
  toLookAt(planned, words).some(({ acts }) => acts);
