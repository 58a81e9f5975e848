import { link } from '../components/link.ts';
import { formatQuantity, formatValue, type Habit, type Range } from '../engine/index.ts';
import { DRAWS } from '../engine/sums/chance.ts';
import type { SumPlot } from '../engine/sums/picture.ts';
import { headlineOf, type SumAnswer, type SumResult } from '../engine/sums/run-sum.ts';
import type { Output, Sum, SumCell, SumNote, SumTable } from '../engine/sums/sum.ts';
import { mapWords } from '../markup/map-words.ts';
import { h, type Markup } from '../markup/node.ts';
import { histogramMarkup } from '../plot/histogram.ts';
import type { PlotAxis } from '../plot/plot-parts.ts';
import { plotMarkup } from '../plot/plot.ts';
import { inHabit } from '../text/in-habit.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { capital, typeset } from '../text/words.ts';
import { seedField } from './form.ts';
import { workingMarkup } from './working.ts';

type Print = (value: number) => string;

/** How values of an output are printed. */
const printerOf = ({ unit, digits }: Pick<Output, 'unit' | 'digits'>, habit?: Habit): Print => {
  const own = digits === undefined ? habit : { ...habit, digits };
  return (value) => formatValue(value, unit, own);
};

/** Typical value first, and the span where there is one. */
const valueMarkup = ({ min, typ, max }: Range, print: Print) =>
  print(min) === print(max)
    ? [print(typ)]
    : [print(typ), h('small', {}, ` ${print(min)} to ${print(max)}`)];

const outputsPiece = (sum: Sum, { outputs }: SumAnswer, habit?: Habit): Markup =>
  h(
    'dl',
    { class: 'sum-outputs' },
    ...Object.entries(sum.outputs).flatMap(([key, output]) => {
      const { label, headline, step } = output;
      if (step) return [];
      const range = outputs[key];
      // What rests on an optional input that was left out is not missed.
      if (range === undefined && !headline) return [];
      return h(
        'div',
        { class: headline ? 'headline' : undefined },
        h('dt', {}, label),
        h(
          'dd',
          {},
          range === undefined
            ? 'not defined for these numbers'
            : valueMarkup(range, printerOf(output, habit)),
        ),
      );
    }),
  );

const NOTE_WORDS = { caution: 'Caution', limit: 'Limit', remark: '' } as const;

const noteMarkup = ({ kind, text, source, atEnds }: SumNote): Markup =>
  h(
    'li',
    { class: `sum-note sum-note-${kind}` },
    NOTE_WORDS[kind] !== '' &&
      h('strong', {}, `${NOTE_WORDS[kind]}${atEnds ? ', at an end of a range' : ''}: `),
    text,
    source !== undefined && [' ', link(`/sources/${source}/`, 'Source')],
  );

const cellText = (cell: SumCell, habit?: Habit): string => {
  if (typeof cell === 'string') return cell;
  const { value, unit } = cell;
  return typeof value === 'number'
    ? formatValue(value, unit, habit)
    : formatQuantity(value, unit, habit);
};

const tableMarkup = ({ caption, head, rows }: SumTable, habit?: Habit): Markup =>
  h(
    'div',
    { class: 'table-scroll', tabindex: 0, role: 'region', 'aria-label': caption },
    h(
      'table',
      {},
      h('caption', {}, caption),
      h('thead', {}, h('tr', {}, ...head.map((word) => h('th', { scope: 'col' }, word)))),
      h(
        'tbody',
        {},
        ...rows.map((row) =>
          h(
            'tr',
            {},
            ...row.map((cell, index) =>
              index === 0
                ? h('th', { scope: 'row' }, cellText(cell, habit))
                : h('td', {}, cellText(cell, habit)),
            ),
          ),
        ),
      ),
    ),
  );

const plotAxis = ({ label, scale, unit }: SumPlot['x'], habit?: Habit): PlotAxis => ({
  label,
  scale,
  isTime: unit === 's',
  print: (value) => formatValue(value, unit, habit),
});

const plotted = ({ title, x, y, curves, points, limits }: SumPlot, habit?: Habit): Markup =>
  plotMarkup({
    title,
    x: plotAxis(x, habit),
    y: plotAxis(y, habit),
    curves,
    points,
    limits,
  });

const chanceMarkup = (
  sum: Sum,
  { chances, seed }: SumResult,
  { output, chance }: SumResult['chances'][number],
  habit?: Habit,
): Markup => {
  const { label, unit } = sum.outputs[output] ?? { label: '', unit: 'ratio' };
  const print = (value: number): string => formatValue(value, unit, habit);
  const span = ({ min, max }: Range): string => `${print(min)} to ${print(max)}`;
  const { worst, rootSumSquare, drawn, histogram } = chance;
  return h(
    'details',
    { class: 'chance' },
    h('summary', {}, `How likely the ends are: ${midSentence(label)}`),
    h(
      'dl',
      { class: 'facts' },
      h('dt', {}, 'Everything at its worst at once'),
      h('dd', {}, span(worst)),
      h('dt', {}, 'Root of the sum of squares'),
      h('dd', {}, span(rootSumSquare)),
      h('dt', {}, 'Nine parts in ten, drawn at random'),
      h('dd', {}, span(drawn)),
    ),
    histogramMarkup({ title: `${label} of ${DRAWS} drawn at random`, ...histogram, print }),
    chances[0]?.output === output && seedField(seed),
    h(
      'p',
      { class: 'small quiet' },
      `Drawn evenly within each range, with the seed ${seed}. Parts of one batch are often off the same way, so the worst case is not as rare as this looks.`,
    ),
  );
};

/** The answer in a sentence: what a copied link should say at a glance. */
export const answerOf = (sum: Sum, result: SumAnswer, habit?: Habit): string => {
  if (result.answer !== undefined) return result.answer;
  const key = headlineOf(sum);
  const output = sum.outputs[key];
  const range = result.outputs[key];
  if (output === undefined || range === undefined) return 'Not defined for these numbers.';
  const print = printerOf(output, habit);
  const span =
    print(range.min) === print(range.max)
      ? ''
      : `, from ${print(range.min)} to ${print(range.max)}`;
  return `${capital(output.label)}: ${print(range.typ)}${span}.`;
};

/** Notes and labels are written without a habit, as are the numbers in equations. */
const asRead = (piece: Markup, habit?: Habit): Markup =>
  mapWords(piece, (words) => inHabit(typeset(words), habit));

/** The figures that a sum answers: the first piece of its result. */
export const outputsMarkup = (sum: Sum, answer: SumAnswer, habit?: Habit): Markup =>
  asRead(outputsPiece(sum, answer, habit), habit);

/** All that a sum comes to, as pieces of its page. */
export const resultMarkup = (sum: Sum, result: SumResult, habit?: Habit): Markup[] => [
  outputsMarkup(sum, result, habit),
  ...[
    result.notes.length > 0 && h('ul', { class: 'sum-notes' }, ...result.notes.map(noteMarkup)),
    ...result.tables.map((table) => tableMarkup(table, habit)),
    ...result.plots.map((plot) => plotted(plot, habit)),
    ...result.chances.map((one) => chanceMarkup(sum, result, one, habit)),
    result.equations.length > 0 &&
      h(
        'section',
        { class: 'sum-working' },
        h('h2', {}, 'The working'),
        workingMarkup(sum, result, habit),
      ),
  ]
    .filter((piece) => piece !== false)
    .map((piece) => asRead(piece, habit)),
];
