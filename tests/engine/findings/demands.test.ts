import { describe, expect, test } from 'vitest';
import {
  explain,
  judge,
  prepareDemands,
  type Judged,
  type PreparedDemand,
} from '../../../src/engine/assessment/finding.ts';
import type { Part } from '../../../src/engine/assessment/parts.ts';
import { offeredParts } from '../../../src/engine/candidates/generate.ts';
import { findingModels } from '../../../src/engine/findings/index.ts';
import type { Circumstances } from '../../../src/engine/findings/model.ts';
import { allPairings, type Verdict } from '../../../src/engine/index.ts';
import { exactly, hull, scale, type Range } from '../../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, known } from '../assessment/setting.ts';
import { probeIn, sweeps, unfit, type Spoiling } from './probe.ts';

/** Circumstances of every position with the first type that is met there, without any spread. */
const positions = new Map(
  Object.keys(catalogue.positions).map((position) => {
    const met = allPairings(catalogue).find(
      (pair) => pair.position === position && pair.pairing.met,
    );
    const type = met?.type ?? 'pet-metallized';
    const circumstances = circumstancesOf({ original: { type }, position });
    const conditions = Object.fromEntries(
      Object.entries(circumstances.conditions).map(([id, { typ }]) => [id, exactly(typ)]),
    );
    return [position, { ...circumstances, conditions }] as const;
  }),
);

const circumstancesAt = (position: string): Circumstances => {
  const circumstances = positions.get(position);
  if (circumstances === undefined) throw new Error(`no position ${position}`);
  return circumstances;
};

const prepared = (demand: string, circumstances: Circumstances): PreparedDemand => {
  const found = prepareDemands(circumstances).find((one) => one.demand.id === demand);
  if (found === undefined) throw new Error(`no demand ${demand}`);
  return found;
};

const judgeProbe = (one: PreparedDemand, base: Circumstances, spoiling: Spoiling): Judged => {
  const { part, circumstances } = probeIn(base, spoiling);
  return judge(one, part, circumstances);
};

/** What a part of no spread earns that is beyond a limit, by less than ten times or by more. */
const EARNED: Record<string, { short: Verdict; far: Verdict }> = {
  hard: { short: 'keep-out', far: 'keep-out' },
  strong: { short: 'stopgap', far: 'keep-out' },
  mild: { short: 'fits-if', far: 'stopgap' },
};

/** Verdict by weight where only the unfavourable end is beyond the limit. */
const BY_THE_WORST_PART: Record<string, Verdict> = {
  hard: 'keep-out',
  strong: 'fits-if',
  mild: 'fits',
};

/** Those of places where a capacitor sits; other kinds have findings and tests of their own. */
const own = catalogue.demands.filter(({ position }) => catalogue.positions[position] !== undefined);

const demands = own.map((demand) => [demand.id, demand] as const);
const swept = demands.filter(([, { finding }]) => finding in sweeps);
const yesOrNo = demands.filter(([, { finding }]) => finding in unfit);

test('every finding can be spoilt, by a sweep or as a yes or no', () => {
  const left = Object.keys(findingModels).filter((id) => !(id in sweeps) && !(id in unfit));
  expect(left).toEqual([]);
  expect(swept.length + yesOrNo.length).toBe(own.length);
});

describe('a part without a fault', () => {
  test.each(Object.keys(catalogue.positions))('fits in %s', (position) => {
    const { part, circumstances } = probeIn(circumstancesAt(position));
    const short = prepareDemands(circumstances)
      .map((demand) => judge(demand, part, circumstances))
      .filter(({ verdict }) => verdict !== 'fits')
      .map(({ demand }) => demand.id);
    expect(short).toEqual([]);
  });
});

describe('a demand is felt', () => {
  test.each(swept)('%s', (id, { position, finding, weight }) => {
    const base = circumstancesAt(position);
    const one = prepared(id, base);
    const sweep = sweeps[finding];
    const earned = EARNED[weight];
    if (sweep === undefined || earned === undefined) throw new Error('no sweep or weight');
    const steps = sweep.values.map((value) => judgeProbe(one, base, sweep.spoil(value, base)));
    for (const { beyond, verdict } of steps) {
      if (beyond.typical <= 1) expect(verdict).toBe('fits');
      else if (beyond.typical > 1.01 && beyond.typical < 9.99) expect(verdict).toBe(earned.short);
      else if (beyond.typical > 10.1) expect(verdict).toBe(earned.far);
    }
    expect(steps.at(0)?.verdict).toBe('fits');
    expect([earned.short, earned.far]).toContain(steps.at(-1)?.verdict);
    const turns = steps.filter((step, index) => step.verdict !== steps[index - 1]?.verdict);
    expect(turns.length).toBeLessThanOrEqual(3);
  });

  test.each(yesOrNo)('%s', (id, { position, finding, weight }) => {
    const base = circumstancesAt(position);
    const one = prepared(id, base);
    expect(judgeProbe(one, base, {}).verdict).toBe('fits');
    expect(judgeProbe(one, base, unfit[finding] ?? {}).verdict).toBe(EARNED[weight]?.short);
  });
});

