import {
  type Assessment,
  type Catalogue,
  type Finding,
  type Habit,
  type Request,
  type TypeId,
  decidingFinding,
  formatValue,
  isChip,
} from '../engine/index.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { capital, listed } from '../text/words.ts';
import { madeOf, needsPads, typeRowOf } from './any-kind.ts';
import { lowerRating } from './lower-rating.ts';
import { isNotMade, partPhrase, printTypical, reasonPhrase, type AnyPart } from './phrases.ts';
import { strangeness, type OldInPlace } from './strangeness.ts';

const nameOf = (catalogue: Catalogue, { candidate }: Assessment<AnyPart>): string =>
  midSentence(typeRowOf(catalogue, candidate.type)?.short_name ?? candidate.type);

/** Findings that say only that a type does not come in such a rating or value. */
const DULL: readonly string[] = ['rated-voltage', 'voltage-margin', 'value'];

/** A share of what is asked below which nobody reaches for a part: half the voltage, twice the value. */
const TEMPTING = 0.5;

/** How parts are had that somebody may reach for. */
const AT_HAND: readonly string[] = ['common', 'current'];

/** Whether parts of a type are taken for those of another: of its family, or both electrolytics. */
const isAlike = ({ families, types }: Catalogue, type: TypeId, other: TypeId): boolean => {
  const [one, two] = [types[type]?.family ?? '', types[other]?.family ?? ''];
  return one === two || (families[one]?.roomy === true && families[two]?.roomy === true);
};

/**
 * Whether all that keeps a part out is that it is not made for the voltage or the value, by so far that
 * nobody would take it, or of a type that nobody has at hand or takes for the old one.
 */
const isNoTemptation = (
  catalogue: Catalogue,
  original: TypeId,
  assessment: Assessment<AnyPart>,
): boolean => {
  const against = decidingFinding(assessment);
  if (against === undefined || !DULL.includes(against.finding)) return false;
  const { type } = assessment.candidate;
  const market = typeRowOf(catalogue, type)?.market ?? '';
  return (
    against.margin < TEMPTING || !AT_HAND.includes(market) || !isAlike(catalogue, original, type)
  );
};

/** Why a part is kept out, as words after its name; of a rating, the highest that is made. */
const keptOutBy = ({ candidate }: Assessment<AnyPart>, against: Finding, habit?: Habit): string =>
  against.finding === 'rated-voltage' && 'voltageKind' in candidate && against.standIn
    ? `made for ${formatValue(candidate.ratedVoltage, 'V', habit)} at most in such a value, ` +
      `and ${printTypical(against.standIn, against.unit, habit)} of that may stand here`
    : reasonPhrase(against, habit);

/** The kept-out part that a reader is likeliest to reach for: one of the old part's own family. */
const temptation = (
  catalogue: Catalogue,
  original: TypeId,
  assessments: readonly Assessment<AnyPart>[],
): Assessment<AnyPart> | undefined => {
  const family = typeRowOf(catalogue, original)?.family;
  const kept = assessments.filter(
    (assessment) =>
      assessment.verdict === 'keep-out' &&
      !isNotMade(assessment) &&
      !isNoTemptation(catalogue, original, assessment),
  );
  // That a type is not made for the voltage or the value teaches less than what it does wrong, and one
  // that is hard to get tempts least of its family.
  const dullness = (assessment: Assessment<AnyPart>): number => {
    const row = typeRowOf(catalogue, assessment.candidate.type);
    return (
      (row?.family === family ? 0 : 2) +
      (DULL.includes(decidingFinding(assessment)?.finding ?? '') ? 4 : 0) +
      (AT_HAND.includes(row?.market ?? '') ? 0 : 1)
    );
  };
  return kept.toSorted((a, b) => dullness(a) - dullness(b))[0];
};

/** Names that fit in one sentence. */
const NAMED = 3;

/** What to keep out and why, as a sentence with a space before it; nothing where nothing tempts. */
const warning = (
  catalogue: Catalogue,
  original: TypeId,
  assessments: readonly Assessment<AnyPart>[],
  habit?: Habit,
): string => {
  const kept = temptation(catalogue, original, assessments);
  const against = kept && decidingFinding(kept);
  return kept && against
    ? ` Keep ${nameOf(catalogue, kept)} out: ${keptOutBy(kept, against, habit)}.`
    : '';
};

