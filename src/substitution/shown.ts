import { link } from '../components/link.ts';
import {
  type Assessment,
  type Catalogue,
  type FilledSum,
  type Finding,
  type Habit,
  type Part,
  type SourceId,
  type TypeId,
  decidingFinding,
} from '../engine/index.ts';
import { type Markup } from '../markup/node.ts';
import { isDocument } from '../text/cited-documents.ts';
import { madeOf, typeRowOf } from './any-kind.ts';
import { type AnyPart } from './phrases.ts';

/** What the pieces of a substitution page are drawn from. */
export interface Shown<P extends AnyPart = Part> {
  catalogue: Catalogue;
  position: string;
  /** The ranked stand-ins, kept-out ones last. */
  assessments: readonly Assessment<P>[];
  /** A part that the visitor asks about besides. */
  having?: Assessment<P> | undefined;
  /** The bench sum that a finding leads to, with its numbers filled in. */
  sumOf?: (finding: Finding, assessment: Assessment<P>) => FilledSum | undefined;
  /** Whether all findings of a stand-in stand in the page, or only the one that decides. */
  isFull: (assessment: Assessment<P>) => boolean;
  /** Whether something in the page leads to single findings. */
  ledTo?: boolean;
  habit?: Habit | undefined;
}

/** What is asked, leading to where its position says why. */
export const demandLink = <P extends AnyPart>(
  { demand }: Pick<Finding, 'demand'>,
  { position }: Pick<Shown<P>, 'position'>,
  word: string,
): Markup => link(`/positions/${position}/#${demand}`, word);

/** The type of a part by its name. */
export const typeName = (
  catalogue: Catalogue,
  { candidate }: { candidate: { type: TypeId } },
): string => typeRowOf(catalogue, candidate.type)?.name ?? candidate.type;

/** The documents behind the findings that a page shows, in the order in which it cites them. */
export const citedSources = <P extends AnyPart>({
  catalogue,
  assessments,
  having,
  isFull,
}: Shown<P>): SourceId[] => {
  const cited = new Set<SourceId>();
  const cite = (source: SourceId | undefined): void => {
    const kind = source === undefined ? undefined : catalogue.sources[source]?.kind;
    if (source !== undefined && kind !== undefined && isDocument(kind)) cited.add(source);
  };
  const citeAll = (assessment: Assessment<P>, full: boolean): void => {
    const made = madeOf(assessment.candidate);
    if (made !== undefined) cite(catalogue.combinations[made.kind]?.source);
    const deciding = full ? undefined : decidingFinding(assessment);
    const findings = full ? assessment.findings : deciding === undefined ? [] : [deciding];
    for (const { sources } of findings) for (const source of sources) cite(source);
  };
  for (const assessment of assessments) citeAll(assessment, isFull(assessment));
  if (having !== undefined) citeAll(having, true);
  return [...cited];
};

/** The numbers of sources in a page's list of them, each leading to the page of its source. */
export const sourceMarks = (sources: readonly SourceId[], cited: readonly SourceId[]): Markup[] =>
  sources.flatMap((source) => {
    const number = cited.indexOf(source) + 1;
    return number === 0 ? [] : [' ', link(`/sources/${source}/`, `[${number}]`)];
  });
