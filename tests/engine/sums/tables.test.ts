import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../../src/engine/index.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { catalogue, picturesOf, range, rowsOf, sumOf, tablesOf, valuesOf } from './asked.ts';

/** Tables and pictures of bench sums, held to made-up facts and to arithmetic done by hand. */

test('every table has words above it, a head, and as many cells in each row', () => {
  for (const { id, tables } of allSums) {
    if (tables === undefined) continue;
    const [table, ...more] = tablesOf(id, {});
    expect(more, id).toEqual([]);
    expect(table?.caption, id).toMatch(/\S/);
    // The first column of what is named in its own rows needs no name.
    expect(
      table?.head.slice(1).every((name) => name !== ''),
      id,
    ).toBe(true);
    expect(table?.rows.length, id).toBeGreaterThan(0);
    for (const row of table?.rows ?? []) expect(row, id).toHaveLength(table?.head.length ?? 0);
  }
});

test('every picture has words above it, beside its axes and for each curve', () => {
  for (const { id, pictures } of allSums) {
    if (pictures === undefined) continue;
    const drawn = picturesOf(id, {});
    expect(drawn.length, id).toBeGreaterThan(0);
    for (const { title, x, y, curves, limits } of drawn) {
      const labels = [x, y, ...curves, ...limits].map(({ label }) => label);
      expect(
        [title, ...labels].every((one) => /\S/.test(one)),
        id,
      ).toBe(true);
      expect(
        curves.every(({ points }) => points.length > 0),
        id,
      ).toBe(true);
      expect(
        [x.scale, y.scale].every((scale) => ['log', 'linear'].includes(scale)),
        id,
      ).toBe(true);
    }
  }
});

describe('re-forming', () => {
  // By reforming.csv, three years without voltage: 50 % of 63 V and 25 % more each time, ten
  // minutes at each, and four hours at all of it.
  const asked = { rating: '63', c: '10 µF', idle: '3 years' };

  test('step by step, the last one held besides, as long as it takes in all', () => {
    expect(rowsOf('reforming', asked)).toEqual([
      ['1', '31.5 V', '600 s'],
      ['2', '47.25 V', '600 s'],
      ['3', '63 V', '15000 s'],
    ]);
    const sum = sumOf('reforming');
    const facts: unknown = sum.facts?.(catalogue);
    expect(sum.at(valuesOf(sum, facts, asked), facts)['whole']).toBe(600 + 600 + 600 + 14_400);
  });

  test('is drawn by the hour, through 10 kΩ, with a tenth of the rating across it as the limit', () => {
    const [volts, amperes] = picturesOf('reforming', asked);
    const at = (plot: typeof volts) => plot?.curves[0]?.points.map(({ x, y }) => [x, y]);
    expect(at(volts)).toEqual([
      [0, 31.5],
      [600, 47.25],
      [1200, 63],
      [16_200, 63],
    ]);
    expect(volts?.points).toEqual([{ x: 1200, y: 63 }]);
    expect(volts?.limits).toEqual([]);
    expect(volts?.curves[0]?.as).toBe('steps');
    expect(at(amperes)?.map(([x, y = NaN]) => [x, Number(y.toPrecision(6))])).toEqual([
      [0, 0.00315],
      [600, 0.004725],
      [1200, 0.0063],
      [16_200, 0.0063],
    ]);
    expect(amperes?.points).toEqual([{ x: 1200, y: 0.0063 }]);
    // Twice 0.01 of 10 µF and 63 V, of microampere, is good; a tenth of 63 V on 10 kΩ is scrap.
    expect(amperes?.limits.map(({ value }) => Number(value.toPrecision(6)))).toEqual([
      1.26e-5, 0.00063,
    ]);
    expect(amperes?.y.scale).toBe('log');
    expect(amperes?.curves[0]?.as).toBe('steps');
  });

  test('only types that are re-formed are asked about; of others there is no plan', () => {
    const sum = sumOf('reforming');
    const facts = sum.facts?.(catalogue) as { types: object; leakageLimits: { note: string }[] };
    expect(Object.keys(facts.types)).not.toContain('pp-film-foil');
    expect(Object.keys(facts.types)).toContain('al-electrolytic-wet');
    const values = { type: 'pp-film-foil', c: 1e-5, rating: 63, idle: 1e8 };
    expect(Object.values(sum.at(values, facts)).every((one) => one === undefined)).toBe(true);
    expect(sum.tables?.(values, facts)).toEqual([]);
    expect(sum.pictures?.(values, facts)).toEqual([]);
  });
});

