import { describe, expect, test } from 'vitest';
import { readMarking, type Hints } from '../../../src/engine/markings/index.ts';
import { catalogue } from './tables.ts';

const resistor: Hints = { kind: 'resistor' };

/** Markings, what is known of the part, ohms, tolerance as a fraction, watts. */
const cases: [string, Hints, number, (number | undefined)?, number?][] = [
  ['47R', {}, 47],
  ['0R22', resistor, 0.22],
  ['R047', resistor, 0.047],
  ['5L0', {}, 0.005],
  ['K47', {}, 470],
  ['4K7', resistor, 4700],
  ['4K7K', resistor, 4700, 0.1],
  ['1M0 F', resistor, 1e6, 0.01],
  ['4E7', {}, 4.7],
  ['4К7И', {}, 4700, 0.05],
  ['33Е', {}, 33],
  ['473', resistor, 47e3],
  ['4702', resistor, 47e3],
  ['470', { body: 'resistor' }, 470],
  ['470', { body: 'resistor-chip' }, 47],
  ['000', {}, 0],
  ['D18', { body: 'resistor-chip' }, 510e3, 0.02],
  ['01C', {}, 10e3, 0.01],
  ['100 Ω 10%', {}, 100, 0.1],
  ['2.2 MEG', {}, 2.2e6],
  ['47 OHMS', {}, 47],
  ['5W 10ΩJ', {}, 10, 0.05, 5],
  ['10W0R22K', {}, 0.22, 0.1, 10],
  ['½ W 1K0', {}, 1000, undefined, 0.5],
  ['1/4W 4K7', {}, 4700, undefined, 0.25],
  ['47K FUSIBLE', {}, 47e3],
  ['RN55C1002F', {}, 10e3, 0.01, 0.125],
  ['RC07GF473J', {}, 47e3, 0.05, 0.25],
  ['RCR07G103JS', {}, 10e3, 0.05, 0.25],
  ['RJ24FW103', {}, 10e3],
];

describe('a resistor', () => {
  test.each(cases)('%j with %j', (text, hints, ohms, tolerance, watts) => {
    const [best] = readMarking(catalogue, text, hints);
    expect(best).toMatchObject({ kind: 'resistor', types: [], notUnderstood: [] });
    expect(best?.resistance?.typ).toBeCloseTo(ohms, 9);
    expect(best?.tolerance?.plus).toBe(tolerance);
    expect(best?.power?.typ).toBe(watts);
  });

  test('the letter of a style gives the temperature coefficient', () => {
    const [best] = readMarking(catalogue, 'RN60D4992F');
    expect(best?.temperatureCoefficient).toEqual({ min: -0.0001, typ: 0, max: 0.0001 });
  });

  test('where lists differ about a letter, both values are offered and neither is sure', () => {
    const readings = readMarking(catalogue, '47S', { body: 'resistor-chip' });
    expect(readings.map(({ resistance }) => resistance?.typ)).toEqual([30.1, 3.01]);
    expect(readings.map(({ sure }) => sure)).not.toContain('sure');
    expect(readings[0]?.settleBy).toContain('lists differ about this letter; measure');
  });
});

describe('a marking of either', () => {
  test.each(['103', '473', '104J', '4R7', '2701', '470', '10K'])(
    '%j is a capacitor first, and a resistor is offered',
    (text) => {
      const [best, ...rivals] = readMarking(catalogue, text);
      expect(best?.kind).toBe('capacitor');
      expect(best?.sure).not.toBe('sure');
      const resistance = rivals.find(({ kind }) => kind === 'resistor');
      expect(resistance).toBeDefined();
      expect(resistance?.settleBy.join()).toContain('ohmmeter');
    },
  );

  // The letter is that of IEC 60062 for ohms; capacitors with K for a thousand pF are old and few.
  test.each(['4K7', '1M0', '4K7K', '3k3', '1K0'])(
    '%j is a resistor first, and a capacitor is offered',
    (text) => {
      const [best, ...rivals] = readMarking(catalogue, text);
      expect(best?.kind).toBe('resistor');
      expect(best?.sure).not.toBe('sure');
      expect(best?.settleBy.join()).toContain('ohmmeter');
      expect(rivals.map(({ kind }) => kind)).toContain('capacitor');
      expect(readMarking(catalogue, text, { body: 'ceramic' })[0]?.kind).toBe('capacitor');
    },
  );

  test.each(['473K', '103M 1KV Z5U', '2A474J', '47n 63V', '.022K 400'])(
    '%j is a capacitor alone',
    (text) => {
      expect(readMarking(catalogue, text).map(({ kind }) => kind)).not.toContain('resistor');
    },
  );

  test('a body settles it', () => {
    expect(readMarking(catalogue, '473', { body: 'ceramic' })).toHaveLength(1);
    expect(readMarking(catalogue, '473', { body: 'trimmer' })[0]?.resistance?.typ).toBe(47e3);
  });
});
