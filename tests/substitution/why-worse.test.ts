import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { assess, findStandIns, type Candidate } from '../../src/engine/index.ts';
import { inHand, whyWorse } from '../../src/substitution/why-worse.ts';

const catalogue = loadCatalogue();

/** What is said of a part beside the best stand-in. */
const beside = (type: string, position: string, candidate: Candidate): string => {
  const request = { original: { type }, position };
  const [best] = findStandIns(catalogue, request);
  if (best === undefined) throw new Error('nothing to compare with');
  return whyWorse(catalogue, assess(catalogue, request, candidate), best);
};

describe('why a part is worse than the best', () => {
  test.each([
    [{ type: 'ceramic-z5u' }, /^Worse than the first, .*(against|knock)/],
    [{ type: 'paper-wax' }, /offset by leakage: .*V.* against .*; at most 100\smV\.$/],
    [{ type: 'al-electrolytic-wet' }, /^Worse than the first/],
    [{ type: 'pet-metallized', capacitance: 100e-12 }, /^Worse .*(value|frequency).* against /],
  ])('%j', (candidate, says) => {
    const sentence = beside('ceramic-disc-unknown', 'interstage-coupling', candidate);
    expect(sentence).toMatch(says);
    expect(sentence).toMatch(/^[^.]*(\.\d[^.]*)*\.$/);
  });

  test('is nothing for the best itself', () => {
    const request = { original: { type: 'ceramic-disc-unknown' }, position: 'interstage-coupling' };
    const [best] = findStandIns(catalogue, request);
    expect(best && whyWorse(catalogue, best, best)).toBe('It is the first of the stand-ins.');
  });

  test('names a smaller margin where the verdict is the same', () => {
    const sentence = beside('ceramic-disc-unknown', 'interstage-coupling', {
      type: 'pet-metallized',
    });
    expect(sentence).toMatch(/^As good a verdict as the first, .*: .* against .*; at most .*\.$/);
  });
});

describe('a part that is not made', () => {
  const request = { original: { type: 'pet-metallized' }, position: 'sample-hold' };

  test('is judged as if one had it', () => {
    const had = inHand(assess(catalogue, request, { type: 'pc-metallized' }));
    expect(had?.concerns.every(({ finding }) => finding !== 'availability')).toBe(true);
    expect(had?.verdict).not.toBe(undefined);
    expect(had?.verdict).toBe(had?.concerns[0]?.verdict ?? 'fits');
  });

  test('is not spoken of where it can be bought', () => {
    expect(inHand(assess(catalogue, request, { type: 'pp-metallized' }))).toBeUndefined();
  });
});
