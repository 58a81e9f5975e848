import { describe, expect, test } from 'vitest';
import { slicePosition } from '../../src/catalogue/slices/slice-position.ts';
import { sliceReading } from '../../src/catalogue/slices/slice-reading.ts';
import {
  findStandIns,
  judgeFirst,
  type Catalogue,
  type PositionId,
  type TypeId,
} from '../../src/engine/index.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { substitutionPage } from '../../src/substitution/page.ts';
import { realText } from '../data/broken-copy.ts';
import { answerHtml } from '../search/answer-html.ts';
import { rowOf, rowsOf, withRows, type Added } from './with-rows.ts';

/** “Adding a type” and “Adding a position” of DEVELOPERS.md, followed to the letter: rows, and no code. */

const standIns = (catalogue: Catalogue, type: TypeId, position: PositionId) =>
  findStandIns(catalogue, {
    original: { type, capacitance: exactly(1e-8), ratedVoltage: exactly(100) },
    position,
  });

describe('a type', () => {
  const like = 'ptfe';
  const decisive = rowsOf('properties.csv').flatMap((row) =>
    row['decisive'] === 'yes' ? [row['id']] : [],
  );
  const added: Added = {
    'types.csv': [
      { ...rowOf('types.csv', like), ...{ id: 'invented', name: 'Invented film' } },
    ].map((row) => ({ ...row, short_name: 'Invented', also_called: 'nonesuch' })),
    'figures.csv': rowsOf('figures.csv')
      .filter((row) => row['type'] === like && row['use'] === 'used')
      .filter((row) => decisive.includes(row['property']))
      .map((row) => ({ ...row, type: 'invented' })),
    'market.csv': rowsOf('market.csv')
      .filter((row) => row['type'] === like)
      .map((row) => ({ ...row, type: 'invented' })),
    'derating.csv': rowsOf('derating.csv')
      .filter((row) => row['types']?.split(';').includes(like))
      .map((row) => ({ ...row, types: 'invented' })),
    'triage.csv': [
      { ...rowOf('triage.csv', 'film-standing'), id: 'invented-standing', types: 'invented' },
    ],
    'type-looks.csv': rowsOf('type-looks.csv')
      .filter((row) => row['type'] === like)
      .map((row) => ({ ...row, type: 'invented' })),
    'look/kinds.csv': [
      { id: 'invented', name: 'invented film', is: 'capacitor', type: 'invented' },
    ],
  };
  const inAStyle = {
    'look/styles.csv': realText('look/styles.csv').replace(
      new RegExp(`(?<=[,;])${like}(?=[,;])`, 'u'),
      `${like};invented`,
    ),
  };
  const { faults, catalogue } = withRows(added, inAStyle);

  test('asks for no more than these rows', () => {
    expect(faults).toEqual([]);
  });

  test.each(
    Object.keys(added).filter(
      (file) => !['types.csv', 'derating.csv'].includes(file),
    ) as (keyof typeof added)[],
  )('is asked for its rows in %s', (file) => {
    const without = withRows({ ...added, [file]: [] }, inAStyle);
    expect(without.faults).not.toEqual([]);
  });

  test('may stand in, and be stood in for', () => {
    const offered = standIns(catalogue, like, 'sample-hold').map(({ candidate }) => candidate.type);
    expect(offered).toContain('invented');
    expect(standIns(catalogue, 'invented', 'sample-hold')).not.toEqual([]);
  });

  test('has its page, its judgement as an old part, and is found by its names', () => {
    const found = standIns(catalogue, 'invented', 'sample-hold');
    const page = substitutionPage(catalogue, 'invented', 'sample-hold', found);
    expect(page.title).toMatch(/^Invented in /u);
    const old = { type: 'invented', capacitance: 1e-8, ratedVoltage: 100 };
    expect(judgeFirst(catalogue, old, 'sample-hold', {}).reasons).not.toEqual([]);
    const slice = sliceReading(catalogue);
    for (const name of ['invented film', 'nonesuch'])
      expect(answerHtml(slice, name)).toContain('href="/replace/invented/"');
  });
});

describe('a position', () => {
  const like = 'memory-hold';
  const place = { position: 'invented' };
  const of = (file: 'demands.csv' | 'conditions.csv' | 'position-notes.csv' | 'circuits.csv') =>
    rowsOf(file).filter((row) => row['position'] === like);
  const needed = ['equation', 'usual-choice', 'symptom', 'trap'];
  const added: Added = {
    'positions.csv': [rowOf('positions.csv', like)].map((row) => ({
      ...row,
      ...{ id: 'invented', name: 'Invented place', also_called: 'nonesuch place' },
    })),
    'demands.csv': of('demands.csv').map((row) => ({
      ...row,
      ...place,
      id: `invented-${row['id']}`,
    })),
    'conditions.csv': of('conditions.csv').map((row) => ({ ...row, ...place })),
    'position-notes.csv': needed.flatMap((kind) =>
      of('position-notes.csv')
        .filter((row) => row['kind'] === kind)
        .slice(0, 1)
        .map((row) => ({ ...row, ...place })),
    ),
    'circuits.csv': of('circuits.csv').map((row) => ({ ...row, ...place })),
    'circuit-symbols.csv': rowsOf('circuit-symbols.csv')
      .filter((row) => row['position'] === like)
      .map((row) => ({ ...row, ...place })),
  };
  const { faults, catalogue } = withRows(added);

  test('asks for no more than these rows', () => {
    expect(faults).toEqual([]);
  });

  test.each(
    Object.keys(added).filter((file) => file !== 'positions.csv') as (keyof typeof added)[],
  )('is asked for its rows in %s', (file) => {
    expect(withRows({ ...added, [file]: [] }).faults).not.toEqual([]);
  });

  test('answers as the place that its rows were taken from', () => {
    const inShort = (position: PositionId) =>
      standIns(catalogue, 'ps-film-foil', position).map(({ candidate, verdict }) => [
        candidate.type,
        verdict,
      ]);
    expect(inShort('invented')).not.toEqual([]);
    expect(inShort('invented')).toEqual(inShort(like));
  });

  test('has its page, its slice for browsers, and is found by its names', () => {
    const found = standIns(catalogue, 'ps-film-foil', 'invented');
    const page = substitutionPage(catalogue, 'ps-film-foil', 'invented', found);
    expect(page.title).toMatch(/ in invented place: /u);
    const slice = slicePosition(catalogue, 'invented');
    expect(slice.demands.map(({ position }) => position)).toContain('invented');
    for (const name of ['invented place', 'nonesuch place'])
      expect(answerHtml(sliceReading(catalogue), name)).toContain('href="/positions/invented/"');
  });
});
