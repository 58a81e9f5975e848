import type { DeviceAssessment, Finding, Habit } from '../engine/index.ts';
import { reasonPhrase } from '../substitution/phrases.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { listed } from '../text/words.ts';
import type { UseRow } from '../schemas/devices.ts';

/** The finding that decides an assessment. */
export const decidingOf = ({ findings, worst }: DeviceAssessment): Finding | undefined =>
  findings.find(({ demand }) => demand === worst) ?? findings[0];

/** One finding as a reason; of a count, the pins themselves. */
export const reasonOf = (finding: Finding, habit?: Habit): string => {
  const name = midSentence(finding.name);
  if (finding.unit !== 'grade') return reasonPhrase(finding, habit);
  return finding.standIn === undefined
    ? `${name}, which is not known`
    : `${name} (${finding.working})`;
};

/** Names that fit in one sentence. */
const NAMED = 3;

const namesOf = (assessments: readonly DeviceAssessment[]): string =>
  listed(
    assessments.slice(0, NAMED).map(({ device }) => device.name),
    'or',
  );

/**
 * What may stand in, in a sentence or two: others before the number itself, since that is what one
 * asks for, and the likeliest mistake.
 */
export const deviceAnswer = (
  old: { id: string; name: string },
  use: UseRow,
  assessments: readonly DeviceAssessment[],
  habit?: Habit,
): string => {
  const place = midSentence(use.name);
  const usable = assessments.filter(({ verdict }) => verdict !== 'keep-out');
  const best = usable[0]?.verdict;
  const firsts = usable.filter(({ verdict }) => verdict === best);
  const others = firsts.filter(({ device }) => device.id !== old.id);
  const named = others.length > 0 ? others : firsts;
  const [first] = named;
  const kept = assessments.find(
    ({ device, verdict }) => verdict === 'keep-out' && device.id !== old.id,
  );
  const against = kept && decidingOf(kept);
  const keep =
    kept === undefined || against === undefined
      ? ''
      : ` Keep ${kept.device.name} out: ${reasonOf(against, habit)}.`;
  if (first === undefined)
    return `Nothing made today goes in place of a ${old.name} as ${place} without changes.${keep}`;
  const reason = decidingOf(first);
  const words = {
    fits: `${namesOf(named)} may stand in for a ${old.name} as ${place}.`,
    'fits-if': `${namesOf(named)} may stand in for a ${old.name} as ${place}; check this first: ${reason === undefined ? '' : reasonOf(reason, habit)}.`,
    stopgap: `${namesOf(named)} may do for a while in place of a ${old.name} as ${place}: ${reason === undefined ? '' : reasonOf(reason, habit)}.`,
    'keep-out': '',
  }[first.verdict];
  const itself = usable.find(({ device }) => device.id === old.id);
  const still =
    itself !== undefined && itself !== first ? ` A new ${old.name} can be bought as well.` : '';
  return `${words}${still}${keep}`;
};
