import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { judgeFirst, type Evidence } from '../../../src/engine/index.ts';
import { compared } from '../../../src/engine/triage/readings.ts';
import type { TriageRow } from '../../../src/schemas/triage.ts';

/** Rules that are made up, so that each kind of reading and each order can be looked at alone. */

const real = loadCatalogue();
const marked = { type: 'al-electrolytic-wet', capacitance: 1e-4, ratedVoltage: 25 };
const [first] = real.triage;
if (first === undefined) throw new Error('there is no rule');

const rule = (changed: Partial<TriageRow>): TriageRow => ({
  ...first,
  types: [marked.type],
  positions: [],
  v_from: undefined,
  v_to: undefined,
  reading: 'none',
  comparison: 'at-least',
  limit: undefined,
  unit: 'x',
  advice: 'leave',
  ...changed,
});

const judge = (rules: TriageRow[], evidence: Evidence, volt = marked.ratedVoltage) =>
  judgeFirst({ ...real, triage: rules }, { ...marked, ratedVoltage: volt }, 'reservoir', evidence);

describe('compared', () => {
  const cases: [TriageRow['reading'], Evidence, number | undefined][] = [
    ['none', { age: 1 }, undefined],
    ['age', { age: 3 }, 3],
    ['age', {}, undefined],
    ['idle', { idle: 5 }, 5],
    ['idle', { idle: 5, leakage: 1e-6 }, undefined],
    ['capacitance', { capacitance: 8e-5 }, 0.8],
    ['capacitance', {}, undefined],
    ['loss-120hz', { loss120hz: 0.1, loss1khz: 0.2 }, 0.1],
    ['loss-1khz', { loss120hz: 0.1, loss1khz: 0.2 }, 0.2],
    ['loss-ratio', { loss120hz: 0.1, loss1khz: 0.2 }, 0.5],
    ['loss-ratio', { loss1khz: 0.2 }, undefined],
    ['loss-ratio', { loss120hz: 0.1 }, undefined],
    ['loss-ratio', { loss120hz: 0.1, loss1khz: 0 }, undefined],
    ['esr', { esr: 0.7 }, 0.7],
    ['esr', {}, undefined],
    ['esr-of-new', {}, undefined],
    ['insulation', { insulation: 2e9 }, 2e9],
    ['insulation-rc', { insulation: 2e9 }, 2e5],
    ['insulation-rc', {}, undefined],
  ];
  it.each(cases)('%s of %o: %o', (reading, evidence, value) => {
    const found = compared(real, rule({ reading }), evidence, marked);
    if (value === undefined) expect(found).toBeUndefined();
    else expect(found?.value).toBeCloseTo(value, 9);
  });

  it('has nothing to set a reading against for a type that it does not know', () => {
    const odd = { ...marked, type: 'no-such-type' };
    const aged = rule({ reading: 'capacitance-for-age' });
    expect(compared(real, aged, { capacitance: 1e-4 }, odd)).toBeUndefined();
  });
});

describe('a rule with a limit', () => {
  it.each([
    ['at-least', 0.5, 'replace'],
    ['at-least', 0.499, 'test'],
    ['below', 0.499, 'replace'],
    ['below', 0.5, 'test'],
  ] as const)('%s half an ohm, %f read: %s', (comparison, esr, advice) => {
    const made = rule({ reading: 'esr', comparison, limit: 0.5, unit: 'ohm', advice: 'replace' });
    expect(judge([made], { esr }).advice).toBe(advice);
  });

  it('says the reading and the limit, and which side of it counts', () => {
    const made = { reading: 'esr', limit: 2, unit: 'kohm' } as const;
    const at = judge([rule({ ...made, comparison: 'at-least' })], { esr: 3000 });
    expect(at.reasons[0]?.working).toBe('3\u00a0kΩ; at least 2\u00a0kΩ');
    const below = judge([rule({ ...made, comparison: 'below' })], { esr: 1000 });
    expect(below.reasons[0]?.working).toBe('1\u00a0kΩ; below 2\u00a0kΩ');
  });

  it('says what a value was set against', () => {
    const made = rule({ reading: 'capacitance', comparison: 'below', limit: 0.8 });
    const working = judge([made], { capacitance: 6e-5 }).reasons[0]?.working;
    expect(working?.replaceAll('\u00a0', ' ')).toBe('60 µF, 0.6 × the 100 µF marked; below 0.8 ×');
  });

  it('is of no use without its limit', () => {
    expect(judge([rule({ reading: 'esr', advice: 'replace' })], { esr: 9 }).reasons).toEqual([]);
  });

  it.each([
    [undefined, undefined, 25, true],
    [16, undefined, 16, true],
    [16, undefined, 15.9, false],
    [undefined, 63, 62.9, true],
    [undefined, 63, 63, false],
  ])('holds from %o V and below %o V: %f V %o', (from, to, volt, holds) => {
    const made = rule({ v_from: from, v_to: to, advice: 'leave' });
    expect(judge([made], {}, volt).reasons).toHaveLength(holds ? 1 : 0);
  });
});

describe('which rule counts', () => {
  const read = (advice: TriageRow['advice'], why: string): TriageRow =>
    rule({ reading: 'esr', limit: 0.1, unit: 'ohm', advice, why });
  const age = rule({ reading: 'age', limit: 1, unit: 's', advice: 'test', why: 'age' });
  const here = rule({ positions: ['reservoir'], advice: 'test', why: 'here' });
  const general = rule({ advice: 'leave', why: 'general' });
  const whys = (rules: TriageRow[]): string[] =>
    judge(rules, { esr: 1, age: 2 }).reasons.map(({ why }) => why);

  it('goes from readings over age and the position to the type', () => {
    const rules = [general, here, age, read('leave', 'read')];
    expect(whys(rules)).toEqual(['read', 'age', 'here', 'general']);
    expect(judge(rules, { esr: 1, age: 2 }).advice).toBe('leave');
  });

  it('puts the gravest of one kind first', () => {
    expect(whys([read('leave', 'good'), read('test', 'doubt')])).toEqual(['doubt', 'good']);
    expect(whys([read('test', 'doubt'), read('leave', 'good')])).toEqual(['doubt', 'good']);
  });

  it('lets a rule to replace count before all others', () => {
    const condemned = rule({ advice: 'replace', why: 'condemned' });
    const rules = [read('leave', 'good'), age, condemned];
    expect(whys(rules)).toEqual(['condemned', 'age', 'good']);
    expect(judge(rules, { esr: 1, age: 2 }).advice).toBe('replace');
  });

  it('tests what no rule knows', () => {
    expect(judge([], {})).toEqual({ advice: 'test', reasons: [] });
  });

  it('plans re-forming only where a rule goes by the time without voltage', () => {
    const idle = rule({ reading: 'idle', limit: 1, unit: 's', advice: 'test' });
    expect(judge([idle], { idle: 3e8 }).reforming).toBeDefined();
    expect(judge([general], { idle: 3e8 }).reforming).toBeUndefined();
    expect(judge([idle], {})).not.toHaveProperty('reforming');
  });
});
