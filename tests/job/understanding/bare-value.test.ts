import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';

/** Values without a unit: picofarads by habit, save where no such part was ever made. */

const catalogue = loadCatalogue();
const understood = (said: Partial<Line>) =>
  understoodLine(catalogue, { ...emptyLine('a'), kind: 'capacitor', ...said });

const wet = { type: 'al-electrolytic-wet' };

test.each<[string, Partial<Line>, string]>([
  ['an electrolytic of 470', { ...wet, value: '470' }, '470 µF'],
  ['an electrolytic of 470 with its tolerance', { ...wet, value: '470 ±20 %' }, '470 µF ±20 %'],
  ['the same by the word of the list alone', { kind: 'elko', value: '470' }, '470 µF'],
  ['one of 4,7', { ...wet, value: '4,7' }, '4,7 µF'],
  ['a tantalum bead of 10', { type: 'ta-mno2-solid', value: '10' }, '10 µF'],
])('%s is asked about, and has no value until then', (_what, said, offered) => {
  const { part, asks } = understood(said);
  expect(part.capacitance).toBeUndefined();
  expect(Object.keys(part.rejected)).toEqual(['value']);
  expect(asks[0]?.about).toBe('value');
  expect(asks[0]?.choices).toEqual([{ label: offered, set: { value: offered } }]);
});

test.each<[string, Partial<Line>, number]>([
  ['a mica of 470', { type: 'silvered-mica', value: '470' }, 470e-12],
  ['a ceramic disc of 1000', { type: 'ceramic-disc-unknown', value: '1000' }, 1e-9],
  ['wax paper of .05', { type: 'paper-wax', value: '.05' }, 50e-9],
  ['an electrolytic of 470 µF', { ...wet, value: '470 µF' }, 470e-6],
  ['a part of no known type', { value: '470' }, 470e-12],
])('%s is read as it stands', (_what, said, farad) => {
  const { part, asks } = understood(said);
  expect(part.capacitance?.typ).toBeCloseTo(farad, 15);
  expect(asks.filter(({ about }) => about === 'value')).toEqual([]);
});
