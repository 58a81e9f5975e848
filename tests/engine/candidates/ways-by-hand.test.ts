import { describe, expect, test } from 'vitest';
import type { Judged } from '../../../src/engine/assessment/finding.ts';
import type { OfferedPart, Part } from '../../../src/engine/assessment/parts.ts';
import { tryOut } from '../../../src/engine/assessment/rank.ts';
import type { Catalogue } from '../../../src/engine/catalogue.ts';
import type { Verdict } from '../../../src/engine/assessment/verdict.ts';
import {
  combinedParts,
  PROPERTIES_FOR_COMBINING,
} from '../../../src/engine/candidates/combinations.ts';
import { offeredParts, unofferedPart } from '../../../src/engine/candidates/generate.ts';
import { leakOf } from '../../../src/engine/findings/insulation.ts';
import type { Limit } from '../../../src/engine/findings/model.ts';
import { reverseWithstood } from '../../../src/engine/findings/reverse.ts';
import type { CombinationRow } from '../../../src/schemas/combinations.ts';
import type { OfferRow } from '../../../src/schemas/types.ts';
import { judged } from '../assessment/judged.ts';
import { catalogue, given, known, notKnown } from '../assessment/setting.ts';
import { base, single } from '../findings/by-hand.ts';
import { PROBE, probeIn, type Spoiling } from '../findings/probe.ts';

/** Which ways of making a stand-in are tried for what a part lacks, and which parts are offered. */

const template = catalogue.offers[0];
if (template === undefined) throw new Error('no offers');
const offer = (more: Partial<OfferRow> = {}): OfferRow => ({
  ...template,
  ...{ type: PROBE, style: 'radial can', series: 'E6', voltage_kind: 'dc' },
  ...{ c_min: 1e-9, c_max: 1e-3, voltages: [25, 50, 100], tolerances: ['20'] },
  ...more,
});

/** For 5 µF, 4 to 6 of which will do, at 20 V. */
const place = ({ tables, conditions, ...more }: Spoiling = {}) =>
  probeIn(base, {
    original: { capacitance: 5e-6, ratedVoltage: 63 },
    position: { value_policy: 'window', value_low: 0.8, value_high: 1.2, safety: [] },
    ...more,
    conditions: { ...given({ vdc: 20, vac: 0, 'v-surge': 0, 't-max': 25 }), ...conditions },
    tables: { offers: [offer()], derating: [], categoryVoltages: [], ...tables },
  }).circumstances;

/** A finding that earns a verdict. */
const lack = (finding: string, verdict: Verdict, limit: Limit = {}): Judged => {
  const one = judged('strong', verdict === 'fits' ? 0.5 : 2);
  return { ...one, row: { ...one.row, id: finding }, verdict, limit };
};

const WINDOW: Limit = { low: 1, high: 10 };
const box: Part = { ...single, capacitance: 4.7e-6, ratedVoltage: 25 };

interface Asked extends Spoiling {
  single?: Part;
  nonPolarServes?: boolean;
}

const made = (
  lacks: Judged[],
  { single: part = box, nonPolarServes = false, ...more }: Asked = {},
) => [...combinedParts(tryOut(part, lacks), place(more), () => nonPolarServes)];
const kinds = (parts: OfferedPart[]): string[] => [
  ...new Set(parts.map((part) => part.made?.kind ?? 'single')),
];

/** The combinations of the tables, one of which mends other findings. */
const mending = (way: CombinationRow['id'], ...mends: string[]): Catalogue['combinations'] => {
  const row = catalogue.combinations[way];
  if (row === undefined) throw new Error(`no combination ${way}`);
  return { ...catalogue.combinations, [way]: { ...row, mends } };
};

