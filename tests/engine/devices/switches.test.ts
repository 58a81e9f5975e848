import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { assessDevice, deviceStandIns } from '../../../src/engine/index.ts';
import { named } from './named.ts';

const catalogue = loadCatalogue();
const { device, use } = named(catalogue);

const tried = (old: string, at: string, stranger: string, given = {}) =>
  assessDevice(catalogue, { original: device(old), use: use(at), given }, device(stranger));

const verdictOf = (old: string, at: string, stranger: string, finding: string, given = {}) =>
  tried(old, at, stranger, given).findings.find((one) => one.finding === finding)?.verdict;

describe('one device in the place of another', () => {
  it.each([
    // High-speed look-alikes end at 6 V at one maker: rti-199 and the like.
    ['4066b', 'switch-hold', '74hc4066', 'supply-high', { supply: 9 }, 'keep-out'],
    ['4066b', 'switch-hold', '74hc4066', 'supply-high', { supply: 5 }, 'fits'],
    ['4011b', 'logic-12v', '4011b', 'supply-high', { supply: 15 }, 'fits'],
    ['4011a', 'logic-12v', '4011b', 'supply-high', {}, 'fits'],
    ['4069ub', 'logic-12v', '74hc04', 'supply-high', {}, 'keep-out'],
    ['dg411', 'switch-15v', 'dg411le', 'supply-high', {}, 'keep-out'],
    ['dg411', 'switch-15v', 'dg411le', 'pins', {}, 'fits'],
    ['dg211', 'switch-15v', 'dg411', 'pins', {}, 'fits'],
    ['dg211', 'switch-15v', 'dg412', 'pins', {}, 'keep-out'],
    ['4066b', 'switch-hold', 'dg411', 'pins', {}, 'keep-out'],
    ['4011a', 'logic-5v-cmos', '74hc00', 'pins', {}, 'keep-out'],
    ['4011a', 'logic-linear', '4011b', 'same-stages', {}, 'keep-out'],
    ['4011a', 'logic-linear', '4011ub', 'same-stages', {}, 'fits'],
    ['4069ub', 'logic-linear', '74hc04', 'same-stages', {}, 'keep-out'],
    // TTL gives 2.4 V, CMOS asks for 3.5 V at 5 V: rti-207; TTL levels are met: rti-208.
    ['74ls00', 'logic-5v-ttl', '74hc00', 'drive-high', {}, 'keep-out'],
    ['74ls00', 'logic-5v-ttl', '74hct00', 'drive-high', {}, 'fits'],
    // The usual 4066 passes, not every one; a 4016 nearly stops conducting at mid-supply.
    ['4016b', 'switch-5v', '4066b', 'series-loss', {}, 'fits-if'],
    ['4066b', 'switch-5v', '4016b', 'series-loss', {}, 'stopgap'],
    // A selector's resistance moves with the signal as well; before a light load it hardly shows.
    ['4051b', 'switch-select', '4051b', 'resistance-change', {}, 'fits'],
    ['4053b', 'switch-select', '74hc4053', 'resistance-change', { supply: 9 }, 'fits'],
    // At 5 V usually 356 less 115 ohm before 10 kohm: 2.3 %, above the 2 % allowed.
    ['4052b', 'switch-select', '4052b', 'resistance-change', { supply: 5 }, 'stopgap'],
    ['4052b', 'switch-select', '4052b', 'resistance-change', { load: 1000 }, 'stopgap'],
  ] as const)('%s at %s: %s, %s with %o is %s', (old, at, stranger, finding, given, verdict) => {
    expect(verdictOf(old, at, stranger, finding, given)).toBe(verdict);
  });

  it('takes the flatter switch for an old one in audio', () => {
    const [best] = deviceStandIns(catalogue, {
      original: device('4016a'),
      use: use('switch-mute'),
    });
    expect(best?.device.id).toBe('4066b');
    expect(best?.verdict).toBe('fits');
  });

  it('lists no part that cannot be bought', () => {
    for (const one of deviceStandIns(catalogue, {
      original: device('4011a'),
      use: use('logic-12v'),
    }))
      expect(one.device.market).not.toBe('old-stock');
  });
});
