import { describe, expect, test } from 'vitest';
import { assess, type Assessment, type Candidate } from '../../../src/engine/index.ts';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, given } from '../assessment/setting.ts';
import { findingOf, workingOf } from '../assessment/finding-of.ts';

const judged = (
  position: string,
  original: { type: string; capacitance: number; ratedVoltage: number },
  candidate: Candidate,
  conditions: Record<string, number> = {},
): Assessment =>
  assess(
    catalogue,
    {
      original: {
        type: original.type,
        capacitance: exactly(original.capacitance),
        ratedVoltage: exactly(original.ratedVoltage),
      },
      position,
      conditions: given(conditions),
    },
    { capacitance: original.capacitance, ...candidate },
  );

describe('drift of pitch with a resistor', () => {
  const old = { type: 'ps-film-foil', capacitance: 1e-9, ratedVoltage: 125 };
  const centsWith = (type: string, ppm: number): Finding =>
    findingOf(judged('vco-timing', old, { type }, { 'resistor-tc': ppm * 1e-6 }), 'pitch-drift');

  test('is that of the part alone where the resistor is stable', () => {
    expect(centsWith('ps-film-foil', 0).working).not.toContain('resistor');
  });

  test('is less with polystyrene and its balancing resistor, and more with polyester', () => {
    const typical = (type: string, ppm: number): number => centsWith(type, ppm).standIn?.typ ?? NaN;
    expect(typical('ps-film-foil', 120)).toBeLessThan(typical('ps-film-foil', 0));
    expect(typical('pet-metallized', 120)).toBeGreaterThan(typical('pet-metallized', 0));
  });

  test('a stable part turns the balance of the old one into an error', () => {
    expect(centsWith('ceramic-c0g', 0).verdict).toBe('fits');
    expect(centsWith('ceramic-c0g', 300).verdict).toBe('stopgap');
    expect(centsWith('ceramic-c0g', 300).working).toContain('alone');
  });
});

describe('shift of a corner', () => {
  const old = { type: 'pet-metallized', capacitance: 1e-8, ratedVoltage: 100 };

  test('is small for a stable part and large for a class 2 ceramic', () => {
    expect(
      findingOf(judged('active-filter', old, { type: 'ceramic-c0g' }), 'filter-shift'),
    ).toMatchObject({ verdict: 'fits' });
    const { standIn } = findingOf(
      judged('active-filter', old, { type: 'ceramic-z5u' }),
      'filter-shift',
    );
    expect(standIn?.max).toBeGreaterThan(0.5);
  });

  test('moves half as far with a coil', () => {
    const tuned = { type: 'silvered-mica', capacitance: 2.2e-10, ratedVoltage: 500 };
    const { standIn } = findingOf(
      judged('rf-tuned-circuit', tuned, {
        type: 'silvered-mica',
        tolerance: { minus: 0.02, plus: 0 },
      }),
      'tuning-shift',
    );
    expect(standIn?.max).toBeGreaterThan(0.01);
    expect(standIn?.max).toBeLessThan(0.02);
  });
});

describe('a hold capacitor', () => {
  const old = { type: 'ps-film-foil', capacitance: 1e-8, ratedVoltage: 125 };
  const timing = {
    'switch-resistance': 300,
    'settle-time': 15e-6,
    step: 5,
    'error-budget': 0.008,
    'charge-injected': 100e-12,
  };
  const holding = (capacitance: number): Assessment =>
    judged('sample-hold', old, { type: 'pp-metallized', capacitance }, timing);

  test('a small one takes the larger step, a large one does not settle', () => {
    expect(findingOf(holding(4.7e-9), 'hold-step').verdict).toBe('stopgap');
    expect(findingOf(holding(4.7e-9), 'acquisition').verdict).toBe('fits');
    expect(findingOf(holding(4.7e-8), 'hold-step').verdict).toBe('fits');
    expect(findingOf(holding(4.7e-8), 'acquisition').verdict).toBe('stopgap');
  });

  test('the workings carry the numbers', () => {
    expect(workingOf(holding(1e-8), 'hold-step')).toMatch(
      /^100 pC \/ .*nF = .*mV; as a pitch at 1\sV\/octave .*cents$/,
    );
    expect(workingOf(holding(1e-8), 'acquisition')).toMatch(
      /^ln\(5 V \/ 8 mV\) = 6\.44 time constants of \(300 Ω \+ 0\.\d+–0\.\d+ Ω for its value and voltage\) × .*nF: .*µs$/,
    );
  });
});

