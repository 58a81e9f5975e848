import { isDevice, lineName, readInWords, whyOf, type SheetStep } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital, listed, sentence } from '../text/words.ts';
import { printMoment } from '../text/moment.ts';
import { assumedShort } from './assumed-words.ts';
import { cautionList } from './caution-list.ts';

/**
 * The parts of a large board on paper: a row for each, to be written on. What would fill hundreds of
 * pages, drawings above all, is said once for all parts that it holds for.
 */

/** Parts of a sheet beyond which paper has a row for each, and not the whole of what is said of it. */
export const MOST_WHOLE_STEPS = 300;

const HEADS = ['Part', 'Old', 'What to do', 'Mind', 'Before', 'After', 'Note', 'Done'];

const MIND: Readonly<Record<string, string>> = {
  polarity: 'polarity',
  'pin-1': 'pin 1',
  static: 'static',
  heat: 'heat',
};

/** Marks that are drawn: which way round a part goes in. */
const DRAWN: readonly string[] = ['polarity', 'pin-1'];

/** Steps with the same key look alike but for what is printed on them; nothing where the way round is all one. */
export const drawingKey = ({ marks, planned, action, fitted }: SheetStep): string | undefined => {
  if (!marks.some((mark) => DRAWN.includes(mark))) return undefined;
  const { part, line, standIn } = planned;
  const type = part.type ?? line.type;
  // What goes by type has its look from that; chips and sockets have it from their pins.
  const pins = /(\d+)[\s-]*pins?\b/iu.exec(line.value)?.[1];
  const fit = action === 'replace' ? standIn?.candidate.type : undefined;
  return JSON.stringify([part.kind, type, fit, pins, fitted.found['notch']]);
};

/** Steps in their order: rows of one table, or a step that has more to it than a row holds. */
export type Stretch = { rows: readonly SheetStep[] } | { whole: SheetStep };

/** Trimmers have settings to carry over, which want their own lines. */
export const stretchesOf = (steps: readonly SheetStep[]): Stretch[] => {
  const stretches: ({ rows: SheetStep[] } | { whole: SheetStep })[] = [];
  for (const step of steps) {
    const last = stretches.at(-1);
    if (step.preset !== undefined) stretches.push({ whole: step });
    else if (last !== undefined && 'rows' in last) last.rows.push(step);
    else stretches.push({ rows: [step] });
  }
  return stretches;
};

/** What is to be read of a part, as far as it is not read yet: `Capacitance, ESR`. */
const toRead = ({ fields, action }: SheetStep): string => {
  const wanted = fields.filter(
    ({ time, text }) => text.trim() === '' && time === (action === 'test' ? 'before' : 'after'),
  );
  return wanted.map(({ row }) => row.label).join(', ');
};

const doWords = (step: SheetStep): string => {
  const { action, fit, planned, judgement } = step;
  const what = {
    replace: fit === '' ? 'Replace; what goes in is not settled yet' : `Fit ${fit}`,
    test: 'Test',
    leave: 'Leave alone',
  }[action];
  const read = toRead(step);
  const own = judgement === undefined ? '' : ` By its own readings: ${judgement.advice}.`;
  const why = action === 'replace' ? '' : ` ${sentence(whyOf(planned))}`;
  return `${sentence(what)}${read === '' ? '' : ` Read: ${read}.`}${own}${why}`;
};

/** Pins that do something else in the new part. */
const pinWords = ({ action, planned: { standIn } }: SheetStep): string => {
  if (action !== 'replace' || standIn === undefined || !isDevice(standIn)) return '';
  const { pins, pinNote } = standIn;
  const differ = pins.map(({ pin, old, now }) => `pin ${String(pin)}: ${old}, now ${now}`);
  return [differ.join('; '), pinNote]
    .filter((text) => text !== '')
    .map(sentence)
    .join(' ');
};

const mindWords = (step: SheetStep, drawings: ReadonlyMap<string, number>): string => {
  const { marks, cautions } = step;
  const drawing = drawings.get(drawingKey(step) ?? '');
  return [
    marks.length === 0 ? '' : sentence(listed(marks.map((mark) => MIND[mark] ?? mark))),
    drawing === undefined ? '' : `Drawing ${String(drawing)}.`,
    pinWords(step),
    // All words stand in the row where a caution first counts; what can kill is named in each.
    ...cautions
      .filter(({ isFirst, row }) => !isFirst && row.severity === 'danger')
      .map(({ row, assumed }) =>
        sentence(assumed === undefined ? row.title : `${row.title} (${assumedShort(assumed)})`),
      ),
  ]
    .filter((text) => text !== '')
    .join(' ');
};

const written = ({ fields, fitted }: SheetStep, time: 'before' | 'after'): string =>
  [readInWords(fields, time), fitted[time]].filter((text) => text !== '').join('; ');

const stepRows = (step: SheetStep, drawings: ReadonlyMap<string, number>): Element[] => {
  const { designator, old, fitted, isDone, cautions, planned } = step;
  const first = cautions.filter(({ isFirst }) => isFirst);
  const cells = [
    h('strong', {}, designator || lineName(planned.line)),
    old || 'nothing is said of it',
    doWords(step),
    mindWords(step, drawings),
    written(step, 'before'),
    written(step, 'after'),
    [planned.line.note, fitted.note].filter((text) => text !== '').join('; '),
    isDone ? `✓ ${printMoment(fitted.at)}` : '☐',
  ];
  return [
    ...(first.length === 0
      ? []
      : [h('tr', {}, h('td', { colspan: HEADS.length }, cautionList(first)))]),
    h(
      'tr',
      { 'data-step': step.id },
      cells.map((cell) => h('td', {}, cell)),
    ),
  ];
};

/** The rows of some parts, with room to write. */
export const sheetTable = (
  steps: readonly SheetStep[],
  drawings: ReadonlyMap<string, number>,
): Element =>
  h(
    'table',
    { class: 'bench-table' },
    h('caption', { class: 'hidden-text' }, 'Parts, one a row'),
    h(
      'thead',
      {},
      h(
        'tr',
        {},
        HEADS.map((head) => h('th', { scope: 'col' }, head)),
      ),
    ),
    h(
      'tbody',
      {},
      steps.map((step) => stepRows(step, drawings)),
    ),
  );

/** Which way round parts of one look go in: a place for the drawing, with its number. */
export const drawingFrame = (step: SheetStep, number: number): Element =>
  h(
    'div',
    { class: 'bench-numbered' },
    h(
      'p',
      {},
      h('strong', {}, `Drawing ${String(number)}`),
      `, such as ${capital(step.designator)}`,
    ),
    h('div', { class: 'bench-drawing' }),
  );
