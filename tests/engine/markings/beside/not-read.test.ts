import { describe, expect, test } from 'vitest';
import { readMarking } from '../../../../src/engine/markings/index.ts';
import { catalogue } from '../tables.ts';

/** What is printed on parts of other kinds, and what it is. */
const others: [string, string][] = [
  ['47 µH', 'an inductance'],
  ['47uH', 'an inductance'],
  ['10 mH', 'an inductance'],
  ['4R7 µH', 'an inductance'],
  ['330 nH', 'an inductance'],
  ['10 MHz', 'a frequency'],
  ['4.433 MHz', 'a frequency'],
  ['32.768 kHz', 'a frequency'],
  ['250 mW', 'a power'],
  ['5 A', 'a current'],
  ['500mA', 'a current'],
  ['T3.15A', 'a fuse'],
  ['F2AL250V', 'a fuse'],
  ['12 VA', 'an apparent power'],
  ['33 °C', 'a temperature'],
  ['1000 h', 'a time'],
  ['14D471K', 'a varistor'],
  ['QEL14D471K', 'a varistor'],
  ['7N471K', 'a varistor'],
  ['S14K275', 'a varistor'],
  ['S14K275 4.5kA', 'a varistor'],
  ['471KD14', 'a varistor'],
  ['5D-11', 'a thermistor'],
  ['TGL 38159', 'a standard'],
];

describe('what is no capacitor and no resistor', () => {
  test.each(others)('%s is said to be %s, and no value is read first', (text, is) => {
    const [best, ...rivals] = readMarking(catalogue, text);
    expect(best?.notRead).toContain(is);
    expect(best?.capacitance ?? best?.resistance).toBeUndefined();
    expect([best, ...rivals].map((reading) => reading?.sure)).not.toContain('sure');
  });

  test('beside a value it is only said', () => {
    const [best] = readMarking(catalogue, 'CBB61 4µF 450VAC 2.5 A');
    expect(best).toMatchObject({ notUnderstood: [], sure: 'sure' });
    expect(best?.notRead).toBeUndefined();
    expect(best?.capacitance?.typ).toBeCloseTo(4e-6, 12);
    expect(best?.evidence.map(({ means }) => means).join()).toContain('a current');
  });

  test.each(['0A', '0 A', '0.0 A'])('%s is no current of nothing', (text) => {
    expect(readMarking(catalogue, text).some(({ notRead }) => notRead?.includes('current'))).toBe(
      false,
    );
  });

  test('a part that is known to be a capacitor has a tolerance letter there', () => {
    const [best] = readMarking(catalogue, '10nH', { body: 'ceramic' });
    expect(best?.capacitance?.typ).toBeCloseTo(10e-9, 15);
    expect(best?.tolerance?.plus).toBeCloseTo(0.03, 9);
  });

  // A voltage code, a letter of a capacitor, a chip resistor: no ampere and no henry.
  test.each(['106A', '2A103J', '1H104K', '96A', '104A', '3D102K', '223J 2A', '450V~ 50/60 Hz'])(
    '%s is read as before',
    (text) => {
      expect(readMarking(catalogue, text)[0]?.notRead).toBeUndefined();
    },
  );
});
