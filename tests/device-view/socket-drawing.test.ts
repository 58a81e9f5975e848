import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { devicePage } from '../../src/device-view/page.ts';
import { pinsOfSocket, socketFigure, socketSpec } from '../../src/device-view/socket-drawing.ts';
import { deviceStandIns, isMetIn } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';

const catalogue = loadCatalogue();
const { devices, uses } = catalogue.devices;
const device = (id: string) => {
  const found = devices.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no device ${id}`);
  return found;
};

describe('a socket drawn with its notch and pin 1', () => {
  it.each([
    // pins, rows apart, and steps of 0.1 inch along the row
    ['dip-8-dual', 8, 7.62, 10.16],
    ['dip-14-turned', 14, 7.62, 17.78],
    ['dip-16-decoupled', 16, 7.62, 20.32],
    ['dip-24-narrow', 24, 7.62, 30.48],
    ['dip-24-wide', 24, 15.24, 30.48],
  ])('%s: %d pins, rows %f mm apart, %f mm long', (id, pins, pitch, length) => {
    const spec = socketSpec(catalogue, device(id));
    expect(spec).toMatchObject({ form: 'dip', pins });
    expect(spec?.pitch).toBeCloseTo(pitch, 9);
    expect(spec?.length).toBeCloseTo(length, 9);
    expect(spec?.width).toBeLessThan(pitch);
  });

  it('draws every socket and nothing else', () => {
    const drawn = devices.filter((one) => socketFigure(catalogue, one).length > 0);
    expect(drawn.map(({ id }) => id)).toEqual(
      devices.filter(({ family }) => family === 'socket').map(({ id }) => id),
    );
    expect(pinsOfSocket(catalogue, device('741'))).toBeUndefined();
  });

  it('says in words where the pins at the corners are', () => {
    const html = socketFigure(catalogue, device('dip-14-dual'))
      .map((one) => toHtml(one))
      .join('');
    expect(html).toContain(
      'role="img" aria-label="DIP-14 dual-wipe socket seen from above, notch to the left: pin 1 at the lower left, pin 7 at the lower right, pin 8 at the upper right, pin 14 at the upper left."',
    );
    for (const pin of ['1', '7', '8', '14']) expect(html).toContain(`>${pin}</text>`);
  });

  it('stands on every page of a socket in a use, and on that of an amplifier not', () => {
    const page = (id: string): string => {
      const old = device(id);
      const use = uses.find((one) => isMetIn(old, one));
      if (use === undefined) throw new Error(`no use of ${id}`);
      return devicePage(catalogue, old, use, deviceStandIns(catalogue, { original: old, use }))
        .main.map((one) => toHtml(one))
        .join('');
    };
    expect(page('dip-8-dual').match(/class="part-drawing"/gu)).toHaveLength(1);
    expect(page('741')).not.toContain('part-drawing');
  });
});
