import { expect, test } from 'vitest';
import { deviceStandIns, type Finding } from '../../src/engine/index.ts';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { deviceAnswer, reasonOf } from '../../src/device-view/answer.ts';

const pins: Finding = {
  demand: 'amp-line-pins',
  finding: 'pins',
  name: 'Pins with another function',
  weight: 'hard',
  unit: 'grade',
  limit: { high: 0 },
  margin: 1,
  verdict: 'fits',
  missing: [],
  working: 'every pin does the same',
  why: 'A pin that does something else breaks the circuit.',
  sources: [],
  basis: 'published',
  sure: 'sure',
  weakest: [],
};
const counted = (typ: number, working: string): Finding => ({
  ...pins,
  working,
  standIn: { min: typ, typ, max: typ },
});

test.each([
  ['met', counted(0, 'every pin does the same'), 'every pin does the same'],
  [
    'not met',
    counted(1, 'pin 5: ground becomes output'),
    'pins with another function (pin 5: ground becomes output)',
  ],
  ['not known', pins, 'pins with another function, which is not known'],
])('a count of pins that is %s', (_what, finding, words) => {
  expect(reasonOf(finding)).toBe(words);
});

test.each([
  // What comes first in the list comes first in the sentence: the number itself, or what is better.
  ['tl072', 'amp-line', /^A new TL072 fits as audio line stage; .* may stand in for it\./u],
  ['741', 'amp-line', /^TL071, .* may stand in for a 741 as audio line stage\./u],
  // Germanium is made no more: what is to be had is as old as what is replaced.
  ['oc71', 'germanium-stage', /^Another OC71 fits as germanium stage; /u],
  ['ac128', 'germanium-stage', /is best replaced with another one\./u],
  ['7815', 'reg-rail', /^As regulator .*, a 7815 is best replaced with a new one\./u],
])('the answer about a %s in %s', (old, place, words) => {
  const catalogue = loadCatalogue();
  const device = catalogue.devices.devices.find(({ id }) => id === old);
  const use = catalogue.devices.uses.find(({ id }) => id === place);
  if (device === undefined || use === undefined) throw new Error(`no ${old} or ${place}`);
  const found = deviceStandIns(catalogue, { original: device, use });
  expect(deviceAnswer(device, use, found).replaceAll('\u{a0}', ' ')).toMatch(words);
});
