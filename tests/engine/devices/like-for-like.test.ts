import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { deviceStandIns } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();
const { devices, uses } = catalogue.devices;

const listOf = (old: string, place: string) => {
  const device = devices.find(({ id }) => id === old);
  const use = uses.find(({ id }) => id === place);
  if (device === undefined || use === undefined) throw new Error(`no ${old} or ${place}`);
  return deviceStandIns(catalogue, { original: device, use });
};

/** Common practice: what the trade would fit first, and what it would not. */
test.each([
  // A new one of the same number, which is made and was quick enough.
  ['tl071', 'amp-line', 'tl071'],
  ['tl072', 'amp-line', 'tl072'],
  ['tl074', 'amp-line', 'tl074'],
  ['tl082', 'amp-line', 'tl082'],
  ['5532', 'amp-line', '5532'],
  // 10 V peak at 20 kHz are 1.26 V/µs; a 741 has 0.5.
  ['741', 'amp-line', 'tl071'],
])('for a %s in %s a %s comes first', (old, place, first) => {
  expect(listOf(old, place)[0]?.device.id).toBe(first);
});

test.each([
  ['tl071', '741'],
  ['tl074', 'lm348'],
  ['tl074', '324'],
])('for a %s in a line stage a %s is at most a stopgap', (old, slow) => {
  const found = listOf(old, 'amp-line').find(({ device }) => device.id === slow);
  expect(['stopgap', 'keep-out']).toContain(found?.verdict);
});
