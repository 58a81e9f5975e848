import {
  isDevice,
  lineName,
  whyOf,
  type PlacedCaution,
  type Sheet,
  type SheetCheck,
  type SheetStep,
} from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { adjustmentsMarkup } from './adjustments-view.ts';
import { benchInput, benchTick, tickedAt } from './bench-input.ts';
import { readingsMarkup } from './bench-readings.ts';
import { cautionList } from './caution-list.ts';
import { presetMarkup } from './preset-view.ts';

const MARKS: Readonly<Record<string, string>> = {
  polarity:
    'Mind the polarity: mark plus, or the end with the band, on the board before the old one goes out.',
  'pin-1': 'Mind pin 1: mark it on the board before the old one goes out.',
  static: 'Guard it against static.',
  heat: 'It does not bear heat for long: clip a heat sink to its lead and solder quickly.',
};

/** What to do, in short, for headings and lists. */
export const stepTitle = ({ designator, action, planned }: SheetStep): string =>
  `${designator || lineName(planned.line)}: ${action === 'leave' ? 'leave alone' : action}`;

const whatMarkup = ({ action, old, fit, planned }: SheetStep): Element =>
  h(
    'div',
    { 'data-live': 'what' },
    h('p', {}, h('span', { class: 'quiet' }, 'Old: '), old || 'nothing is said of it'),
    action === 'replace' &&
      h('p', {}, h('strong', {}, fit === '' ? 'What goes in is not settled yet.' : `Fit: ${fit}`)),
    planned.line.note !== '' && h('p', {}, sentence(planned.line.note)),
    whyOf(planned) !== '' &&
      h('p', { class: 'small' }, h('span', { class: 'quiet' }, 'Why: '), sentence(whyOf(planned))),
  );

/** Pins that do something else in the new part: the trap of swaps by number. */
const pinsMarkup = ({ action, planned: { standIn } }: SheetStep): Element => {
  const isNew = action === 'replace' && standIn !== undefined && isDevice(standIn);
  const { pins = [], pinNote = '' } = isNew ? standIn : {};
  return h(
    'div',
    { 'data-live': 'pins' },
    pins.length > 0 && [
      h('p', { class: 'bench-mark' }, h('strong', {}, 'The pins of the new one differ:')),
      h(
        'ul',
        { class: 'small' },
        pins.map(({ pin, old, now }) =>
          h('li', {}, `Pin ${String(pin)}: ${old} in the old one, ${now} in the new one.`),
        ),
      ),
    ],
    pinNote !== '' && h('p', { class: 'bench-mark' }, sentence(pinNote)),
  );
};

/** What its own readings say of one of several parts of a line. */
const judgedMarkup = ({ judgement, designator }: SheetStep): Element => {
  const [reason] = judgement?.reasons ?? [];
  return h(
    'div',
    { 'data-live': 'judged' },
    judgement !== undefined && [
      h(
        'p',
        {},
        h('strong', {}, `By its own readings: ${judgement.advice}.`),
        reason === undefined ? '' : ` ${sentence(reason.why)}`,
      ),
      h(
        'p',
        { class: 'screen-only' },
        h('button', { type: 'button', 'data-split': '' }, `Judge ${designator} by itself`),
      ),
    ],
  );
};

const wordsMarkup = ({ fields, fitted }: SheetStep): Element[] => {
  const isRead = fields.length > 0 && fitted.before === '' && fitted.after === '';
  return isRead
    ? []
    : [
        benchInput('Reading before', fitted.before, { 'data-bench': 'before' }),
        benchInput('Reading after', fitted.after, { 'data-bench': 'after' }),
      ];
};

/** One designator: what comes out, what goes in, what to mind, and what is written down. */
export const stepMarkup = (step: SheetStep): Element => {
  const { designator, row, marks, cautions, fitted, isDone, planned } = step;
  return h(
    'article',
    {
      class: isDone ? 'bench-step is-done' : 'bench-step',
      'data-step': step.id,
      'data-designator': designator,
      'data-line': planned.line.id,
      'data-action': step.action,
    },
    h('h3', { 'data-live': 'head' }, capital(stepTitle(step)), isDone ? ' ✓ done' : ''),
    h(
      'div',
      { class: 'bench-about' },
      whatMarkup(step),
      h('div', { class: 'bench-drawing' }),
      pinsMarkup(step),
      marks.map((mark) => h('p', { class: 'bench-mark' }, MARKS[mark] ?? mark)),
      row !== undefined && h('p', { class: 'small' }, sentence(row.how)),
      cautionList(cautions),
    ),
    h(
      'div',
      { class: 'bench-log' },
      presetMarkup(step),
      readingsMarkup(step),
      judgedMarkup(step),
      h(
        'div',
        { class: 'bench-fields' },
        wordsMarkup(step),
        benchInput('Note', fitted.note, { 'data-bench': 'note' }),
        benchTick(isDone, step.action === 'test' ? 'Tested' : 'Done'),
      ),
      tickedAt(fitted.at),
    ),
  );
};

/** A check that closes the work. */
export const checkMarkup = (
  { row, cautions, check }: SheetCheck,
  { adjustments }: Pick<Sheet, 'adjustments'>,
): Element =>
  h(
    'article',
    { class: check.done ? 'bench-step is-done' : 'bench-step', 'data-check': row.id },
    h('h3', { 'data-live': 'head' }, capital(row.title), check.done ? ' ✓ done' : ''),
    h(
      'div',
      { class: 'bench-about' },
      h('p', {}, sentence(row.how)),
      h('p', { class: 'small quiet' }, sentence(row.why)),
      cautionList(cautions),
    ),
    h(
      'div',
      { class: 'bench-log' },
      row.lists === 'adjustments' && adjustmentsMarkup(adjustments),
      h(
        'div',
        { class: 'bench-fields' },
        row.lists === '' &&
          benchInput(row.write === '' ? 'Reading' : capital(row.write), check.reading, {
            'data-bench': 'reading',
          }),
        benchInput('Note', check.note, { 'data-bench': 'note' }),
        benchTick(check.done),
      ),
      tickedAt(check.at),
    ),
  );

/** What holds for all of the work, before it begins. */
export const beginMarkup = (cautions: readonly PlacedCaution[]): Element =>
  h(
    'div',
    { class: 'bench-step bench-begin' },
    h('h3', {}, 'Before you begin'),
    cautionList(cautions),
  );
