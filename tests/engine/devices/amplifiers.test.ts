import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { deviceStandIns } from '../../../src/engine/index.ts';
import { named } from './named.ts';

const catalogue = loadCatalogue();
const { device, use, verdictOf } = named(catalogue);

describe('one amplifier in the place of another', () => {
  it.each([
    ['741', 'amp-line', 'op97', 'pins', {}, 'fits'],
    // Null pins at 1 and 8 instead of 1 and 5: only where there is no network, or it comes off.
    ['741', 'amp-line', 'op07', 'trim-pins', {}, 'fits-if'],
    ['741', 'amp-line', 'lf356', 'trim-pins', {}, 'fits-if'],
    ['741', 'amp-line', 'tl071', 'trim-pins', {}, 'fits'],
    ['741', 'amp-line', '301a', 'own-capacitor', {}, 'keep-out'],
    ['301a', 'amp-line', '308a', 'own-capacitor', {}, 'fits'],
    ['741', 'amp-line', '5534', 'stable-gain', {}, 'keep-out'],
    // Its circuit has the capacitor that a gain of 2 asks for.
    ['5534', 'amp-line', '5534', 'stable-gain', {}, 'fits'],
    ['lf357', 'amp-gain5', '5534', 'stable-gain', {}, 'fits'],
    ['1458', 'amp-line', '5532', 'stable-gain', { 'noise-gain': 1 }, 'fits'],
    ['358', 'amp-single-supply', 'tl072', 'reversal', {}, 'keep-out'],
    ['358', 'amp-single-supply', 'tl072', 'input-floor', {}, 'keep-out'],
    ['358', 'amp-single-supply', '358', 'input-floor', {}, 'fits'],
    ['358', 'amp-line', '4558', 'input-floor', {}, 'fits'],
    ['324', 'amp-line', '4136', 'pins', {}, 'keep-out'],
    ['lf356', 'amp-hold', '741', 'bias-droop', {}, 'keep-out'],
    ['lf356', 'amp-hold', 'tl071', 'bias-droop', {}, 'fits'],
    ['741', 'amp-line', '308a', 'slewing', {}, 'stopgap'],
  ] as const)('%s at %s: %s, %s with %o is %s', (old, at, stranger, finding, given, verdict) => {
    expect(verdictOf(old, at, stranger, finding, given)).toBe(verdict);
  });

  it('puts a low-noise bipolar part before a FET on a low resistance', () => {
    const ranked = deviceStandIns(catalogue, { original: device('5532'), use: use('amp-mic') });
    const place = (id: string) => ranked.findIndex((one) => one.device.id === id);
    expect(place('5532')).toBeLessThan(place('tl072'));
  });
});