describe('a spread that reaches past the limit', () => {
  const spreadable = swept.filter(([, { finding, position }]) => {
    const { figures } = sweeps[finding]?.spoil(1, circumstancesAt(position)) ?? {};
    return figures !== undefined && finding !== 'esr-window';
  });

  test('there are enough to be tested', () => {
    expect(spreadable.length).toBeGreaterThan(150);
  });

  test.each(spreadable)('%s', (id, { position, finding, weight }) => {
    const base = circumstancesAt(position);
    const one = prepared(id, base);
    const sweep = sweeps[finding];
    const [good, bad] = [sweep?.values.at(0), sweep?.values.at(-1)];
    if (sweep === undefined || good === undefined || bad === undefined) throw new Error('no sweep');
    const ends = (value: number): Range[] =>
      Object.values(sweep.spoil(value, base).figures ?? {}).flatMap((figure) =>
        figure.status === 'known' ? [figure.range] : [],
      );
    const [first] = ends(good);
    const [last] = ends(bad);
    if (first === undefined || last === undefined) throw new Error('no figure');
    const wide: Range = { ...hull([first, last]), typ: first.typ };
    const ids = Object.keys(sweep.spoil(good, base).figures ?? {});
    const figures = Object.fromEntries(ids.map((property) => [property, known(wide)]));
    expect(judgeProbe(one, base, { figures }).verdict).toBe(BY_THE_WORST_PART[weight]);
  });
});

describe('a series resistance outside its window', () => {
  const windows = demands.filter(([, { finding }]) => finding === 'esr-window');

  test.each(windows)('%s', (id, { position }) => {
    const base = circumstancesAt(position);
    const one = prepared(id, base);
    const verdictAt = (ohm: number): Verdict =>
      judgeProbe(one, base, { figures: { 'esr-100khz': known(ohm) } }).verdict;
    const { low = 0, high = 0 } = one.limit;
    expect([low / 20, low / 3, low * 1.1, high * 0.9, high * 3, high * 20].map(verdictAt)).toEqual([
      'keep-out',
      'stopgap',
      'fits',
      'fits',
      'stopgap',
      'keep-out',
    ]);
  });
});

/** Parts that between them make every input of every finding count. */
const someParts = (base: Circumstances): Part[] =>
  [
    'pet-metallized',
    'ceramic-z5u',
    'al-electrolytic-wet',
    'al-electrolytic-low-esr',
    'ta-mno2-solid',
    'double-layer-backup',
    'pp-motor-run',
  ].map((type): Part => ({
    type,
    capacitance: base.original.capacitance,
    tolerance: { minus: 0.2, plus: 0.2 },
    ratedVoltage: 25,
    voltageKind: type === 'pp-motor-run' ? 'ac' : 'dc',
  }));

const movements: ((range: Range) => Range)[] = [
  (range) => scale(range, 1e-3),
  (range) => scale(range, 1e3),
  ({ min, typ, max }) => ({ min: min + 60, typ: typ + 60, max: max + 60 }),
  ({ min, typ, max }) => ({ min: min - 60, typ: typ - 60, max: max - 60 }),
  ({ min, typ, max }) => ({ min: min + 5000, typ: typ + 5000, max: max + 5000 }),
];

describe('a condition that a finding names moves it', () => {
  const inputs = own.flatMap((demand) => {
    const conditions = catalogue.findings[demand.finding]?.conditions ?? [];
    const all = new Set([...conditions, ...(demand.limit_of === '' ? [] : [demand.limit_of])]);
    // A finding may list the condition that its limit follows from; only those demands use it.
    return [...all]
      .filter((id) => id !== 'error-budget' || demand.limit_of === id)
      .map((condition) => [demand.id, condition, demand.position] as const);
  });

  test.each(inputs)('%s by %s', (id, condition, position) => {
    const base = circumstancesAt(position);
    const range = base.conditions[condition];
    if (range === undefined) throw new Error(`${position} has no ${condition}`);
    const outcome = (circumstances: Circumstances): string => {
      const one = prepared(id, circumstances);
      return JSON.stringify(
        someParts(base).map((part) => {
          const { outcome: measured, limit } = judge(one, part, circumstances);
          return [measured, limit];
        }),
      );
    };
    const before = outcome(base);
    const moved = movements.some(
      (move) =>
        outcome({ ...base, conditions: { ...base.conditions, [condition]: move(range) } }) !==
        before,
    );
    expect(moved).toBe(true);
  });
});

