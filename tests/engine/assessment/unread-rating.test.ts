import { describe, expect, test } from 'vitest';
import type { ConditionRow } from '../../../src/schemas/positions.ts';
import { row, settled } from './invented-place.ts';

describe('the rating of an old part whose mark cannot be read', () => {
  // 63 V are usual for the type; 75 and 100 V the next preferred ratings.
  test.each<[string, ConditionRow[], Record<string, number>, number]>([
    ['is the usual one', [row('vdc', { typ: 10 }), row('v-surge', { typ: 63 })], {}, 63],
    [
      'bears what it is switched on with',
      [row('vdc', { typ: 10 }), row('v-surge', { typ: 70 })],
      {},
      75,
    ],
    ['bears the direct voltage', [row('vdc', { typ: 70 }), row('v-surge', { typ: 10 })], {}, 75],
    ['bears the most that may be', [row('vdc', { typ: 10, max: 90 })], {}, 100],
    ['bears what the visitor says', [row('vdc', { typ: 10 })], { vdc: 90 }, 100],
    ['is not asked to bear another voltage', [row('vac', { typ: 500 })], {}, 63],
    [
      'does not follow from what follows from it',
      [row('v-surge', { follows: 'rated-voltage', typ: 5 })],
      {},
      63,
    ],
    [
      'bears 1.2 times the direct voltage',
      [row('vdc', { typ: 10 }), row('v-surge', { follows: 'direct-voltage', typ: 1.2 })],
      { vdc: 60 },
      75,
    ],
    [
      'does not follow from a direct voltage that says too little',
      [
        row('vdc', { typ: 10 }),
        row('v-surge', { follows: 'direct-voltage', min: 0.9, typ: 5, max: 9 }),
      ],
      {},
      63,
    ],
    [
      'does not follow from a direct voltage that follows from it',
      [
        row('vdc', { follows: 'rated-voltage', typ: 0.5 }),
        row('v-surge', { follows: 'direct-voltage', typ: 5 }),
      ],
      {},
      63,
    ],
  ])('%s', (_what, rows, conditions, volts) => {
    const { original } = settled({ rows, conditions, original: { ratedVoltage: undefined } });
    expect(original.ratedVoltage).toBe(volts);
  });
});
