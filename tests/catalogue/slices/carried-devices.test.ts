import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceDevices } from '../../../src/catalogue/slices/slice-devices.ts';

/** What the slice of a family of devices carries. */

const catalogue = loadCatalogue();

describe('a family of devices', () => {
  const own = sliceDevices(catalogue, 'switch');

  test('has its devices, their figures that are used, and the pins of their bodies', () => {
    const all = catalogue.devices;
    const devices = all.devices.filter(({ family }) => family === 'switch');
    expect(own.devices.devices.map(({ id }) => id)).toEqual(devices.map(({ id }) => id));
    const owners = devices.flatMap(({ id, series }) => [id, ...series]);
    expect(own.devices.figures).toHaveLength(
      all.figures.filter((row) => row.use === 'used' && owners.includes(row.of)).length,
    );
    expect(own.devices.figures.every((row) => row.conditions === '')).toBe(true);
    const pinouts = devices.flatMap((device) => device.pinouts);
    expect(new Set(own.devices.pins.map(({ pinout }) => pinout))).toEqual(new Set(pinouts));
    expect(new Set(own.devices.pinouts.map(({ id }) => id))).toEqual(new Set(pinouts));
  });

  test('has the uses that one of its devices may be put to, with what they ask', () => {
    const uses = own.devices.uses.map(({ id }) => id);
    const functions = own.devices.devices.map((device) => device.function);
    expect(uses.length).toBeGreaterThan(1);
    for (const use of catalogue.devices.uses)
      expect(uses.includes(use.id), use.id).toBe(
        use.functions.some((one) => functions.includes(one)),
      );
    for (const table of ['conditions', 'demands'] as const) {
      expect(new Set(own.devices[table].map(({ position }) => position))).toEqual(new Set(uses));
      expect(own.devices[table]).toHaveLength(
        catalogue.devices[table].filter(({ position }) => uses.includes(position)).length,
      );
    }
    expect(new Set(own.devices.findings.map(({ id }) => id))).toEqual(
      new Set(own.devices.demands.map(({ finding }) => finding)),
    );
  });

  test('cites no source without its title, and has no title beside', () => {
    const { figures, pins, demands } = own.devices;
    const cited = new Set([...figures, ...pins, ...demands].map(({ source }) => source));
    expect(new Set(Object.keys(own.sources))).toEqual(cited);
  });
});
