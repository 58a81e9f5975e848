import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import type { BodyRow } from '../../src/schemas/sizes.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { lossResistance } from '../../src/engine/equations/loss.ts';
import { leadWire } from '../../src/engine/findings/fit.ts';
import { bodyOf } from '../../src/engine/sizes/body-of.ts';
import { esrOf } from '../../src/engine/sizes/esr-of.ts';
import { pulseRatingOf } from '../../src/engine/sizes/pulse-of.ts';
import { circumstancesOf, knowing, known } from '../engine/assessment/setting.ts';

/** Figures that documents print, or that follow from what they print. */
const row = z.strictObject({
  id: z.string().min(1),
  kind: z.string().min(1),
  type: z.string(),
  style: z.string(),
  capacitance: z.coerce.number(),
  voltage: z.coerce.number(),
  detail: z.string(),
  expected: z.string().min(1),
  tolerance: z.coerce.number(),
  source: z.string().min(1),
});
type Case = z.output<typeof row>;

const records: unknown = parse(readFileSync('tests/published/sizes.csv', 'utf8'), {
  columns: true,
});
const cases = z.array(row).parse(records);

const catalogue = loadCatalogue();

const partOf = ({ type, style, capacitance, voltage }: Case) => ({
  type,
  capacitance,
  ratedVoltage: voltage,
  ...(style === '' ? {} : { style }),
});

const limitOf = (one: Case): number =>
  esrOf(catalogue, partOf(one), Number(one.detail))?.range.max ?? NaN;

/** Makers reckon their limits with the capacitance at the low end of 20 %. */
const LOW = 0.8;

const sides = ({ length_mm, width_mm, height_mm }: BodyRow): string =>
  `${length_mm} x ${width_mm} x ${height_mm}`;

const listed = ({ type, style, voltage }: Case): BodyRow[] =>
  catalogue.bodies.filter(
    (body) => body.type === type && body.style === style && body.voltage === voltage,
  );

const cansOf = (millimetres: number): BodyRow[] =>
  catalogue.bodies.filter(
    (body) => body.style === 'radial can' && body.length_mm === millimetres && body.height_mm > 5,
  );

const holeFor = (millimetres: number): number => {
  const circumstances = circumstancesOf(
    { original: { type: 'glass' }, position: 'vco-timing' },
    knowing(catalogue, 'glass', { 'lead-wire': known(millimetres / 1000) }),
  );
  const outcome = leadWire.measure(circumstances.original, circumstances);
  return outcome.status === 'known' ? outcome.value.typ * 1000 : NaN;
};

/** What the tables say, to be held against what a document says. */
const said: Record<string, (one: Case) => (number | string)[]> = {
  'esr-limit': (one) => [limitOf(one)],
  'loss-limit': (one) => [limitOf(one) * 2 * Math.PI * Number(one.detail) * LOW * one.capacitance],
  'pitch-among': (one) =>
    (bodyOf(catalogue, partOf(one))?.pitch ?? [])
      .map((metres) => metres * 1000)
      .filter((millimetres) => Math.abs(millimetres - Number(one.expected)) < 1e-9),
  'esr-nominal': (one) => [limitOf(one) * LOW],
  'esr-nominal-film': (one) => [limitOf(one)],
  edge: (one) => [(pulseRatingOf(catalogue, partOf(one))?.range.typ ?? NaN) / 1e6],
  size: (one) => [bodyOf(catalogue, partOf(one))?.row].map((body) => (body ? sides(body) : 'none')),
  listed: (one) => {
    const found = listed(one).filter(({ c_max: farads }) => farads === one.capacitance);
    return found.map(sides).filter((text) => text === one.expected);
  },
  volume: (one) => [(bodyOf(catalogue, partOf(one))?.volume.typ ?? NaN) * 1e6],
  pitch: (one) => [Math.min(...(bodyOf(catalogue, partOf(one))?.pitch ?? [])) * 1000],
  largest: (one) =>
    listed(one)
      .filter((body) => sides(body) === one.detail)
      .map(({ c_max: farads }) => farads),
  'can-pitch': ({ detail }) => cansOf(Number(detail)).flatMap(({ pitch_mm: pitch }) => pitch),
  'can-lead': ({ detail }) => cansOf(Number(detail)).flatMap(({ lead_mm: lead }) => lead ?? []),
  hole: ({ detail }) => [holeFor(Number(detail))],
};

describe('sizes as documents print them', () => {
  const exact = cases.filter(({ kind }) => !kind.endsWith('-within'));

  test.each(exact.map((one) => [one.id, one.source, one] as const))('%s, %s', (_id, _from, one) => {
    const found = said[one.kind]?.(one) ?? [];
    expect(found.length).toBeGreaterThan(0);
    const wanted = Number(one.expected);
    for (const value of found) {
      if (typeof value === 'string') expect(value).toBe(one.expected);
      else expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(one.tolerance + 1e-9);
    }
  });

  const within = cases.filter(({ kind }) => kind.endsWith('-within'));

  /** Series resistance (ohm) that a printed loss allows at the low end of the capacitance. */
  const printedOhm = ({ kind, expected, detail, capacitance }: Case): number =>
    kind === 'loss-within'
      ? lossResistance(Number(expected), Number(detail), LOW * capacitance)
      : Number(expected);

  test.each(within.map((one) => [one.id, one.source, one] as const))(
    '%s, %s',
    (_id, _from, one) => {
      const range = esrOf(catalogue, partOf(one), Number(one.detail))?.range ?? exactly(NaN);
      expect(range.min).toBeLessThanOrEqual(printedOhm(one));
      expect(range.max).toBeGreaterThanOrEqual(printedOhm(one));
    },
  );

  test('there are enough of them', () => {
    expect(cases.length).toBeGreaterThanOrEqual(35);
  });
});
