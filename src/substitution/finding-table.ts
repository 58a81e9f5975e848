import { rangeBar } from '../components/range-bar.ts';
import { verdictWords } from '../components/verdict-shape.ts';
import {
  formatValue,
  type Assessment,
  type Finding,
  type Habit,
  type Range,
  type SourceId,
  type Unit,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { printLimit, printMargin, printRange, printTypical } from './phrases.ts';
import { typeName, type Shown } from './shown.ts';

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

/** The numbers of sources, each leading into the list of them. */
export const sourceMarks = (sources: readonly SourceId[], cited: readonly SourceId[]): Markup[] =>
  sources.flatMap((source) => {
    const number = cited.indexOf(source) + 1;
    return number === 0 ? [] : [' ', h('a', { href: `#source-${number}` }, `[${number}]`)];
  });

/** What tables of findings are drawn from. */
export interface TableParts {
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

/** Findings with the old part beside the stand-in, the working and the sources. */
export const findingTable = (
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
