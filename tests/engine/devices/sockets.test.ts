import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { assessDevice } from '../../../src/engine/index.ts';
import { named } from './named.ts';

const catalogue = loadCatalogue();
const { device, use } = named(catalogue);

describe('one socket in the place of another', () => {
  it.each([
    ['dip-24-wide', 'socket-corner', 'dip-24-narrow', 'keep-out'],
    ['dip-24-wide', 'socket-corner', 'dip-24-wide-turned', 'fits'],
    ['dip-14-dual', 'socket-corner', 'dip-14-decoupled', 'fits'],
    ['dip-14-dual', 'socket-elsewhere', 'dip-14-decoupled', 'keep-out'],
    ['dip-14-dual', 'socket-elsewhere', 'dip-14-turned', 'fits'],
  ])('%s at %s: %s is %s', (old, at, stranger, verdict) => {
    expect(
      assessDevice(catalogue, { original: device(old), use: use(at) }, device(stranger)).verdict,
    ).toBe(verdict);
  });
});

describe('connectors', () => {
  it.each<[string, string, string, string, string]>([
    // old, use, stand-in, finding, verdict
    ['header-254', 'connector-wires', 'header-250', 'same-pitch', 'keep-out'],
    ['header-254', 'connector-wires', 'header-254', 'same-pitch', 'fits'],
    ['header-396', 'connector-wires', 'header-396', 'carries', 'fits'],
    ['ribbon-254-open', 'connector-ribbon', 'ribbon-254-keyed', 'same-rows', 'fits'],
    ['ribbon-254-open', 'connector-ribbon', 'ribbon-200-keyed', 'same-rows', 'keep-out'],
  ])('%s as %s: %s by %s is %s', (old, at, stranger, finding, verdict) => {
    const assessed = assessDevice(
      catalogue,
      { original: device(old), use: use(at) },
      device(stranger),
    );
    const found = assessed.findings.find((one) => one.finding === finding);
    expect(found?.verdict).toBe(verdict);
  });
});

it('says what a socket with a capacitor adds to the rail', () => {
  const old = device('dip-14-dual');
  const assessed = assessDevice(
    catalogue,
    { original: old, use: use('socket-corner') },
    device('dip-14-decoupled'),
  );
  const adds = assessed.findings.find((one) => one.finding === 'adds-to-rail');
  expect(adds?.standIn?.typ).toBeCloseTo(0.01, 9);
});
