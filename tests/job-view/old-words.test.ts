import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { oldWords } from '../../src/job-view/old-words.ts';
import { emptyJob, emptyLine, type Line } from '../../src/job/model/job.ts';
import { planJob } from '../../src/job/planning/plan.ts';
import { typeNameIn } from '../../src/job/planning/type-name.ts';
import { understandWith } from '../../src/job/understanding/understood.ts';

const catalogue = loadCatalogue();
const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };

const wordsOf = (said: Partial<Line>): string => {
  const lines = [{ ...emptyLine('1'), designators: 'X1', ...said }];
  const [planned] = planJob({ ...emptyJob('a', new Date(0)), lines }, tools).lines;
  if (planned === undefined) throw new Error('no line');
  return oldWords(planned, (id) => typeNameIn(catalogue, id));
};

const transistor = { kind: 'transistor', position: 'transistor-stage' };

test.each<[string, Partial<Line>, string]>([
  ['a gain group is in the letters', { ...transistor, marking: 'BC109C' }, 'BC109C'],
  ['with its type chosen too', { ...transistor, marking: 'BC109C', type: 'bc109' }, 'BC109C'],
  ['in the column of values', { ...transistor, value: 'bc109c' }, 'bc109c'],
  ['with the type alone', { ...transistor, type: 'bc109' }, 'BC109'],
  ['a number once', { ...transistor, type: 'bc109', value: 'BC109' }, 'BC109'],
  [
    'a mark of another kind beside its type',
    { ...transistor, marking: '8342', type: 'bc109' },
    'BC109',
  ],
  [
    'a capacitor by type, value and rating',
    { kind: 'capacitor', type: 'paper-wax', value: '22n', volts: '400', marking: '.022' },
    'Waxed paper and foil 22n 400',
  ],
  ['a mark where nothing else is said', { kind: 'capacitor', marking: '?.??' }, '?.??'],
])('%s', (_what, said, words) => {
  expect(wordsOf(said)).toBe(words);
});
