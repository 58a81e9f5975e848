import { rangeBar, scaleThatShows } from '../components/range-bar.ts';
import { verdictMark, verdictWords } from '../components/verdict-shape.ts';
import { formatValue, type Assessment, type Habit, type Part, type Unit } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { countOf } from '../text/words.ts';
import { besideRows, type BesideRow } from './comparison.ts';
import { figureText, findingAnchor } from './finding-table.ts';
import type { PartRow } from './part-rows.ts';
import { partPhrase, printLimit, type AnyPart } from './phrases.ts';
import { demandLink, typeName, type Shown } from './shown.ts';

/** A part of the two, with the letter that it goes by and the id of its place in the page. */
export interface Beside<P extends AnyPart = Part> {
  letter: 'A' | 'B';
  id: string;
  assessment: Assessment<P>;
}

/** One sentence on how far two parts are apart. */
export const besideSentence = (rows: readonly BesideRow[]): string => {
  const verdicts = rows.filter(({ apart }) => apart === 'verdict').length;
  const figures = rows.filter(({ apart }) => apart === 'figure').length;
  if (verdicts + figures === 0) return `Alike in all ${countOf(rows.length, 'demand')}.`;
  const differ = (count: number): string => (count === 1 ? 'differs' : 'differ');
  const [earned, more] =
    verdicts === 0
      ? ['All verdicts are the same', '']
      : [`${verdicts} of ${countOf(rows.length, 'verdict')} ${differ(verdicts)}`, 'more '];
  return figures === 0
    ? `${earned}.`
    : `${earned}; ${countOf(figures, `${more}figure`)} ${differ(figures)}.`;
};

const barOf = ({ a, b }: BesideRow, habit?: Habit): Markup | undefined => {
  const rows = [
    { label: 'old part', range: a.original, old: true },
    { label: 'A', range: a.standIn, old: false },
    { label: 'B', range: b.standIn, old: false },
  ].flatMap(({ range, ...rest }) => (range === undefined ? [] : [{ ...rest, range }]));
  if (a.unit === 'grade' || rows.length < 2) return undefined;
  return rangeBar({
    toldBeside: true,
    title: a.name,
    rows,
    limit: a.limit,
    scale: scaleThatShows(rows, a.limit),
    print: (value) => formatValue(value, a.unit as Unit, habit),
  });
};

/** Columns after the first, as they are called beside each figure on a phone. */
const HEADS = ['Limit', 'Old part', 'A', 'B'] as const;

const partRow = ({ name, old, a, b }: PartRow): Markup =>
  h(
    'tr',
    {},
    h('th', { scope: 'row' }, name),
    ...['', old, a, b].map((cell, at) => h('td', { 'data-of': HEADS[at] }, cell)),
  );

type Place = Pick<Beside, 'letter' | 'id'>;

const findingRow = (
  row: BesideRow,
  [first, second]: readonly [Place, Place],
  shown: Pick<Shown, 'position' | 'habit'>,
): Markup[] => {
  const { a, b, apart } = row;
  const { habit } = shown;
  const bar = apart === 'nothing' ? undefined : barOf(row, habit);
  const cell = ({ letter, id }: Place, finding: BesideRow['a']): Markup => {
    // Of a yes or no the reason says more than the answer.
    const figure =
      finding.unit === 'grade' ? finding.working : figureText(finding.standIn, finding.unit, habit);
    return h(
      'td',
      { 'data-of': letter },
      h(
        'span',
        {},
        apart === 'nothing'
          ? figure
          : h('a', { href: `#${findingAnchor(id, finding.demand)}` }, figure),
        ' ',
        h('span', { 'data-verdict': finding.verdict }, verdictWords[finding.verdict]),
      ),
    );
  };
  return [
    h(
      'tr',
      {},
      h('th', { scope: 'row' }, demandLink(a, shown, a.name)),
      h('td', { 'data-of': 'Limit' }, printLimit(a, habit)),
      h('td', { 'data-of': 'Old part' }, figureText(a.original, a.unit, habit)),
      cell(first, a),
      cell(second, b),
    ),
    bar !== undefined && h('tr', {}, h('td', { colspan: 5 }, bar)),
  ].filter((piece) => piece !== false);
};

const GROUPS: Record<BesideRow['apart'], string> = {
  verdict: 'Verdicts that differ',
  figure: 'Figures that differ',
  nothing: 'Alike in both',
};

const groupOf = (title: string, rows: readonly Markup[]): Markup[] =>
  rows.length === 0
    ? []
    : [
        h(
          'tbody',
          {},
          h('tr', {}, h('th', { scope: 'rowgroup', colspan: 5, class: 'group' }, title)),
          ...rows,
        ),
      ];

const legendItem = <P extends AnyPart>(
  { letter, id, assessment }: Beside<P>,
  { catalogue, habit }: Shown<P>,
): Markup =>
  h(
    'li',
    {},
    h('strong', {}, letter),
    ' ',
    verdictMark(assessment.verdict),
    ' ',
    h('a', { href: `#${id}` }, typeName(catalogue, assessment)),
    `, ${partPhrase(assessment.candidate, habit)}`,
  );

/**
 * Two parts in one table, a row a demand: the limit, the old part and both, with their verdicts.
 * @param ofParts what is said of the old part and of both before anything is judged
 */
export const comparisonMarkup = <P extends AnyPart>(
  shown: Shown<P>,
  ofParts: readonly PartRow[],
  pair: readonly [Beside<P>, Beside<P>],
): Markup[] => {
  const [a, b] = pair;
  const rows = besideRows(a.assessment, b.assessment);
  const rowsOf = (apart: BesideRow['apart']): Markup[] =>
    rows.filter((row) => row.apart === apart).flatMap((row) => findingRow(row, pair, shown));
  return [
    h('ul', { class: 'plain' }, ...pair.map((one) => legendItem(one, shown))),
    h(
      'div',
      {
        class: 'table-scroll',
        tabindex: 0,
        role: 'region',
        'aria-label': 'Two parts side by side',
      },
      h(
        'table',
        { class: 'beside' },
        h(
          'thead',
          {},
          h(
            'tr',
            {},
            ...['Asked', ...HEADS].map((word) =>
              h(
                'th',
                { scope: 'col' },
                word,
                word === 'A' && `: ${typeName(shown.catalogue, a.assessment)}`,
                word === 'B' && `: ${typeName(shown.catalogue, b.assessment)}`,
              ),
            ),
          ),
        ),
        ...groupOf('The part', ofParts.map(partRow)),
        ...(['verdict', 'figure', 'nothing'] as const).flatMap((apart) =>
          groupOf(GROUPS[apart], rowsOf(apart)),
        ),
      ),
    ),
  ];
};
