import { describe, expect, it } from 'vitest';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { tryOut } from './tried.ts';

/** From which gain on an amplifier is stable that a capacitor at its pins makes so, worked by hand. */

/** 22 pF at its compensation pins, and stable from a gain of 1 with them. */
const WITH_CAPACITOR = { 'compensated-gain': 1, 'compensation-capacitor': 22e-12 };

describe('a part that a capacitor outside makes stable', () => {
  it.each<[string, number, number, Record<string, number>, number, string]>([
    ['4 / 2 where the old one is stable at one', 4, 2, { 'least-gain': 1 }, 2, 'add that'],
    ['4 / 2 where nothing is known of the old one', 4, 2, {}, 2, 'add that'],
    [
      '1 / 2 where the old one bears no gain of 2 without, so that its circuit has one',
      4,
      2,
      { 'least-gain': 4, 'compensated-gain': 1 },
      0.5,
      'leave it in',
    ],
    [
      '7 / 6 where the old one bears a gain of 6 without',
      7,
      6,
      { 'least-gain': 4, 'compensated-gain': 1 },
      7 / 6,
      'add that',
    ],
  ])('%s', (_what, least, gain, old, share, said) => {
    const figures = { 'least-gain': least, ...WITH_CAPACITOR };
    const { outcome, working } = tryOut('stable-gain', figures, { 'noise-gain': gain }, old);
    if (outcome.status === 'unknown') throw new Error('unknown');
    expect(outcome.value.max).toBeCloseTo(share, 9);
    expect(working(outcome.value).replaceAll('\u00A0', ' ')).toMatch(
      new RegExp(`with 22 pF at its compensation pins from a gain of 1.*${said}`, 'u'),
    );
  });

  it('is said no word of it where its gain is enough without', () => {
    const figures = { 'least-gain': 4, ...WITH_CAPACITOR };
    const tried = tryOut('stable-gain', figures, { 'noise-gain': 4 }, { 'least-gain': 1 });
    expect(tried.working(exactly(1))).not.toContain('pF');
  });
});
