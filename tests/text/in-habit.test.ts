import { describe, expect, test } from 'vitest';
import type { Habit } from '../../src/engine/index.ts';
import { inHabit } from '../../src/text/in-habit.ts';

/** A space that does not break, as an ordinary one. */
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');
const hard = (text: string): string => text.replaceAll(' ', '\u00a0');

describe('words with numbers in them', () => {
  const cases: [string, Habit, string][] = [
    ['1 / (2π × 4.7 kΩ × 22 nF) = 1.54 kHz', {}, '1 / (2π × 4.7 kΩ × 22 nF) = 1.54 kHz'],
    ['4.7 kΩ × 22 nF = 0.103 ms', { decimal: 'comma' }, '4,7 kΩ × 22 nF = 0,103 ms'],
    ['4.7 kΩ × 22 nF', { capacitance: 'pF-uF' }, '4.7 kΩ × 0.022 µF'],
    ['4.7 kΩ × 2.2 nF', { capacitance: 'pF-uF' }, '4.7 kΩ × 2200 pF'],
    ['19–21 nF in service', { capacitance: 'pF-uF' }, '0.019–0.021 µF in service'],
    ['19.5–21 nF', { capacitance: 'pF-uF', decimal: 'comma' }, '0,0195–0,021 µF'],
    ['4.5–4.9 kΩ beside 470 Ω', { ohm: 'letter' }, '4k5–4k9 beside 470R'],
    ['30 000 MΩ·µF over 10 nF', { ohm: 'letter' }, '30 000 MΩ·µF over 10 nF'],
    ['10 000 µF', { capacitance: 'pF-uF' }, '10 000 µF'],
    ['2 F1 and 5 FIT', { capacitance: 'pF-uF' }, '2 F1 and 5 FIT'],
  ];
  test.each(cases)('%s for %o', (words, habit, written) => {
    expect(spaced(inHabit(hard(words), habit))).toBe(written);
  });
});