describe('parts at the mains', () => {
  const y = { type: 'ceramic-y-safety', capacitance: 1e-8, ratedVoltage: 250 };
  const x = { type: 'film-x2', capacitance: 1e-7, ratedVoltage: 275 };

  test('too much current through a person keeps a part out, by the worst part', () => {
    const touched = (limit: number): Finding =>
      findingOf(
        judged('mains-y', y, { type: 'film-y2' }, { vac: 230, 'touch-limit': limit }),
        'touch-current',
      );
    expect(touched(0.25e-3).verdict).toBe('keep-out');
    expect(touched(3.5e-3).verdict).toBe('fits');
    // 0.72 mA as marked, more with the tolerance.
    expect(touched(0.73e-3).verdict).toBe('keep-out');
  });

  test('a part without a discharge resistor is told', () => {
    const bare = judged('mains-x', x, { type: 'film-x2' }, { bleeder: 1e9 });
    expect(findingOf(bare, 'discharge').verdict).toBe('keep-out');
    expect(findingOf(bare, 'residual-voltage').verdict).toBe('stopgap');
  });

  test('one rule can be met and the other not', () => {
    const household = { bleeder: 7.5e6, 'discharge-time': 1, 'residual-allowed': 34, vac: 230 };
    const both = judged(
      'mains-x',
      x,
      { type: 'film-x2', tolerance: { minus: 0.1, plus: 0.1 } },
      household,
    );
    expect(findingOf(both, 'discharge').verdict).toBe('fits');
    expect(findingOf(both, 'residual-voltage').verdict).toBe('stopgap');
    expect(workingOf(both, 'residual-voltage')).toBe(
      '325 V × exp(−1 s / 825 ms) = 96.8 V at worst; down to 34 V in 1.86 s',
    );
  });
});

describe('reverse voltage', () => {
  const old = { type: 'al-electrolytic-wet', capacitance: 1e-5, ratedVoltage: 25 };
  const reversed = (type: string, volt: number): Finding =>
    findingOf(
      judged('interstage-coupling', old, { type }, { 'v-reverse': volt }),
      'reverse-voltage',
    );

  test.each([
    ['al-electrolytic-wet', 0, 'fits'],
    ['al-electrolytic-wet', 0.5, 'fits'],
    ['al-electrolytic-wet', 3, 'keep-out'],
    ['ta-mno2-solid', 2, 'keep-out'],
    ['al-electrolytic-bipolar', 10, 'fits'],
    ['pet-metallized', 10, 'fits'],
  ])('%s with %d V the wrong way round: %s', (type, volt, verdict) => {
    expect(reversed(type, volt).verdict).toBe(verdict);
  });
});

describe('alternating voltage', () => {
  const old = { type: 'pp-metallized', capacitance: 1e-8, ratedVoltage: 1000 };
  const alternating = (type: string, ratedVoltage: number, volt: number): Finding =>
    findingOf(judged('snubber', old, { type, ratedVoltage }, { vac: volt }), 'ac-voltage');

  test('a higher rating for DC buys little for AC', () => {
    expect(alternating('pet-metallized', 250, 100).verdict).toBe('fits');
    expect(alternating('pet-metallized', 63, 100).verdict).toBe('stopgap');
    expect(alternating('pet-metallized', 1000, 300).verdict).toBe('stopgap');
  });

  test('does not judge kinds that go by the peak', () => {
    expect(alternating('silvered-mica', 500, 300).standIn).toEqual(exactly(0));
  });
});

describe('self-resonance', () => {
  const old = { type: 'ceramic-z5u', capacitance: 1e-7, ratedVoltage: 50 };

  test('a smaller part resonates higher', () => {
    const at = (capacitance: number): number =>
      findingOf(
        judged('local-decoupling', old, { type: 'ceramic-x7r', capacitance }),
        'self-resonance',
      ).standIn?.typ ?? NaN;
    expect(at(1e-8)).toBeCloseTo(at(1e-6) * 10, -3);
  });

  test('a stand-in as good as the old part is good enough', () => {
    const slow = { ...old, type: 'al-electrolytic-wet', capacitance: 1e-5 };
    const same = judged('local-decoupling', slow, { type: 'al-electrolytic-wet' });
    expect(findingOf(same, 'self-resonance').verdict).toBe('fits');
  });
});

describe('insulation of small parts', () => {
  const leaking = (type: string, capacitance: number): Finding =>
    findingOf(
      judged(
        'input-coupling-high-impedance',
        { type, capacitance, ratedVoltage: 500 },
        { type, ratedVoltage: 500 },
        { vdc: 100, load: 1e6, 't-max': 25 },
      ),
      'leakage-offset',
    );

  test.each(['silvered-mica', 'ceramic-c0g'])(
    '%s: below ten nanofarads the offset no longer falls with the value',
    (type) => {
      const [one, ten, hundred] = [1e-9, 1e-8, 1e-7].map((farad) => leaking(type, farad).standIn);
      // 100 V over 100 gigohm into a megohm.
      expect(one?.max).toBeCloseTo(1e-3, 6);
      expect(ten?.max).toBeCloseTo(1e-3, 6);
      expect(hundred?.max).toBeCloseTo(1e-2, 4);
    },
  );
});
