import { expect, test } from 'vitest';
import { partInPosition } from '../../src/text/part-in-position.ts';

test.each([
  ['Glass dielectric', 'Interstage coupling', 'Glass dielectric in interstage coupling'],
  [
    'Ceramic disc, class unknown',
    'RF tuned circuit',
    'Ceramic disc, class unknown, in RF tuned circuit',
  ],
  ['wiper', 'A divider', 'Wiper in a divider'],
])('%s, %s: %s', (part, position, called) => {
  expect(partInPosition(part, position)).toBe(called);
});
