import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { figuresOfDevice, viewOf } from '../../src/device-view/facts.ts';

const catalogue = loadCatalogue();
const figuresOf = (id: string, property: string): string[] => {
  const device = catalogue.devices.devices.find((row) => row.id === id);
  if (device === undefined) throw new Error(`no ${id}`);
  return figuresOfDevice(catalogue, device)
    .filter(({ row }) => row.property === property)
    .map(({ figure }) => figure);
};

// By the tables: inputs of the TL07x, TL08x and TL06x are field-effect transistors, against amplifiers in general.
test.each([
  ['tl072', ['yes']],
  ['tl082', ['yes']],
  ['tl062', ['yes']],
  ['lf356', ['yes']],
  ['741', ['no']],
])('the input of a %s is said once', (id, said) => {
  expect(figuresOf(id, 'fet-input')).toEqual(said);
});

test.each([
  ['from below, clockwise from the tab', 'Seen from below, clockwise from the tab.'],
  ['flat side towards you, leads down', 'Flat side towards you, leads down.'],
  ['the ring is at end 2', 'The ring is at end 2.'],
])('a view is a sentence: %s', (view, said) => {
  expect(viewOf({ view })).toBe(said);
});
