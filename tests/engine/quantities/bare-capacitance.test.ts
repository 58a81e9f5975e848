import { expect, test } from 'vitest';
import { inMicrofarads } from '../../../src/engine/quantities/bare-capacitance.ts';

test.each<[text: string, micro: number | undefined]>([
  ['470', 470],
  ['+47', 47],
  ['4,7', 4.7],
  ['100 ±20 %', 100],
  ['80..120', 100],
  // It says its unit, or counts in microfarads anyway, or is none.
  ['470 pF', undefined],
  ['470u', undefined],
  ['.47', undefined],
  ['470 V', undefined],
  ['', undefined],
])('“%s” is %s µF', (text, micro) => {
  const found = inMicrofarads(text)?.typ;
  if (micro === undefined) expect(found).toBeUndefined();
  else expect(found).toBeCloseTo(micro * 1e-6, 15);
});
