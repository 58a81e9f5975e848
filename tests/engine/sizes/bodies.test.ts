import { describe, expect, test } from 'vitest';
import { bodyOf } from '../../../src/engine/sizes/body-of.ts';
import {
  bodiesTogether,
  bodyBetween,
  bodyOfMembers,
  bodyOfRow,
  estimatedBody,
  volumeOf,
  type Body,
} from '../../../src/engine/sizes/body.ts';
import { bodyWords } from '../../../src/engine/sizes/body-words.ts';
import { coreRiseOf, coreRiseOfCan } from '../../../src/engine/sizes/surface.ts';
import type { Range } from '../../../src/engine/quantities/range.ts';
import type { BodyRow } from '../../../src/schemas/sizes.ts';
import { madeBody, sized } from './setting.ts';

const mm = (range: Range | undefined): number[] =>
  range === undefined
    ? []
    : [range.min, range.typ, range.max].map((metres) => Number((metres * 1e3).toFixed(6)));
const mm3 = (range: Range): number[] =>
  [range.min, range.typ, range.max].map((cubic) => Number((cubic * 1e9).toFixed(3)));

const sides = (length_mm: number, width_mm: number, height_mm: number) => ({
  ...{ length_mm, width_mm, height_mm },
});
/** What no estimate falls below, m3. */
const LEAST = 0.15e-6;
const same = (value: number): number[] => [value, value, value];

describe('the volume of a row', () => {
  // A cylinder is pi / 4 of the box round it.
  test.each<[shape: BodyRow['shape'], volume: number]>([
    ['can', (Math.PI / 4) * 100 * 16],
    ['tube', (Math.PI / 4) * 100 * 16],
    ['disc', (Math.PI / 4) * 100 * 16],
    ['box', 1600],
    ['drop', 1600],
    ['chip', 1600],
  ])('of a %s', (shape, volume) => {
    expect(volumeOf({ shape, ...sides(10, 10, 16) })).toBeCloseTo(volume, 9);
  });
});

const small = madeBody({
  ...{ shape: 'box', ...sides(10, 4, 5), pitch_mm: [7.5], lead_mm: 0.5, source: 'one' },
  ...{ c_min: 1e-8, c_max: 2e-8, basis: 'published' },
});
const large = madeBody({
  ...{ shape: 'box', ...sides(20, 8, 10), pitch_mm: [15, 17.5], lead_mm: 0.8, source: 'two' },
  ...{ c_min: 1e-7, c_max: 2e-7, basis: 'memory' },
});
const bare = madeBody({ shape: 'chip', ...sides(3, 2, 1), pitch_mm: [], lead_mm: undefined });
const listed = (row: BodyRow): Body => bodyOfRow(row, 'listed');

