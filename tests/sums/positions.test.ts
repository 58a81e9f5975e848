import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { askedIn, askedInUses } from '../../src/sums/positions.ts';

const catalogue = loadCatalogue();

test('a sum knows the positions that ask for it, each once', () => {
  const asked = askedIn(catalogue, 'coupling-corner');
  const all = asked.flatMap(({ must, weighs }) => [...must, ...weighs].map(({ id }) => id));
  expect(new Set(all).size).toBe(all.length);
  const demanded = catalogue.demands
    .filter(({ finding }) => finding === 'corner' || finding === 'phase')
    .map(({ position }) => position);
  expect(all.toSorted()).toEqual([...new Set(demanded)].toSorted());
});

test('a sum that no finding leads to has none', () => {
  expect(askedIn(catalogue, 'divider')).toEqual([]);
});

test('a sum knows the uses of devices that ask for it', () => {
  const ids = askedInUses(catalogue, 'hold-step').flatMap(({ must, weighs }) =>
    [...must, ...weighs].map(({ id }) => id),
  );
  expect(ids).toEqual(['switch-hold']);
  expect(askedInUses(catalogue, 'reservoir').length).toBeGreaterThan(0);
});

test('a sum knows the positions of resistors and trimmers as well', () => {
  const asked = askedIn(catalogue, 'trimmer-preset');
  const all = asked.flatMap(({ must, weighs }) => [...must, ...weighs].map(({ id }) => id));
  const trimmed = Object.values(catalogue.kindPositions).filter(({ kind }) => kind === 'trimmer');
  expect(all.toSorted()).toEqual(trimmed.map(({ id }) => id).toSorted());
});
