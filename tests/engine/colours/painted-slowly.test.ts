import { expect, test } from 'vitest';
import { coloursPainted, readColours } from '../../../src/engine/colours/index.ts';
import { catalogue, markings } from '../markings/tables.ts';

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
    const part = scheme.quantity === 'resistance' ? { resistance: value } : { capacitance: value };
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