describe('a body', () => {
  test('of a row has its sides, leads and source', () => {
    const body = listed(small);
    expect([mm(body.length), mm(body.width), mm(body.height)]).toEqual([10, 4, 5].map(same));
    expect(mm3(body.volume)).toEqual(same(200));
    expect(body.pitch).toEqual([0.0075]);
    expect(body.lead).toBeCloseTo(0.0005, 12);
    expect(body).toMatchObject({
      ...{ shape: 'box', row: small, rows: [small], sources: ['one'], bases: ['published'] },
    });
    expect(listed(bare).lead).toBeUndefined();
  });

  test('between two is shrunk alike from the larger, 27 of 64 parts to three quarters', () => {
    const body = bodyBetween(small, large, (1600 * 27) / 64);
    expect(mm(body.length)).toEqual([10, 15, 20]);
    expect(mm(body.width)).toEqual([4, 6, 8]);
    expect(mm(body.height)).toEqual([5, 7.5, 10]);
    expect(mm3(body.volume)).toEqual([200, 675, 1600]);
    expect(body).toMatchObject({
      ...{ shape: 'box', from: 'between', row: large, rows: [small, large] },
      ...{ sources: ['one', 'two'], bases: ['published', 'memory'] },
    });
    expect(bodyBetween(small, { ...large, source: 'one' }, 675).sources).toEqual(['one']);
    // The smaller is no larger than what is read between.
    expect(mm3(bodyBetween(small, large, 100).volume)).toEqual([100, 100, 1600]);
  });

  test('that is estimated is a cube of its volume, and no less than 0.15 cm3', () => {
    const body = estimatedBody({ min: 1e-9, typ: 1e-6, max: 8e-6 }, LEAST);
    expect(mm3(body.volume)).toEqual([150, 1000, 8000]);
    expect(mm(body.length).slice(1)).toEqual([10, 20]);
    expect([body.width, body.height]).toEqual([body.length, body.length]);
    expect(body).toMatchObject({
      ...{ from: 'estimate', pitch: [], rows: [], sources: [], bases: [] },
    });
    expect([body.shape, body.row, body.lead]).toEqual([undefined, undefined, undefined]);
  });

  test('of one of several spans them all', () => {
    const body = bodyOfMembers([listed(small), listed(large), listed(bare)]);
    // The typical size is the middle one.
    expect(mm(body.length)).toEqual([3, 10, 20]);
    expect(mm(body.width)).toEqual([2, 4, 8]);
    expect(mm(body.height)).toEqual([1, 5, 10]);
    expect(mm3(body.volume)).toEqual([6, 200, 1600]);
    expect(body.lead).toBeCloseTo(0.0008, 12);
    expect(body).toMatchObject({
      ...{ from: 'members', pitch: [], rows: [small, large, bare] },
      ...{ sources: ['one', 'two', 'trade'], bases: ['published', 'memory', 'common-practice'] },
    });
    expect(bodyOfMembers([listed(bare), listed(bare)]).lead).toBeUndefined();
    expect(bodyOfMembers([listed(bare), listed(bare)]).sources).toEqual(['trade']);
  });

  test('of two beside each other is as wide as both', () => {
    for (const body of [
      bodiesTogether(listed(small), listed(large)),
      bodiesTogether(listed(large), listed(small)),
    ]) {
      expect(mm(body.length)).toEqual(same(20));
      expect(mm(body.width)).toEqual(same(12));
      expect(mm(body.height)).toEqual(same(10));
      expect(mm3(body.volume)).toEqual(same(1800));
      // The one with the wider leads decides, and the thicker wire.
      expect(body.pitch).toEqual([0.015, 0.0175]);
      expect(body.lead).toBeCloseTo(0.0008, 12);
      expect(body.from).toBe('together');
      expect(body.rows.toSorted((a, b) => a.c_max - b.c_max)).toEqual([small, large]);
      expect(body.sources.toSorted()).toEqual(['one', 'two']);
      expect(body.bases.toSorted()).toEqual(['memory', 'published']);
    }
  });

  test.each<[what: string, a: Body, b: Body, pitch: number[], lead: number | undefined]>([
    ['one without leads', listed(small), listed(bare), [], 0.0005],
    ['the other without leads', listed(bare), listed(small), [], 0.0005],
    ['both without leads', listed(bare), listed(bare), [], undefined],
    [
      'the narrowest of several pitches',
      listed({ ...large, pitch_mm: [5, 20] }),
      listed(small),
      [0.0075],
      0.0008,
    ],
    [
      'the narrowest of several pitches of the other',
      listed(small),
      listed({ ...large, pitch_mm: [5, 20] }),
      [0.0075],
      0.0008,
    ],
  ])('of two beside each other, %s', (_what, a, b, pitch, lead) => {
    const body = bodiesTogether(a, b);
    expect(body.pitch).toEqual(pitch);
    expect(body.lead).toBe(lead);
  });

  test('of two beside each other is an estimate only where both are', () => {
    const guess = estimatedBody({ min: 1e-6, typ: 1e-6, max: 1e-6 }, LEAST);
    expect(bodiesTogether(guess, guess).from).toBe('estimate');
    expect(bodiesTogether(guess, listed(small)).from).toBe('together');
    expect(bodiesTogether(listed(small), guess).from).toBe('together');
    expect(bodiesTogether(listed(small), guess).rows).toEqual([small]);
  });
});

describe('a body in words', () => {
  const spaced = (body: Body): string => bodyWords(body).replaceAll('\u00a0', ' ');

  // A diameter first where it is round, and figures to a tenth of a millimetre.
  test.each<[shape: BodyRow['shape'], words: string]>([
    ['can', 'a listed can of ⌀10 × 12.3 mm'],
    ['tube', 'a listed tube of ⌀5 × 10 mm'],
    ['disc', 'a listed disc of ⌀10 × 5 mm'],
    ['box', 'a listed box of 10 × 5 × 12.3 mm'],
    ['drop', 'a listed drop of 10 × 5 × 12.3 mm'],
    ['chip', 'a listed chip of 10 × 5 × 12.3 mm'],
  ])('%s', (shape, words) => {
    expect(spaced(listed(madeBody({ shape, ...sides(10, 5, 12.345) })))).toBe(words);
  });

  test.each<[body: Body, words: RegExp]>([
    [bodyOfRow(small, 'covering'), /^a box of 10 × 4 × 5 mm that takes 20 nF 100 V$/],
    [bodyBetween(small, large, 675), /^between the box of 10 .* 20 nF 100 V and .* 20 .* 200 nF/],
    [bodyOfMembers([listed(small)]), /may be$/],
    [bodiesTogether(listed(small), listed(large)), /^two bodies, box of 10 × .* and box of 20 × /],
    [estimatedBody({ min: 1e-6, typ: 1e-6, max: 1e-6 }, LEAST), /estimated/],
  ])('%#', (body, words) => {
    expect(spaced(body)).toMatch(words);
  });
});

