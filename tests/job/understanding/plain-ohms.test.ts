import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { emptyLine } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';

/** Figures alone beside a resistor: ohms as they stand in a list, a code on a chip. Worked out by hand. */

const catalogue = loadCatalogue();

test.each([
  ['470', ['470 Ω', '47 Ω']],
  ['100', ['100 Ω', '10 Ω']],
  ['4700', ['4.7 kΩ', '470 Ω']],
  [' 220 ', ['220 Ω', '22 Ω']],
])('%s of a resistor is asked about, as it stands first', (marking, labels) => {
  const { part, asks } = understoodLine(catalogue, {
    ...emptyLine('a'),
    kind: 'resistor',
    marking,
  });
  expect(part.value).toBeUndefined();
  const choices = asks.find(({ about }) => about === 'marking')?.choices ?? [];
  const ohms = choices.map(({ label }) => label.replaceAll('\u00a0', ' ').split(', ')[1]);
  expect(ohms).toEqual(labels);
});

// A code that counts noughts, with a unit or a letter, or beside what tells that it is none.
test.each([
  ['103', 10e3],
  ['4k7', 4700],
  ['470R', 470],
  ['470 1/4W', 470],
])('%s of a resistor is %d ohm', (marking, ohms) => {
  const { part } = understoodLine(catalogue, { ...emptyLine('a'), kind: 'resistor', marking });
  expect(part.value?.typ).toBeCloseTo(ohms, 6);
});
