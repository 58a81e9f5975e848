import { href } from '../components/links.ts';
import { rangeBar } from '../components/range-bar.ts';
import { verdictMark } from '../components/verdict-shape.ts';
import {
  formatValue,
  type Assessment,
  type Catalogue,
  type Finding,
  type Habit,
  type SourceId,
  type Unit,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { Field } from './address.ts';
import {
  bodyPhrase,
  decidingFinding,
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

const sourceLinks = (catalogue: Catalogue, sources: readonly SourceId[]): Markup[] =>
  sources.flatMap((source, index) => [
    ...(index === 0 ? [] : ['; ']),
    link(`/sources/${source}/`, catalogue.sources[source]?.title ?? source),
  ]);

/** Words for how well a finding is known. */
const SURE = {
  sure: 'published figures',
  likely: 'common practice',
  possible: 'figures from memory',
} as const;

const figureCell = (finding: Finding, range: Finding['standIn'], habit?: Habit): Markup => {
  if (range === undefined) return h('td', { class: 'num' }, 'not known');
  if (finding.unit === 'grade') return h('td', {}, range.typ > 0 ? 'no' : 'yes');
  return h(
    'td',
    { class: 'num' },
    h('strong', {}, printTypical(range, finding.unit, habit)),
    range.min === range.max ? '' : h('small', {}, ` ${printRange(range, finding.unit, habit)}`),
  );
};

const barOf = (finding: Finding, habit?: Habit): Markup | undefined => {
  const { standIn, original, limit, unit } = finding;
  if (standIn === undefined || unit === 'grade') return undefined;
  const rows = [
    ...(original === undefined ? [] : [{ label: 'old', range: original }]),
    { label: 'stand-in', range: standIn },
  ];
  const positive = rows.every(({ range }) => range.min > 0);
  return rangeBar({
    title: finding.name,
    rows,
    limit,
    scale: positive ? 'log' : 'linear',
    print: (value) => formatValue(value, unit as Unit, habit),
  });
};

const findingRows = (
  catalogue: Catalogue,
  finding: Finding,
  bars: boolean,
  habit?: Habit,
): Markup[] => [
  h(
    'tr',
    { class: 'finding' },
    h('th', { scope: 'row' }, finding.name, h('small', {}, ` ${finding.weight}`)),
    figureCell(finding, finding.original, habit),
    figureCell(finding, finding.standIn, habit),
    h('td', { class: 'num' }, printLimit(finding, habit)),
    h('td', { class: 'num' }, printMargin(finding)),
    h('td', {}, verdictMark(finding.verdict)),
  ),
  h(
    'tr',
    { class: 'working' },
    h(
      'td',
      { colspan: 6 },
      bars ? barOf(finding, habit) : undefined,
      h('p', {}, h('code', {}, finding.equation), ' → ', finding.working, '. '),
      h(
        'p',
        { class: 'quiet small' },
        `${finding.why} Rests on ${SURE[finding.sure]}: `,
        ...sourceLinks(catalogue, finding.sources),
        '.',
      ),
    ),
  ),
];

const findingTable = (
  { catalogue, habit }: Shown,
  assessment: Assessment,
  findings: readonly Finding[],
  bars: boolean,
): Markup =>
  h(
    'div',
    {
      class: 'scroll',
      tabindex: 0,
      role: 'region',
      'aria-label': `Findings, ${typeName(catalogue, assessment)}`,
    },
    h(
      'table',
      { class: 'findings' },
      h(
        'thead',
        {},
        h(
          'tr',
          {},
          ...['Asked', 'Old part', 'Stand-in', 'Limit', 'Limit over figure', 'Verdict'].map(
            (word) => h('th', { scope: 'col' }, word),
          ),
        ),
      ),
      h(
        'tbody',
        {},
        ...findings.flatMap((finding) => findingRows(catalogue, finding, bars, habit)),
      ),
    ),
  );

const reasonLine = (assessment: Assessment, habit?: Habit): Markup | undefined => {
  const finding = decidingFinding(assessment);
  if (finding === undefined) return undefined;
  const lead = assessment.verdict === 'fits' ? 'Least to spare: ' : 'Decides: ';
  return h('p', { class: 'deciding' }, lead, reasonPhrase(finding, habit), '.');
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
        { class: 'also quiet' },
        'Also: ',
        rest.map((finding) => reasonPhrase(finding, habit)).join('; '),
        '.',
      );
};

/** Whether a stand-in's table of findings stands open, and with drawings. */
export interface Openness {
  open: boolean;
  bars: boolean;
}

/** One stand-in with its verdict, what to buy, why, and its findings. */
const standInItem = (shown: Shown, assessment: Assessment, { open, bars }: Openness): Markup => {
  const { catalogue, habit } = shown;
  const { type } = assessment.candidate;
  const body = bodyPhrase(assessment);
  return h(
    'li',
    { class: `stand-in is-${assessment.verdict}`, id: type },
    h(
      'h3',
      {},
      verdictMark(assessment.verdict),
      ' ',
      link(`/types/${type}/`, typeName(catalogue, assessment)),
    ),
    h(
      'p',
      { class: 'buy' },
      h('strong', {}, partPhrase(assessment.candidate, habit)),
      body && `, ${body}`,
    ),
    reasonLine(assessment, habit),
    alsoLine(assessment, habit),
    h(
      'details',
      { open },
      h('summary', {}, `${assessment.findings.length} findings with their working`),
      findingTable(shown, assessment, assessment.findings, bars),
    ),
  );
};

/** One type that is kept out, with what rules it out. */
const keptOutItem = (shown: Shown, assessment: Assessment): Markup => {
  const against = assessment.findings.filter((finding) => finding.verdict === 'keep-out');
  const { type } = assessment.candidate;
  return h(
    'li',
    { class: 'stand-in is-keep-out', id: type },
    h(
      'details',
      {},
      h(
        'summary',
        {},
        verdictMark('keep-out'),
        ' ',
        h('strong', {}, typeName(shown.catalogue, assessment)),
        ': ',
        against.map((finding) => reasonPhrase(finding, shown.habit)).join('; '),
        '.',
      ),
      h('p', {}, link(`/types/${type}/`, 'What this type is'), '.'),
      findingTable(shown, assessment, against, false),
    ),
  );
};

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
  const usable = shown.assessments.filter(({ verdict }) => verdict !== 'keep-out');
  const kept = shown.assessments.filter(({ verdict }) => verdict === 'keep-out');
  return [
    h('h2', { id: 'stand-ins' }, 'Stand-ins, best first'),
    usable.length === 0
      ? h('p', {}, 'No part made today fits here as it stands; see below what rules each out.')
      : h(
          'ol',
          { class: 'stand-ins' },
          ...usable.map((assessment, index) =>
            standInItem(shown, assessment, openness(assessment, index)),
          ),
        ),
    h('h2', { id: 'keep-out' }, 'Keep out'),
    h('ul', { class: 'stand-ins kept-out' }, ...kept.map((one) => keptOutItem(shown, one))),
  ];
};

