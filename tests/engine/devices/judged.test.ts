import { describe, expect, it } from 'vitest';
import { assessDevice, deviceStandIns } from '../../../src/engine/index.ts';
import type { DeviceFigureRow } from '../../../src/schemas/devices.ts';
import { catalogueWith, condition, demand, device, figure, finding, use } from './made-up.ts';

/** Made-up devices by made-up demands, worked by hand: limits, verdicts, order and how sure. */

/** 1 A of load; the conditions of other uses are no part of it. */
const conditions = [
  condition('load-current', 1),
  condition('load-current', 50, { position: 'there' }),
];
const conditionDefinitions = catalogueWith({}).devices.conditionDefinitions;

const findings = [
  finding('load', { unit: '%', better: 'low' }),
  finding('supply-draw', { unit: 'A', better: 'low' }),
  finding('amplifies', { unit: 'x', better: 'high' }),
  finding('least-load', { unit: 'A', better: 'window' }),
  finding('contact', { unit: 'grade', better: 'low' }),
];
const ampere = (of: string, property: string, said: Partial<DeviceFigureRow>) =>
  figure(of, property, { unit: 'A', ...said });
const gain = (of: string, said: Partial<DeviceFigureRow>) =>
  figure(of, 'gain', { unit: 'x', ...said });

const old = device('old');
const tried = device('tried');

type Demand = Parameters<typeof demand>;

const judged = (asked: Demand, figures: DeviceFigureRow[], given: Record<string, number> = {}) => {
  const catalogue = catalogueWith({
    conditions,
    conditionDefinitions,
    findings,
    figures,
    demands: [demand(...asked), demand('load', { position: 'there', limit: 1 })],
  });
  return assessDevice(catalogue, { original: old, use, given }, tried);
};

describe('a demand of a use', () => {
  it.each<[string, Demand, DeviceFigureRow[], string]>([
    // Limits are in the unit of the finding.
    [
      'is met within its limit',
      ['load', { limit: 100 }],
      [ampere('tried', 'load-max', { typ: 2 })],
      'fits',
    ],
    [
      'is missed beyond it',
      ['load', { limit: 40 }],
      [ampere('tried', 'load-max', { typ: 2 })],
      'keep-out',
    ],
    [
      'decides at the unfavourable end where it is hard',
      ['load', { limit: 60 }],
      [ampere('tried', 'load-max', { min: 1, typ: 2, max: 4 })],
      'keep-out',
    ],
    [
      'only warns of that end where it is strong',
      ['load', { limit: 60, weight: 'strong' }],
      [ampere('tried', 'load-max', { min: 1, typ: 2, max: 4 })],
      'fits-if',
    ],
    [
      'may be a share of a condition',
      ['supply-draw', { limit: 0.5, limit_of: 'load-current' }],
      [ampere('tried', 'supply-current', { typ: 0.4 })],
      'fits',
    ],
    [
      'and is missed beyond that share',
      ['supply-draw', { limit: 0.5, limit_of: 'load-current' }],
      [ampere('tried', 'supply-current', { typ: 0.6 })],
      'keep-out',
    ],
    [
      'may be a share of what the old part gives',
      ['amplifies', { limit: 0.8, limit_of: 'old' }],
      [gain('old', { typ: 100 }), gain('tried', { typ: 90 })],
      'fits',
    ],
    [
      'and is missed below that',
      ['amplifies', { limit: 0.8, limit_of: 'old' }],
      [gain('old', { typ: 100 }), gain('tried', { typ: 70 })],
      'keep-out',
    ],
    [
      'is a condition where what the old part gives is not known',
      ['amplifies', { limit: 0.8, limit_of: 'old' }],
      [gain('tried', { typ: 70 })],
      'fits-if',
    ],
    [
      'may be a window, and is missed below',
      ['least-load', { limit: 2, limit_high: 4 }],
      [ampere('tried', 'load-min', { typ: 1 })],
      'keep-out',
    ],
    [
      'and above',
      ['least-load', { limit: 2, limit_high: 4 }],
      [ampere('tried', 'load-min', { typ: 5 })],
      'keep-out',
    ],
    [
      'and met inside',
      ['least-load', { limit: 2, limit_high: 4 }],
      [ampere('tried', 'load-min', { typ: 3 })],
      'fits',
    ],
    ['is a condition where nothing is known', ['load', { limit: 100 }], [], 'fits-if'],
    ['of little weight is not', ['load', { limit: 100, weight: 'mild' }], [], 'fits'],
  ])('%s', (_what, asked, figures, verdict) => {
    const assessed = judged(asked, figures);
    expect(assessed.verdict).toBe(verdict);
    // That of the other use is none of it.
    expect(assessed.findings.map((one) => one.demand)).toEqual([`asks-${asked[0]}`]);
    expect(assessed.worst).toBe(`asks-${asked[0]}`);
  });

  it('is reckoned with the number that the visitor gives', () => {
    const figures = [ampere('tried', 'load-max', { typ: 2 })];
    expect(judged(['load', { limit: 100 }], figures).verdict).toBe('fits');
    expect(judged(['load', { limit: 100 }], figures, { 'load-current': 3 }).verdict).toBe(
      'keep-out',
    );
  });

  it('of a finding that there is not is a fault of the tables', () => {
    expect(() => judged(['unheard-of'], [])).toThrow(RangeError);
  });
});

