import { link } from '../components/link.ts';
import { verdictMark } from '../components/verdict-shape.ts';
import {
  mountedOtherwise,
  type Assessment,
  type Catalogue,
  type TypeId,
  decidingFinding,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { inHabit } from '../text/in-habit.ts';
import { sentence } from '../text/words.ts';
import { madeOf, typeRowOf } from './any-kind.ts';
import { HAVE } from './comparison.ts';
import { findingTable, groundWords, workingWords, type TableParts } from './finding-table.ts';
import {
  bodyPhrase,
  isNotMade,
  otherwisePhrase,
  type AnyPart,
  partPhrase,
  reasonPhrase,
} from './phrases.ts';
import { citedSources, sourceMarks, typeName, type Shown } from './shown.ts';

/** What rules a part out, or where it has least to spare, and the working of what decides. */
const reasonLines = <P extends AnyPart>(
  assessment: Assessment<P>,
  parts: TableParts<P>,
): Markup[] => {
  const { habit } = parts.shown;
  const deciding = decidingFinding(assessment);
  if (deciding === undefined) return [];
  const others = assessment.findings.filter(
    ({ demand, verdict }) => verdict === 'keep-out' && demand !== deciding.demand,
  );
  const lead = assessment.verdict === 'fits' ? 'Least to spare: ' : 'Decides: ';
  const reasons = [deciding, ...others].map((finding) => reasonPhrase(finding, habit));
  return [
    h('p', {}, lead, reasons.join('; '), '.'),
    h(
      'p',
      { class: 'working' },
      // Of a yes or no the reason is the working.
      ...(deciding.unit === 'grade' ? groundWords : workingWords)(deciding, parts),
    ),
  ];
};

/** What else to look into, for an assessment that is neither a plain yes nor a plain no. */
const alsoLine = <P extends AnyPart>(
  assessment: Assessment<P>,
  { shown }: TableParts<P>,
): Markup[] => {
  const rest = assessment.findings.filter(
    ({ demand, verdict }) => verdict !== 'fits' && demand !== assessment.worst,
  );
  const reasons = rest.map((finding) => reasonPhrase(finding, shown.habit)).join('; ');
  return assessment.verdict === 'keep-out' || rest.length === 0
    ? []
    : [h('p', { class: 'quiet' }, `Also: ${reasons}.`)];
};

/** How to put together a stand-in that takes more than one part, and what to mind. */
const madeNote = <P extends AnyPart>(
  { candidate }: Assessment<P>,
  { shown, cited }: TableParts<P>,
): Markup[] => {
  const made = madeOf(candidate);
  if (made === undefined) return [];
  const { kind, why } = made;
  const way = shown.catalogue.combinations[kind];
  return [
    h(
      'p',
      {},
      inHabit(sentence(why), shown.habit),
      way !== undefined && [` ${way.wiring} ${way.mind}`, ...sourceMarks([way.source], cited)],
    ),
  ];
};

/** How a capacitor that serves is sold with a lead at each end besides, as most old ones are made. */
const otherwiseSold = (
  { candidate, verdict, buy }: Assessment<AnyPart>,
  { catalogue, habit }: Pick<Shown<AnyPart>, 'catalogue' | 'habit'>,
): Markup[] => {
  if (!('capacitance' in candidate) || buy === undefined || verdict === 'keep-out') return [];
  const other = mountedOtherwise(catalogue, candidate, buy);
  if (other === undefined) return [];
  const market = link(`/types/${candidate.type}/#market`, other.style);
  return ['; also sold as ', market, otherwisePhrase(other, habit)];
};

/** What a part is: its verdict, its name, what to buy, and why. */
const itemHead = <P extends AnyPart>(assessment: Assessment<P>, parts: TableParts<P>): Markup[] => {
  const body = bodyPhrase(assessment, parts.shown.habit);
  return [
    h(
      'h3',
      {},
      verdictMark(assessment.verdict),
      ' ',
      link(`/types/${assessment.candidate.type}/`, typeName(parts.shown.catalogue, assessment)),
    ),
    h(
      'p',
      {},
      h('strong', {}, partPhrase(assessment.candidate, parts.shown.habit)),
      body && `, ${body}`,
      ...otherwiseSold(assessment, parts.shown),
    ),
    ...madeNote(assessment, parts),
    ...reasonLines(assessment, parts),
    ...alsoLine(assessment, parts),
  ];
};

const detailsSummary = ({ findings }: Pick<Assessment, 'findings'>): Markup =>
  h('summary', {}, `All ${findings.length} findings with their working`);

const isUsable = (first: Pick<Assessment, 'verdict'> | undefined): boolean =>
  first !== undefined && first.verdict !== 'keep-out';

/** What puts a part beside the first stand-in, where there are scripts to do it. */
const besideButton = <P extends AnyPart>(
  name: string,
  { shown }: TableParts<P>,
): Markup | undefined =>
  shown.ledTo === true && isUsable(shown.assessments[0])
    ? h(
        'p',
        {},
        h(
          'button',
          { type: 'button', class: 'plain-button', 'data-beside': name },
          'Side by side with the first',
        ),
      )
    : undefined;

/**
 * One stand-in of the list. Where its findings are not in the page yet, a script draws them when
 * they are opened.
 */
const standInItem = <P extends AnyPart>(
  assessment: Assessment<P>,
  open: boolean,
  parts: TableParts<P>,
): Markup => {
  const full = parts.shown.isFull(assessment);
  const { type } = assessment.candidate;
  return h(
    'li',
    { id: type },
    ...itemHead(assessment, parts),
    h(
      'details',
      { open, class: full ? undefined : 'needs-script' },
      detailsSummary(assessment),
      full && assessment !== parts.shown.assessments[0] && besideButton(type, parts),
      full && findingTable(assessment, type, parts),
    ),
  );
};

/** A part that is shown by itself: as one of the list, with its findings open and words besides. */
export const openItem = <P extends AnyPart>(
  assessment: Assessment<P>,
  id: string,
  parts: TableParts<P>,
  besides: readonly (Markup | undefined | false)[],
): Markup =>
  h(
    'li',
    { id },
    ...itemHead(assessment, parts),
    besides,
    h(
      'details',
      { open: true },
      detailsSummary(assessment),
      besideButton(HAVE, parts),
      findingTable(assessment, id, parts),
    ),
  );

const notMadeLine = (catalogue: Catalogue, types: readonly TypeId[]): Markup =>
  h(
    'p',
    { class: 'quiet' },
    `Not made in this value and ${types.some((type) => type in catalogue.kindTypes) ? 'rating' : 'voltage'}: `,
    ...types.flatMap((type, index) => [
      index === 0 ? '' : ', ',
      link(`/types/${type}/`, typeRowOf(catalogue, type)?.short_name ?? type),
    ]),
    '.',
  );

/** The ranked stand-ins, then what to keep out. */
export const resultsMarkup = <P extends AnyPart>(
  shown: Shown<P>,
  isOpen: (assessment: Assessment<P>) => boolean = () => false,
): Markup[] => {
  const { catalogue, assessments } = shown;
  const parts = { shown, cited: citedSources(shown) };
  const item = (assessment: Assessment<P>): Markup =>
    standInItem(assessment, isOpen(assessment), parts);
  const usable = assessments.filter(({ verdict }) => verdict !== 'keep-out');
  const kept = assessments.filter(({ verdict }) => verdict === 'keep-out');
  const listed = kept.filter((one) => !isNotMade(one));
  const notMade = kept.filter(isNotMade).map(({ candidate }) => candidate.type);
  return [
    h('h2', { id: 'stand-ins' }, 'Stand-ins, best first'),
    usable.length === 0
      ? h('p', {}, 'No part made today fits here as it stands; see below what rules each out.')
      : h('ol', { class: 'stand-ins' }, ...usable.map(item)),
    h('h2', { id: 'keep-out' }, 'Keep out'),
    kept.length === 0 && h('p', {}, 'None of those that are made today has to be kept out here.'),
    listed.length > 0 && h('ul', { class: 'stand-ins' }, ...listed.map(item)),
    notMade.length > 0 && notMadeLine(catalogue, notMade),
  ].filter((piece) => piece !== false);
};
