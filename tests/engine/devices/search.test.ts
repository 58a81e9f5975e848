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
  ])('%s is %s', (text, id) => {
    expect(findDevices(catalogue, text).map((device) => device.id)).toContain(id);
  });

  it.each(['473K', '10uF', 'wax paper', '', '12', '4?7', '??47', 'film capacitor', 'anode load'])(
    '%s is none',
    (text) => {
      expect(findDevices(catalogue, text)).toEqual([]);
    },
  );
});
