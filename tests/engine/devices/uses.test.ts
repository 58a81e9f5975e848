import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { isMetIn, usesOf } from '../../../src/engine/index.ts';
import { emptyLine } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';
import { answerHtml } from '../../search/answer-html.ts';

const catalogue = loadCatalogue();
const { devices, uses } = catalogue.devices;
const called = (id: string) => {
  const device = devices.find((row) => row.id === id);
  if (device === undefined) throw new Error(`no ${id}`);
  return device;
};

test.each([
  // A signal diode bears 75 mA or 0.2 A: nobody rectifies the mains with one.
  ['1n4148', 'diode-clamp', 'diode-rectifier'],
  ['1n60', 'diode-detector', 'diode-clamp'],
  ['1n4007', 'diode-rectifier', 'diode-clamp'],
  ['1n5819', 'diode-switching', 'diode-rectifier'],
  ['op07', 'amp-dc', 'amp-hold'],
])('a %s is first taken for one of %s', (id, first, later) => {
  const offered = usesOf(catalogue, called(id)).map((use) => use.id);
  expect(offered[0]).toBe(first);
  expect(offered.indexOf(later)).toBeGreaterThan(0);
  const { asks } = understoodLine(catalogue, { ...emptyLine('1'), type: id });
  expect(asks[0]?.choices.map(({ set }) => set.position)).toEqual(offered);
});

test.each([
  // 0.1 A at the most, and a point of wire: neither mains nor supply ran through one.
  ['1n34a', ['diode-detector', 'diode-clamp']],
  ['oa91', ['diode-detector', 'diode-clamp']],
  // A rectifier for mains frequency is still open after many cycles of an intermediate frequency.
  [
    '1n4007',
    ['diode-rectifier', 'diode-direct', 'diode-switching', 'diode-clamp', 'diode-polarity'],
  ],
  ['1n5404', ['diode-rectifier', 'diode-direct', 'diode-switching', 'diode-polarity']],
  // 40 V at the mains.
  ['1n5819', ['diode-switching', 'diode-polarity', 'diode-rectifier', 'diode-clamp']],
])('a %s is met in no other use than %j', (id, met) => {
  expect(usesOf(catalogue, called(id)).map((use) => use.id)).toEqual(met);
});

test('every device keeps all uses that it is met in, and is usual in some of those alone', () => {
  for (const device of devices) {
    const met = uses.filter((use) => isMetIn(device, use)).map(({ id }) => id);
    expect(
      usesOf(catalogue, device)
        .map(({ id }) => id)
        .toSorted(),
    ).toEqual(met.toSorted());
    expect(met, device.id).toEqual(expect.arrayContaining(device.usual_in));
  }
});

test('the box leads to the usual use first', () => {
  const html = answerHtml(catalogue, '1N4148');
  const at = (use: string) => html.indexOf(`/devices/1n4148/in/${use}/`);
  expect(at('diode-clamp')).toBeGreaterThan(0);
  expect(at('diode-clamp')).toBeLessThan(at('diode-rectifier'));
});
