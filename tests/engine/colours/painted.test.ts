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

  const within = (percent: number) => ({
    ...{ minus: percent / 100, plus: percent / 100, unit: 'fraction' as const },
  });
  const halfPico = { minus: 5e-13, plus: 5e-13, unit: 'F' as const };
  const tube = { capacitance: 2.2e-8, tolerance: within(20) };
  const ceramic = { capacitance: 4.7e-10, tolerance: five };

  // Figures and factors of IEC 60062; the rest as the tables of each form, by hand. Nothing where
  // the scheme has no colour for what the part is.
  test.each<[part: PartToPrint, scheme: string, colours: string | undefined]>([
    [{ resistance: 33_000, tolerance: within(20) }, 'resistor-3', 'orange orange orange'],
    [{ resistance: 470, tolerance: within(1) }, 'resistor-5', 'yellow violet black black brown'],
    [{ resistance: 4.7, tolerance: within(1) }, 'resistor-5', 'yellow violet black silver brown'],
    [{ resistance: 5, tolerance: five }, 'resistor-4', 'green black gold gold'],
    [{ resistance: 12_300, tolerance: five }, 'resistor-4', undefined],
    [{ resistance: 12_300, tolerance: within(1) }, 'resistor-5', 'brown red orange red brown'],
    // The ends of what is made.
    [{ resistance: 0.1, tolerance: five }, 'resistor-4', 'brown black silver gold'],
    [{ resistance: 0.09, tolerance: five }, 'resistor-4', undefined],
    [{ resistance: 1e8, tolerance: five }, 'resistor-4', 'brown black violet gold'],
    [{ resistance: 1.1e8, tolerance: five }, 'resistor-4', undefined],
    // Below 10 pF a tolerance is in picofarad, above it in per cent.
    [
      { capacitance: 5.6e-12, tolerance: halfPico, temperatureCharacteristic: 'NP0' },
      'ceramic-tube-5',
      'black green blue white green',
    ],
    [{ capacitance: 5.6e-12, tolerance: five }, 'ceramic-tube-5', undefined],
    [{ ...ceramic, tolerance: halfPico }, 'ceramic-tube-6', undefined],
    // Two colours of one coefficient, or both open.
    [
      { ...ceramic, temperatureCharacteristic: 'N1500' },
      'ceramic-tube-6',
      'orange orange yellow violet brown green',
    ],
    [{ ...ceramic, temperatureCharacteristic: 'N750' }, 'ceramic-tube-6', undefined],
    [ceramic, 'ceramic-tube-6', '? ? yellow violet brown green'],
    // Hundreds of volts in one band or two.
    [{ ...tube, ratedVoltage: 400 }, 'moulded-tube-5', 'red red orange black yellow'],
    [{ ...tube, ratedVoltage: 400 }, 'moulded-tube-6', 'red red orange black black yellow'],
    [{ ...tube, ratedVoltage: 1000 }, 'moulded-tube-6', 'red red orange black brown black'],
    [{ ...tube, ratedVoltage: 1000 }, 'moulded-tube-5', undefined],
    [{ ...tube, ratedVoltage: 450 }, 'moulded-tube-6', undefined],
    [{ ...tube, ratedVoltage: 450 }, 'moulded-tube-4', 'red red orange black'],
    [tube, 'moulded-tube-5', 'red red orange black ?'],
    // What is told by having no place for it.
    [{ capacitance: 2.5e-11, tolerance: within(20) }, 'mica-3', 'red green black'],
    [{ capacitance: 2.5e-11, tolerance: five }, 'mica-3', undefined],
    // What a part is made of or how often it fails is not asked, and stays open.
    [{ capacitance: 1.2e-9, tolerance: ten }, 'mica-6', '? brown red ? silver red'],
    [{ resistance: 4700, tolerance: five }, 'resistor-5-military', 'yellow violet red gold ?'],
  ])('%j in the scheme %s is %s', (part, scheme, colours) => {
    const painted = coloursPainted(catalogue, part)
      .filter((one) => one.scheme.id === scheme)
      .map((one) => one.colours.map((colour) => colour ?? '?').join(' '));
    expect(painted).toEqual(colours === undefined ? [] : [colours]);
  });

  test('usual ways come first, as usual as the least usual colour', () => {
    const order = ['usual', 'other', 'rare'];
    const uses = coloursPainted(catalogue, { resistance: 1000, tolerance: within(10) }).map(
      ({ use }) => order.indexOf(use),
    );
    expect(uses.length).toBeGreaterThan(2);
    expect(uses).toEqual(uses.toSorted((a, b) => a - b));
    const useOf = (resistance: number, id: string) =>
      coloursPainted(catalogue, { resistance }).find(({ scheme }) => scheme.id === id)?.use;
    // Gold as a factor is met less often than brown, and a wirewound part less often than others.
    expect(useOf(100, 'resistor-4')).toBe('usual');
    expect(useOf(1, 'resistor-4')).toBe('other');
    expect(useOf(100, 'resistor-4-wirewound')).toBe('rare');
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