describe('a limit that follows from a condition', () => {
  const following = demands.filter(([, { limit_of: condition }]) => condition !== '');

  test.each(following)('%s', (id, { position, finding, limit_of: condition, weight }) => {
    const base = circumstancesAt(position);
    const sweep = sweeps[finding];
    const range = base.conditions[condition];
    if (sweep === undefined || range === undefined) throw new Error('no sweep or condition');
    const one = prepared(id, base);
    // The corner is held to the old part's own where that is higher, so nothing is moved there.
    if (one.model.limit !== undefined) return expect(one.limit.high).toBeGreaterThan(0);
    const value = sweep.values.find((each) => {
      const { beyond } = judgeProbe(one, base, sweep.spoil(each, base));
      return beyond.typical > 1.5;
    });
    if (value === undefined) throw new Error('never beyond its limit');
    const spoiling = sweep.spoil(value, base);
    const verdictWith = (factor: number): Verdict => {
      const conditions = { ...base.conditions, [condition]: scale(range, factor) };
      const moved = { ...base, conditions };
      return judgeProbe(prepared(id, moved), moved, spoiling).verdict;
    };
    const kinder = catalogue.findings[finding]?.better === 'high' ? 1e-3 : 1e3;
    expect(verdictWith(1)).toBe(EARNED[weight]?.short);
    expect(verdictWith(kinder)).toBe('fits');
  });
});

describe('nothing is decided by a number that no page shows', () => {
  const types = Object.keys(catalogue.types);

  test.each(Object.keys(catalogue.positions))('in %s', (position) => {
    const base = circumstancesAt(position);
    const shown = catalogue.conditions
      .filter((row) => row.position === position)
      .map(({ condition }) => condition);
    const read = new Map<string, Set<string>>();
    let reader = '';
    const conditions = new Proxy(base.conditions, {
      get: (target, id: string) => {
        read.set(reader, (read.get(reader) ?? new Set()).add(id));
        return target[id];
      },
    });
    const watched: Circumstances = { ...base, conditions };
    reader = 'candidates';
    const parts = types.flatMap((type) => [
      ...offeredParts(catalogue, type, watched).slice(0, 3),
      { ...base.original, type },
    ]);
    reader = 'limits';
    const allDemands = prepareDemands(watched);
    for (const part of parts) {
      for (const demand of allDemands) {
        reader = demand.row.id;
        explain(demand, judge(demand, part, watched), part, watched);
      }
    }
    expect(parts.length).toBeGreaterThan(types.length);
    const all = [...read.values()].flatMap((ids) => [...ids]);
    const told = new Set(Object.values(catalogue.findings).flatMap((finding) => finding.told));
    expect(all.filter((id) => !shown.includes(id) && !told.has(id))).toEqual([]);
    const undeclared = [...read].flatMap(([finding, ids]) => {
      const declared = catalogue.findings[finding]?.conditions ?? shown;
      const limits = own
        .filter((demand) => demand.position === position && demand.finding === finding)
        .map((demand) => demand.limit_of);
      return [...ids]
        .filter((id) => !declared.includes(id) && !limits.includes(id) && !told.has(id))
        .map((id) => `${finding} reads ${id}`);
    });
    expect(undeclared).toEqual([]);
  });
});

describe('a condition that a working only tells of', () => {
  const told = own.flatMap((demand) =>
    (catalogue.findings[demand.finding]?.told ?? [])
      .filter((id) => circumstancesAt(demand.position).conditions[id] !== undefined)
      .map((id) => [demand.id, id, demand.position] as const),
  );

  test.each(told)('%s by %s: the words follow it, the verdict does not', (id, told, position) => {
    const base = circumstancesAt(position);
    const moved = { ...base, conditions: { ...base.conditions, [told]: exactly(0.32) } };
    const demand = prepared(id, base);
    for (const part of someParts(base)) {
      const [one, other] = [judge(demand, part, base), judge(demand, part, moved)];
      expect(other.verdict).toBe(one.verdict);
      if (one.outcome.status !== 'known') continue;
      const words = explain(demand, one, part, base).working;
      expect(explain(demand, other, part, moved).working).not.toBe(words);
    }
  });
});
