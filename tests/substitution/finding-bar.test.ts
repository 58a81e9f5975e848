import { expect, test } from 'vitest';
import type { Finding } from '../../src/engine/index.ts';
import { findingBar } from '../../src/substitution/finding-bar.ts';

const finding: Finding = {
  demand: 'reservoir-ripple',
  finding: 'ripple-voltage',
  name: 'Ripple',
  weight: 'strong',
  property: 'ripple-voltage',
  unit: 'V',
  original: { min: 3, typ: 3.3, max: 4 },
  standIn: { min: 3.1, typ: 3.3, max: 3.6 },
  limit: { high: 15 },
  margin: 4.2,
  verdict: 'fits',
  missing: [],
  working: '',
  why: '',
  sources: [],
  basis: 'published',
  sure: 'likely',
  weakest: [],
};

type Change = { [Key in keyof Finding]?: Finding[Key] | undefined };

test.each<[change: Change, drawn: boolean]>([
  [{}, true],
  [{ original: undefined }, true],
  [{ limit: undefined }, true],
  [{ margin: 0.2 }, true],
  [{ margin: 99 }, true],
  // The limit is so far off that where the two stand does not matter.
  [{ margin: 100 }, false],
  // There is no range to see.
  [{ standIn: { min: 3, typ: 3, max: 3 } }, false],
  [{ standIn: undefined }, false],
  [{ unit: 'grade' }, false],
])('a finding with %j is drawn: %s', (change, drawn) => {
  expect(findingBar({ ...finding, ...change } as Finding) !== undefined).toBe(drawn);
});
