import { describe, expect, test } from 'vitest';
import {
  beyondSeriesOf,
  seriesWeight,
} from '../../../../src/engine/markings/lexicon/series-places.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { lexiconFor } from '../scans.ts';
import { markings } from '../tables.ts';

const {
  coarseSeries: coarse,
  fineSeries: fine,
  oldValue: old,
  noSeries,
  precisionSeries: precision,
} = weights;

describe('the place of a value in the series', () => {
  const { places } = lexiconFor();

  // E3 has 10, 22, 47; E6 15, E12 27, E24 24; 25 was usual before; E48 105, E96 107, E192 109.
  test.each<[figures: string, place: string | undefined]>([
    ['22', 'E3'],
    ['15', 'E6'],
    ['27', 'E12'],
    ['24', 'E24'],
    ['25', 'old'],
    ['105', 'E48'],
    ['107', 'E96'],
    ['109', 'E192'],
    ['106', 'E192'],
    ['103', undefined],
    ['', undefined],
  ])('%s', (figures, place) => {
    expect(places.get(figures)).toBe(place);
  });

  test.each<[figures: string, bare: number, precise: number, unit: number]>([
    ['22', coarse, coarse, coarse],
    ['15', coarse, coarse, coarse],
    ['27', coarse, coarse, coarse],
    ['24', fine, fine, fine],
    ['25', old, old, old],
    ['105', precision.bare, precision.precise, precision.unit],
    ['109', precision.bare, precision.precise, precision.unit],
    ['103', noSeries.bare, noSeries.precise, noSeries.unit],
  ])('%s weighs so by how it is written', (figures, bare, precise, unit) => {
    expect(seriesWeight(places, figures, 'bare')).toBe(bare);
    expect(seriesWeight(places, figures, 'precise')).toBe(precise);
    expect(seriesWeight(places, figures, 'unit')).toBe(unit);
  });

  // 20 % is the tolerance of E6, 10 % of E12, 5 % of E24, 2 % of E48, 1 % of E96, 0.5 % of E192.
  test.each<[place: 'E3' | 'E6' | 'E12' | 'E24' | 'E96' | 'old', tolerance: number, by: number]>([
    ['E12', 0.1, 0],
    ['E24', 0.1, 1],
    ['E24', 0.2, 2],
    ['E3', 0.1, -2],
    ['E6', 0.2, 0],
    ['E12', 0.05, -1],
    // Between two the one for the wider tolerance; wider than all, the first that is listed.
    ['E24', 0.07, 1],
    ['E6', 0.8, 0],
    ['E96', 0.001, -1],
    ['old', 0.2, 7],
  ])('%s is beyond that for ±%d by %d', (place, tolerance, by) => {
    expect(beyondSeriesOf(markings.seriesTolerances, place, tolerance)).toBe(by);
  });
});
