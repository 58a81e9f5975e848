import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodyOf, type Sized } from '../../../src/engine/sizes/body-of.ts';
import { volumeOf } from '../../../src/engine/sizes/body.ts';
import { bodyWords } from '../../../src/engine/sizes/body-words.ts';
import { catalogue, knowing, known, notKnown } from '../assessment/setting.ts';
import { madeBody, sized } from './setting.ts';

const part = (capacitance: number, ratedVoltage: number, style?: string): Sized => ({
  type: 'glass',
  capacitance,
  ratedVoltage,
  style,
});

const wide = (millimetres: number) => ({ length_mm: millimetres, width_mm: millimetres });

const cans = sized({
  bodies: [
    madeBody({ c_min: 1e-6, c_max: 1e-6, ...wide(5) }),
    madeBody({ c_min: 1e-5, c_max: 1e-5, ...wide(10) }),
    madeBody({ c_min: 1e-6, c_max: 1e-6, voltage: 250, ...wide(6) }),
    madeBody({ c_min: 1e-5, c_max: 1e-5, voltage: 400, ...wide(7) }),
  ],
});

const diameterOf = (one: Sized): number | undefined => {
  const found = bodyOf(cans, one);
  return found && found.length.typ * 1000;
};

describe('the body of a part', () => {
  test('is the one listed for its value and voltage', () => {
    const found = bodyOf(cans, part(1e-5, 100));
    expect(found?.from).toBe('listed');
    expect(found?.length).toEqual({ min: 0.01, typ: 0.01, max: 0.01 });
    expect(found?.volume.typ).toBeCloseTo((Math.PI / 4) * 1e-6, 12);
    expect(found?.pitch).toEqual([0.005]);
    expect(found?.lead).toBeCloseTo(0.6e-3, 9);
  });

  test('is one that takes a higher voltage where its own is not listed', () => {
    expect(bodyOf(cans, part(1e-6, 63))?.from).toBe('covering');
    expect(diameterOf(part(1e-6, 63))).toBeCloseTo(5, 9);
    expect(diameterOf(part(1e-6, 160))).toBeCloseTo(6, 9);
  });

  test('is no larger than that of a greater value, however far the row that holds both', () => {
    const steps = sized({
      bodies: [
        madeBody({ c_min: 1e-5, c_max: 1e-5, voltage: 160, ...wide(8) }),
        madeBody({ c_min: 6.8e-6, c_max: 6.8e-6, voltage: 350, ...wide(10) }),
      ],
    });
    const [small, large] = [0.9e-6, 5e-6].map((farads) => bodyOf(steps, part(farads, 160)));
    expect(small?.length.typ).toBeCloseTo(8e-3, 9);
    expect(large?.length.typ).toBeCloseTo(8e-3, 9);
  });

  test('lies between two values of one voltage, and says so', () => {
    const found = bodyOf(cans, part(Math.sqrt(10) * 1e-6, 100));
    expect(found?.from).toBe('between');
    // Halfway in decades: the geometric mean of both volumes, in the shape of the larger.
    expect(found?.volume.typ).toBeCloseTo((Math.PI / 4) * 10e-3 * 5e-3 * 10e-3, 12);
    expect(found?.volume.min).toBeCloseTo((Math.PI / 4) * 2.5e-7, 12);
    expect(found?.volume.max).toBeCloseTo((Math.PI / 4) * 1e-6, 12);
    expect(found && bodyWords(found)).toBe(
      'between the can of ⌀5 × 10\u00A0mm for 1\u00A0µF 100\u00A0V and the ' +
        'can of ⌀10 × 10\u00A0mm for 10\u00A0µF 100\u00A0V',
    );
    expect(found?.row?.length_mm).toBe(10);
  });

  test.each([
    ['a value above every row', part(2.2e-5, 100)],
    ['a voltage above every row', part(1e-6, 630)],
    ['a voltage far below every row', part(1e-6, 25)],
    ['a style that is not listed', part(1e-6, 100, 'chip')],
  ])('is estimated for %s', (_what, one) => {
    const found = bodyOf(knowing(cans, 'glass', { 'charge-density': known(250) }), one);
    expect(found?.from).toBe('estimate');
    const volume = Math.max(0.15e-6, (one.capacitance * one.ratedVoltage) / 250);
    expect(found?.volume.typ).toBeCloseTo(volume, 12);
    expect(found?.height.typ).toBeCloseTo(Math.cbrt(volume), 9);
  });

  test('is not known where not even that can be estimated', () => {
    const bare = knowing(cans, 'glass', { 'charge-density': notKnown });
    expect(bodyOf(bare, part(2.2e-5, 100))).toBeUndefined();
  });

  test('never is a chip where the style is open', () => {
    const chips = sized({
      bodies: [madeBody({ shape: 'chip', pitch_mm: [], lead_mm: undefined })],
    });
    expect(bodyOf(chips, part(1e-6, 100))?.from).toBe('estimate');
    expect(bodyOf(chips, part(1e-6, 100, 'axial'))?.from).toBe('listed');
  });
});

