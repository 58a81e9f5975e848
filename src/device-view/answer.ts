import {
  type DeviceAssessment,
  type Finding,
  type Habit,
  decidingFinding,
} from '../engine/index.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';
import { reasonPhrase } from '../substitution/phrases.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { capital, listed } from '../text/words.ts';

/** One finding as a reason; of a count, the pins themselves, without its name where none is to blame. */
export const reasonOf = (finding: Finding, habit?: Habit): string => {
  const name = midSentence(finding.name);
  if (finding.unit !== 'grade') return reasonPhrase(finding, habit);
  if (finding.standIn === undefined) return `${name}, which is not known`;
  return finding.standIn.typ > 0 ? `${name} (${finding.working})` : finding.working;
};

/** A number with its article as it is read out: an LM317, a 741. */
export const withArticle = (name: string): string =>
  `${/^[8AEFHILMNORSX]/u.test(name) ? 'an' : 'a'} ${name}`;

/** Names that fit in one sentence. */
const NAMED = 3;

const namesOf = (assessments: readonly DeviceAssessment[]): string =>
  listed(
    assessments.slice(0, NAMED).map(({ device }) => device.name),
    'or',
  );

/** Findings that say only that a part is made for something else. */
const DULL: readonly string[] = ['same-output'];

/** The kept-out part that one is likeliest to reach for, and why to keep it out, as a sentence. */
const warning = (
  old: string,
  assessments: readonly DeviceAssessment[],
  habit: Habit | undefined,
): string => {
  const kept = assessments.filter(
    ({ device, verdict }) => verdict === 'keep-out' && device.id !== old,
  );
  const telling = kept.find((one) => !DULL.includes(decidingFinding(one)?.finding ?? ''));
  const chosen = telling ?? kept[0];
  const against = chosen && decidingFinding(chosen);
  return chosen === undefined || against === undefined
    ? ''
    : ` Keep ${chosen.device.name} out: ${reasonOf(against, habit)}.`;
};

/** How one of the same number is had: what few stock is as a rule as old as what is in the equipment. */
const likeOf = ({ market }: Pick<DeviceRow, 'market'>): string =>
  market === 'common' || market === 'current' ? 'a new' : 'another';

const WORDS = {
  fits: 'may stand in for',
  'fits-if': 'may stand in for',
  stopgap: 'may do for a while in place of',
  'keep-out': 'does not fit in place of',
} as const;

/** The number itself as the first choice, then those that do no better. */
const itselfFirst = (
  old: Pick<DeviceRow, 'name' | 'market'>,
  place: string,
  itself: DeviceAssessment,
  others: readonly DeviceAssessment[],
  habit: Habit | undefined,
): string => {
  const fits = `${capital(likeOf(old))} ${old.name} fits as ${place}`;
  const may = `${namesOf(others)} may stand in for it`;
  const deciding = decidingFinding(itself);
  if (itself.verdict === 'fits' || deciding === undefined) return `${fits}; ${may}.`;
  const whose = others.length === 1 ? 'its' : 'their';
  return `${fits}; check this first: ${reasonOf(deciding, habit)}. On conditions of ${whose} own ${may}.`;
};

/**
 * What may stand in, in a sentence or two: the number itself first where nothing does better, else
 * others before it, since that is what one asks for, and the likeliest mistake.
 */
export const deviceAnswer = (
  old: Pick<DeviceRow, 'id' | 'name' | 'market'>,
  use: UseRow,
  assessments: readonly DeviceAssessment[],
  habit?: Habit,
): string => {
  const [place, one] = [midSentence(use.name), withArticle(old.name)];
  const keep = warning(old.id, assessments, habit);
  const best = assessments[0]?.verdict;
  if (best === undefined || best === 'keep-out')
    return `Nothing made today goes in place of ${one} as ${place} without changes.${keep}`;
  const firsts = assessments.filter(({ verdict }) => verdict === best);
  const others = firsts.filter(({ device }) => device.id !== old.id);
  const [first] = [...others, ...firsts];
  const deciding = first && decidingFinding(first);
  const check =
    best === 'fits' || deciding === undefined
      ? ''
      : `; check this first: ${reasonOf(deciding, habit)}`;
  if (others.length === 0)
    return `As ${place}, ${one} is best replaced with ${likeOf(old)} one${check}.${keep}`;
  // Where nothing does better than the number itself, that comes first, as it does in the list.
  if (best !== 'stopgap' && assessments[0]?.device.id === old.id)
    return itselfFirst(old, place, assessments[0], others, habit) + keep;
  const itself = firsts.length > others.length ? ` So may ${likeOf(old)} ${old.name}.` : '';
  return `${namesOf(others)} ${WORDS[best]} ${one} as ${place}${check}.${itself}${keep}`;
};
