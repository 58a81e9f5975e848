import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import type { Catalogue } from '../../../src/engine/index.ts';
import {
  kindInWords,
  namesCapacitorsToo,
  withoutPlace,
} from '../../../src/job/understanding/kinds.ts';
import type { BesideKindWordRow } from '../../../src/schemas/job.ts';

/** What words beside the name of a kind make of it, by `job/beside-kind-words.csv`. */

const catalogue = loadCatalogue();

const withRows = (...rows: [word: string, tells: BesideKindWordRow['tells']][]): Catalogue => ({
  ...catalogue,
  job: {
    ...catalogue.job,
    besideKindWords: rows.map(([word, tells]) => ({
      ...{ word, tells, source: 'trade', locator: '', basis: 'common-practice', note: '' },
    })),
  },
});

const kindOf = (tables: Catalogue, text: string): string | undefined =>
  kindInWords(tables, withoutPlace(tables, text));

test.each([
  ['capacitor of the regulator', 'capacitor'],
  ['Kondensator am Trimmer', 'capacitor'],
  ['transistor, TO-92', 'transistor'],
  ['TO92 transistor', 'transistor'],
  ['transistor to the relay', 'transistor'],
  // What drives a relay is none; a trimmer may be named before its place.
  ['relay driver', undefined],
  ['trimmer bias', 'trimmer'],
  ['regulator', 'regulator'],
])('“%s” names %s', (text, kind) => {
  expect(kindOf(catalogue, text)).toBe(kind);
});

test.each([
  ['trimmer', true],
  // Of resistance alone, and no name at all.
  ['resistor', false],
  ['trim', false],
  ['', false],
])('capacitors are called “%s” as well: %s', (kind, too) => {
  expect(namesCapacitorsToo(catalogue, kind)).toBe(too);
});

const RELAY = 'relay driver behind the capacitor';
test.each<[string, Catalogue, string | undefined]>([
  ['a place and what is around', catalogue, undefined],
  ['a place alone', withRows(['behind', 'place']), 'relay'],
  ['what is around alone', withRows(['driver', 'surroundings']), 'capacitor'],
  ['nothing, so that two kinds are named', withRows(), undefined],
])('words count as their rows say: %s', (_what, tables, kind) => {
  expect(kindOf(tables, RELAY)).toBe(kind);
});
