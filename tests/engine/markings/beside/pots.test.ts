import { describe, expect, test } from 'vitest';
import { readMarking, type Reading } from '../../../../src/engine/markings/index.ts';
import { catalogue, markings } from '../tables.ts';

const lawsOf = (readings: readonly Reading[], ohms: number): string[] =>
  readings
    .filter(({ resistance }) => Math.abs((resistance?.typ ?? 0) / ohms - 1) < 1e-9)
    .flatMap(({ taper }) => taper ?? []);

/** What a potentiometer bears, its resistance in ohm and the tapers, the likelier first. */
const pots: [string, number, string[]][] = [
  ['B50K', 50e3, ['linear', 'logarithmic']],
  ['b50k', 50e3, ['linear', 'logarithmic']],
  ['50KB', 50e3, ['linear', 'logarithmic']],
  ['B503', 50e3, ['linear', 'logarithmic']],
  ['B4,7K', 4700, ['linear', 'logarithmic']],
  ['A100K', 100e3, ['logarithmic', 'linear']],
  ['100KA', 100e3, ['logarithmic', 'linear']],
  ['A1M', 1e6, ['logarithmic', 'linear']],
  ['100K A', 100e3, ['logarithmic', 'linear']],
  ['C10K', 10e3, ['reverse logarithmic', 'logarithmic']],
  ['W20K', 20e3, ['S-shaped']],
  ['10KLIN', 10e3, ['linear']],
  ['LIN 10K', 10e3, ['linear']],
  ['1M LOG', 1e6, ['logarithmic']],
  ['47k log', 47e3, ['logarithmic']],
  ['10k lin', 10e3, ['linear']],
  ['lin 10k', 10e3, ['linear']],
  ['10k audio', 10e3, ['logarithmic']],
  ['10K antilog', 10e3, ['reverse logarithmic']],
  // Several on one shaft.
  ['10KBX2', 10e3, ['linear', 'logarithmic']],
  ['10KAx2', 10e3, ['logarithmic', 'linear']],
  ['B10Kx2', 10e3, ['linear', 'logarithmic']],
  ['B500K×2', 500e3, ['linear', 'logarithmic']],
  ['50KBx4', 50e3, ['linear', 'logarithmic']],
  ['A50K x2', 50e3, ['logarithmic', 'linear']],
  ['2×10KB', 10e3, ['linear', 'logarithmic']],
  ['2x100K log', 100e3, ['logarithmic']],
  // A gap between the letter and the value.
  ['B 25K', 25e3, ['linear', 'logarithmic']],
  ['A 250K', 250e3, ['logarithmic', 'linear']],
  ['REV LOG 50k', 50e3, ['reverse logarithmic']],
  ['1M lin slide 60mm', 1e6, ['linear']],
  ['10K C REV', 10e3, ['reverse logarithmic']],
  ['47 kA', 47e3, ['logarithmic', 'linear']],
  ['100 kB', 100e3, ['linear', 'logarithmic']],
  // Words of other languages.
  ['47k pos log', 47e3, ['logarithmic']],
  ['47k neg log', 47e3, ['reverse logarithmic']],
  ['Poti 100k logarithmisch', 100e3, ['logarithmic']],
  ['potentiomètre 470k logarithmique', 470e3, ['logarithmic']],
  ['47K linéaire', 47e3, ['linear']],
  ['1M log inverse', 1e6, ['reverse logarithmic']],
  ['potenziometro 22k lineare', 22e3, ['linear']],
  ['100k logaritmico', 100e3, ['logarithmic']],
];

test.each([
  ['10KBX2', 2],
  ['50KBx4', 4],
  ['2x100K log', 2],
  ['100K log', undefined],
])('%s: %s on one shaft', (text, gangs) => {
  expect(readMarking(catalogue, text)[0]?.gangs).toBe(gangs);
});

/** Behind an M, an F makes an old unit of capacitance of it, and a W one of power. */
const isUnit = (mark: string): boolean => mark.endsWith('MF') || mark.endsWith('MW');

describe('a taper beside a resistance', () => {
  test.each(pots)('%s is a potentiometer', (text, ohms, laws) => {
    const readings = readMarking(catalogue, text);
    expect(readings[0]?.resistance?.typ).toBeCloseTo(ohms, 6);
    expect(lawsOf(readings, ohms)).toEqual(laws);
  });

  test.each([
    ['C103J', 5],
    ['C104K', 10],
    ['B103K', 10],
    ['B102K', 10],
  ])('%s, with a tolerance of %d %, is a capacitor first', (text, percent) => {
    const [first] = readMarking(catalogue, text);
    expect(first?.kind).toBe('capacitor');
    expect(first?.tolerance?.plus).toBeCloseTo(percent / 100, 9);
  });

  test('where the letter differs by maker, half travel tells', () => {
    const tapered = readMarking(catalogue, 'B50K').filter(({ taper }) => taper);
    expect(tapered).toHaveLength(2);
    for (const reading of tapered) {
      expect(reading.settleBy.some((text) => text.includes('half its travel'))).toBe(true);
      expect(reading.sure).not.toBe('sure');
    }
  });

  test('every taper of the table comes back with every value', () => {
    for (const { letter, law } of markings.tapers) {
      for (const value of ['1K', '2.2K', '5K', '10K', '25K', '47K', '50K', '100K', '470K', '1M']) {
        const ohms = Number.parseFloat(value) * (value.endsWith('M') ? 1e6 : 1e3);
        const marks = letter.length > 1 ? [`${value} ${letter}`] : [letter + value, value + letter];
        for (const mark of marks.filter((one) => !isUnit(one))) {
          const laws = lawsOf(readMarking(catalogue, mark), ohms);
          expect(laws, mark).toContain(law);
        }
      }
    }
  });

  test.each([
    ['106A', 10e-6],
    ['A106', 10e-6],
    ['C475', 4.7e-6],
    ['A476K', 47e-6],
    ['D103Z', 10e-9],
    ['F103Z', 10e-9],
    ['B 103 K', 10e-9],
    ['47nB', 47e-9],
  ])('%s stays a capacitor', (text, farads) => {
    const [best] = readMarking(catalogue, text);
    expect((best?.capacitance?.typ ?? NaN) / farads).toBeCloseTo(1, 9);
    expect(best?.taper).toBeUndefined();
  });
});

test('every mark of several on one shaft says how many', () => {
  const groups = catalogue.markings.markGroups.filter(({ says }) => says === 'gangs');
  const marks = catalogue.markings.bodyMarks.filter(({ group, printed }) =>
    printed ? groups.some(({ id }) => id === group) : false,
  );
  expect(marks.length).toBeGreaterThan(10);
  for (const { mark } of marks) {
    const text = /^\d/u.test(mark) ? `${mark}10k log` : `10k log ${mark}`;
    expect([text, (readMarking(catalogue, text)[0]?.gangs ?? 0) >= 2]).toEqual([text, true]);
  }
});
