import { href } from '../components/links.ts';
import { pairing, readMarking, type Catalogue, type Habit } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { readingMarkup } from '../reading/view.ts';
import type { PositionRow } from '../schemas/positions.ts';
import type { TypeRow } from '../schemas/types.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { findNames } from './names.ts';

/** Rows that one answer may list of a kind. */
const MOST = { readings: 3, names: 6, pairs: 8 } as const;

const link = (path: `/${string}`, text: string): Markup => h('a', { href: href(path) }, text);

const section = (title: string, ...content: Markup[]): Markup =>
  h('section', { class: 'answer-part' }, h('h2', {}, title), ...content);

const linkList = (links: readonly Markup[]): Markup =>
  h('ul', { class: 'plain-list' }, ...links.map((one) => h('li', {}, one)));

const pairLinks = (
  catalogue: Catalogue,
  types: readonly TypeRow[],
  positions: readonly PositionRow[],
): Markup[] =>
  types
    .flatMap((type) =>
      positions
        .filter((position) => pairing(catalogue, type, position).met)
        .map((position) =>
          link(
            `/replace/${type.id}/in/${position.id}/`,
            `${type.name} in ${midSentence(position.name)}`,
          ),
        ),
    )
    .slice(0, MOST.pairs);

const nameParts = (catalogue: Catalogue, text: string): Markup[] => {
  const { types, positions } = findNames(catalogue, text);
  const pairs = pairLinks(catalogue, types, positions);
  const typeLinks = types
    .slice(0, MOST.names)
    .map((type) => link(`/replace/${type.id}/`, `What replaces ${midSentence(type.name)}`));
  const positionLinks = positions
    .slice(0, MOST.names)
    .map((position) => link(`/positions/${position.id}/`, position.name));
  return [
    ...(pairs.length > 0 ? [section('Stand-ins', linkList(pairs))] : []),
    ...(typeLinks.length > 0 ? [section('Types', linkList(typeLinks))] : []),
    ...(positionLinks.length > 0 ? [section('Positions', linkList(positionLinks))] : []),
  ];
};

/** A text of letters alone is a name rather than a marking, unless the reader is sure of it. */
const looksLikeMarking = (text: string): boolean => /\d|^[A-Za-z]\d?[A-Za-z]$/.test(text);

/**
 * What the box on the first page says to a text at once: readings of it as a marking, and types and
 * positions that it names. Never throws.
 */
export const answerMarkup = (catalogue: Catalogue, text: string, habit?: Habit): Markup[] => {
  const trimmed = text.trim();
  if (trimmed === '') return [];
  const readings = looksLikeMarking(trimmed)
    ? readMarking(catalogue, trimmed).slice(0, MOST.readings)
    : [];
  return [
    ...(readings.length > 0
      ? [
          section(
            'As a marking',
            ...readings.map((reading) => readingMarkup(catalogue, reading, habit)),
          ),
        ]
      : []),
    ...nameParts(catalogue, trimmed),
  ];
};
