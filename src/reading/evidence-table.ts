import { href } from '../components/links.ts';
import type { Reading } from '../engine/index.ts';

import { h, type Markup } from '../markup/node.ts';
import { typeset } from '../text/words.ts';
import type { Stretch } from './stretches.ts';

type Evidence = Reading['evidence'][number];

const table = (rows: readonly Markup[]): Markup =>
  h(
    'table',
    { class: 'evidence-table' },
    h('caption', { class: 'hidden-text' }, 'What each part of the marking means'),
    h('tbody', {}, ...rows),
  );

const source = (id: string): Markup =>
  h('a', { class: 'basis', href: href(`/sources/${id}/`) }, 'source');

/** What stands for the stretch: the line under the value is no character. */
const written = (text: string): Markup =>
  text.trim() === '' ? 'the line' : h('code', {}, text.trim());

const row = ({ text, means, source: id }: Evidence, number?: number): Markup =>
  h(
    'tr',
    {},
    number !== undefined && h('td', { class: 'number' }, String(number)),
    h('th', { scope: 'row' }, written(text)),
    h('td', {}, typeset(means)),
    h('td', {}, source(id)),
  );

const lostRow = (text: string, number: number): Markup =>
  h(
    'tr',
    { class: 'lost' },
    h('td', { class: 'number' }, String(number)),
    h('th', { scope: 'row' }, written(text)),
    h('td', {}, 'not understood'),
    h('td', {}),
  );

/** How each stretch was understood. */
export const evidenceTable = (reading: Reading): Markup =>
  table(reading.evidence.map((each) => row(each)));

/** The same with numbers, and with what was not understood, so that every character has its place. */
export const stretchTable = (stretches: readonly Stretch[]): Markup =>
  table(
    stretches.flatMap((stretch) => {
      if (stretch.kind === 'between') return [];
      return stretch.kind === 'taken'
        ? [row(stretch.evidence, stretch.number)]
        : [lostRow(stretch.text, stretch.number)];
    }),
  );
