import { formatQuantity } from '../engine/index.ts';
import type { PresetSteps, SheetCheck, SheetStep } from '../job/index.ts';
import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { cautionList } from './caution-list.ts';

const MARKS: Readonly<Record<string, string>> = {
  polarity: 'Mind the polarity: mark plus on the board before the old one goes out.',
  'pin-1': 'Mind pin 1: mark it on the board before the old one goes out.',
  static: 'Guard it against static.',
  heat: 'It does not bear heat for long.',
};

const field = (name: string, label: string, value: string): Element =>
  h(
    'label',
    { class: 'bench-field' },
    label,
    h('input', { 'data-bench': name, value: value || undefined, autocomplete: 'off' }),
  );

const tick = (done: boolean): Element =>
  h(
    'label',
    { class: 'bench-tick' },
    h('input', { type: 'checkbox', 'data-bench': 'done', checked: done }),
    ' Done',
  );

/** The setting that the new trimmer takes over. */
const presetMarkup = ({ set, turns, notes, rejected }: PresetSteps): Element =>
  h(
    'ul',
    { class: 'bench-preset' },
    set !== undefined && h('li', {}, `Set the new one to ${formatQuantity(set, 'ohm')}.`),
    turns !== undefined &&
      h('li', {}, `From where it stands: ${formatQuantity(turns, 'number')} turns.`),
    [...notes, ...Object.values(rejected)].map((text) => h('li', {}, sentence(text))),
  );

/** One designator: what comes out, what goes in, what to mind, and what is written down. */
export const stepMarkup = (step: SheetStep): Element => {
  const { designator, action, old, fit, row, marks, cautions, preset, fitted } = step;
  return h(
    'article',
    {
      class: 'bench-step',
      'data-step': step.id,
      'data-designator': designator,
      'data-line': step.planned.line.id,
    },
    h('h3', {}, `${designator || 'No designator'}: ${action}`),
    h('p', {}, `Old: ${old}`),
    action === 'replace' &&
      h('p', {}, h('strong', {}, fit === '' ? 'What goes in is not settled yet.' : `Fit: ${fit}`)),
    marks.map((mark) => h('p', { class: 'bench-mark' }, MARKS[mark] ?? mark)),
    row !== undefined && h('p', { class: 'small' }, sentence(row.how)),
    preset !== undefined && presetMarkup(preset),
    cautionList(cautions),
    h(
      'div',
      { class: 'bench-fields' },
      tick(fitted.done),
      field('before', 'Reading before', fitted.before),
      field('after', 'Reading after', fitted.after),
      field('note', 'Note', fitted.note),
    ),
    h(
      'p',
      { class: 'small quiet bench-time' },
      fitted.at === '' ? '' : `Ticked ${fitted.at.slice(0, 16).replace('T', ' ')} UTC`,
    ),
  );
};

/** A check that closes the work. */
export const checkMarkup = ({ row, cautions, check }: SheetCheck): Element =>
  h(
    'article',
    { class: 'bench-step', 'data-check': row.id },
    h('h3', {}, capital(row.title)),
    h('p', {}, sentence(row.how)),
    h('p', { class: 'small quiet' }, sentence(row.why)),
    cautionList(cautions),
    h(
      'div',
      { class: 'bench-fields' },
      tick(check.done),
      field('reading', row.write === '' ? 'Reading' : capital(row.write), check.reading),
      field('note', 'Note', check.note),
    ),
  );
