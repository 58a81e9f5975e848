import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import { filledDeviceSum } from '../../../src/engine/devices/filled-sum.ts';
import { deviceModels } from '../../../src/engine/devices/models/index.ts';
import { parseQuantity, type Unit } from '../../../src/engine/quantities/index.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import type { DeviceFigureRow, DeviceSumInputRow } from '../../../src/schemas/devices.ts';
import { catalogueWith, device, figure, finding, use } from './made-up.ts';

/** What the fields of a bench sum are filled with for made-up devices, worked by hand. */

const three = (min: number, typ: number, max: number): Range => ({ min, typ, max });

const figures: DeviceFigureRow[] = [
  figure('tried', 'offset', { min: 1, typ: 2, max: 4, unit: 'mV' }),
  figure('tried', 'leak', { min: 1, typ: 2, max: 3, unit: 'nA' }),
  figure('tried', 'bias', { min: 1, typ: 2, max: 3, unit: 'nA' }),
  figure('tried', 'fet-input', { typ: 1, unit: '1' }),
  figure('old', 'bias', { typ: 80, unit: 'nA' }),
  figure('old', 'fet-input', { typ: 0, unit: '1' }),
  figure('tried', 'loses', { at: 1, typ: 2 }),
  figure('tried', 'loses', { at: 4, typ: 8 }),
  figure('tried', 'charge-injection', { typ: 20, unit: 'pC' }),
];

const takes = (
  of: string,
  kind: DeviceSumInputRow['takes'],
  said: Partial<DeviceSumInputRow> = {},
): DeviceSumInputRow => ({ sum: 'made', input: 'x', takes: kind, of, at: '', for: [], ...said });

const found = { finding: 'asked', standIn: exactly(1) } as Finding;

const filled = (
  sumInputs: DeviceSumInputRow[],
  conditions: Record<string, number> = {},
  asked: Finding = found,
  rows = figures,
) =>
  filledDeviceSum(asked, device('tried'), {
    catalogue: catalogueWith({
      figures: rows,
      sumInputs,
      findings: [finding('asked', { sum: 'made' }), finding('other', { sum: '' })],
      properties: ['offset', 'leak', 'bias', 'loses'].map((id) => ({
        ...catalogueWith({}).devices.properties[0],
        id,
        unit: id === 'offset' ? 'mV' : id === 'loses' ? 'V' : 'nA',
      })) as ReturnType<typeof catalogueWith>['devices']['properties'],
      conditionDefinitions: [
        { ...catalogueWith({}).devices.conditionDefinitions[0], id: 'step', unit: 'mV' },
      ] as ReturnType<typeof catalogueWith>['devices']['conditionDefinitions'],
    }),
    use,
    original: device('old'),
    conditions: Object.fromEntries(
      Object.entries(conditions).map(([id, number]) => [id, exactly(number)]),
    ),
  });

/** What a field says, as it would be read. */
const readAs = (text: string | undefined, unit: Unit): Range | undefined => {
  const read = parseQuantity(text ?? '', unit);
  return read.ok ? read.value : undefined;
};

describe('one field', () => {
  it.each<[string, DeviceSumInputRow, Unit, Range, Record<string, number>?]>([
    ['a figure of the device', takes('offset', 'property'), 'V', three(1e-3, 2e-3, 4e-3)],
    [
      'one that need not be known, where it is',
      takes('offset', 'property-if-known'),
      'V',
      three(1e-3, 2e-3, 4e-3),
    ],
    // Between 2 V at 1 A and 8 V at 4 A, on logarithmic scales 4 V at 2 A.
    [
      'a figure at a number of the use',
      takes('loses', 'property', { at: 'amperes' }),
      'V',
      exactly(4),
      { amperes: 2 },
    ],
    ['a number of the use', takes('step', 'condition'), 'V', exactly(0.25), { step: 0.25 }],
    ['a leakage at 25 °C', takes('leak', 'warm-leakage'), 'A', three(1e-9, 2e-9, 3e-9)],
    // Doubled every ten kelvin.
    ['at 45 °C', takes('leak', 'warm-leakage'), 'A', three(4e-9, 8e-9, 12e-9), { temperature: 45 }],
    [
      'a bias current through a gate, at 45 °C',
      takes('bias', 'bias'),
      'A',
      three(4e-9, 8e-9, 12e-9),
      { temperature: 45 },
    ],
    [
      'that of the old one into a base, which heat does not double',
      takes('bias', 'old-bias'),
      'A',
      exactly(80e-9),
      { temperature: 45 },
    ],
    ['the charge that a switch injects', takes('', 'charge'), 'C', exactly(20e-12)],
  ])('%s', (_what, row, unit, expected, conditions) => {
    const { sum, inputs = {} } = filled([row], conditions) ?? {};
    expect(sum).toBe('made');
    const got = readAs(inputs['x'], unit);
    for (const end of ['min', 'typ', 'max'] as const)
      expect((got?.[end] ?? NaN) / expected[end], `${end} of ${String(inputs['x'])}`).toBeCloseTo(
        1,
        6,
      );
  });

  it('words as they are', () => {
    expect(filled([takes('pulse', 'words')])).toEqual({ sum: 'made', inputs: { x: 'pulse' } });
  });

  it('is left empty where a figure need not be known', () => {
    expect(
      filled([takes('unheard', 'property-if-known'), takes('pulse', 'words', { input: 'y' })]),
    ).toEqual({
      sum: 'made',
      inputs: { y: 'pulse' },
    });
  });
});

