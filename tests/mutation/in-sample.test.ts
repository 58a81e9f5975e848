import { describe, expect, test } from 'vitest';
import { inSample, readSample } from '../../scripts/mutation/in-sample.ts';

describe('a sample as it is asked for', () => {
  test.each([
    ['1/5/any', { part: 1, whole: 5, seed: 'any' }],
    ['3/3/2026', { part: 3, whole: 3, seed: '2026' }],
    ['5/1/any', undefined],
    ['0/5/any', undefined],
    ['1/5/', undefined],
    ['1/5', undefined],
    ['x1/5/any', undefined],
    ['1/5/any thing', undefined],
  ])('%s', (text, sample) => {
    expect(readSample(text)).toEqual(sample);
  });
});

describe('what is drawn', () => {
  const names = Array.from({ length: 2000 }, (_, index) => `change ${index}`);
  const drawn = (part: number, whole: number, seed: string) =>
    names.filter((name) => inSample({ part, whole, seed }, name));

  test('is about the share that was asked for, and the whole of all', () => {
    expect(drawn(1, 4, 'any').length).toBeGreaterThan(400);
    expect(drawn(1, 4, 'any').length).toBeLessThan(600);
    expect(drawn(4, 4, 'any')).toEqual(names);
  });

  test('is the same for a seed and another for another', () => {
    expect(drawn(1, 4, 'any')).toEqual(drawn(1, 4, 'any'));
    expect(drawn(1, 4, 'any')).not.toEqual(drawn(1, 4, 'other'));
  });
});
