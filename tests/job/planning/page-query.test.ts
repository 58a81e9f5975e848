import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { pageQuery, planJob, understandWith } from '../../../src/job/index.ts';
import {
  emptyFitted,
  emptyJob,
  emptyLine,
  emptyPreset,
  type Line,
} from '../../../src/job/model/job.ts';
import { readAddress } from '../../../src/substitution/address.ts';
import { kindJudged } from '../../../src/substitution/kind-judged.ts';
import { readKindAddress } from '../../../src/substitution/kind-address.ts';

/** The page that a line leads to asks what its plan asked: with what was typed and what was read. */

const catalogue = loadCatalogue();
const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };

const planned = (said: Partial<Line>) => {
  const job = { ...emptyJob('a', new Date(0)), lines: [{ ...emptyLine('1'), ...said }] };
  const [line] = planJob(job, tools).lines;
  if (line === undefined) throw new Error('no line');
  return { line, query: pageQuery(line, job.whole, catalogue.kinds[line.part.kind]?.unit) };
};

const coupling = { kind: 'capacitor', type: 'pet-metallized', position: 'interstage-coupling' };

test.each<[string, Partial<Line>, object]>([
  ['a marking', { marking: '0.1/250 MKT' }, { c: '100n', v: '250' }],
  ['a marking in the column of values', { value: '22n J 100V' }, { c: '22n', v: '100', tol: '5' }],
  ['a rating for AC', { marking: 'MKT 0.1 250V~' }, { c: '100n', v: '250 VAC' }],
  [
    'what was typed',
    { value: '10 nF', volts: '63 V', tolerance: '20/80', conditions: { vdc: '9~' } },
    { c: '10n', v: '63', tol: '20/80', vdc: '0 V', vac: '9 V' },
  ],
])('of a capacitor with %s', (_what, said, written) => {
  const { line, query } = planned({ ...coupling, ...said });
  expect(Object.fromEntries(query)).toMatchObject(written);
  const asked = readAddress(catalogue, coupling.type, coupling.position, query);
  expect(asked.rejected).toEqual({});
  expect(asked.request).toEqual(line.worked?.request);
});

test.each<[string, Partial<Line>, object]>([
  ['a marking', { marking: '0R22 5W' }, { value: '220m', rating: '5' }],
  ['a marking with its tolerance', { marking: '47R 10% 10W' }, { value: '47', tol: '10' }],
  ['what was typed', { value: '1k', volts: '1/2 W' }, { value: '1k', rating: '0.5' }],
])('of a resistor with %s', (_what, said, written) => {
  const place = { kind: 'resistor', type: 'wirewound', position: 'hot-power' };
  const { line, query } = planned({ ...place, ...said });
  expect(Object.fromEntries(query)).toMatchObject(written);
  const { request, rejected } = readKindAddress(catalogue, place.type, place.position, query);
  expect(rejected).toEqual({});
  const { value, tolerance, rating } = line.part;
  expect(request.original).toEqual({ type: place.type, value, tolerance, rating });
});

test('of a resistor with what it reads, which its page judges alike', () => {
  const place = { kind: 'resistor', type: 'carbon-composition', position: 'plate-load' };
  const found = { ...emptyLine('1').found, resistance: '128k' };
  const { line, query } = planned({ ...place, value: '100k', tolerance: '10 %', found });
  expect(query.get('reads')).toBe('128k');
  const { request } = readKindAddress(catalogue, place.type, place.position, query);
  const { judgement } = kindJudged(catalogue, request, query);
  expect(judgement).toEqual(line.worked?.judgement);
  expect(judgement.advice).toBe('replace');
});

test('of a trimmer with what was read of it at the bench', () => {
  const place = { kind: 'trimmer', type: 'carbon-preset', position: 'bias-trim', value: '10k' };
  const preset = { ...emptyPreset(), old: '2.7k', oldTotal: '9.6k', total: '10.2k', turns: '25' };
  const fitted = { RV1: { ...emptyFitted(), preset } };
  const { line, query } = planned({ ...place, designators: 'RV1', fitted });
  expect(Object.fromEntries(query)).toMatchObject({
    'old-setting': '2.7k',
    'old-total': '9.6k',
    'new-total': '10.2k',
    'new-turns': '25',
  });
  const { request, rejected } = readKindAddress(catalogue, place.type, place.position, query);
  expect(rejected).toEqual({});
  expect(request.conditions?.['old-total']?.typ).toBe(9600);
  const used = line.worked?.conditions?.find(({ id }) => id === 'old-total');
  expect(used?.range.typ).toBe(9600);
  const two = planned({ ...place, designators: 'RV1, RV2', fitted });
  expect(two.query.get('old-total')).toBeNull();
});

test('of a device with its numbers', () => {
  const { query } = planned({ value: 'TL072', position: 'amp-line', conditions: { vcc: '12 V' } });
  expect(Object.fromEntries(query)).toEqual({ vcc: '12 V' });
});
