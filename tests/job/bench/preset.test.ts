import { describe, expect, test } from 'vitest';
import { presetSteps } from '../../../src/job/bench/preset.ts';
import { emptyPreset } from '../../../src/job/model/job.ts';
import { catalogue } from '../boards.ts';

describe('a trimmer set beforehand', () => {
  const preset = {
    ...emptyPreset(),
    from: '1',
    to: 'wiper',
    old: '2.687k',
    supplied: '4.56k',
    total: '10k',
    turns: '25',
  };

  test('as the bench sum has it', () => {
    const { set, turns } = presetSteps(catalogue, preset);
    expect(set?.typ).toBeCloseTo(2687);
    expect(turns?.typ).toBeCloseTo(-4.6825);
  });

  test.each([
    [{ supplied: '' }, 2687, undefined],
    [{ turns: '' }, 2687, undefined],
    [{ total: '2k' }, undefined, undefined],
    [{ old: '' }, undefined, undefined],
  ])('%o', (said, set, turns) => {
    const steps = presetSteps(catalogue, { ...preset, ...said });
    expect(steps.set?.typ).toBe(set);
    expect(steps.turns?.typ).toBe(turns);
  });

  test('says what it cannot read', () => {
    const { rejected } = presetSteps(catalogue, { ...preset, old: 'half way' });
    expect(Object.keys(rejected)).toEqual(['old']);
  });
});
