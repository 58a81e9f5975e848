import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';

/** One row of the curated lists, as far as this check needs it. */
interface ListedValue {
  series: string;
  position: string;
  value: string;
}

/** A statement about a series that was made outside this project; its source stands beside it. */
interface Statement {
  kind: 'member' | 'position' | 'nearest' | 'tolerance';
  series: string;
  /** A value, a position or a target, as `kind` asks. */
  of: string;
  expected: string;
  source: string;
}

const readTable = <Row>(address: string): Row[] =>
  parse<Row>(readFileSync(new URL(address, import.meta.url), 'utf8'), { columns: true });

const listed = readTable<ListedValue>('../../data/e-series.csv');
const statements = readTable<Statement>('./e-series.csv');
const tolerances = readTable<{ series: string; percent: string }>(
  '../../data/markings/series-tolerances.csv',
);
const voltages = readTable<{ volts: string; kind: string }>('../../data/voltages.csv');

/** The decade from 1 up to 10, in the order of the positions. */
const decade = (series: string): number[] =>
  listed
    .filter((row) => row.series === series)
    .sort((a, b) => Number(a.position) - Number(b.position))
    .map((row) => Number(row.value));

/** The value of any decade that lies nearest to a target by ratio. */
const nearest = (series: string, target: number): number => {
  const scale = 10 ** Math.floor(Math.log10(target));
  const near = [0.1, 1, 10].flatMap((shift) =>
    decade(series).map((value) => value * scale * shift),
  );
  const distance = (value: number): number => Math.abs(Math.log(value / target));
  return near.reduce((best, value) => (distance(value) < distance(best) ? value : best));
};

const sizes = [3, 6, 12, 24, 48, 96, 192];

/**
 * Where the published lists leave the rounded geometric series: eight values of E24, laid down
 * before the standard was written, and one of E192 (Wikipedia, Chinese edition, E series).
 */
const exceptions: Record<number, Record<number, number>> = {
  24: { 11: 2.7, 12: 3.0, 13: 3.3, 14: 3.6, 15: 3.9, 16: 4.3, 17: 4.7, 23: 8.2 },
  192: { 186: 9.2 },
};

/** The geometric series of so many values a decade, rounded as the standard rounds it. */
const formula = (size: number, position: number): number =>
  Number((10 ** ((position - 1) / size)).toFixed(size <= 24 ? 1 : 2));

describe('preferred values against what others publish', () => {
  test.each(statements)('$kind $series $of is $expected ($source)', (statement) => {
    const { kind, series, of, expected } = statement;
    if (kind === 'member') {
      expect(decade(series).includes(Number(of))).toBe(expected === 'yes');
    } else if (kind === 'position') {
      expect(decade(series)[Number(of) - 1]).toBe(Number(expected));
    } else if (kind === 'tolerance') {
      const row = tolerances.find((one) => one.series === series);
      expect(Number(row?.percent)).toBe(Number(expected));
    } else {
      expect(nearest(series, Number(of)) / Number(expected)).toBeCloseTo(1, 9);
    }
  });
});

describe('rated voltages against a published list', () => {
  test.each([
    [38, 40],
    [6.5, 10],
  ])('the next above %d V is %d V (R5 values, itecnotes)', (needed, next) => {
    const enough = voltages
      .filter(({ kind, volts }) => kind === 'dc' && Number(volts) >= needed)
      .map(({ volts }) => Number(volts));
    expect(Math.min(...enough)).toBe(next);
  });
});

describe('preferred values against the geometric series', () => {
  test.each(sizes)('E%i has as many values as its name says, numbered from 1', (size) => {
    const positions = listed.filter((row) => row.series === `E${size}`).map((row) => row.position);
    expect(positions).toEqual(Array.from({ length: size }, (_, index) => String(index + 1)));
  });

  test.each([24, 48, 96, 192])('E%i is the rounded series but for its known exceptions', (size) => {
    const departures = decade(`E${size}`).flatMap((value, index) =>
      value === formula(size, index + 1) ? [] : [[String(index + 1), value]],
    );
    expect(Object.fromEntries(departures)).toEqual(exceptions[size] ?? {});
  });

  test.each([
    [3, 6],
    [6, 12],
    [12, 24],
    [48, 96],
    [96, 192],
  ])('E%i is every second value of E%i', (coarse, fine) => {
    expect(decade(`E${coarse}`)).toEqual(decade(`E${fine}`).filter((_, index) => index % 2 === 0));
  });
});
