import { describe, expect, test } from 'vitest';
import { coloursPainted, readColours } from '../../../src/engine/colours/index.ts';
import type { PartToPrint } from '../../../src/engine/printed/index.ts';
import { catalogue, markings } from '../markings/tables.ts';

const five = { minus: 0.05, plus: 0.05, unit: 'fraction' } as const;
const ten = { minus: 0.1, plus: 0.1, unit: 'fraction' } as const;

describe('how colours mark a part', () => {
  test.each<[PartToPrint, string, string]>([
    [{ resistance: 4700, tolerance: five }, 'resistor-4', 'yellow violet red gold'],
    [{ resistance: 10_000 }, 'resistor-3', 'brown black orange'],
    [{ resistance: 4.7, tolerance: five }, 'resistor-4', 'yellow violet gold gold'],
    [
      { capacitance: 1e-7, tolerance: ten, ratedVoltage: 250 },
      'film-stripes-5',
      'brown black yellow white red',
    ],
    [{ capacitance: 4.7e-10 }, 'mica-3', 'yellow violet brown'],
  ])('%j in the scheme %s: %s', (part, scheme, colours) => {
    const painted = coloursPainted(catalogue, part).find((one) => one.scheme.id === scheme);
    expect(painted?.colours.join(' ')).toBe(colours);
  });

  test('what is not known of the part stays open, and what cannot be told is not offered', () => {
    const inFour = (part: PartToPrint) =>
      coloursPainted(catalogue, part).find(({ scheme }) => scheme.id === 'resistor-4');
    expect(inFour({ resistance: 1000 })?.colours).toEqual(['brown', 'black', 'red', undefined]);
    expect(inFour({ resistance: 1010, tolerance: five })).toBeUndefined();
    expect(
      coloursPainted(catalogue, { resistance: 1000, tolerance: five }).map(
        ({ scheme }) => scheme.id,
      ),
    ).not.toContain('resistor-3');
  });

  test.each([
    {},
    { resistance: NaN },
    { capacitance: 0 },
    { capacitance: -1e-9 },
    { resistance: Infinity },
  ])('%j is painted on nothing', (part) => {
    expect(coloursPainted(catalogue, part)).toEqual([]);
  });

  const mantissas = (places: number): number[] =>
    catalogue.series
      .filter(({ series }) => series === (places > 2 ? 'E96' : 'E24'))
      .map(({ value }) => value);

  const schemes = markings.colourSchemes.filter(
    ({ quantity, places }) => quantity !== '' && places.includes('digit'),
  );

  test.each(schemes)('every value of $id is read back', (scheme) => {
    const places = scheme.places.filter((role) => role === 'digit').length;
    const least = Math.floor(Math.log10(scheme.value_min ?? 1e-13));
    const most = Math.ceil(Math.log10(scheme.value_max ?? 1e12));
    const powers = Array.from({ length: most - least + 1 }, (_, step) => least + step);
    const values = powers.flatMap((power) =>
      mantissas(places).map((mantissa) => Number((mantissa * 10 ** power).toPrecision(6))),
    );
    let painted = 0;
    for (const value of values) {
      const part =
        scheme.quantity === 'resistance' ? { resistance: value } : { capacitance: value };
      for (const { scheme: own, colours } of coloursPainted(catalogue, part)) {
        if (own.id !== scheme.id) continue;
        painted += 1;
        const read = readColours(catalogue, { scheme: scheme.id, colours }).map(
          ({ resistance, capacitance }) => (resistance ?? capacitance)?.typ.toPrecision(5),
        );
        expect(read, `${value} as ${colours.join(' ')}`).toContain(value.toPrecision(5));
      }
    }
    expect(painted).toBeGreaterThan(0);
  });
});