describe('the allowed working voltage', () => {
  const rule = (guideline: string, share: number, basis: string) => ({
    guideline,
    types: ['foil'],
    share,
    end_share: share,
    from_c: -55,
    to_c: 85,
    basis,
  });
  const made = {
    types: {
      foil: { id: 'foil', name: 'Foil', safety_classes: [] },
      tin: { id: 'tin', name: 'Tin', safety_classes: [] },
    },
    guidelines: {
      maker: { id: 'maker', name: 'Makers', kind: 'maker' },
      workshop: { id: 'workshop', name: 'Bench', kind: 'workshop' },
      bold: { id: 'bold', name: 'Bold', kind: 'handbook' },
      silent: { id: 'silent', name: 'Silent', kind: 'agency' },
    },
    derating: [
      rule('maker', 0.9, 'published'),
      rule('workshop', 0.5, 'common-practice'),
      rule('bold', 0.95, 'memory'),
    ],
    categoryVoltages: [],
  } as unknown as Catalogue;
  const facts: unknown = sumOf('working-voltage').facts?.(made);
  const asked = (dc: string) => ({ type: 'foil', rating: '100', temp: '25', dc, ac: '0' });

  test('guideline by guideline: 90, 50 and 95 V of 100 V, of which the makers let 90 V', () => {
    expect(rowsOf('working-voltage', asked('60'), facts)).toEqual([
      ['Makers', 'maker', '0.9 fraction', '90 V', 'within', 'published'],
      ['Bench', 'workshop', '0.5 fraction', '50 V', 'above', 'common practice'],
      [
        'Bold (above the makers’ ceiling, which holds)',
        'handbook',
        '0.9 fraction',
        '90 V',
        'within',
        'published',
      ],
      ['Silent', 'agency', 'does not speak of it', '', '', ''],
    ]);
  });

  test('just as much as is allowed is within', () => {
    const within = rowsOf('working-voltage', asked('50'), facts).map((row) => row[4]);
    expect(within).toEqual(['within', 'within', 'within', '']);
  });

  test('peaks count: 36 V RMS on 40 V are 90.9 V', () => {
    const rows = rowsOf('working-voltage', { ...asked('40'), ac: '36' }, facts);
    expect(rows.map((row) => row[4])).toEqual(['above', 'above', 'above', '']);
  });

  test('only types with a rule are asked about', () => {
    expect((facts as { types: unknown }).types).toEqual([{ id: 'foil', name: 'Foil', kind: 'dc' }]);
  });

  test('without a rule of the workshop the makers’ holds, and without any there is no answer', () => {
    const sum = sumOf('working-voltage');
    const by = (kept: (one: string) => boolean) => {
      const { derating, ...others } = made;
      const rules: unknown = sum.facts?.({
        ...others,
        derating: derating.filter(({ guideline }) => kept(guideline)),
      });
      return sum.at({ type: 'foil', rating: 100, temp: 25, dc: 45, ac: 0 }, rules);
    };
    expect(by(() => true)).toEqual({ allowed: 50, ceiling: 90, peak: 45, share: 0.9 });
    expect(by((one) => one !== 'workshop')).toEqual({
      allowed: 90,
      ceiling: 90,
      peak: 45,
      share: 0.5,
    });
    expect(by((one) => one === 'silent')).toEqual({ peak: 45 });
  });

  test('above its hottest nothing is allowed, of which no share can be told', () => {
    const sum = sumOf('working-voltage');
    const hot = sum.at({ type: 'foil', rating: 100, temp: 125, dc: 45, ac: 0 }, facts);
    expect(hot).toEqual({ allowed: 0, ceiling: 0, peak: 45 });
  });
});