describe('no sum at all', () => {
  it.each<[string, DeviceSumInputRow]>([
    ['without a figure', takes('unheard', 'property')],
    ['without a number of the use', takes('step', 'condition')],
    ['without a leakage', takes('unheard', 'warm-leakage')],
    ['without a bias current', takes('unheard', 'bias')],
  ])('%s', (_what, row) => {
    expect(filled([row, takes('pulse', 'words', { input: 'y' })])).toBeUndefined();
  });

  it('where nobody says whether a gate or a base takes the bias current', () => {
    const rows = figures.filter(({ property }) => property !== 'fet-input');
    expect(filled([takes('bias', 'bias')], {}, found, rows)).toBeUndefined();
  });

  it('without a charge, nor what couples', () => {
    const rows = figures.filter(({ property }) => property !== 'charge-injection');
    expect(filled([takes('', 'charge')], { supply: 10 }, found, rows)).toBeUndefined();
    // 3 pF with 10 V on their other end inject 30 pC.
    const coupled = [...rows, figure('tried', 'feedthrough-capacitance', { typ: 3, unit: 'pF' })];
    const { inputs = {} } = filled([takes('', 'charge')], { supply: 10 }, found, coupled) ?? {};
    expect(readAs(inputs['x'], 'C')?.typ).toBeCloseTo(30e-12, 18);
  });

  it('of a finding that leads to none, that there is not, or that has no number', () => {
    const row = takes('pulse', 'words');
    expect(filled([row], {}, { ...found, finding: 'other' })).toBeUndefined();
    expect(filled([row], {}, { ...found, finding: 'unheard' })).toBeUndefined();
    const { standIn, ...unknown } = found;
    expect(standIn).toBeDefined();
    expect(filled([row], {}, unknown as Finding)).toBeUndefined();
  });
});

describe('rows', () => {
  it('of another sum, or for another finding, fill nothing', () => {
    const rows = [
      takes('one', 'words', { input: 'a', sum: 'elsewhere' }),
      takes('two', 'words', { input: 'b', for: ['unheard'] }),
      takes('three', 'words', { input: 'c', for: ['unheard', 'asked'] }),
      takes('four', 'words', { input: 'd' }),
    ];
    expect(filled(rows)?.inputs).toEqual({ c: 'three', d: 'four' });
  });
});

describe('a figure that goes with a current', () => {
  const at = (id: string, property: string, conditions: Record<string, number>) => {
    const model = deviceModels[id];
    const outcome = model?.measure(device('tried'), {
      catalogue: catalogueWith({
        figures: [
          figure('tried', property, { at: 1, typ: 2, basis: 'memory' }),
          figure('tried', property, { at: 4, typ: 8 }),
        ],
      }),
      use,
      original: device('old'),
      conditions: Object.fromEntries(
        Object.entries(conditions).map(([key, number]) => [key, exactly(number)]),
      ),
    });
    return outcome?.status === 'known' ? [outcome.value.typ, outcome.bases] : undefined;
  };

  // 2 V at 1 A and 8 V at 4 A are 4 V at 2 A, and 8 V beyond.
  it.each([
    ['drop', 'drop', { 'load-current': 2 }, 4],
    ['drop', 'drop', { 'load-current': 1 }, 2],
    ['drop', 'drop', { 'load-current': 9 }, 8],
    ['headroom', 'dropout', { 'load-current': 2, 'headroom-low': 8 }, 2],
  ])('%s by %s at %o', (id, property, conditions, value) => {
    expect(at(id, property, conditions)?.[0]).toBeCloseTo(value, 9);
  });

  it('rests on the weaker of the two that it is read between', () => {
    expect(at('drop', 'drop', { 'load-current': 2 })?.[1]).toEqual(['memory']);
    expect(at('drop', 'drop', { 'load-current': 4 })?.[1]).toEqual(['published']);
  });
});