describe('what a finding tells', () => {
  const figures = [
    ampere('old', 'load-max', { typ: 4 }),
    ampere('tried', 'load-max', { typ: 2, basis: 'common-practice' }),
  ];

  it('is the old part beside the new, the limit, and how much is left', () => {
    const [found] = judged(['load', { limit: 100 }], figures).findings;
    expect(found).toMatchObject({
      finding: 'load',
      weight: 'hard',
      unit: 'fraction',
      original: { typ: 0.25 },
      standIn: { typ: 0.5 },
      limit: { high: 1 },
      margin: 2,
      missing: [],
      sources: ['sheet-of-tried', 'guide'],
      basis: 'common-practice',
      sure: 'likely',
    });
    expect(found?.working).toMatch(/1\sA of 2\sA/u);
  });

  it('is what is missing where nothing is known', () => {
    const [found] = judged(['load', { limit: 100 }], figures.slice(0, 1)).findings;
    expect(found).toMatchObject({
      original: { typ: 0.25 },
      margin: 0,
      missing: ['load-max'],
      sources: ['guide'],
      basis: 'memory',
      sure: 'possible',
    });
    expect(found).not.toHaveProperty('standIn');
    const [nothing] = judged(['load', { limit: 100 }], []).findings;
    expect(nothing).not.toHaveProperty('original');
  });

  it.each<[string, Partial<DeviceFigureRow>, string, number | undefined]>([
    ['ends less than ten times apart', { min: 1, max: 9 }, 'sure', undefined],
    ['ends ten times apart', { min: 1, max: 10 }, 'likely', 10],
    ['ends a hundred times apart', { min: 1, max: 100 }, 'possible', 100],
    ['what is from memory', { typ: 1, basis: 'memory' }, 'possible', undefined],
    // Its basis says as much already.
    ['both', { min: 1, max: 10, basis: 'common-practice' }, 'likely', undefined],
  ])('with %s', (_what, said, sure, apart) => {
    const [found] = judged(['amplifies', { limit: 1 }], [gain('tried', said)]).findings;
    expect(found?.sure).toBe(sure);
    expect(found?.apart).toBe(apart);
  });

  it('of a grade takes no ratio of its ends', () => {
    const resistance = figure('tried', 'contact-resistance', { unit: 'ohm', min: 1, max: 1000 });
    expect(judged(['contact', { limit: 1 }], [resistance]).findings[0]?.sure).toBe('sure');
  });

  it('of nothing at all has a margin that is a number', () => {
    const none = ampere('tried', 'supply-current', { typ: 0 });
    const [found] = judged(['supply-draw', { limit: 1 }], [none]).findings;
    expect(found?.margin).toBe(1e12);
  });
});

describe('the order of stand-ins', () => {
  const ordered = (devices: ReturnType<typeof device>[], figures: DeviceFigureRow[]): string[] => {
    const catalogue = catalogueWith({
      conditions,
      conditionDefinitions,
      findings,
      figures,
      devices,
      demands: [
        demand('load', { limit: 100 }),
        demand('amplifies', { limit: 100, weight: 'strong' }),
        demand('supply-draw', { limit: 1, weight: 'mild' }),
      ],
    });
    return deviceStandIns(catalogue, { original: old, use }).map((one) => one.device.id);
  };
  /** All is met by ten times, and by nothing more than that: alike. */
  const good = (id: string, load = 10, amplification = 1000, draw = 0.1) => [
    ampere(id, 'load-max', { typ: load }),
    gain(id, { typ: amplification }),
    ampere(id, 'supply-current', { typ: draw }),
  ];
  const a = device('a');
  const b = device('b');

  it.each<[string, ReturnType<typeof device>[], DeviceFigureRow[], string[]]>([
    ['by names where all is alike', [b, a], [...good('a'), ...good('b')], ['a', 'b']],
    ['the better verdict', [a, b], [...good('a', 0.5), ...good('b')], ['b', 'a']],
    ['the old number, which is there', [a, old], [...good('a'), ...good('old')], ['old', 'a']],
    ['the wider hard margin', [a, b], [...good('a', 2), ...good('b', 4)], ['b', 'a']],
    ['the wider strong margin', [a, b], [...good('a', 10, 200), ...good('b', 10, 400)], ['b', 'a']],
    [
      'what is easier to buy',
      [device('a', { market: 'niche' }), b],
      [...good('a'), ...good('b')],
      ['b', 'a'],
    ],
    ['the wider mild margin', [a, b], [...good('a', 10, 1000, 0.5), ...good('b')], ['b', 'a']],
    // Ten times better than needed earns no more.
    ['names, beyond ten times', [a, b], [...good('a', 10), ...good('b', 1000)], ['a', 'b']],
    [
      'none that cannot be bought, and none that does something else',
      [device('a', { market: 'old-stock' }), device('c', { function: 'another' }), b],
      [...good('a'), ...good('b'), ...good('c')],
      ['b'],
    ],
  ])('%s', (_what, devices, figures, ids) => {
    expect(ordered(devices, figures)).toEqual(ids);
  });
});
