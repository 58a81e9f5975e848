import { expect, test } from 'vitest';
import { isFurther } from '../../scripts/further-pages.ts';

test.each([
  ['', false],
  ['types/paper-oil/', false],
  ['positions/reservoir/', false],
  ['sums/ripple-current/', false],
  ['replace/paper-oil/', false],
  ['replace/paper-oil/in/tone-stack/', true],
  ['resistors/metal-film/in/bias-resistor/', true],
  ['devices/4066b/', false],
  ['devices/uses/switch-hold/', false],
  ['devices/4066b/in/switch-hold/', true],
  ['read/codes/', false],
  ['read/codes/104/', true],
  ['read/colours/resistor-4/', false],
  ['sources/', true],
  ['sources/kinds/book/', true],
  ['data/', true],
])('%j is in the further index: %j', (path, further) => {
  expect(isFurther(path)).toBe(further);
});