describe('the body of a part of unknown class', () => {
  const union = 'film-unknown';
  const members = catalogue.types[union]?.union_of ?? [];
  const one = { type: union, capacitance: 1e-6, ratedVoltage: 100 };
  const all = members.map((type, index) => madeBody({ type, ...wide(index + 4) }));

  test('spans what it can be', () => {
    const found = bodyOf(sized({ bodies: all }), one);
    expect(found?.from).toBe('members');
    expect(found?.length.min).toBeCloseTo(4e-3, 9);
    expect(found?.length.max).toBeCloseTo((members.length + 3) * 1e-3, 9);
  });

  test('is estimated where one of them is not listed', () => {
    expect(bodyOf(sized({ bodies: all.slice(1) }), one)?.from).toBe('estimate');
  });
});

describe('the bodies of the tables', () => {
  const shelves = [...new Set(catalogue.bodies.map(({ type, style }) => `${type}|${style}`))].map(
    (key): [string, string] => {
      const [type = '', style = ''] = key.split('|');
      return [type, style];
    },
  );
  const rowsOf = ([type, style]: [string, string]) =>
    catalogue.bodies.filter((row) => row.type === type && row.style === style);

  const asked = fc.constantFrom(...shelves).chain((shelf) => {
    const rows = rowsOf(shelf);
    const farads = rows.flatMap(({ c_min: least, c_max: most }) => [least, most]);
    const span = [Math.log(Math.min(...farads)), Math.log(Math.max(...farads))] as const;
    return fc.record({
      shelf: fc.constant(shelf),
      volts: fc.constantFrom(...rows.map(({ voltage }) => voltage)),
      farads: fc.tuple(
        fc.double({ min: span[0], max: span[1], noNaN: true }),
        fc.double({ min: span[0], max: span[1], noNaN: true }),
      ),
    });
  });

  test('grow with the value, take the part and never leave the rows', () => {
    fc.assert(
      fc.property(asked, ({ shelf, volts, farads }) => {
        const [type, style] = shelf;
        const volumes = rowsOf(shelf).map((row) => volumeOf(row) * 1e-9);
        const [small, large] = [...farads]
          .sort((a, b) => a - b)
          .map((log) =>
            bodyOf(catalogue, { type, style, capacitance: Math.exp(log), ratedVoltage: volts }),
          );
        for (const body of [small, large]) {
          if (body?.row === undefined) continue;
          expect(body.volume.min).toBeLessThanOrEqual(body.volume.typ * (1 + 1e-9));
          expect(body.volume.typ).toBeLessThanOrEqual(body.volume.max * (1 + 1e-9));
          expect(body.volume.min).toBeGreaterThanOrEqual(Math.min(...volumes) * (1 - 1e-9));
          expect(body.volume.max).toBeLessThanOrEqual(Math.max(...volumes) * (1 + 1e-9));
          expect(body.row.voltage).toBeGreaterThanOrEqual(volts);
        }
        // A value above the rows of its voltages is estimated, and says nothing of the smaller one.
        if (small?.row === undefined || large?.row === undefined) return;
        expect(small.volume.typ).toBeLessThanOrEqual(large.volume.typ * (1 + 1e-9));
        expect(large.row.c_max).toBeGreaterThanOrEqual(Math.exp(Math.max(...farads)) * 0.999);
      }),
      { numRuns: 400 },
    );
  });

  test('are found as listed, or smaller, for the rating that they are listed for', () => {
    for (const row of catalogue.bodies) {
      const { type, style, c_max: capacitance, voltage: ratedVoltage } = row;
      const found = bodyOf(catalogue, { type, style, capacitance, ratedVoltage });
      expect(found?.volume.typ).toBeLessThanOrEqual(volumeOf(row) * 1e-9 * (1 + 1e-9));
    }
  });
});
