import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { lineOfPage, pageQuery, planJob, understandWith } from '../../../src/job/index.ts';
import { emptyJob, emptyLine } from '../../../src/job/model/job.ts';

/** What was typed on a substitution page becomes a line whose plan leads back to the same page. */

const catalogue = loadCatalogue();
const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };

const lineOf = (type: string, position: string, query: object, designators = 'X1') =>
  lineOfPage(
    catalogue,
    { ...emptyLine('1'), designators },
    { type, position, query: new URLSearchParams(Object.entries(query) as [string, string][]) },
  );

test.each<[string, string, string, Record<string, string>]>([
  [
    'a capacitor',
    'pet-metallized',
    'interstage-coupling',
    { c: '100n', tol: '20', v: '250 VAC', age: '40 years', vdc: '180 V', reads: '82 nF' },
  ],
  [
    'one with signs seen',
    'paper-wax',
    'interstage-coupling',
    { c: '22n', v: '400', seen: 'a-sign,another', leak: '2 µA' },
  ],
  ['a resistor', 'wirewound', 'hot-power', { value: '1k', tol: '5', rating: '5', reads: '1.2k' }],
  [
    'a trimmer with its setting',
    'carbon-preset',
    'bias-trim',
    {
      value: '10k',
      'old-setting': '2.7k',
      'old-total': '9.6k',
      'new-total': '10.2k',
      'new-now': '5 k',
      'new-turns': '25',
    },
  ],
])('of %s', (_what, type, position, query) => {
  const line = lineOf(type, position, query);
  const job = { ...emptyJob('a', new Date(0)), lines: [line] };
  const [planned] = planJob(job, tools).lines;
  if (planned === undefined) throw new Error('no line');
  expect(planned.state).toBe('assessed');
  expect(planned.part).toMatchObject({ type, position });
  const unit = catalogue.kinds[planned.part.kind]?.unit;
  expect(Object.fromEntries(pageQuery(planned, job.whole, unit))).toEqual(query);
});

test.each<[string, string, string, string, Record<string, string>]>([
  ['an amplifier', 'tl072', 'amp-line', 'ic', { supply: '9 V' }],
  ['a transistor', 'bc109', 'transistor-stage', 'transistor', {}],
  ['a regulator, which a parts list may call a chip', 'lm317', 'reg-adjusted', 'regulator', {}],
])('of %s by its number', (_what, device, use, kind, query) => {
  const line = lineOf(device, use, { ...query, nonsense: '1' });
  expect(line).toEqual({
    ...emptyLine('1'),
    designators: 'X1',
    kind,
    type: device,
    position: use,
    conditions: query,
  });
  const [planned] = planJob({ ...emptyJob('a', new Date(0)), lines: [line] }, tools).lines;
  expect(planned).toMatchObject({ state: 'assessed', part: { type: device, position: use } });
});

test('nothing typed says nothing but what it is and where', () => {
  const line = lineOf('paper-wax', 'interstage-coupling', {}, '');
  expect(line).toEqual({
    ...emptyLine('1'),
    kind: 'capacitor',
    type: 'paper-wax',
    position: 'interstage-coupling',
  });
});

test('a number that cannot be understood goes along, and keys of no field do not', () => {
  const line = lineOf('paper-wax', 'interstage-coupling', { c: 'much', nonsense: '1' });
  expect(line.value).toBe('much');
  expect(line.conditions).toEqual({});
});

test('a setting of several trimmers is no reading of one of them', () => {
  const line = lineOf('carbon-preset', 'bias-trim', { 'old-total': '9.6k' }, 'RV1, RV2');
  expect(line.fitted).toEqual({});
  expect(line.conditions).toEqual({ 'old-total': '9.6k' });
});
