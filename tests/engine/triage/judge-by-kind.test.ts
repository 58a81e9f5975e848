import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { judgeDevice, judgeOfKind } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();

test.each([
  ['metal-film', 'leave', 'resistor-general'],
  ['carbon-composition', 'test', 'resistor-composition'],
  ['fusible-film', 'test', 'resistor-fusible'],
  ['carbon-preset', 'test', 'trimmer-general'],
  ['cermet-multiturn', 'leave', 'trimmer-sealed'],
  ['carbon-pot', 'test', 'pot-general'],
])('an old %s: %s, by %s', (type, advice, rule) => {
  const row = catalogue.kindTriage.find(({ id }) => id === rule);
  const judged = judgeOfKind(catalogue, { type });
  expect(judged.advice).toBe(advice);
  expect(judged.reasons.map(({ why, source }) => [why, source])).toEqual([[row?.why, row?.source]]);
});

test.each([
  ['tl072', 'leave', 'semiconductors-general'],
  ['bc108', 'leave', 'semiconductors-general'],
  // No whisker grows in glass.
  ['oc71', 'test', 'germanium-in-glass'],
  ['ac128', 'test', 'germanium-transistors'],
])('an old %s: %s, by %s', (id, advice, rule) => {
  const device = catalogue.devices.devices.find((row) => row.id === id);
  if (device === undefined) throw new Error(`no ${id}`);
  const row = catalogue.devices.triage.find((one) => one.id === rule);
  const judged = judgeDevice(catalogue, device);
  expect(judged.advice).toBe(advice);
  expect(judged.reasons.map(({ why }) => why)).toEqual([row?.why]);
});

test('a device of its own counts before its function, and that before its family', () => {
  const [row] = catalogue.devices.triage;
  if (row === undefined) throw new Error('no rules');
  const none = { families: [], functions: [], bodies: [], devices: [] };
  const triage = [
    { ...row, ...none, families: ['f'], advice: 'leave' as const },
    { ...row, ...none, functions: ['g'], advice: 'test' as const },
    { ...row, ...none, devices: ['d'], advice: 'replace' as const },
  ];
  const judge = (id: string, group: string): string =>
    judgeDevice(
      { ...catalogue, devices: { ...catalogue.devices, triage } },
      { id, function: group, family: 'f', pinouts: [] },
    ).advice;
  expect([judge('d', 'g'), judge('x', 'g'), judge('x', 'y')]).toEqual(['replace', 'test', 'leave']);
});

test('what no rule speaks of is tested, without a reason', () => {
  const bare = { ...catalogue, kindTriage: [] };
  expect(judgeOfKind(bare, { type: 'metal-film' })).toEqual({ advice: 'test', reasons: [] });
});