describe('what a single part lacks is mended', () => {
  test.each<[string, Judged[], Asked, string[]]>([
    ['a value by two in parallel', [lack('value', 'stopgap')], {}, ['parallel']],
    ['what nobody makes likewise', [lack('availability', 'stopgap')], {}, ['parallel']],
    ['a corner likewise', [lack('filter-shift', 'stopgap')], {}, ['parallel']],
    ['a resonance likewise', [lack('tuning-shift', 'stopgap')], {}, ['parallel']],
    ['a rating by two in series', [lack('rated-voltage', 'keep-out')], {}, ['series']],
    ['a margin likewise', [lack('voltage-margin', 'stopgap')], {}, ['series']],
    ['an alternating voltage likewise', [lack('ac-voltage', 'stopgap')], {}, ['series']],
    ['a polarity by two back to back', [lack('polarity', 'keep-out')], {}, ['back-to-back']],
    ['a reverse voltage likewise', [lack('reverse-voltage', 'stopgap')], {}, ['back-to-back']],
    ['a resistance by a resistor', [lack('esr-window', 'stopgap', WINDOW)], {}, ['with-resistor']],
    [
      'a level likewise',
      [lack('level-shift', 'fits-if', { high: 0.5 })],
      { conditions: given({ 'f-work': 1e5, load: 8, 'esr-old': 2 }) },
      ['with-resistor'],
    ],
    [
      'two lacks in both ways',
      [lack('value', 'stopgap'), lack('rated-voltage', 'keep-out')],
      {},
      ['parallel', 'series'],
    ],
    ['nothing that cannot be', [lack('leakage-current', 'stopgap')], {}, []],
    [
      'that as well where the tables say so',
      [lack('leakage-current', 'stopgap')],
      { tables: { combinations: mending('series', 'leakage-current') } },
      ['series'],
    ],
    [
      'nothing that they do not say',
      [lack('value', 'stopgap')],
      { tables: { combinations: mending('parallel') } },
      [],
    ],
    [
      'nothing beside what keeps it out',
      [lack('value', 'stopgap'), lack('leakage-current', 'keep-out')],
      {},
      [],
    ],
    [
      'a value beside what is only a condition',
      [lack('value', 'stopgap'), lack('leakage-current', 'fits-if')],
      {},
      ['parallel'],
    ],
    [
      'no value where a condition stands that is as bad',
      [lack('value', 'fits-if'), lack('leakage-current', 'fits-if')],
      {},
      [],
    ],
    [
      'a resistance where a condition stands that is as bad',
      [lack('esr-window', 'fits-if', WINDOW), lack('leakage-current', 'fits-if')],
      {},
      ['with-resistor'],
    ],
    ['nothing where it lacks nothing', [lack('value', 'fits')], {}, []],
    [
      'not what is met beside what is not',
      [lack('value', 'fits'), lack('rated-voltage', 'keep-out')],
      {},
      ['series'],
    ],
    [
      'no resistance beside what makes it a stopgap',
      [lack('esr-window', 'stopgap', WINDOW), lack('leakage-current', 'stopgap')],
      {},
      [],
    ],
    ['no polarity where a film does', [lack('polarity', 'keep-out')], { nonPolarServes: true }, []],
    [
      'no polarity where the voltage alternates all the time',
      [lack('polarity', 'keep-out')],
      { position: { voltage_sense: 'ac', value_low: 0.8, value_high: 1.2 } },
      [],
    ],
    [
      'no polarity of a type that bears none the wrong way round',
      [lack('polarity', 'keep-out')],
      { figures: { 'reverse-voltage': known(0) } },
      [],
    ],
    [
      'no polarity of a type of which that is not known',
      [lack('polarity', 'keep-out')],
      { figures: { 'reverse-voltage': notKnown } },
      [],
    ],
    [
      'neither polarity nor rating where an approval is asked',
      [lack('polarity', 'keep-out'), lack('rated-voltage', 'keep-out')],
      { position: { safety: ['X2'], value_low: 0.8, value_high: 1.2 } },
      [],
    ],
    [
      'no rating of parts for AC',
      [lack('rated-voltage', 'keep-out')],
      { tables: { offers: [offer({ voltage_kind: 'ac' })] } },
      [],
    ],
    [
      'no resistance of a part that nobody offers',
      [lack('esr-window', 'stopgap', WINDOW)],
      { single: unofferedPart(PROBE, place()) },
      [],
    ],
    [
      'no resistance where that of the part is not known',
      [lack('esr-window', 'stopgap', WINDOW)],
      {
        figures: {
          ...{ 'esr-100khz': notKnown, 'dissipation-factor-120hz': notKnown },
          ...{ 'dissipation-factor-1khz': notKnown, 'dissipation-factor-1mhz': notKnown },
        },
      },
      [],
    ],
  ])('%s', (_what, lacks, asked, ways) => {
    expect(kinds(made(lacks, asked))).toEqual(ways);
  });

  const micro = ({ capacitance }: Part): number => Number((capacitance * 1e6).toPrecision(6));

  // Of 10 µF two make 5; 6.8 and 15 µF make 3.4 and 7.5, which are too far off.
  test('by two halves that come nearest, of the lowest rating first', () => {
    const pairs = made([lack('rated-voltage', 'keep-out')], {
      tables: {
        offers: [offer({ voltages: [50] }), offer({ voltages: [25] }), offer({ voltages: [100] })],
      },
    });
    expect(pairs.map(({ made: how }) => how?.parts[0]?.ratedVoltage)).toEqual([25, 50]);
    expect(pairs.map(micro)).toEqual([5, 5]);
  });

  // E12 has 8.2, 10 and 12 µF: 4.1, 5 and 6; 8.2 is as far below 10 as 12 is above it, by ratio nearer.
  test('by the nearest half first, then the next', () => {
    const pairs = made([lack('polarity', 'keep-out')], {
      tables: { offers: [offer({ series: 'E12', voltages: [25] })] },
    });
    expect(pairs.map(micro)).toEqual([5, 6]);
  });

  // Half of 20 V and a tenth, for one of ±20 % takes 0.6 of them: 12 V.
  test('by halves of a rating that the whole would not have', () => {
    const pairs = made([lack('rated-voltage', 'keep-out')], {
      tables: { offers: [offer({ voltages: [16] })] },
    });
    expect(pairs[0]?.ratedVoltage).toBeCloseTo(16 / 0.6, 9);
  });

  // 2 V over 8 ohm: 0.25 A; of the resistor in the middle of 1 to 8.2 ohm, 0.21 W: one of 0.5 W.
  test.each<[string, Record<string, number>, number | undefined]>([
    ['a signal into its load', { signal: 2, load: 8 }, 0.5],
    ['twice the signal', { signal: 4, load: 8 }, 2],
    ['half the load', { signal: 2, load: 4 }, 2],
  ])('by a resistor that bears %s', (_what, conditions, power) => {
    const [part] = made([lack('esr-window', 'stopgap', WINDOW)], {
      figures: { 'esr-100khz': known(1e-3) },
      conditions: given(conditions),
    });
    expect(part?.made?.resistor).toBeCloseTo(3.3, 9);
    expect(part?.made?.power).toBe(power);
  });

  test('by a resistor for the window that is missed, not for one that is met', () => {
    const parts = made([
      lack('esr-window', 'fits', { low: 50, high: 60 }),
      lack('esr-window', 'stopgap', WINDOW),
    ]);
    expect(parts.map((part) => (part.made?.resistor ?? NaN) < 10)).toEqual([true]);
  });

  test('names all properties that pairs are reckoned by', () => {
    const read = new Set<string>();
    const circumstances = place();
    const own = circumstances.catalogue.knowledge[PROBE] ?? {};
    const watched = {
      ...circumstances.catalogue.knowledge,
      [PROBE]: new Proxy(own, {
        get: (target, id: string) => {
          read.add(id);
          return target[id];
        },
      }),
    };
    const seen = {
      ...circumstances,
      catalogue: { ...circumstances.catalogue, knowledge: watched },
    };
    leakOf(single, seen, 10);
    reverseWithstood(single, seen);
    expect([...read].toSorted()).toEqual([...PROPERTIES_FOR_COMBINING].toSorted());
  });
});