describe('the noise of resistors', () => {
  const known = (min: number, typ: number, max: number) => ({
    'noise-index': { status: 'known', range: range(min, typ, max), basis: 'published' },
  });
  const type = (id: string, changed: object = {}) => ({
    id,
    kind: 'resistor',
    short_name: id,
    family: 'film',
    market: 'common',
    wound: false,
    only_asked: false,
    ...changed,
  });
  const made = {
    kindTypes: {
      loud: type('loud', { family: 'composition' }),
      middle: type('middle'),
      worse: type('worse'),
      better: type('better'),
      seldom: type('seldom', { market: 'niche' }),
      quiet: type('quiet', { family: 'foil' }),
      asked: type('asked', { only_asked: true }),
      trimmer: type('trimmer', { kind: 'trimmer' }),
      unknown: type('unknown'),
    },
    knowledge: {
      loud: known(0, 10, 20),
      middle: known(-20, -15, -10),
      worse: known(-10, -5, 0),
      better: known(-30, -20, -10),
      seldom: known(-26, -25, -24),
      quiet: known(-60, -40, -20),
      asked: known(0, 0, 0),
      trimmer: known(0, 0, 0),
      unknown: { 'noise-index': { status: 'unknown' } },
    },
  } as unknown as Catalogue;
  const facts: unknown = sumOf('resistor-noise').facts?.(made);
  // 1 Ω makes 0.018 µV by itself; 0 dB, 10 V and three decades make 17.32 µV, 20 dB ten times that.
  const asked = { r: '1', low: '20', high: '20 kHz', v: '10', index: '0 dB' };

  test('constructions side by side, the quietest first, and one’s own last', () => {
    const rows = rowsOf('resistor-noise', asked, facts);
    expect(rows.map(([name]) => name)).toEqual([
      'quiet',
      'seldom',
      'better',
      'middle',
      'worse',
      'loud',
      'Yours',
    ]);
    expect(rows.at(-2)).toEqual([
      'loud',
      '0..10..20 dB',
      '0.00001732..0.00005477..0.0001732 V',
      '0.00001732..0.00005477..0.0001732 V',
      'published',
    ]);
    expect(rows.at(-1)).toEqual(['Yours', '0 dB', '0.00001732 V', '0.00001732 V', 'your number']);
  });

  test('the noisiest, the quietest and the two ends of ordinary film are drawn', () => {
    const [plot, ...more] = picturesOf('resistor-noise', asked, facts);
    expect(more).toEqual([]);
    expect(plot?.curves.map(({ label }) => label)).toEqual(['loud', 'worse', 'better', 'quiet']);
    const { points = [] } = plot?.curves[0] ?? {};
    // From a thirtieth of 10 V to thirty times that, the middle at 10 V; noise goes with voltage.
    expect(points).toHaveLength(41);
    expect(
      [points[0]?.x, points[20]?.x, points[40]?.x].map((x = NaN) => Number(x.toPrecision(6))),
    ).toEqual([0.333333, 10, 300]);
    expect(points[20]?.y).toBeCloseTo(54.77e-6, 8);
    expect(points[20]?.low).toBeCloseTo(17.32e-6, 8);
    expect(points[20]?.high).toBeCloseTo(173.2e-6, 7);
    expect(points[40]?.y).toBeCloseTo(30 * 54.77e-6, 5);
    expect(plot?.points).toEqual([{ x: 10, y: expect.closeTo(17.32e-6, 8) as number }]);
    expect(plot?.limits).toEqual([]);
  });

  test('without a voltage the axis is about one volt, and nobody stands on it', () => {
    const [plot] = picturesOf('resistor-noise', { ...asked, v: '0' }, facts);
    expect(plot?.curves[0]?.points[20]?.x).toBeCloseTo(1, 9);
    expect(plot?.points).toEqual([]);
  });

  test.each(['20 Hz', '10 Hz'])('a band that ends at %s where it begins has neither', (high) => {
    expect(tablesOf('resistor-noise', { ...asked, high }, facts)).toEqual([]);
    expect(picturesOf('resistor-noise', { ...asked, high }, facts)).toEqual([]);
  });
});

describe('resistors under voltage', () => {
  const known = (min: number, typ: number, max: number) => ({
    'voltage-change': { status: 'known', range: range(min, typ, max), basis: 'memory' },
  });
  const type = (id: string, changed: object = {}) => ({
    id,
    kind: 'resistor',
    short_name: id,
    wound: false,
    only_asked: false,
    ...changed,
  });
  const made = {
    kindTypes: {
      much: type('much'),
      little: type('little'),
      asked: type('asked', { only_asked: true }),
      trimmer: type('trimmer', { kind: 'trimmer' }),
      unknown: type('unknown'),
    },
    knowledge: {
      much: known(1e-4, 2e-4, 3e-4),
      little: known(1e-6, 2e-6, 3e-6),
      asked: known(0, 0, 0),
      trimmer: known(0, 0, 0),
      unknown: { 'voltage-change': { status: 'not-applicable' } },
    },
  } as unknown as Catalogue;

  test('constructions side by side at 100 V, the steadiest first', () => {
    const facts: unknown = sumOf('resistor-voltage').facts?.(made);
    expect(rowsOf('resistor-voltage', { v: '100' }, facts)).toEqual([
      [
        'little',
        '0.000001..0.000002..0.000003 fraction',
        '0.0001..0.0002..0.0003 fraction',
        'from memory',
      ],
      ['much', '0.0001..0.0002..0.0003 fraction', '0.01..0.02..0.03 fraction', 'from memory'],
    ]);
  });
});
