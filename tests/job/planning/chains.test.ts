import { describe, expect, test } from 'vitest';
import {
  choiceOf,
  orderOf,
  planJob,
  recordOf,
  sheetOf,
  standInWords,
  understandWith,
  type Plan,
} from '../../../src/job/index.ts';
import { emptyFitted, emptyLine, type Job, type Line } from '../../../src/job/model/job.ts';
import { lowerPowerOfLine } from '../../../src/job/planning/lower-power.ts';
import { catalogue, catalogueAt, jobOf } from '../boards.ts';

/**
 * Plain resistors in series where no single one stands the voltage or the power: the same cases as those
 * of the pages, worked out by hand there.
 */

const tools = { catalogueAt, understand: understandWith(catalogue) };
const planned = (job: Job): Plan => planJob(job, tools);

const lineOf = (said: Partial<Line>): Line => ({
  ...emptyLine('1'),
  designators: 'R1',
  kind: 'resistor',
  position: 'hv-dropper',
  decision: 'replace',
  decisionReason: 'x',
  ...said,
});

/** Two wirewound parts of 11 kΩ are all that does for the power of these. */
const hot = { type: 'wirewound', value: '22k', volts: '10 W', conditions: { vdc: '400' } };
/** A special part does at this voltage, and three carbon films do as well. */
const high = {
  type: 'carbon-composition',
  value: '2.2M',
  conditions: { vdc: '900', 'v-surge': '900' },
};

const planOf = (said: Partial<Line>) => {
  const [line] = planned(jobOf(lineOf(said))).lines;
  if (line?.worked === undefined) throw new Error('no line is planned');
  return line;
};

const name = (id: string): string => catalogue.kindTypes[id]?.short_name ?? id;
const words = (one: Parameters<typeof standInWords>[0] | undefined): string =>
  one === undefined ? '' : standInWords(one, name).replaceAll('\u00A0', ' ');

const offered = (said: Partial<Line>): string[] =>
  planOf(said).worked?.rest().standIns.map(words) ?? [];

// The largest of two of 5 % has 1.05 / (1.05 + 0.95) of 400 V: 210 V, on 11 kΩ 4.01 W. Of three, 1.05 / 2.95 of 900 V.
const TWO = 'Wirewound, 11 kΩ ±5 % 10 W, two in series, each bearing up to 210 V and 4.01 W';
const THREE =
  'Carbon film, 750 kΩ ±5 % 0.5 W, three in series, each bearing up to 320 V and 0.137 W';

describe('a chain goes in', () => {
  test('where nothing fits by itself', () => {
    expect(words(planOf(hot).standIn)).toBe(TWO);
    expect(planOf(hot).standIn?.verdict).toBe('fits');
  });

  test('only if somebody takes it where a special part fits as well', () => {
    const [first, second] = offered(high);
    expect(first).not.toContain('in series');
    expect(second).toBe(THREE);
  });

  test('not where a plain one fits', () => {
    const low = { ...high, value: '220k', conditions: { vdc: '450' } };
    expect(offered(low).filter((one) => one.includes('in series'))).toEqual([]);
  });
});

describe('a chain that was taken', () => {
  const taken = planOf(high).worked?.rest().standIns[1];
  if (taken === undefined) throw new Error('no chain is offered');
  const choice = choiceOf(taken, 'in the drawer', false);

  test('is kept as so many of a value', () => {
    expect(choice.value.replaceAll('\u00A0', ' ')).toBe('3 × 750 kΩ');
  });

  test('goes in as it was offered', () => {
    const { standIn, chosenBy, differsFromBest } = planOf({ ...high, choice });
    expect([words(standIn), standIn?.verdict, chosenBy]).toEqual([THREE, 'fits', 'visitor']);
    expect(differsFromBest).toBe(true);
  });

  // A single one of a third of the value, at all of the voltage, is another thing.
  test('is told from one part of the same value', () => {
    const single = { ...choice, value: '750k' };
    const { standIn } = planOf({ ...high, choice: single });
    expect(words(standIn)).toBe('Carbon film, 750 kΩ ±5 % 0.5 W');
    expect(standIn?.verdict).toBe('keep-out');
  });

  test('differs from one part of the same value that ranks first', () => {
    const two = planOf(hot).standIn;
    if (two === undefined) throw new Error('nothing goes in');
    const one = { ...choiceOf(two, 'x', true), value: '11k' };
    expect(planOf({ ...hot, choice: one }).differsFromBest).toBe(true);
    expect(planOf({ ...hot, choice: choiceOf(two, 'x', true) }).differsFromBest).toBe(false);
  });
});

test('an order counts all parts of each chain, with spares by the whole', () => {
  const job = jobOf(lineOf({ ...hot, designators: 'R1-R3' }));
  const [group, ...others] = orderOf(
    planned(job),
    { ...job.whole, spareLeast: '2', spareShare: '0' },
    catalogue,
  ).groups;
  expect(others).toEqual([]);
  expect(group).toMatchObject({ needed: 6, spares: 2, total: 8 });
  expect(group?.value.replaceAll('\u00A0', ' ')).toBe('11 kΩ');
  expect(group?.notes).toContain(
    'two in series, each bearing up to 210\u00A0V and 4.01\u00A0W, in R1 R2 R3',
  );
});

describe('at the bench', () => {
  test('a sheet says how they are joined', () => {
    const job = jobOf(lineOf(hot));
    const [step] = sheetOf(job, planned(job), { catalogueAt, common: catalogue }).steps;
    expect(step?.fit).toMatch(/, two in series, each bearing up to 210.V and 4\.01.W$/u);
  });

  // Two of 11 kΩ ±5 % are 22 kΩ ±5 %: 20.9 to 23.1 kΩ.
  test.each([
    ['22.5 k', /^Resistance 22.5.kΩ$/u],
    ['24.2 k', /outside its tolerance: 22.kΩ ±5.%.*10.% above its mark$/u],
    ['11 k', /50.% below its mark$/u],
  ])('%s of the whole is set against the sum of their marks', (resistance, said) => {
    const fitted = { R1: { ...emptyFitted(), measured: { resistance } } };
    const job = jobOf(lineOf({ ...hot, fitted }));
    const record = recordOf(job, planned(job), catalogue, catalogueAt);
    expect(record.entries[0]?.fit).toMatch(
      /, two in series, each bearing up to 210.V and 4\.01.W$/u,
    );
    expect(record.entries[0]?.measured.replaceAll('\u00A0', ' ')).toMatch(said);
  });
});

// Two of 10 W share the power, so that they take 20 W.
test.each([
  ['20 W', undefined],
  ['30 W', { now: 20, old: 30 }],
])('of %s before, the watts of two count together', (volts, lower) => {
  const { line, part, standIn } = planOf(hot);
  if (standIn === undefined) throw new Error('nothing goes in');
  const rating = { min: parseFloat(volts), typ: parseFloat(volts), max: parseFloat(volts) };
  const unmeasured = { ...line, conditions: {} };
  expect(lowerPowerOfLine({ line: unmeasured, part: { ...part, rating }, standIn })).toEqual(lower);
});
