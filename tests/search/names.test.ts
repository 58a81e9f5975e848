import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { kindLinks } from '../../src/search/kinds.ts';
import { findNames } from '../../src/search/names.ts';

const catalogue = loadCatalogue();

/** Words of the trade, as somebody types them; common practice, no source. */
describe('findNames', () => {
  it.each([
    ['tantalum bead on a rail', 'ta-mno2-solid', 'bulk-rail'],
    ['replace mylar in a coupling', 'pet-metallized', 'interstage-coupling'],
    ['silver mica', 'silvered-mica', undefined],
    ['NPO', 'ceramic-c0g', undefined],
    ['what replaces a lytic', 'al-electrolytic-wet', undefined],
    ['non-polar electrolytic', 'al-electrolytic-bipolar', undefined],
    ['styrene in a vco', 'ps-film-foil', 'vco-timing'],
    ['wax paper coupling', 'paper-wax', 'interstage-coupling'],
    ['disk', 'ceramic-disc-unknown', undefined],
  ])('%s: %s %s', (text, type, position) => {
    const { types, positions } = findNames(catalogue, text);
    expect(types[0]?.id).toBe(type);
    if (position !== undefined) expect(positions.map(({ id }) => id)).toContain(position);
  });
});

describe('kindLinks', () => {
  it.each([
    ['trimpot', /cermet|preset|trimmer/i],
    ['volume control', /pot/i],
    ['safety resistor', /fusible/i],
  ])('%s', (text, name) => {
    const [first] = kindLinks(catalogue, text, '');
    expect(first?.[1]).toMatch(name);
  });
});
