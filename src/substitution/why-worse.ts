import {
  type Assessment,
  type Catalogue,
  type Finding,
  type Habit,
  compareVerdicts,
} from '../engine/index.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { figureText } from './finding-table.ts';
import { isNotMade, partPhrase, printLimit, type AnyPart } from './phrases.ts';
import { typeName } from './shown.ts';

/** A margin that is this much smaller than another is smaller to a reader. */
const CLEARLY = 1.1;

/** Being ten times better than needed earns no more. */
const AMPLE = 10;

/** The finding on whether a part can be bought. */
const BUYING = 'availability';

const aside = (findings: readonly Finding[], left: string): Finding[] =>
  findings.filter(({ finding }) => finding !== left);

/** A finding of one part with the same finding of another. */
interface Pair {
  own: Finding;
  other: Finding;
}

/**
 * The findings of two parts, demand by demand, in the order of the first, which is by concern. That
 * one cannot be bought says nothing about how it would do.
 */
const pairsOf = <P extends AnyPart>(own: Assessment<P>, other: Assessment<P>): Pair[] =>
  aside(own.findings, BUYING).flatMap((finding) => {
    const match = other.findings.find(({ demand }) => demand === finding.demand);
    return match === undefined ? [] : [{ own: finding, other: match }];
  });

const isWorse = ({ own, other }: Pair): boolean => compareVerdicts(own.verdict, other.verdict) > 0;

/** Less to spare, where that still earns something and where there are degrees at all. */
const hasLess = ({ own, other }: Pair): boolean =>
  own.weight !== 'mild' &&
  own.unit !== 'grade' &&
  own.missing.length === 0 &&
  own.margin < AMPLE &&
  own.margin * CLEARLY < other.margin;

const against = ({ own, other }: Pair, habit?: Habit): string => {
  if (own.unit === 'grade') return `: ${own.working}`;
  const limit = printLimit(own, habit);
  const figures = [own, other].map(({ standIn, unit }) => figureText(standIn, unit, habit));
  return `, ${midSentence(own.name)}: ${figures.join(' against ')}${limit === '' ? '' : `; ${limit}`}`;
};

/**
 * One sentence on where a part falls behind the best stand-in: in what decides, if that is it, else
 * in the weightiest finding that earns a worse verdict or has clearly less to spare.
 */
export const whyWorse = <P extends AnyPart>(
  catalogue: Catalogue,
  own: Assessment<P>,
  best: Assessment<P>,
  habit?: Habit,
): string => {
  const name = midSentence(typeName(catalogue, best));
  const same = own.candidate.type === best.candidate.type;
  if (same && partPhrase(own.candidate) === partPhrase(best.candidate)) {
    return 'It is the first of the stand-ins.';
  }
  const pairs = pairsOf(own, best);
  const worse = pairs.filter(isWorse);
  const deciding = worse.find((pair) => pair.own.demand === own.worst) ?? worse[0];
  // What is left of the name where the type is the same is the part itself.
  const first = same ? `the first, ${partPhrase(best.candidate, habit)}` : `the first, ${name}`;
  if (deciding !== undefined) return `Worse than ${first}${against(deciding, habit)}.`;
  const less = pairs.find(hasLess);
  return less === undefined
    ? `In nothing that is asked here worse than ${first}.`
    : `As good a verdict as ${first}, with less to spare in one thing${against(less, habit)}.`;
};

/** How a part would do if one had it already, so that nobody need make it. */
export interface InHand {
  verdict: Finding['verdict'];
  /** What keeps it from a plain yes, the weightiest first. */
  concerns: Finding[];
}

/** What is left of an assessment whose part is not made, once that is no matter. */
export const inHand = ({ findings }: Pick<Assessment, 'findings'>): InHand | undefined => {
  if (!isNotMade({ findings })) return undefined;
  const concerns = aside(findings, BUYING).filter(({ verdict }) => verdict !== 'fits');
  return { verdict: concerns[0]?.verdict ?? 'fits', concerns };
};
