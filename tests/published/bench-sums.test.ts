import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { allSums } from '../../src/engine/sums/index.ts';
import { readInputs } from '../../src/engine/sums/read-inputs.ts';
import { spanOf } from '../../src/engine/sums/span.ts';
import { expectGiven, named, readCases } from './given.ts';

/** Bench sums, asked as people write it; a kind names the sum and what it is asked for. */

const catalogue = loadCatalogue();
const cases = readCases('tests/published/bench-sums.csv');

test.each(named(cases))('%s: %s', (_id, _source, one) => {
  const [id, output = ''] = one.kind.split(' ');
  const sum = allSums.find((each) => each.id === id);
  if (sum === undefined) throw new Error(`there is no sum ${id}`);
  const facts = sum.facts?.(catalogue);
  const { given, faults } = readInputs(sum, facts, one.given.all());
  expect(faults).toEqual({});
  expect(Object.keys(sum.inputs)).toEqual(expect.arrayContaining(Object.keys(one.given.all())));
  expectGiven(spanOf(sum, given, facts)[output]?.typ ?? NaN, one);
});
