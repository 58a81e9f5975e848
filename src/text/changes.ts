import { escaped } from '../markup/to-html.ts';
import type { ChangeRow } from '../schemas/changes.ts';
import { edition } from './edition.ts';
import { rowsOf } from './open-data.ts';

/** Changes of the data, the newest first. */
export const changes = rowsOf('changes.csv') as unknown as readonly ChangeRow[];

/** What changed on one day. */
interface ChangedDay {
  date: string;
  rows: readonly ChangeRow[];
}

/** Changes by day, in their order. */
export const changesByDay = (rows: readonly ChangeRow[]): ChangedDay[] =>
  [...Map.groupBy(rows, ({ date }) => date)].map(([date, own]) => ({ date, rows: own }));

/** So many changes are told in full on one page, so that it stays light however many there are. */
const MOST_IN_FULL = 50;

/** The first of several days that are told in full on one page, if they are not too many; each has a page of its own. */
export const toldInFull = (days: readonly ChangedDay[]): readonly ChangedDay[] => {
  let told = 0;
  const end = days.findIndex(({ rows }) => {
    told += rows.length;
    return told > MOST_IN_FULL;
  });
  return end === -1 ? days : days.slice(0, end);
};

/** One page of the changes of a day. */
export interface ChangesPage extends ChangedDay {
  path: `/changes/${string}/`;
  /** Which of the pages of its day it is, from one. */
  number: number;
}

/** The pages of a day: as many changes as are told in full on one page stand on each, one at least. */
export const pagesOfDay = ({ date, rows }: ChangedDay): ChangesPage[] =>
  Array.from({ length: Math.max(1, Math.ceil(rows.length / MOST_IN_FULL)) }, (_, index) => ({
    date,
    rows: rows.slice(index * MOST_IN_FULL, (index + 1) * MOST_IN_FULL),
    path: index === 0 ? `/changes/${date}/` : `/changes/${date}/${String(index + 1)}/`,
    number: index + 1,
  }));

/** What kind of change it is, in a word before its title. */
export const changeWords: Readonly<Record<ChangeRow['kind'], string>> = {
  new: 'New',
  changed: 'Changed',
  mended: 'Mended',
};

/** The changes of one day have no hours: all are taken as made when the day begins. */
const at = (date: string): string => `${date}T00:00:00Z`;

const entry = ({ id, date, kind, title, text }: ChangeRow, page: string): string =>
  `<entry><id>${escaped(`${page}#${id}`)}</id><title>${escaped(`${changeWords[kind]}: ${title}`)}</title><updated>${at(date)}</updated><link href="${escaped(`${page}#${id}`)}"/><summary>${escaped(text)}</summary></entry>`;

/**
 * The changes as an Atom feed (RFC 4287).
 * @param page address of the page of changes
 * @param feed address of the feed itself
 */
export const atomFeed = (rows: readonly ChangeRow[], page: string, feed: string): string =>
  [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom">',
    `<id>${escaped(page)}</id>`,
    `<title>${escaped(`${edition.name}: changes of the data`)}</title>`,
    `<author><name>${escaped(edition.name)}</name></author>`,
    `<updated>${at(rows[0]?.date ?? '1970-01-01')}</updated>`,
    `<link rel="self" href="${escaped(feed)}"/>`,
    `<link href="${escaped(page)}"/>`,
    ...rows.map((row) => entry(row, page)),
    '</feed>\n',
  ].join('\n');
