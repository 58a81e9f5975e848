import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';

/** Charge for the size is said of a type to show how small it is made, so no listed can is smaller. */

const { bodies, knowledge } = loadCatalogue();

/** µF·V in a cubic centimetre of a can, whose length is its diameter. */
const densityOf = ({
  c_max: farad,
  voltage,
  length_mm: across,
  height_mm: high,
}: (typeof bodies)[number]) =>
  (farad * 1e6 * voltage) / (((Math.PI / 4) * across ** 2 * high) / 1000);

const cans = bodies.filter(({ shape, type }) => shape === 'can' && type.startsWith('al-'));
const types = [...new Set(cans.map(({ type }) => type))];

test('there are cans of several types', () => {
  expect(types.length).toBeGreaterThan(3);
});

test.each(types)('no can of %s holds more for its size than the type is said to', (type) => {
  const known = knowledge[type]?.['charge-density'];
  if (known?.status !== 'known') throw new Error('no figure');
  const densest = Math.max(...cans.filter((row) => row.type === type).map(densityOf));
  // SI: farads times volts in a cubic metre are the same number as µF·V in a cubic centimetre.
  expect(densest).toBeLessThanOrEqual(known.range.max);
});

/** The same of any other body: a tube is as wide as it is high. */
const densityOfFilm = ({
  shape,
  c_max: farad,
  voltage,
  length_mm: long,
  width_mm: wide,
  height_mm: high,
}: (typeof bodies)[number]) =>
  (farad * 1e6 * voltage) / ((long * wide * high * (shape === 'tube' ? Math.PI / 4 : 1)) / 1000);

test.each(['film-y2', 'paper-wax', 'pet-metallized', 'pp-metallized'])(
  'no body of %s holds more for its size than the type is said to, nor much less than that',
  (type) => {
    const known = knowledge[type]?.['charge-density'];
    if (known?.status !== 'known') throw new Error('no figure');
    const listed = bodies.filter((row) => row.type === type);
    const densest = Math.max(...listed.map(densityOfFilm));
    expect(densest).toBeLessThanOrEqual(known.range.max);
    // What is said of small parts may be less, but what is usual lies within what is made.
    expect(known.range.typ).toBeLessThanOrEqual(densest);
  },
);
