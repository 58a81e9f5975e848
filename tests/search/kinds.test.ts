import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceReading } from '../../src/catalogue/slice.ts';
import { kindLinks } from '../../src/search/kinds.ts';

const slice = sliceReading(loadCatalogue());

describe('resistors and trimmers in the box of the first page', () => {
  test.each([
    ['carbon composition plate load', '/resistors/carbon-composition/in/plate-load/'],
    ['grid stopper', '/positions/grid-stopper/'],
    ['fusible resistor', '/types/fusible-film/'],
    ['trimmers', '/trimmers/'],
    ['idle current preset', '/positions/bias-trim/'],
  ])('%s leads to %s', (text, path) => {
    expect(kindLinks(slice, text).map(([to]) => to)).toContain(path);
  });
});
