import { link } from '../components/link.ts';
import { basisName } from '../engine/basis-name.ts';
import { verdictWords } from '../components/verdict-shape.ts';
import {
  formatValue,
  type Assessment,
  type Finding,
  type Habit,
  type Part,
  type Range,
  type SourceId,
} from '../engine/index.ts';
import { isSameRange } from '../engine/quantities/range.ts';
import { h, type Child, type Markup } from '../markup/node.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { inHabit } from '../text/in-habit.ts';
import { findingBar } from './finding-bar.ts';
import { type AnyPart, printLimit, printMargin, printRange, printTypical } from './phrases.ts';
import { demandLink, sourceMarks, typeName, type Shown } from './shown.ts';

/** How much a demand weighs: a stand-in is kept out where it breaks a "must". */
const WEIGHTS = { hard: 'must', strong: 'should', mild: 'better if' } as const;

/** A figure with its typical value in front: `16 Hz (15.1–17.2 Hz)`. */
export const figureText = (range: Range | undefined, unit: string, habit?: Habit): string => {
  if (range === undefined) return 'not known';
  if (unit === 'grade') return range.typ > 0 ? 'not met' : 'met';
  const typical = printTypical(range, unit, habit);
  const ends = printRange(range, unit, habit);
  return range.min === range.max || ends === typical ? typical : `${typical} (${ends})`;
};

/** What tables of findings are drawn from. */
export interface TableParts<P extends AnyPart = Part> {
  shown: Shown<P>;
  cited: readonly SourceId[];
}

/** What a finding rests on: nothing is called published that no document stands behind. */
const basisWords = <P extends AnyPart>(
  { basis, sources }: Finding,
  { shown }: TableParts<P>,
): string => {
  if (basis !== 'published') return basisName(basis);
  const kinds = sources.map((source) => shown.catalogue.sources[source]?.kind);
  if (kinds.some((kind) => kind !== 'trade' && kind !== 'identity')) return basisName(basis);
  return kinds.includes('trade') ? basisName('common-practice') : 'arithmetic';
};

/** Which figures are known no better, where those of others are. */
const weakestWords = <P extends AnyPart>(
  { basis, weakest }: Finding,
  { shown }: TableParts<P>,
): string => {
  const names = weakest.flatMap((id) => shown.catalogue.properties[id]?.name ?? []);
  return basis === 'published' || names.length === 0
    ? ''
    : ` (${names.map((name) => midSentence(name)).join(', ')})`;
};

/** That the figures lie far apart, where that is what makes a finding less sure. */
export const spreadWords = ({ apart }: Finding, habit?: Habit): string =>
  apart === undefined ? '' : `, but its ends lie ${formatValue(apart, 'ratio', habit)} apart`;

/** How well a finding is known, and from which sources. */
export const groundWords = <P extends AnyPart>(
  finding: Finding,
  parts: TableParts<P>,
): Markup[] => [
  `${basisWords(finding, parts)}${weakestWords(finding, parts)}${spreadWords(finding, parts.shown.habit)}`,
  ...sourceMarks(finding.sources, parts.cited),
];

/** How a finding was reckoned, how well it is known, and from which sources. */
export const workingWords = <P extends AnyPart>(
  finding: Finding,
  parts: TableParts<P>,
): Markup[] => [`${inHabit(finding.working, parts.shown.habit)}; `, ...groundWords(finding, parts)];

/** Where a finding of a part stands in the page, for those that are led to. */
export const findingAnchor = (part: string, demand: string): string => `${part}--${demand}`;

/** What leads from a finding to the sum that works out the same, with its numbers filled in. */
const sumLink = <P extends AnyPart>(
  finding: Finding,
  assessment: Assessment<P>,
  { shown }: TableParts<P>,
): Markup[] => {
  const filled = shown.sumOf?.(finding, assessment);
  if (filled === undefined) return [];
  const numbers = new URLSearchParams(filled.inputs).toString();
  return ['; ', link(`/sums/${filled.sum}/?${numbers}`, 'try other numbers')];
};

const findingRows = <P extends AnyPart>(
  finding: Finding,
  assessment: Assessment<P>,
  parts: TableParts<P>,
  part: string,
): Markup[] => {
  const { habit, ledTo } = parts.shown;
  return [
    h(
      'tr',
      { id: ledTo === true && findingAnchor(part, finding.demand) },
      h(
        'th',
        { scope: 'row' },
        demandLink(finding, parts.shown, finding.name),
        ' ',
        h('small', { class: 'quiet' }, WEIGHTS[finding.weight]),
      ),
      h('td', {}, figureText(finding.original, finding.unit, habit)),
      h('td', {}, figureText(finding.standIn, finding.unit, habit)),
      h('td', {}, printLimit(finding, habit)),
      h('td', {}, printMargin(finding, habit)),
      h('td', { 'data-verdict': finding.verdict }, verdictWords[finding.verdict]),
    ),
    h(
      'tr',
      {},
      h(
        'td',
        { colspan: 6 },
        findingBar(finding, habit),
        ...workingWords(finding, parts),
        ...sumLink(finding, assessment, parts),
        ...(ledTo === true
          ? ['; ', h('a', { href: `#${findingAnchor(part, finding.demand)}` }, 'link to this')]
          : []),
      ),
    ),
  ];
};

/** Met without anything to compare: a yes, or a figure that the old part had as well. */
const isPlainlyMet = ({ verdict, unit, original, standIn }: Finding): boolean =>
  verdict === 'fits' &&
  (unit === 'grade' || (standIn !== undefined && isSameRange(original, standIn)));

const plainlyMetRow = <P extends AnyPart>(
  findings: readonly Finding[],
  { shown }: TableParts<P>,
  part: string,
): Markup =>
  h(
    'tr',
    {},
    h(
      'td',
      { colspan: 6 },
      'Met as by the old part: ',
      ...findings.flatMap((finding, index) => [
        index === 0 ? '' : '; ',
        h(
          'span',
          { id: shown.ledTo === true && findingAnchor(part, finding.demand) },
          demandLink(finding, shown, midSentence(finding.name)),
        ),
        `, ${inHabit(finding.working, shown.habit)}`,
      ]),
      '.',
    ),
  );

const COLUMNS = ['Asked', 'Old part', 'Stand-in', 'Limit', 'To spare', 'Verdict'];

/**
 * A table of the findings of a part, which scrolls by itself where the page is narrow.
 * @param name of the part
 */
export const tableOfFindings = (name: string, rows: readonly Child[]): Markup =>
  h(
    'div',
    { class: 'table-scroll', tabindex: 0, role: 'region', 'aria-label': `Findings, ${name}` },
    h(
      'table',
      { class: 'findings' },
      h('thead', {}, h('tr', {}, ...COLUMNS.map((word) => h('th', { scope: 'col' }, word)))),
      h('tbody', {}, ...rows),
    ),
  );

/**
 * All findings with the old part beside the stand-in, the working and the sources.
 * @param part id of the part's place in the page
 */
export const findingTable = <P extends AnyPart>(
  assessment: Assessment<P>,
  part: string,
  parts: TableParts<P>,
): Markup => {
  const plain = assessment.findings.filter(isPlainlyMet);
  const compared = assessment.findings.filter((finding) => !isPlainlyMet(finding));
  return tableOfFindings(typeName(parts.shown.catalogue, assessment), [
    ...compared.flatMap((finding) => findingRows(finding, assessment, parts, part)),
    plain.length > 0 && plainlyMetRow(plain, parts, part),
  ]);
};
