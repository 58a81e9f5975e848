import { describe, expect, test } from 'vitest';
import { readMarking } from '../../../../src/engine/markings/index.ts';
import { catalogue } from '../tables.ts';

const measured = (text: string) => readMarking(catalogue, text).map((each) => each.measured);

describe('what a meter reads', () => {
  test('47K: 47 pF with its 10 %, 47 kohm, 47 nF with 20 % taken', () => {
    const [picofarads, ohms, nanofarads] = measured('47K');
    expect(picofarads).toMatchObject({ with: '1 kHz', overlaps: false });
    expect(picofarads).not.toHaveProperty('toleranceTaken');
    expect((picofarads?.range.min ?? NaN) / 42.3e-12).toBeCloseTo(1, 9);
    expect((picofarads?.range.max ?? NaN) / 51.7e-12).toBeCloseTo(1, 9);
    expect(nanofarads).toMatchObject({ with: '1 kHz', toleranceTaken: 0.2 });
    expect((nanofarads?.range.max ?? NaN) / 56.4e-9).toBeCloseTo(1, 9);
    expect(ohms?.with).toBe('dc');
  });

  test('large values are measured at 100 or 120 Hz', () => {
    expect(measured('47µ 16V')[0]?.with).toBe('100 or 120 Hz');
  });

  test('values near each other overlap, and the meter does not settle them', () => {
    const found = measured('1?3K').slice(0, 4);
    expect(found.map((each) => each?.overlaps)).toEqual([true, true, true, true]);
    expect(measured('470')[0]?.overlaps).toBe(false);
  });

  test('the range of a trimmer is what it may be set to', () => {
    const [found] = measured('4-20 pF');
    expect(found?.range).toMatchObject({ min: 4e-12, max: 20e-12 });
    expect(found).not.toHaveProperty('toleranceTaken');
  });

  test('several sections have no one value', () => {
    expect(measured('16+16 µF 450V')).toEqual([undefined]);
  });
});