describe('what is offered', () => {
  const offered = (offers: OfferRow[], more: Spoiling = {}): string[] => {
    const circumstances = place({ ...more, tables: { offers, ...more.tables } });
    return offeredParts(circumstances.catalogue, PROBE, circumstances).map((part) =>
      [
        Number((part.capacitance * 1e6).toPrecision(6)),
        part.ratedVoltage,
        part.tolerance.plus,
      ].join(' '),
    );
  };
  const one = { c_min: 4.7e-6, c_max: 4.7e-6 };

  test.each<[string, OfferRow[], Spoiling, string[]]>([
    ['the rating that serves and the next', [offer(one)], {}, ['4.7 25 0.2', '4.7 50 0.2']],
    [
      'the rating that just serves',
      [offer(one)],
      { conditions: given({ vdc: 25 }) },
      ['4.7 25 0.2', '4.7 50 0.2'],
    ],
    [
      'the highest where none serves',
      [offer(one)],
      { conditions: given({ vdc: 200 }) },
      ['4.7 100 0.2'],
    ],
    [
      'of two that are as usual the looser, then the lower rating',
      [
        offer({ ...one, tolerances: ['5'], voltages: [25] }),
        offer({ ...one, tolerances: ['20'], voltages: [50] }),
        offer({ ...one, tolerances: ['20'], voltages: [25] }),
      ],
      {},
      ['4.7 25 0.2', '4.7 50 0.2', '4.7 25 0.05'],
    ],
    [
      'the usual tolerance before the looser',
      [offer({ ...one, tolerances: ['5', '20'], voltages: [25] })],
      {},
      ['4.7 25 0.05', '4.7 25 0.2'],
    ],
    [
      'the nearer value before the lower rating',
      [offer({ ...one, c_max: 6.8e-6, voltages: [25, 50] })],
      { position: { value_policy: 'window', value_low: 0.5, value_high: 2 } },
      ['4.7 25 0.2', '4.7 50 0.2', '6.8 25 0.2', '6.8 50 0.2'],
    ],
    [
      'no rating that is absurdly high where the type is chosen near its voltage',
      [offer({ ...one, voltages: [25] }), offer({ ...one, voltages: [91] })],
      { type: { old_ample_below: undefined }, conditions: given({ vdc: 6 }) },
      ['4.7 25 0.2'],
    ],
    [
      'fifteen times as much is the most',
      [offer({ ...one, voltages: [25] }), offer({ ...one, voltages: [90] })],
      { type: { old_ample_below: undefined }, conditions: given({ vdc: 6 }) },
      ['4.7 25 0.2', '4.7 90 0.2'],
    ],
    [
      'three times as much above 100 V',
      [offer({ ...one, voltages: [40] }), offer({ ...one, voltages: [120] })],
      { type: { old_ample_below: undefined }, conditions: given({ vdc: 40 }) },
      ['4.7 40 0.2', '4.7 120 0.2'],
    ],
    [
      'no more than that above 100 V: a can for valves on a rail of transistors',
      [offer({ ...one, voltages: [40] }), offer({ ...one, voltages: [121] })],
      { type: { old_ample_below: undefined }, conditions: given({ vdc: 40 }) },
      ['4.7 40 0.2'],
    ],
    [
      'any where the type is often rated far too high',
      [offer({ ...one, voltages: [25] }), offer({ ...one, voltages: [301] })],
      { type: { old_ample_below: 500 } },
      ['4.7 25 0.2', '4.7 301 0.2'],
    ],
    [
      'an absurd one where there is no other',
      [offer({ ...one, voltages: [301] })],
      { type: { old_ample_below: undefined } },
      ['4.7 301 0.2'],
    ],
    [
      'none with screws where another bears as much',
      [
        offer({ ...one, voltages: [40], style: 'snap-in can' }),
        offer({ ...one, voltages: [63], style: 'screw-terminal can' }),
      ],
      {},
      ['4.7 40 0.2'],
    ],
    [
      'one with screws where no other bears as much',
      [
        offer({ ...one, voltages: [40], style: 'snap-in can' }),
        offer({ ...one, voltages: [63], style: 'screw-terminal can' }),
      ],
      { conditions: given({ vdc: 50 }) },
      ['4.7 40 0.2', '4.7 63 0.2'],
    ],
    ['nothing of no value', [offer({ c_min: 4.8e-6, c_max: 5e-6 })], {}, []],
  ])('%s', (_what, offers, more, parts) => {
    expect(offered(offers, more)).toEqual(parts);
  });

  test('of a type that nobody has written of has the rating of the old part', () => {
    expect(unofferedPart('unheard-of', place())).toEqual({
      type: 'unheard-of',
      capacitance: 5e-6,
      tolerance: { minus: 0.2, plus: 0.2 },
      ratedVoltage: 63,
      voltageKind: 'dc',
    });
  });
});
