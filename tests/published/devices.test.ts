import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { deviceKnowledge } from '../../src/engine/index.ts';
import { noiseWithSource, steadyError } from '../../src/engine/equations/amplifier.ts';
import { seriesLoss } from '../../src/engine/equations/switch.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { named } from '../engine/devices/named.ts';

const catalogue = loadCatalogue();
const { device } = named(catalogue);

describe('figures of devices against their sheets', () => {
  it.each<[string, string, number | undefined, 'min' | 'typ' | 'max', number, string]>([
    // part, property, at, which end, figure in SI, source
    ['741', 'bias-current', undefined, 'max', 500e-9, 'lm741-ti'],
    ['lf356', 'slew', undefined, 'typ', 12e6, 'lf356-ti-2015'],
    ['358', 'slew', undefined, 'typ', 0.3e6, 'lm358-philips'],
    ['308a', 'bias-current', undefined, 'typ', 1.5e-9, 'lm308a-nsc'],
    ['4558', 'slew', undefined, 'min', 1e6, 'ba4558-rohm'],
    ['4016b', 'input-low', undefined, 'max', 0.7, 'cd4016bc-nsc'],
    ['74hc4066', 'on-resistance', 9, 'typ', 35, '74hc4066-nexperia'],
    ['4066b', 'on-resistance-at-rail', 10, 'max', 160, 'hef4066b'],
    ['4011b', 'input-high', 10, 'min', 7, 'hef4016b'],
    ['4011b', 'input-low', 15, 'max', 4, 'hef4016b'],
    ['4066b', 'supply-max', undefined, 'max', 18, 'harris-cd4000b'],
    ['1n4004', 'reverse-voltage', undefined, 'max', 400, '1n4001-eic'],
    ['1n5819', 'drop', 1, 'max', 0.6, '1n5817-rfe'],
    ['1n4148', 'reverse-leakage', undefined, 'max', 25e-9, '1n4148-wikipedia'],
    ['7805', 'dropout', 1, 'typ', 2, 'lm7805-fairchild'],
    ['lm317', 'input-max', undefined, 'max', 40, 'lm317-st'],
  ])('%s: %s at %s, %s is %s by %s', (id, property, at, end, figure) => {
    const known = deviceKnowledge(catalogue, device(id), property, at);
    expect(known?.range[end]).toBeCloseTo(figure, 12);
  });

  it.each<[string, number | undefined, number, string]>([
    ['4066b', 10, 80, 'hef4066b'],
    ['4066b', 15, 60, 'hef4066b'],
    ['4066b', 15, 125, 'cd4066b-ti'],
    ['4016b', 15, 115, 'hef4016b'],
    ['74hc4066', 4.5, 50, '74hc4066-nexperia'],
    ['dg411le', undefined, 16, 'dg411le-vishay'],
  ])('on-resistance of %s at %s V reaches from or to %s ohm of %s', (id, at, typ) => {
    const range = deviceKnowledge(catalogue, device(id), 'on-resistance', at)?.range;
    expect(range?.min).toBeLessThanOrEqual(typ);
    expect(range?.max).toBeGreaterThanOrEqual(typ);
  });

  it('loses 2.34 % of a signal in 240 ohm before 10 kohm (lm741-ti, cd4066b-ti: arithmetic)', () => {
    expect(seriesLoss(exactly(240), 10e3).typ).toBeCloseTo(0.0234, 4);
  });

  it('makes 80 mV of 80 nA in 1 Mohm', () => {
    expect(steadyError(exactly(0), exactly(80e-9), 1e6, 1).typ).toBeCloseTo(0.08, 12);
  });

  it('has the thermal noise of 1 kohm at 25 degC, 4.06 nV in 1 Hz, where the rest is silent', () => {
    expect(noiseWithSource(exactly(0), exactly(0), 1000).typ).toBeCloseTo(4.06e-9, 11);
  });
});
