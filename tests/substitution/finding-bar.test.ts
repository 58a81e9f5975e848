import { expect, test } from 'vitest';
import { findingBar } from '../../src/substitution/finding-bar.ts';
import { findingWith, type Change } from './a-finding.ts';

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
  expect(findingBar(findingWith(change)) !== undefined).toBe(drawn);
});
