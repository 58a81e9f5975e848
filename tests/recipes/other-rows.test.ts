import { describe, expect, test } from 'vitest';
import { sliceReading } from '../../src/catalogue/slices/slice-reading.ts';
import { deviceStandIns } from '../../src/engine/index.ts';
import { benchPages } from '../../src/search/bench-words.ts';
import { named } from '../engine/devices/named.ts';
import { answerHtml } from '../search/answer-html.ts';
import { rowOf, rowsOf, withRows } from './with-rows.ts';

/** What DEVELOPERS.md says of a source, of a device and of words of the bench: rows, and no code. */

const trade = { source: 'trade', basis: 'common-practice' };

describe('a source', () => {
  const source = {
    ...{ id: 'invented-paper', title: 'An invented paper', publisher: 'Nobody', year: '1999' },
    ...{ kind: 'paper', seen: 'excerpt' },
  };
  const cited = {
    ...{ type: 'ptfe', property: 'ageing', typ: '0', unit: '%/decade', status: 'known' },
    ...{ use: 'shown', source: 'invented-paper', locator: 'page 1', basis: 'published' },
  };

  test('stands with what it is cited by', () => {
    expect(withRows({ 'sources.csv': [source] }).faults).toEqual([
      expect.stringMatching(/^sources\.csv:.*: uncited-source$/u),
    ]);
    const { faults, catalogue } = withRows({ 'sources.csv': [source], 'figures.csv': [cited] });
    expect(faults).toEqual([]);
    expect(catalogue.sources['invented-paper']?.publisher).toBe('Nobody');
  });
});

describe('a device', () => {
  const like = '4016b';
  const { faults, catalogue } = withRows({
    'devices/devices.csv': [
      { ...rowOf('devices/devices.csv', like), ...{ id: '9916b', name: '9916B', series: '' } },
    ].map((row) => ({ ...row, also: '' })),
    'devices/figures.csv': rowsOf('devices/figures.csv')
      .filter((row) => row['of'] === like)
      .map((row) => ({ ...row, of: '9916b' })),
  });

  test('asks for no more than its row and its figures', () => {
    expect(faults).toEqual([]);
  });

  test('stands in, and is found by its number', () => {
    const { device, use } = named(catalogue);
    const request = { original: device(like), use: use('switch-hold') };
    const offered = deviceStandIns(catalogue, request).map((one) => one.device.id);
    expect(offered).toContain('9916b');
    expect(answerHtml(sliceReading(catalogue), '9916B')).toContain('href="/devices/9916b/"');
  });
});

test('words of the bench lead to their page', () => {
  const row = { page: '/read/printed/', title: 'How a value is printed', words: 'zebra part' };
  const { faults, catalogue } = withRows({ 'bench-words.csv': [{ ...row, ...trade }] });
  expect(faults).toEqual([]);
  expect(benchPages(catalogue.benchWords, 'a zebra part').map(({ page }) => page)).toContain(
    row.page,
  );
});