const fieldHint = ({ from, note }: Field): string => {
  const origin = { given: 'yours', default: 'usual here', derived: 'follows from the old part' }[
    from
  ];
  return note === '' ? origin : `${origin}: ${note}`;
};

/** One number of the circuit or the old part, to be read or changed. */
const fieldMarkup = (field: Field): Markup => {
  const noteId = `${field.key}-note`;
  return h(
    'p',
    { class: 'field', 'data-from': field.from },
    h('label', { for: `field-${field.key}` }, field.label),
    ' ',
    h('input', {
      id: `field-${field.key}`,
      name: field.key,
      value: field.text,
      maxlength: 60,
      autocomplete: 'off',
      autocapitalize: 'off',
      spellcheck: 'false',
      'aria-describedby': noteId,
      'aria-invalid': field.message === undefined ? undefined : 'true',
    }),
    h(
      'small',
      { id: noteId, class: field.message === undefined ? 'hint' : 'fault' },
      field.message ?? fieldHint(field),
    ),
  );
};

/** The form of all numbers that a page rests on. */
export const fieldsMarkup = (fields: readonly Field[]): Markup[] => fields.map(fieldMarkup);

/** The line under a field: how its number came about, or what is wrong with it. */
export const fieldNote = (field: Field): { text: string; fault: boolean } => ({
  text: field.message ?? fieldHint(field),
  fault: field.message !== undefined,
});
