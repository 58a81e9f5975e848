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
    expect(assessDevice(catalogue, device(old), use(at), device(stranger)).verdict).toBe(verdict);
  });
});
