import { expect, test } from 'vitest';
import { circumstancesOf } from '../../../src/engine/assessment/circumstances.ts';
import { findingModels } from '../../../src/engine/findings/index.ts';
import { FINDINGS_OF_RESISTANCE } from '../../../src/engine/findings/series-resistance.ts';
import { catalogue } from '../assessment/setting.ts';

/** Which findings read the rows of series resistances, which a slice of the catalogue brings for those alone. */

/** Parts with rows of their own; what surges of its own is a matter of solid tantalum. */
const TYPES = ['al-electrolytic-wet', 'ta-mno2-solid'];

/** Whether a finding looks at the rows at a place that asks it. */
const reads = (finding: string, position: string, type: string): boolean => {
  let asked = false;
  const watched = new Proxy(catalogue, {
    get: (all, table, receiver): unknown => {
      asked ||= table === 'seriesResistance';
      return Reflect.get(all, table, receiver);
    },
  });
  const circumstances = circumstancesOf(catalogue, { original: { type }, position });
  // A copy of a part is one that nothing has been found of yet.
  findingModels[finding]?.measure(
    { ...circumstances.original },
    { ...circumstances, catalogue: watched },
  );
  return asked;
};

test('the findings that are named are those that read the rows, and no others', () => {
  const reading = catalogue.demands
    .filter(({ position }) => Object.hasOwn(catalogue.positions, position))
    .filter(({ finding, position }) => TYPES.some((type) => reads(finding, position, type)))
    .map(({ finding }) => finding);
  expect([...new Set(reading)].toSorted()).toEqual([...FINDINGS_OF_RESISTANCE].toSorted());
});
