import { expect, test } from 'vitest';
import { atomFeed, changes } from '../../src/text/changes.ts';

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
