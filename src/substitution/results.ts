import { verdictMark } from '../components/verdict-shape.ts';
import type { Assessment, Catalogue, Habit, TypeId } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { sentence } from '../text/words.ts';
import { findingTable, sourceMarks, type TableParts } from './finding-table.ts';
import { bodyPhrase, decidingFinding, isNotMade, partPhrase, reasonPhrase } from './phrases.ts';
import { citedSources, link, typeName, type Shown } from './shown.ts';

const reasonLine = (assessment: Assessment, habit?: Habit): Markup | undefined => {
  const finding = decidingFinding(assessment);
  if (finding === undefined) return undefined;
  const lead = assessment.verdict === 'fits' ? 'Least to spare: ' : 'Decides: ';
  return h('p', {}, lead, reasonPhrase(finding, habit), '.');
};

/** What else to look into, for an assessment that is not a plain yes. */
const alsoLine = (assessment: Assessment, habit?: Habit): Markup | undefined => {
  const rest = assessment.findings.filter(
    (finding) => finding.verdict !== 'fits' && finding.demand !== assessment.worst,
  );
  return rest.length === 0
    ? undefined
    : h(
        'p',
        { class: 'quiet' },
        'Also: ',
        rest.map((finding) => reasonPhrase(finding, habit)).join('; '),
        '.',
      );
};

/** How to put together a stand-in that takes more than one part, and what to mind. */
const madeNote = ({ candidate }: Assessment, { shown, cited }: TableParts): Markup | undefined => {
  if (candidate.made === undefined) return undefined;
  const { kind, why } = candidate.made;
  const way = shown.catalogue.combinations[kind];
  return h(
    'p',
    {},
    sentence(why),
    ...(way === undefined
      ? []
      : [` ${way.wiring} ${way.mind}`, ...sourceMarks([way.source], cited)]),
  );
};

/** Whether a stand-in's table of findings stands open, and with drawings. */
export interface Openness {
  open: boolean;
  bars: boolean;
}

/** One stand-in with its verdict, what to buy, why, and its findings. */
const standInItem = (assessment: Assessment, open: boolean, parts: TableParts): Markup => {
  const { catalogue, habit } = parts.shown;
  const { type } = assessment.candidate;
  const body = bodyPhrase(assessment);
  return h(
    'li',
    { id: type },
    h(
      'h3',
      {},
      verdictMark(assessment.verdict),
      ' ',
      link(`/types/${type}/`, typeName(catalogue, assessment)),
    ),
    h('p', {}, h('strong', {}, partPhrase(assessment.candidate, habit)), body && `, ${body}`),
    madeNote(assessment, parts),
    reasonLine(assessment, habit),
    alsoLine(assessment, habit),
    h(
      'details',
      { open },
      h('summary', {}, `${assessment.findings.length} findings with their working`),
      findingTable(assessment, assessment.findings, parts),
    ),
  );
};

/** One type that is kept out, with what rules it out. */
const keptOutItem = (assessment: Assessment, parts: TableParts): Markup => {
  const against = assessment.findings.filter((finding) => finding.verdict === 'keep-out');
  return h(
    'li',
    { id: assessment.candidate.type },
    h(
      'details',
      {},
      h(
        'summary',
        {},
        verdictMark('keep-out', typeName(parts.shown.catalogue, assessment)),
        ': ',
        against.map((finding) => reasonPhrase(finding, parts.shown.habit)).join('; '),
        '.',
      ),
      findingTable(assessment, against, parts),
    ),
  );
};

const notMadeLine = (catalogue: Catalogue, types: readonly TypeId[]): Markup =>
  h(
    'p',
    { class: 'quiet' },
    'Not made in this value and voltage: ',
    ...types.flatMap((type, index) => [
      index === 0 ? '' : ', ',
      link(`/types/${type}/`, catalogue.types[type]?.short_name ?? type),
    ]),
    '.',
  );

/** Stand-ins whose findings are drawn as well as told. */
const DRAWN = 1;

/** The ranked stand-ins, then what to keep out. */
export const resultsMarkup = (
  shown: Shown,
  openness: (assessment: Assessment, index: number) => Openness = (_, index) => ({
    open: false,
    bars: index < DRAWN,
  }),
): Markup[] => {
  const { catalogue, assessments } = shown;
  const cited = citedSources(shown);
  const usable = assessments.filter(({ verdict }) => verdict !== 'keep-out');
  const kept = assessments.filter(({ verdict }) => verdict === 'keep-out');
  const harmful = kept.filter((assessment) => !isNotMade(assessment));
  const notMade = kept.filter(isNotMade).map(({ candidate }) => candidate.type);
  return [
    h('h2', { id: 'stand-ins' }, 'Stand-ins, best first'),
    usable.length === 0
      ? h('p', {}, 'No part made today fits here as it stands; see below what rules each out.')
      : h(
          'ol',
          { class: 'stand-ins' },
          ...usable.map((assessment, index) => {
            const { open, bars } = openness(assessment, index);
            return standInItem(assessment, open, { shown, cited, bars });
          }),
        ),
    h('h2', { id: 'keep-out' }, 'Keep out'),
    h(
      'ul',
      { class: 'stand-ins' },
      ...harmful.map((one) => keptOutItem(one, { shown, cited, bars: false })),
    ),
    notMade.length > 0 && notMadeLine(catalogue, notMade),
  ].filter((piece) => piece !== false);
};
