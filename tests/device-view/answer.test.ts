import { expect, test } from 'vitest';
import type { Finding } from '../../src/engine/index.ts';
import { reasonOf } from '../../src/device-view/answer.ts';

const pins: Finding = {
  demand: 'amp-line-pins',
  finding: 'pins',
  name: 'Pins with another function',
  weight: 'hard',
  property: 'pins',
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
