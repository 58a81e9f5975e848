import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { emptyJob, emptyLine, type Line } from '../../../src/job/model/job.ts';
import {
  commonFields,
  fieldsOfLine,
  withField,
  withSign,
} from '../../../src/job/planning/line-fields.ts';
import { planJob } from '../../../src/job/planning/plan.ts';
import { partAsTyped } from '../../../src/job/understanding/part-of-line.ts';

const catalogue = loadCatalogue();
const { whole } = emptyJob('a', new Date(0));
const line: Line = {
  ...emptyLine('1'),
  designators: 'C1',
  kind: 'capacitor',
  type: 'al-electrolytic-wet',
  value: '47 µF',
  volts: '25 V',
  position: 'local-decoupling',
};
const fieldsAt = (of: Line, said = whole) => {
  const fields = fieldsOfLine(catalogue, { line: of, part: partAsTyped(of), whole: said });
  if (fields === undefined) throw new Error('nothing may be said of the line');
  return fields;
};
const field = (of: Line, key: string, said = whole) =>
  fieldsAt(of, said).fields.find((one) => one.key === key);

test('says what counts while the line says nothing', () => {
  expect(field(line, 'condition vdc')).toMatchObject({ text: '', group: 'voltage' });
  expect(field(line, 'condition vdc')?.hint).toMatch(/^(usual|from the old part): .*V$/u);
  const board = { ...whole, conditions: { 't-max': '50' } };
  expect(field(line, 'condition t-max', board)?.hint).toMatch(/^whole board: 50/u);
});

test('what is written counts in the plan, and what is emptied counts no more', () => {
  const given = withField(line, 'condition vdc', '15 V');
  expect(given.conditions).toEqual({ vdc: '15 V' });
  expect(field(given, 'condition vdc')?.text).toBe('15 V');
  const requestOf = (of: Line) =>
    planJob({ ...emptyJob('a', new Date(0)), lines: [of] }, { catalogueAt: () => catalogue })
      .lines[0]?.worked?.request?.conditions?.['vdc']?.typ;
  expect(requestOf(given)).toBe(15);
  expect(requestOf(line)).toBeUndefined();
  expect(withField(given, 'condition vdc', ' ').conditions).toEqual({});
});

test('a reading and a sign change the judgement', () => {
  const judged = (of: Line) =>
    planJob({ ...emptyJob('a', new Date(0)), lines: [of] }, { catalogueAt: () => catalogue })
      .lines[0]?.worked?.judgement?.reasons.length ?? 0;
  const read = withField(line, 'found capacitance', '20 µF');
  expect(read.found.capacitance).toBe('20 µF');
  const { signs } = fieldsAt(line);
  const [first] = signs;
  if (first === undefined) throw new Error('no sign is asked of this type');
  const seen = withSign(line, first.id, true);
  expect(fieldsAt(seen).signs[0]?.seen).toBe(true);
  expect(judged(seen)).not.toBe(0);
  expect(withSign(seen, first.id, false)).toEqual(line);
});

test.each(['condition __proto__', 'found signs', 'found constructor', 'x'])(
  'the key %s does no harm',
  (key) => {
    const made = withField(line, key, 'x');
    expect(made.found).toEqual(line.found);
    expect(Object.getPrototypeOf(made.conditions)).toBe(Object.prototype);
  },
);

test('of several lines, what differs is left open', () => {
  const other = withField({ ...line, id: '2' }, 'condition vdc', '15 V');
  const all = commonFields([fieldsAt(line), fieldsAt(other)]);
  expect(all.fields.find(({ key }) => key === 'condition vdc')).toMatchObject({
    text: '',
    hint: 'differs between these rows',
  });
  expect(all.fields).toHaveLength(fieldsAt(line).fields.length);
});