/**
 * The part that falls short least, as a sentence with a space before it. One that is of the wrong
 * kind, such as one without an approval, is not near.
 */
const nearest = (
  catalogue: Catalogue,
  assessments: readonly Assessment<AnyPart>[],
  habit?: Habit,
): string => {
  const [near] = assessments.filter((assessment) => !isNotMade(assessment));
  const against = near && decidingFinding(near);
  return near && against && against.unit !== 'grade'
    ? ` Nearest is ${nameOf(catalogue, near)}, such as ${partPhrase(near.candidate, habit)}: ${reasonPhrase(against, habit)}.`
    : '';
};

/**
 * That the old part was made for a circuit with valves, for all that its mark tells, as a sentence with a
 * space before it.
 */
const reminder = (
  catalogue: Catalogue,
  request: Request | undefined,
  { candidate }: Assessment<AnyPart>,
  habit?: Habit,
): string => {
  if (request === undefined || !('voltageKind' in candidate)) return '';
  const lower = lowerRating(catalogue, request, candidate, habit);
  return lower?.isHigh === true
    ? ` The old part is for ${lower.old}: measure the voltage across it, and type it below.`
    : '';
};

/** Whether a type is sold in chips alone, so that the old part will have been one. */
const isChipAlone = ({ offers, ...catalogue }: Catalogue, type: TypeId): boolean => {
  const own = offers.filter((offer) => offer.type === type);
  return own.length > 0 && own.every(({ style }) => isChip(catalogue, style));
};

/**
 * What has leads, and fits on a condition, where the part that is named has none and the old one had, as a
 * sentence with a space before it.
 */
const withLeads = (
  catalogue: Catalogue,
  { original }: OldInPlace,
  [best, ...others]: readonly Assessment<AnyPart>[],
  habit?: Habit,
): string => {
  if (best?.verdict !== 'fits' || !needsPads(catalogue, best)) return '';
  const leaded = others.find(
    (one) =>
      one.verdict === 'fits-if' &&
      !needsPads(catalogue, one) &&
      madeOf(one.candidate) === undefined,
  );
  const against = leaded && decidingFinding(leaded);
  return leaded === undefined || against === undefined || isChipAlone(catalogue, original.type)
    ? ''
    : ` It is a chip; with leads ${nameOf(catalogue, leaded)}, such as ${partPhrase(leaded.candidate, habit)}, fits if this is in order: ${reasonPhrase(against, habit)}.`;
};

/**
 * The sentence that answers: what fits, what to buy, what to keep out and why.
 * @param asked of a capacitor, which may want its voltage measured
 */
export const answerSentence = (
  catalogue: Catalogue,
  old: OldInPlace,
  assessments: readonly Assessment<AnyPart>[],
  { habit, asked }: { habit?: Habit | undefined; asked?: Request } = {},
): string => {
  const leading = assessments[0];
  const keepOut = warning(catalogue, old.original.type, assessments, habit);
  if (leading === undefined || leading.verdict === 'keep-out')
    return `No part made today fits here as it stands.${nearest(catalogue, assessments, habit) || keepOut}`;
  const [best = leading, ...others] = assessments
    .filter(({ verdict }) => verdict === leading.verdict)
    .toSorted((a, b) => strangeness(catalogue, old, a) - strangeness(catalogue, old, b))
    .slice(0, NAMED);
  const leads = withLeads(catalogue, old, [best, ...assessments], habit);
  const last = leads + keepOut + reminder(catalogue, asked, best, habit);
  const name = capital(nameOf(catalogue, best));
  const part = partPhrase(best.candidate, habit);
  const deciding = decidingFinding(best);
  const reason = deciding ? reasonPhrase(deciding, habit) : '';
  const more = listed(others.map((other) => nameOf(catalogue, other)));
  const so = others.length === 1 ? 'so does' : 'so do';
  switch (best.verdict) {
    case 'fits':
      return `${name} fits, such as ${part}${more && `; ${so} ${more}`}.${last}`;
    case 'fits-if':
      return `${name}, such as ${part}, fits if this is in order: ${reason}.${more && ` On conditions of their own ${so} ${more}.`}${last}`;
    default:
      return `Only a stopgap is to be had: ${listed([nameOf(catalogue, best), ...others.map((other) => nameOf(catalogue, other))], 'or')}, such as ${part}; ${reason}.${last}`;
  }
};
