import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';

/**
 * A size is estimated by the charge for the size where no body is listed. So nothing that is listed
 * is smaller than that says, and a part just beyond the listed ones is not much smaller than they.
 */

const { bodies, knowledge } = loadCatalogue();

type Row = (typeof bodies)[number];

/** A box fills its corners; all else is round, and a tube as wide as it is high. */
const share = ({ shape }: Row) =>
  shape === 'can' || shape === 'tube' || shape === 'disc' ? Math.PI / 4 : 1;

/** µF·V in a cubic centimetre: farads times volts in a cubic metre are the same number. */
const densityOf = (row: Row) =>
  (row.c_max * 1e6 * row.voltage) /
  ((row.length_mm * row.width_mm * row.height_mm * share(row)) / 1000);

const saidOf = (type: string) => {
  const known = knowledge[type]?.['charge-density'];
  if (known?.status !== 'known') throw new Error('no figure');
  return known.range;
};

const types = [...new Set(bodies.map(({ type }) => type))];

const densestOf = (type: string) =>
  Math.max(...bodies.filter((row) => row.type === type).map(densityOf));

test('there are bodies of many types', () => {
  expect(types.length).toBeGreaterThan(20);
});

test.each(types)('no body of %s holds more for its size than the type is said to', (type) => {
  expect(densestOf(type)).toBeLessThanOrEqual(saidOf(type).max);
});

test.each(types)('what is usual of %s is no more than four times what is listed', (type) => {
  // Listed rows may stop at small values, which hold less for their size than large ones.
  expect(saidOf(type).typ).toBeLessThanOrEqual(4 * densestOf(type));
});

test.each(['film-y2', 'paper-wax', 'pet-metallized', 'pp-metallized'])(
  'what is usual of %s lies within what is listed, since its rows reach to large values',
  (type) => {
    expect(saidOf(type).typ).toBeLessThanOrEqual(densestOf(type));
  },
);

/** Polyester film is made thinner than that of polycarbonate and has the higher permittivity. */
test('polycarbonate holds less for its size than polyester', () => {
  expect(saidOf('pc-metallized').typ).toBeLessThan(saidOf('pet-metallized').typ);
});
