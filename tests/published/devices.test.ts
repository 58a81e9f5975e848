import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { assessDevice, deviceKnowledge, ruleOf } from '../../src/engine/index.ts';
import { noiseWithSource, steadyError } from '../../src/engine/equations/amplifier.ts';
import { adjustedOutput } from '../../src/engine/equations/regulator.ts';
import { seriesLoss } from '../../src/engine/equations/switch.ts';
import { amplifiedLeakage } from '../../src/engine/equations/transistor.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { named } from '../engine/devices/named.ts';

const catalogue = loadCatalogue();
const { device, use } = named(catalogue);

/** What a device comes to in a use for one finding, in the place of another. */
const verdictOf = (old: string, at: string, stranger: string, finding: string) => {
  const assessed = assessDevice(
    catalogue,
    { original: device(old), use: use(at) },
    device(stranger),
  );
  return assessed.findings.find((one) => one.finding === finding)?.verdict;
};

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
    ['723', 'input-max', undefined, 'max', 40, 'lm723-nsc'],
    ['bc108', 'breakdown', undefined, 'max', 20, 'bc107-philips'],
    ['bc107', 'transition', undefined, 'min', 100e6, 'bc107-philips'],
    ['lm13700', 'bias-current', undefined, 'max', 5e-6, 'lm13700-nsc'],
    ['lm13600', 'control-current-max', undefined, 'max', 2e-3, 'lm13600-nsc'],
    ['74hc4051', 'on-resistance', 9, 'max', 130, 'cd74hc4051-ti'],
    ['lm393', 'bias-current', undefined, 'max', 250e-9, 'lm393-fairchild'],
  ])('%s: %s at %s, %s is %s by %s', (id, property, at, end, figure) => {
    const known = deviceKnowledge(catalogue, device(id), property, at);
    expect(known?.range[end]).toBeCloseTo(figure, 12);
  });

  it.each<[string, string, number | undefined, number, string]>([
    // part, property, at, what one maker prints, SI, source
    ['4066b', 'on-resistance', 5, 350, 'hef4066b'],
    ['4066b', 'on-resistance', 10, 80, 'hef4066b'],
    ['4066b', 'on-resistance', 15, 60, 'hef4066b'],
    ['4066b', 'on-resistance', 15, 175, 'hef4066b'],
    ['4066b', 'on-resistance', 15, 125, 'cd4066b-ti'],
    ['4016b', 'on-resistance', 15, 115, 'hef4016b'],
    ['4016b', 'on-resistance-at-rail', 10, 65, 'hef4016b'],
    ['4016b', 'on-resistance-at-rail', 15, 200, 'cd4016bc-nsc'],
    ['74hc4066', 'on-resistance-at-rail', 4.5, 50, 'sn74hc4066-ti'],
    ['74hc4066', 'on-resistance', 4.5, 50, '74hc4066-nexperia'],
    ['dg411le', 'on-resistance', undefined, 16, 'dg411le-vishay'],
    ['tl072', 'bias-current', undefined, 30e-12, 'tl07x-motorola'],
    ['4051b', 'on-resistance', 10, 400, 'cd4051-nsc'],
    ['4053b', 'on-resistance', 5, 470, 'cd4051-ti-2025'],
    ['4052b', 'on-resistance-match', 15, 5, 'cd4051-nsc'],
    ['4052b', 'on-resistance-match', 10, 10, 'cd4051-fairchild'],
    ['74hc4051', 'on-resistance-at-rail', 9, 60, '74hc4051-nexperia'],
    ['74hc4051', 'on-resistance-at-rail', 9, 40, 'cd74hc4051-ti'],
    ['74hc4053', 'on-resistance-at-rail', 12, 80, 'mc74hc4051-motorola'],
    ['74hc4052', 'on-resistance-match', 4.5, 30, 'mc74hc4051-motorola'],
    ['lm311', 'bias-current', undefined, 100e-9, 'lm311-ti'],
  ])('%s: %s at %s V reaches %s, which one maker prints (%s)', (id, property, at, figure) => {
    const range = deviceKnowledge(catalogue, device(id), property, at)?.range;
    expect(range?.min).toBeLessThanOrEqual(figure * (1 + 1e-9));
    expect(range?.max).toBeGreaterThanOrEqual(figure * (1 - 1e-9));
  });

  it.each<[string, number, string]>([
    // part, pin, function; the source beside each
    ['741', 1, 'null-minus'], // 741-intersil
    ['741', 5, 'null-minus'], // 741-intersil
    ['7905', 2, 'reg-input'], // lm79xx-fairchild
    ['lm317', 1, 'adjust'], // lm317-onsemi
    ['lm337', 2, 'reg-input'], // lm337-onsemi
    ['4136', 11, 'v-plus'], // rc4136-fairchild
    ['lm1117-5', 2, 'reg-output'], // lm1117-nsc
    ['dg211', 13, 'v-plus'], // dg211-siliconix
    ['74hc00', 3, 'output'], // 74hc00-nexperia
    ['2sa1015', 2, 'collector'], // 2sa1015-jcst
    ['lm311', 1, 'emitter-output'], // lm311-ti-2003
    ['lm311', 2, 'input-plus'], // lm311-ti-2003
    ['lm311', 7, 'open-output'], // lm311-ti-2003
    ['lm339', 3, 'v-plus'], // lm339-htc
    ['lm339', 12, 'v-minus'], // lm339-htc
    ['lm339', 1, 'open-output'], // lm339-htc
    ['723', 7, 'v-minus'], // ua723-ti
    ['723', 11, 'pass-collector'], // ua723-ti
    ['723', 12, 'v-plus'], // ua723-ti
    ['4051b', 7, 'v-ee'], // cd4051-ti-2023
    ['4052b', 13, 'common'], // sn74lv4052-ti
    ['4053b', 4, 'common'], // cd4053-q1-ti
    ['lm13700', 11, 'v-plus'], // ne5517-philips
    ['lm13700', 4, 'input-minus'], // ne5517-philips
    ['324', 4, 'v-plus'], // lm324-n-ti
    ['bc107', 1, 'emitter'], // bc107-philips
    ['bc107', 3, 'collector'], // bc107-philips
    ['2n3055', 1, 'base'], // etechnophiles-2n3055
    ['bf245', 2, 'source'], // bf245-nxp
    ['78l05', 1, 'reg-output'], // circflow-78l05
  ])('%s: pin %s is %s', (id, pin, does) => {
    const [order] = device(id).pinouts;
    const row = catalogue.devices.pins.find((one) => one.pinout === order && one.pin === pin);
    expect(row?.function).toBe(does);
  });

  it('loses 2.34 % of a signal in 240 ohm before 10 kohm (lm741-ti, cd4066b-ti: arithmetic)', () => {
    expect(seriesLoss(exactly(240), 10e3).typ).toBeCloseTo(0.0234, 4);
  });

  it('makes 80 mV of 80 nA in 1 Mohm', () => {
    expect(steadyError(exactly(0), exactly(80e-9), 1e6, 1).typ).toBeCloseTo(0.08, 12);
  });

  it('makes 1 mA of 5 uA at 35 degC and a gain of 99 (identity: 5 uA * 2 * 100)', () => {
    expect(
      amplifiedLeakage(exactly(5e-6), exactly(99), {
        warm: 35,
        doubling: ruleOf(catalogue, 'junction-doubling'),
      }).typ,
    ).toBeCloseTo(1e-3, 12);
  });

  it('sets 5 V with 240 and 720 ohm (lm317-onsemi, figure 1)', () => {
    expect(adjustedOutput(1.25, 240, 720, 0)).toBeCloseTo(5, 12);
    expect(adjustedOutput(1.25, 240, 720, 100e-6)).toBeCloseTo(5.072, 12);
  });

  it('has the thermal noise of 1 kohm at 25 degC, 4.06 nV in 1 Hz, where the rest is silent', () => {
    expect(noiseWithSource(exactly(0), exactly(0), 1000).typ).toBeCloseTo(4.06e-9, 11);
  });

  it('needs 7 V at the input of a 7805 at 1 A (lm7805-fairchild: 5 V and 2 V)', () => {
    const [output, dropout] = ['output-voltage', 'dropout'].map(
      (property) => deviceKnowledge(catalogue, device('7805'), property, 1)?.range.typ,
    );
    expect((output ?? 0) + (dropout ?? 0)).toBeCloseTo(7, 12);
  });
});

