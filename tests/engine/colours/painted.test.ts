import { describe, expect, test } from 'vitest';
import { coloursPainted } from '../../../src/engine/colours/index.ts';
import type { PartToPrint } from '../../../src/engine/printed/index.ts';
import { catalogue } from '../markings/tables.ts';

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
});
