import { expect, test } from 'vitest';
import { assess, findStandIns } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { bodyPhrase } from '../../../src/substitution/phrases.ts';
import { catalogue } from '../assessment/setting.ts';

const rail = {
  original: {
    type: 'al-electrolytic-wet',
    capacitance: exactly(1e-3),
    ratedVoltage: exactly(6.3),
  },
  position: 'bulk-rail',
  conditions: { vdc: exactly(4) },
};

test('a part to order comes with its body and the pitch of its leads', () => {
  const { buy } = assess(catalogue, rail, { type: 'al-electrolytic-wet' });
  expect(buy).toMatchObject({
    style: 'radial can',
    body: { shape: 'can', length: 8, width: 8, height: 11.5, pitch: [3.5] },
  });
});

test.each([
  ['can', { length: 8, width: 8, height: 11.5 }, [3.5], '⌀8 × 11.5\u00A0mm, pitch 3.5\u00A0mm'],
  ['tube', { length: 18, width: 6.5, height: 6.5 }, [], '⌀6.5 × 18\u00A0mm'],
  ['disc', { length: 9, width: 5, height: 9 }, [5, 7.5], '⌀9 × 5\u00A0mm, pitch 5 or 7.5\u00A0mm'],
  ['box', { length: 18, width: 7, height: 14 }, [15], '18 × 7 × 14\u00A0mm, pitch 15\u00A0mm'],
] as const)('a %s is said by its sides', (shape, sides, pitch, words) => {
  const assessment = assess(catalogue, rail, { type: 'al-electrolytic-wet' });
  const buy = {
    style: 'part',
    pitch: [1],
    series: 'E6',
    body: { shape, ...sides, pitch: [...pitch] },
  };
  const apart = pitch.length === 0 ? ', pitch 1\u00A0mm' : '';
  expect(bodyPhrase({ ...assessment, buy })).toBe(`part, ${words}${apart}`);
});

test('a part whose body is not listed is ordered by its style and pitch', () => {
  const assessment = assess(catalogue, rail, { type: 'al-electrolytic-wet' });
  const buy = { style: 'radial box', pitch: [5, 7.5], series: 'E6' };
  expect(bodyPhrase({ ...assessment, buy })).toBe('radial box, pitch 5 or 7.5\u00A0mm');
});

test('room that the visitor measures decides, not the usual room', () => {
  const tight = { ...rail, conditions: { ...rail.conditions, 'height-room': exactly(8e-3) } };
  const find = (request: typeof rail) =>
    findStandIns(catalogue, request)
      .find(({ candidate }) => candidate.type === 'al-electrolytic-wet')
      ?.findings.find(({ finding }) => finding === 'height');
  expect(find(rail)?.verdict).toBe('fits');
  expect(find(tight)).toMatchObject({ verdict: 'fits-if', limit: { high: 8e-3 } });
});
