import { expect, test } from 'vitest';
import { atomFeed, changes, changesByDay, pagesOfDay, toldInFull } from '../../src/text/changes.ts';

const page = 'https://site.example/changes/';

test('the feed has every change once, and is as new as the newest', () => {
  const feed = atomFeed(changes, page, `${page}feed.xml`);
  expect([...feed.matchAll(/<entry>/g)]).toHaveLength(changes.length);
  expect(/<updated>([^<]+)</.exec(feed)?.[1]).toBe(`${changes[0]?.date ?? ''}T00:00:00Z`);
});

test('text is text in the feed', () => {
  const feed = atomFeed(
    [{ id: 'a', date: '2026-01-02', kind: 'new', tables: [], title: '<b> & "c"', text: ']]>' }],
    page,
    `${page}feed.xml`,
  );
  expect(feed).toContain('<title>New: &lt;b&gt; &amp; &quot;c&quot;</title>');
  expect(feed).toContain('<summary>]]&gt;</summary>');
});

const madeOn = (date: string, count: number) =>
  Array.from({ length: count }, (_, index) => ({
    ...{ id: `${date}-${index}`, date, kind: 'new' as const, tables: [], title: '', text: '' },
  }));

// Fifty are told at most, by whole days.
test.each<[days: number[], inFull: number]>([
  [[], 0],
  [[3], 1],
  [[80], 0],
  [[80, 1], 0],
  [[20, 30], 2],
  [[20, 31], 1],
  [[20, 20, 20, 1], 2],
])('of days with %j changes %i are told in full', (counts, inFull) => {
  const rows = counts.flatMap((count, index) => madeOn(`2026-01-${String(31 - index)}`, count));
  const days = changesByDay(rows);
  expect(days.map((day) => day.rows.length)).toEqual(counts);
  expect(toldInFull(days)).toEqual(days.slice(0, inFull));
});

test.each<[count: number, pages: [path: string, count: number][]]>([
  [1, [['/changes/2026-01-31/', 1]]],
  [50, [['/changes/2026-01-31/', 50]]],
  [
    101,
    [
      ['/changes/2026-01-31/', 50],
      ['/changes/2026-01-31/2/', 50],
      ['/changes/2026-01-31/3/', 1],
    ],
  ],
])('a day of %i changes has pages %j', (count, pages) => {
  const rows = madeOn('2026-01-31', count);
  const made = pagesOfDay({ date: '2026-01-31', rows });
  expect(made.map((page) => [page.path, page.rows.length])).toEqual(pages);
  expect(made.flatMap((page) => page.rows)).toEqual(rows);
  expect(made.map(({ number }) => number)).toEqual(pages.map((_, index) => index + 1));
});
