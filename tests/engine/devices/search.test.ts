import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { findDevices } from '../../../src/search/find-devices.ts';

const catalogue = loadCatalogue();

describe('devices by what is printed on them', () => {
  it.each([
    ['4066', '4066b'],
    ['CD4066BE', '4066b'],
    ['cd 4066', '4066b'],
    ['HEF4016BP', '4016b'],
    ['MC14066', '4066b'],
    ['SN74HC4066N', '74hc4066'],
    ['replace 4069', '4069ub'],
    ['74HCT00', '74hct00'],
    ['40?6', '4066b'],
    ['CD40?6BE', '4066b'],
    ['74?C04', '74hc04'],
    ['4?66', '4066b'],
    ['1N4?07', '1n4007'],
    ['LM29?0', 'lm2940-5'],
    ['ribbon header', 'ribbon-254-keyed'],
    ['IDC', 'ribbon-254-keyed'],
    ['dual comparator', 'lm393'],
    ['CD4011AE', '4011a'],
    ['CD4011UBE', '4011ub'],
    ['DG211CJ', 'dg211'],
    ['DG412DJ', 'dg412'],
    ['MC1458CP1', '1458'],
    ['MC1741CP1', '741'],
    ['LM308AH', '308a'],
    ['DM74LS00N', '74ls00'],
    ['M74HC00B1', '74hc00'],
    ['LM340T-5', '7805'],
    ['UA78L05ACLP', '78l05'],
    ['LM2940CT-5', 'lm2940-5'],
    ['BC337-25', 'bc337'],
    ['KSC1815', '2sc1815'],
    ['1N4007S', '1n4007'],
    ['D3 1N 4148 glass', '1n4148'],
    ['16 pin DIL', 'dip-16-dual'],
    ['16-pin DIL socket', 'dip-16-turned'],
    ['DIL14', 'dip-14-dual'],
    ['box header 16 way', 'ribbon-254-keyed'],
    ['0.156" 6 way', 'header-396'],
    ['4007', '1n4007'],
  ])('%s is %s', (text, id) => {
    expect(findDevices(catalogue, text).map((device) => device.id)).toContain(id);
  });

  it.each([
    ['CD4011AE', ['4011a']],
    ['CD4001UBE', ['4001ub']],
    ['CD4011BE', ['4011b']],
  ])('%s is %s alone', (text, ids) => {
    expect(findDevices(catalogue, text).map((device) => device.id)).toEqual(ids);
  });

  it.each(['473K', '10uF', 'wax paper', '', '12', '4?7', '??47', 'film capacitor', 'anode load'])(
    '%s is none',
    (text) => {
      expect(findDevices(catalogue, text)).toEqual([]);
    },
  );
});
