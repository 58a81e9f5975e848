import { describe, expect, test } from 'vitest';
import { siUnitOf } from '../../../src/engine/assessment/explained.ts';
import { demandsBy, explain, judge, type Finding } from '../../../src/engine/assessment/finding.ts';
import type { Part } from '../../../src/engine/assessment/parts.ts';
import type {
  Circumstances,
  FindingModel,
  Limit,
  Outcome,
} from '../../../src/engine/findings/model.ts';
import type { DemandRow, FindingRow } from '../../../src/schemas/positions.ts';
import { base, single, span } from '../findings/by-hand.ts';
import { PROBE, probeIn } from '../findings/probe.ts';
import { catalogue, given, known } from './setting.ts';

/** One invented demand of an invented finding, from its limit to its words. */

const PLACE = base.position.id;
const provenance = { locator: '', basis: 'published' as const, note: '' };

const demandRow: DemandRow = {
  ...{ id: 'invented-demand', position: PLACE, finding: 'invented', weight: 'strong' },
  ...{ limit: 4, limit_high: undefined, limit_of: '', why: 'because', source: 'handbook' },
  ...provenance,
};
const findingRow: FindingRow = {
  ...{ id: 'invented', name: 'An invented thing', unit: 'mA', better: 'low', graded: true },
  ...{ properties: [], conditions: [], told: [], equation: 'I = V/R', meaning: '', sum: '' },
  source: 'law',
  ...provenance,
};

const outcome = (more: Partial<Extract<Outcome, { status: 'known' }>> = {}): Outcome => ({
  ...{ status: 'known', value: span(1e-3, 2e-3, 5e-3), properties: ['loss'] },
  ...more,
});

const part: Part = single;

interface Asked {
  demand?: Partial<DemandRow>;
  finding?: Partial<FindingRow>;
  model?: Partial<FindingModel>;
  conditions?: Record<string, number>;
}

/** A model that tells old part and stand-in apart by their values. */
const setUp = ({ demand = {}, finding = {}, model = {}, conditions = {} }: Asked = {}) => {
  const { circumstances } = probeIn(base, {
    figures: { loss: { ...known(1), sources: ['sheet'] } },
    conditions: given(conditions),
    tables: {
      demands: [{ ...demandRow, ...demand }],
      findings: { invented: { ...findingRow, ...finding } },
    },
  });
  const models: Record<string, FindingModel> = {
    invented: { measure: () => outcome(), working: () => 'so much', ...model },
  };
  const [prepared, ...more] = demandsBy<Part, Circumstances>(circumstances, models);
  if (prepared === undefined || more.length > 0) throw new Error('not one demand');
  return { prepared, circumstances };
};

const found = (asked: Asked = {}): Finding => {
  const { prepared, circumstances } = setUp(asked);
  return explain(prepared, judge(prepared, part, circumstances), part, circumstances);
};

describe('the limit of a demand', () => {
  test.each<[string, Asked, Limit]>([
    ['4 mA at the most', {}, { high: 4e-3 }],
    ['4 mA at the least', { finding: { better: 'high' } }, { low: 4e-3 }],
    [
      'from 4 to 8 mA',
      { finding: { better: 'window' }, demand: { limit_high: 8 } },
      { low: 4e-3, high: 8e-3 },
    ],
    [
      'the same within 4 to 8 mA',
      { finding: { better: 'same' }, demand: { limit_high: 8 } },
      { low: 4e-3, high: 8e-3 },
    ],
    ['no upper end', { finding: { better: 'window' } }, { low: 4e-3, high: undefined }],
    ['none', { demand: { limit: undefined } }, { high: undefined }],
    ['4 of a unit that is SI', { finding: { unit: 'A' } }, { high: 4 }],
    ['4 of no unit at all', { finding: { unit: 'unheard-of' } }, { high: 4 }],
    // Four times two volts, whatever unit the finding is shown in.
    [
      'four times a condition',
      { demand: { limit_of: 'vdc' }, conditions: { vdc: 2 } },
      { high: 8 },
    ],
    ['what the model says, whatever the row', { model: { limit: () => ({ low: 7 }) } }, { low: 7 }],
  ])('%s', (_what, asked, limit) => {
    const { prepared, circumstances } = setUp(asked);
    expect(prepared.limit).toEqual(limit);
    expect(judge(prepared, part, circumstances).limit).toEqual(limit);
  });

  test('of a finding that nobody has, or that has no model, is refused', () => {
    const { circumstances } = setUp();
    expect(() => demandsBy(circumstances, {})).toThrow(/no finding.*invented/);
    expect(() => setUp({ demand: { finding: 'unheard-of' } })).toThrow(/no finding.*unheard-of/);
  });
});