describe('what published texts say of devices in each other’s places', () => {
  it.each<[string, string, string, string, string, string]>([
    // old, use, stand-in, finding, verdict, source
    [
      '4066b',
      'switch-mute',
      '74hc4066',
      'supply-high',
      'keep-out',
      'sn74hc4066-ti: 9 V is too much',
    ],
    ['4011b', 'logic-12v', '4011b', 'supply-high', 'fits', 'cpentalk-cmos; harris-cd4000b: 15 V'],
    ['4069ub', 'logic-linear', '74hc04', 'same-stages', 'keep-out', 'sdiy-2006-ub'],
    [
      '74ls00',
      'logic-5v-ttl',
      '74hc00',
      'drive-high',
      'keep-out',
      'leap-logic-levels: 2.4 against 3.5 V',
    ],
    ['74ls00', 'logic-5v-ttl', '74hct00', 'drive-high', 'fits', 'leap-logic-levels'],
    ['5532', 'amp-line', '5532', 'stable-gain', 'fits', 'ne5532-wikipedia: stable at unity gain'],
    [
      '741',
      'amp-line',
      '5534',
      'stable-gain',
      'keep-out',
      'ne5532-wikipedia: not without a capacitor',
    ],
    ['741', 'amp-dc', 'op97', 'pins', 'fits', 'op97-adi: in the place of a 741'],
    ['741', 'amp-dc', 'op97', 'trim-pins', 'fits-if', 'op97-adi: only without the null network'],
    ['725', 'amp-dc', 'op07', 'pins', 'fits', 'op07-adi: fits the socket of a 725'],
  ])('%s as %s, %s: %s is %s (%s)', (old, at, stranger, finding, verdict) => {
    expect(verdictOf(old, at, stranger, finding)).toBe(verdict);
  });

  it('9 V is more than one maker allows a 74HC4066 (sn74hc4066-ti: 6 V)', () => {
    const range = deviceKnowledge(catalogue, device('74hc4066'), 'supply-max')?.range;
    expect(range?.min).toBe(6);
  });
});
