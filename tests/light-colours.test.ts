import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Colours for browsers that know no `light-dark()`. */

const styles = globSync('src/**/*.css').map((file) => readFileSync(file, 'utf8'));

const BOTH = /([\w-]+): light-dark\((#[\da-f]+), #[\da-f]+\);/gu;

test('every colour of the light and the dark theme has its light one for them as well', () => {
  const told = styles.flatMap((css) => {
    const [, fallen = ''] =
      /@supports not \(color: light-dark[^{]*\{([\s\S]*?)\n\}/u.exec(css) ?? [];
    return [...css.matchAll(BOTH)].map(([whole, name = '', light = '']) => {
      const before = css.slice(0, css.indexOf(whole)).trimEnd();
      return [name, fallen.includes(`${name}: ${light};`) || before.endsWith(`${name}: ${light};`)];
    });
  });
  expect(told.length).toBeGreaterThan(10);
  expect(told.filter(([, isTold]) => isTold !== true)).toEqual([]);
});