describe('what a demand comes to', () => {
  // 5 of 4 mA at the worst, 2 as usual.
  test.each<[DemandRow['weight'], Finding['verdict']]>([
    ['hard', 'keep-out'],
    ['strong', 'fits-if'],
    ['mild', 'fits'],
  ])('%s, met as usual and not at the worst: %s', (weight, verdict) => {
    const { prepared, circumstances } = setUp({ demand: { weight } });
    expect(prepared.rules.map((rule) => rule.weight)).toEqual(prepared.rules.map(() => weight));
    const judged = judge(prepared, part, circumstances);
    expect(judged.verdict).toBe(verdict);
    expect(judged.beyond.unfavourable).toBeCloseTo(1.25, 9);
    expect(judged.beyond.typical).toBeCloseTo(0.5, 9);
  });

  test('is open where it is not known', () => {
    const { prepared, circumstances } = setUp({
      model: { measure: () => ({ status: 'unknown', missing: ['loss'] }) },
    });
    const judged = judge(prepared, part, circumstances);
    expect(judged).toMatchObject({ verdict: 'fits-if', beyond: { unfavourable: 1, typical: 1 } });
  });
});

describe('a finding', () => {
  test('has all that one needs to check it', () => {
    const one = found({ model: { today: () => 'and today so much' } });
    expect(one).toMatchObject({
      ...{ demand: 'invented-demand', finding: 'invented', name: 'An invented thing' },
      ...{ weight: 'strong', unit: 'A', limit: { high: 4e-3 } },
      original: span(1e-3, 2e-3, 5e-3),
      standIn: span(1e-3, 2e-3, 5e-3),
      ...{ verdict: 'fits-if', missing: [], why: 'because' },
    });
    // 4 mA over 5.
    expect(one.margin).toBeCloseTo(0.8, 9);
    expect(one.working).toBe('so much; and today so much');
    expect(one.sources).toEqual(['sheet', 'handbook', 'law']);
    expect([one.sure, one.basis, one.weakest]).toEqual(['likely', 'common-practice', ['loss']]);
    expect(one.apart).toBeUndefined();
  });

  test('names its own sources once, between those of its figures and of the rule', () => {
    const measure = () => outcome({ sources: ['table', 'law', 'sheet'] });
    expect(found({ model: { measure } }).sources).toEqual(['sheet', 'table', 'law', 'handbook']);
  });

  test('rests on the rule and the demand alone where no property counts', () => {
    const one = found({ model: { measure: () => outcome({ properties: [] }) } });
    expect([one.sources, one.basis]).toEqual([['handbook', 'law'], 'published']);
  });

  test.each<[string, FindingModel['today'], string]>([
    ['nothing to say of today', () => '', 'so much'],
    ['no word of today', undefined, 'so much'],
  ])('with %s has its working alone', (_what, today, working) => {
    expect(found({ model: today === undefined ? {} : { today } }).working).toBe(working);
  });

  test('that is not known says what is missing, and what the old part did', () => {
    const one = found({
      model: {
        measure: ({ type }) =>
          type === PROBE ? { status: 'unknown', missing: ['loss', 'ageing'] } : outcome(),
      },
    });
    expect(one).toMatchObject({
      ...{ missing: ['loss', 'ageing'], margin: 0, verdict: 'fits-if' },
      ...{ working: 'not known', sources: ['sheet', 'trade', 'handbook', 'law'], sure: 'possible' },
      original: span(1e-3, 2e-3, 5e-3),
    });
    expect(one).not.toHaveProperty('standIn');
  });

  test('has no old figure where that is not known', () => {
    const one = found({
      model: {
        measure: ({ type }) =>
          type === PROBE ? outcome() : { status: 'unknown', missing: ['loss'] },
      },
    });
    expect(one).not.toHaveProperty('original');
    expect(one.standIn).toEqual(span(1e-3, 2e-3, 5e-3));
  });

  test('of nothing at all has a margin that is a number', () => {
    const measure = () => outcome({ value: span(0, 0, 0) });
    expect(found({ model: { measure } }).margin).toBe(1e12);
  });

  test('works its words out once, when they are read', () => {
    let times = 0;
    const working = () => `time ${String((times += 1))}`;
    const one = found({ model: { working } });
    expect(times).toBe(0);
    expect([one.working, one.working]).toEqual(['time 1', 'time 1']);
    expect(one.sources).toBe(one.sources);
  });

  test('measures the old part once for all stand-ins', () => {
    let times = 0;
    const measure = ({ type }: { type: string }) => {
      if (type !== PROBE) times += 1;
      return outcome();
    };
    const { prepared } = setUp({ model: { measure } });
    expect(times).toBe(0);
    expect(prepared.before()).toBe(prepared.before());
    expect(times).toBe(1);
  });
});

test.each([
  ['mA', 'A'],
  ['%', 'fraction'],
  ['V', 'V'],
  ['unheard-of', 'unheard-of'],
])('figures shown in %s are in %s', (unit, si) => {
  expect(siUnitOf(catalogue, { ...findingRow, unit })).toBe(si);
});
