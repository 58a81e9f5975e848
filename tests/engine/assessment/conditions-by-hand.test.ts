import { describe, expect, test } from 'vitest';
import { plainDefault } from '../../../src/engine/assessment/derived-default.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { ConditionRow } from '../../../src/schemas/positions.ts';
import { at, found, knowledge, row, settled, type Given } from './invented-place.ts';
import { catalogue, known } from './setting.ts';

/** What a position's conditions come to for an old part of 1 µF 100 V, worked out by hand. */

describe('what follows from the old part', () => {
  test.each<[string, string, Given, number]>([
    ['half of 100 V', 'vdc', { rows: [at('vdc', 'rated-voltage', { typ: 0.5 })] }, 50],
    [
      'half of 25 V, which is usual for a type that is often rated far too high',
      'vdc',
      {
        rows: [at('vdc', 'rated-voltage', { typ: 0.5 })],
        type: { old_ample_below: 101, old_v_typical: 25 },
      },
      12.5,
    ],
    [
      'half of its 100 V where 400 V are usual',
      'vdc',
      {
        rows: [at('vdc', 'rated-voltage', { typ: 0.5 })],
        type: { old_ample_below: 500, old_v_typical: 400 },
      },
      50,
    ],
    // 1 / (2π × 20 Hz × 1 µF) = 7958 ohm, of E12 the nearest.
    ['a corner of 20 Hz', 'load', { rows: [at('load', 'corner', { typ: 20 })] }, 8200],
    // Film is given no room; 1 / (2π × 10 Hz × 1 µF) = 15915 ohm for an electrolytic.
    ['20 Hz for film', 'load', { rows: [at('load', 'corner', { min: 10, typ: 20 })] }, 8200],
    [
      '10 Hz for an electrolytic',
      'load',
      { rows: [at('load', 'corner', { min: 10, typ: 20 })], type: { family: 'aluminium' } },
      15e3,
    ],
    [
      '20 Hz for an electrolytic as well, where nothing else is said',
      'load',
      { rows: [at('load', 'corner', { typ: 20 })], type: { family: 'aluminium' } },
      8200,
    ],
    [
      '80 A a farad',
      'charge-current',
      { rows: [at('charge-current', 'value', { typ: 80 })] },
      80e-6,
    ],
    // 1 µF × 100 V over 0.5 s.
    [
      '100 µC over half a second',
      'load-current',
      { rows: [at('load-current', 'charge', { typ: 0.5 })] },
      200e-6,
    ],
    [
      '100 µC over half a second, but no more than 0.1 mA',
      'touch-limit',
      { rows: [at('touch-limit', 'charge', { typ: 0.5, max: 0.1 })] },
      100e-6,
    ],
    [
      '100 µC over half a second, far below 5 mA',
      'touch-limit',
      { rows: [at('touch-limit', 'charge', { typ: 0.5, max: 5 })] },
      200e-6,
    ],
    // 0.8 of 0.8 µF.
    [
      'four fifths of the least of it',
      'needed',
      { rows: [at('needed', 'kept', { typ: 0.8 })] },
      0.64e-6,
    ],
    // A slope of 1000 ppm/K over the 40 K that a row below the first one gives: 0.8 × 0.8 × 0.96.
    [
      'the same in the cold that another row speaks of',
      'needed',
      {
        rows: [at('needed', 'kept', { typ: 0.8 }), row('t-min', { typ: -15 })],
        knows: { ...knowledge, 'temperature-coefficient': known(1e-3) },
      },
      0.6144e-6,
    ],
    // 1 % / (2π × 1 kHz × 1 µF) = 1.592 ohm.
    [
      'twice its resistance at the working frequency',
      'esr-max',
      { rows: [at('esr-max', 'series-resistance', { typ: 2 }), row('f-work', { typ: 1000 })] },
      3.1831,
    ],
    [
      'twice its resistance at 100 kHz where no frequency is known',
      'esr-max',
      { rows: [at('esr-max', 'series-resistance', { typ: 2 })] },
      4,
    ],
    [
      'no more than the row says, where that is more',
      'esr-max',
      {
        rows: [
          at('esr-max', 'series-resistance', { typ: 2, max: 1.5 }),
          row('f-work', { typ: 1000 }),
        ],
      },
      1.5,
    ],
    [
      'the most that it may have',
      'esr-max',
      {
        rows: [at('esr-max', 'worst-resistance', { typ: 5 })],
        knows: { 'esr-100khz': known({ min: 1, typ: 2, max: 8 }) },
      },
      8,
    ],
    [
      'no less than the row says, where that is less',
      'esr-max',
      {
        rows: [at('esr-max', 'worst-resistance', { typ: 5 })],
        knows: { 'esr-100khz': known({ min: 1, typ: 2, max: 3 }) },
      },
      5,
    ],
    [
      'the least that it may have',
      'esr-min',
      {
        rows: [at('esr-min', 'least-resistance', { typ: 5 })],
        knows: { 'esr-100khz': known({ min: 1, typ: 2, max: 8 }) },
      },
      1,
    ],
    [
      'no more than the row says, where that is less than it has at least',
      'esr-min',
      {
        rows: [at('esr-min', 'least-resistance', { typ: 0.5 })],
        knows: { 'esr-100khz': known({ min: 1, typ: 2, max: 8 }) },
      },
      0.5,
    ],
    [
      'no less than the row says where no resistance is known',
      'esr-min',
      { rows: [at('esr-min', 'least-resistance', { typ: 5 })], knows: {} },
      5,
    ],
    [
      'what the row says where no resistance is known',
      'esr-max',
      { rows: [at('esr-max', 'worst-resistance', { typ: 5 })], knows: {} },
      5,
    ],
    [
      'none where no resistance is known',
      'esr-max',
      { rows: [at('esr-max', 'series-resistance', { typ: 2 })], knows: {} },
      0,
    ],
    [
      '1.2 times the direct voltage that another row gives',
      'v-surge',
      {
        rows: [
          at('v-surge', 'direct-voltage', { typ: 1.2 }),
          row('vdc', { follows: 'rated-voltage', typ: 0.5 }),
        ],
      },
      60,
    ],
    [
      '1.2 times the direct voltage that the visitor gives, though the part is made for more',
      'v-surge',
      {
        rows: [
          at('v-surge', 'direct-voltage', { min: 0.9, typ: 1.2, max: 20 }),
          row('vdc', { follows: 'rated-voltage', typ: 0.5 }),
        ],
        conditions: { vdc: 20 },
      },
      24,
    ],
    [
      'nine tenths of the rating with a direct voltage above 20 V',
      'v-surge',
      {
        rows: [
          at('v-surge', 'direct-voltage', { min: 0.9, typ: 1.2, max: 20 }),
          row('vdc', { follows: 'rated-voltage', typ: 0.5 }),
        ],
        conditions: { vdc: 21 },
      },
      90,
    ],
    [
      'none where no direct voltage is asked about',
      'v-surge',
      { rows: [at('v-surge', 'direct-voltage', { typ: 1.2 })] },
      0,
    ],
    // 2π × 1 kHz × 1 µF × 10 V.
    [
      'what 10 V drive through it at 1 kHz',
      'ripple-current',
      {
        rows: [
          at('ripple-current', 'reactive', { typ: 1 }),
          row('vac', { typ: 10 }),
          row('f-work', { typ: 1000 }),
        ],
      },
      0.06283,
    ],
    [
      'no current where no alternating voltage is asked about',
      'ripple-current',
      { rows: [at('ripple-current', 'reactive', { typ: 1 }), row('f-work', { typ: 1000 })] },
      0,
    ],
    [
      'the slope of a type that is chosen for it',
      'tc-old',
      {
        rows: [at('tc-old', 'slope', { typ: 1 })],
        knows: { 'temperature-coefficient': known(-7.5e-4), 'chosen-slope': known(1) },
      },
      -7.5e-4,
    ],
    [
      'no slope of a type that has one by the way, as film has',
      'tc-old',
      {
        rows: [at('tc-old', 'slope', { typ: 1 })],
        knows: { 'temperature-coefficient': known(-2.5e-4) },
      },
      0,
    ],
    [
      'no slope where none is known',
      'tc-old',
      { rows: [at('tc-old', 'slope', { typ: 1 })], knows: { 'chosen-slope': known(1) } },
      0,
    ],
    // 10 ohm of 1.592 µH less 0.159 ohm of 1 µF at 1 MHz, and 3 ohm at worst: √(9.84² + 3²).
    [
      'its impedance at worst',
      'impedance-max',
      { rows: [at('impedance-max', 'impedance', { typ: 1 }), row('f-work', { typ: 1e6 })] },
      10.288,
    ],
    // One ohm of inductance less 1.592 ohm of capacitance at 100 kHz, and 3 ohm: √(0.592² + 3²).
    [
      'its impedance at 100 kHz where no frequency is known',
      'impedance-max',
      { rows: [at('impedance-max', 'impedance', { typ: 1 })] },
      3.0578,
    ],
    [
      'no less than is asked',
      'impedance-max',
      { rows: [at('impedance-max', 'impedance', { typ: 20 }), row('f-work', { typ: 1e6 })] },
      20,
    ],
    [
      'what is asked where no inductance is known',
      'impedance-max',
      { rows: [at('impedance-max', 'impedance', { typ: 1 })], knows: {} },
      1,
    ],
    [
      'twice its height',
      'height-room',
      { rows: [at('height-room', 'body-height', { min: 1.2, typ: 2 }), row('room', { typ: 10 })] },
      0.04,
    ],
    [
      'twice its length',
      'side-room',
      { rows: [at('side-room', 'body-side', { min: 1.5, typ: 2 }), row('room', { typ: 10 })] },
      0.024,
    ],
    [
      'one and a half times a lead pitch of 20 mm',
      'side-room',
      { rows: [at('side-room', 'body-side', { min: 1.5, typ: 2 }), row('room', { typ: 20 })] },
      0.03,
    ],
    [
      'one and a half times the lead pitch that the visitor measured',
      'side-room',
      {
        rows: [at('side-room', 'body-side', { min: 1.5, typ: 2 }), row('room', { typ: 20 })],
        conditions: { room: 0.1 },
      },
      0.15,
    ],
    [
      'half of the peak of 250 V, where a type for direct voltage is marked in alternating volts',
      'vdc',
      {
        rows: [at('vdc', 'rated-voltage', { typ: 0.5 })],
        original: { ratedVoltage: exactly(250), voltageKind: 'ac' },
        type: { old_ample_below: undefined },
      },
      176.777,
    ],
    [
      'half of the peak as well, where the type is for the mains',
      'vdc',
      {
        rows: [at('vdc', 'rated-voltage', { typ: 0.5 })],
        original: { ratedVoltage: exactly(250) },
        type: { old_ample_below: undefined, safety_classes: ['X2'] },
      },
      176.777,
    ],
    // The body is 12 mm long.
    [
      'the usual pitch where the old part is shorter',
      'room',
      { rows: [at('room', 'body-pitch', { typ: 15 })] },
      0.015,
    ],
    [
      'as far as the old part is long',
      'room',
      { rows: [at('room', 'body-pitch', { typ: 10 })] },
      0.012,
    ],
    [
      'the usual pitch where no size is known',
      'room',
      { rows: [at('room', 'body-pitch', { typ: 10 })], bodies: [], knows: {} },
      0.01,
    ],
    [
      'the lead pitch alone where no size is known',
      'height-room',
      {
        rows: [at('height-room', 'body-height', { min: 1.2, typ: 2 }), row('room', { typ: 10 })],
        bodies: [],
      },
      0.012,
    ],
    [
      'its size alone where the place has no lead pitch',
      'height-room',
      { rows: [at('height-room', 'body-height', { min: 1.2, typ: 2 })] },
      0.04,
    ],
  ])('%s: %s', (_what, id, all, wanted) => {
    const { min, typ, max } = found(all, id);
    expect(typ / (wanted || 1)).toBeCloseTo(wanted === 0 ? 0 : 1, 3);
    expect([min, max]).toEqual([typ, typ]);
  });

  test.each(['power', 'rating'] as const)('%s is for other kinds of part', (follows) => {
    expect(() => settled({ rows: [row('vdc', { follows, typ: 1 })] })).toThrow(/vdc.*invented/);
  });
});

describe('a default of the position', () => {
  test.each<[string, Partial<ConditionRow>, [number, number, number]]>([
    ['1 to 4 mA, 2 as usual', { min: 1, typ: 2, max: 4 }, [1e-3, 2e-3, 4e-3]],
    ['2 mA and no more said', { typ: 2 }, [2e-3, 2e-3, 2e-3]],
    ['2 mA, at least 1', { min: 1, typ: 2 }, [1e-3, 2e-3, 2e-3]],
    ['2 mA, at most 4', { typ: 2, max: 4 }, [2e-3, 2e-3, 4e-3]],
    ['nothing', {}, [0, 0, 0]],
  ])('%s', (_what, cells, [min, typ, max]) => {
    expect(plainDefault(catalogue, row('touch-limit', cells))).toEqual({ min, typ, max });
  });
});