describe('a body made of two parts', () => {
  const table = sized({ bodies: [{ ...small, c_min: 1e-8, c_max: 1e-8 }] });
  const single = { type: 'glass', capacitance: 1e-8, ratedVoltage: 100 };
  const unknown = { ...single, type: 'no-such-type' };
  const of = (...parts: (typeof single)[]): Body | undefined =>
    bodyOf(table, { ...single, made: { parts } as never });

  test('is that of both, or nothing where one is not known', () => {
    expect(mm(of(single, single)?.width)).toEqual(same(8));
    expect(of(single, unknown)).toBeUndefined();
    expect(of(unknown, single)).toBeUndefined();
    expect(mm(of(single)?.width)).toEqual(same(4));
  });
});

describe('the row of a shelf', () => {
  const at = (farads: number, ...bodies: BodyRow[]) =>
    bodyOf(sized({ bodies }), { type: 'glass', capacitance: farads, ratedVoltage: 100 });
  const row = (farads: number, width_mm: number) =>
    madeBody({ c_min: farads, c_max: farads, shape: 'box', ...sides(10, width_mm, 10) });

  test('between two values is read from the next below, not from one further down', () => {
    const found = at(5e-6, row(1e-6, 2), row(3e-6, 4), row(2e-6, 3), row(1e-5, 8));
    expect(found?.rows.map(({ c_max: farads }) => farads)).toEqual([3e-6, 1e-5]);
  });

  test('takes the part whole where the next below is no smaller', () => {
    const found = at(5e-6, row(3e-6, 8), row(1e-5, 8));
    expect(found?.from).toBe('covering');
    expect(mm3(found?.volume as Range)).toEqual(same(800));
  });

  test('says nothing where only a far larger value is listed', () => {
    expect(at(1.1e-6, row(1e-5, 8))?.from).toBe('covering');
    expect(at(0.9e-6, row(1e-5, 8))?.from).not.toBe('covering');
  });
});

describe('how much more the core of a can warms', () => {
  const rise = (types: string[], diameter_mm: number, ratio: number) => ({
    ...{ types, diameter_mm, ratio, source: 'trade', locator: '', note: '' },
    basis: 'common-practice' as const,
  });
  const table = sized({
    coreRises: [
      rise(['glass', 'other'], 16, 1.3),
      rise(['glass'], 10, 1.1),
      rise(['elsewhere'], 12, 9),
      rise(['glass'], 25, 1.6),
    ],
  });

  test.each([
    [8, 1.1],
    [10, 1.1],
    [10.0005, 1.1],
    [10.1, 1.3],
    [16, 1.3],
    [20, 1.6],
    // Wider than all: as the widest.
    [40, 1.6],
  ])('of %d mm', (millimetres, ratio) => {
    expect(coreRiseOfCan(table, 'glass', millimetres / 1e3)?.ratio).toBe(ratio);
  });

  test('is not known of another type', () => {
    expect(coreRiseOfCan(table, 'no-such-type', 0.01)).toBeUndefined();
  });

  test.each<[shape: BodyRow['shape'], ratio: number | undefined]>([
    ['can', 1.3],
    ['tube', 1.1],
    ['box', undefined],
    ['disc', undefined],
  ])('of a %s goes by its diameter', (shape, ratio) => {
    const body = listed(madeBody({ shape, ...sides(15, 9, 20) }));
    expect(coreRiseOf(table, 'glass', body)?.ratio).toBe(ratio);
  });

  test('of a body whose volume alone is known goes by a usual can', () => {
    // 10 mm wide and 1.6 times as high.
    const volume = (Math.PI / 4) * 0.01 ** 2 * 0.016;
    const body = estimatedBody({ min: volume, typ: volume, max: volume }, LEAST);
    expect(coreRiseOf(table, 'glass', body)?.ratio).toBe(1.1);
  });
});
