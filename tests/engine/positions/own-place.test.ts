import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { pairing } from '../../../src/engine/index.ts';

/** A type that is made for one place is met there. */

const catalogue = loadCatalogue();

test.each([
  ['pp-motor-run', 'motor-run'],
  ['pp-motor-run', 'power-factor'],
  ['film-x2', 'mains-x'],
  ['paper-x-safety', 'mains-x'],
  ['film-y2', 'mains-y'],
  ['ceramic-y-safety', 'mains-y'],
  ['air-variable', 'rf-tuned-circuit'],
])('%s is met in %s', (type, position) => {
  const [typeRow, positionRow] = [catalogue.types[type], catalogue.positions[position]];
  if (typeRow === undefined || positionRow === undefined) throw new Error('no such row');
  expect(pairing(catalogue, typeRow, positionRow).met).toBe(true);
});
