import { href } from '../components/links.ts';
import { equationMarkup } from '../components/math.ts';
import { rangeBar } from '../components/range-bar.ts';
import { verdictMark, verdictWords } from '../components/verdict-shape.ts';
import {
  formatValue,
  type Assessment,
  type Catalogue,
  type Finding,
  type Habit,
  type Range,
  type SourceId,
  type TypeId,
  type Unit,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { sentence } from '../text/words.ts';
import {
  bodyPhrase,
  decidingFinding,
  isNotMade,
  partPhrase,
  printLimit,
  printMargin,
  printRange,
  printTypical,
  reasonPhrase,
} from './phrases.ts';

/** What the pieces of a substitution page are drawn from. */
export interface Shown {
  catalogue: Catalogue;
  assessments: readonly Assessment[];
  habit?: Habit | undefined;
}

const link = (path: `/${string}`, ...children: Markup[]): Markup =>
  h('a', { href: href(path) }, ...children);

const typeName = (catalogue: Catalogue, { candidate }: Assessment): string =>
  catalogue.types[candidate.type]?.name ?? candidate.type;

/** Stand-ins for a document: a row that rests on one says so by its basis already. */
const NO_DOCUMENT = ['trade', 'identity'];

/** The documents of a page in the order in which it first cites them. */
const citedSources = ({ catalogue, assessments }: Shown): SourceId[] => {
  const all = assessments.flatMap(({ findings }) => findings.flatMap(({ sources }) => sources));
  return [...new Set(all)].filter(
    (source) => !NO_DOCUMENT.includes(catalogue.sources[source]?.kind ?? ''),
  );
};

/** Words for how well a finding is known. */
const SURE = {
  sure: 'published',
  likely: 'common practice',
  possible: 'from memory',
} as const;

/** A figure with its typical value in front: `16 Hz (15.1–17.2 Hz)`. */
const figureText = (range: Range | undefined, unit: string, habit?: Habit): string => {
  if (range === undefined) return 'not known';
  if (unit === 'grade') return range.typ > 0 ? 'no' : 'yes';
  const typical = printTypical(range, unit, habit);
  return range.min === range.max ? typical : `${typical} (${printRange(range, unit, habit)})`;
};

const barOf = (
  { standIn, original, limit, unit, name }: Finding,
  habit?: Habit,
): Markup | undefined => {
  if (standIn === undefined || standIn.min === standIn.max || unit === 'grade') return undefined;
  const rows = [
    ...(original === undefined ? [] : [{ label: 'old part', range: original }]),
    { label: 'stand-in', range: standIn },
  ];
  return rangeBar({
    title: name,
    rows,
    limit,
    scale: rows.every(({ range }) => range.min > 0) ? 'log' : 'linear',
    print: (value) => formatValue(value, unit as Unit, habit),
  });
};

const sourceMarks = (sources: readonly SourceId[], cited: readonly SourceId[]): Markup[] =>
  sources.flatMap((source) => {
    const number = cited.indexOf(source) + 1;
    return number === 0 ? [] : [' ', h('a', { href: `#source-${number}` }, `[${number}]`)];
  });

interface TableParts {
  shown: Shown;
  cited: readonly SourceId[];
  bars: boolean;
}

const findingRows = (finding: Finding, { shown, cited, bars }: TableParts): Markup[] => {
  const { habit } = shown;
  return [
    h(
      'tr',
      {},
      h('th', { scope: 'row' }, h('a', { href: `#ask-${finding.demand}` }, finding.name)),
      h('td', {}, figureText(finding.original, finding.unit, habit)),
      h('td', {}, figureText(finding.standIn, finding.unit, habit)),
      h('td', {}, printLimit(finding, habit)),
      h('td', {}, printMargin(finding)),
      h('td', { 'data-verdict': finding.verdict }, verdictWords[finding.verdict]),
    ),
    h(
      'tr',
      {},
      h(
        'td',
        { colspan: 6 },
        bars ? barOf(finding, habit) : undefined,
        `${finding.working}; ${SURE[finding.sure]}`,
        ...sourceMarks(finding.sources, cited),
      ),
    ),
  ];
};

const sameRange = (a: Range | undefined, b: Range | undefined): boolean =>
  a !== undefined && b !== undefined && a.min === b.min && a.typ === b.typ && a.max === b.max;

/** Met without anything to compare: a yes, or a figure that the old part had as well. */
const isPlainlyMet = ({ verdict, unit, original, standIn }: Finding): boolean =>
  verdict === 'fits' && (unit === 'grade' || sameRange(original, standIn));

const plainlyMetRow = (findings: readonly Finding[]): Markup =>
  h(
    'tr',
    {},
    h(
      'td',
      { colspan: 6 },
      'Met as by the old part: ',
      ...findings.flatMap((finding, index) => [
        index === 0 ? '' : '; ',
        h('a', { href: `#ask-${finding.demand}` }, midSentence(finding.name)),
        `, ${finding.working}`,
      ]),
      '.',
    ),
  );

const COLUMNS = ['Asked', 'Old part', 'Stand-in', 'Limit', 'To spare', 'Verdict'];

const findingTable = (
  assessment: Assessment,
  findings: readonly Finding[],
  parts: TableParts,
): Markup => {
  const plain = findings.filter(isPlainlyMet);
  const compared = findings.filter((finding) => !isPlainlyMet(finding));
  return h(
    'div',
    {
      class: 'table-scroll',
      tabindex: 0,
      role: 'region',
      'aria-label': `Findings, ${typeName(parts.shown.catalogue, assessment)}`,
    },
    h(
      'table',
      { class: parts.bars ? 'findings drawn' : 'findings' },
      h('thead', {}, h('tr', {}, ...COLUMNS.map((word) => h('th', { scope: 'col' }, word)))),
      h(
        'tbody',
        {},
        ...compared.flatMap((finding) => findingRows(finding, parts)),
        plain.length > 0 && plainlyMetRow(plain),
      ),
    ),
  );
};

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

/** Every demand of the position: the limit, what the old part comes to, why it is asked. */
const askedTable = ({ catalogue, assessments, habit }: Shown): Markup => {
  const findings = (assessments[0]?.findings ?? []).toSorted((a, b) =>
    a.demand < b.demand ? -1 : 1,
  );
  const weights = { hard: 'must', strong: 'should', mild: 'better if' } as const;
  const rows = (['hard', 'strong', 'mild'] as const).flatMap((weight) =>
    findings
      .filter((finding) => finding.weight === weight)
      .map((finding) =>
        h(
          'tr',
          { id: `ask-${finding.demand}` },
          h('th', { scope: 'row' }, finding.name),
          h('td', {}, weights[weight]),
          h('td', {}, printLimit(finding, habit) || 'yes'),
          h(
            'td',
            {},
            finding.why,
            ` ${catalogue.findings[finding.finding]?.meaning ?? ''}.`,
            finding.equation !== '' && h('div', {}, equationMarkup(finding.equation)),
          ),
        ),
      ),
  );
  return h(
    'div',
    { class: 'table-scroll', tabindex: 0, role: 'region', 'aria-label': 'What is asked here' },
    h(
      'table',
      { class: 'asked' },
      h(
        'thead',
        {},
        h(
          'tr',
          {},
          ...['Asked', 'Weight', 'Limit', 'Why, and how it is reckoned'].map((word) =>
            h('th', { scope: 'col' }, word),
          ),
        ),
      ),
      h('tbody', {}, ...rows),
    ),
  );
};

const sourceList = (catalogue: Catalogue, cited: readonly SourceId[]): Markup =>
  h(
    'ol',
    { class: 'small' },
    ...cited.map((source, index) =>
      h(
        'li',
        { id: `source-${index + 1}` },
        link(`/sources/${source}/`, catalogue.sources[source]?.title ?? source),
      ),
    ),
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

/** What is asked of any part here, and the documents behind the figures. */
export const groundsMarkup = (shown: Shown): Markup[] => {
  const cited = citedSources(shown);
  return [
    h('h2', { id: 'asked' }, 'What is asked here'),
    askedTable(shown),
    h('h2', { id: 'sources' }, 'Sources of these figures'),
    h(
      'details',
      { id: 'source-list' },
      h('summary', {}, `${cited.length} documents`),
      sourceList(shown.catalogue, cited),
    ),
  ];
};
