import { describe, expect, it } from 'vitest';
import { AT_ONCE, eachOf } from '../../src/worker/each-of.ts';

/** Lets everything that waits for nothing but its turn go on. */
const turns = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
};

const numbers = Array.from({ length: 40 }, (_, at) => at);

describe('work on each of many items', () => {
  it('is done once for each, a few at once', async () => {
    const done: number[] = [];
    let [now, most] = [0, 0];
    await eachOf(numbers, async (item) => {
      now += 1;
      most = Math.max(most, now);
      await turns();
      now -= 1;
      done.push(item);
    });
    expect(done.toSorted((a, b) => a - b)).toEqual(numbers);
    expect(most).toBe(AT_ONCE);
  });

  it('begins on no more once one has failed, and fails when those under way are done', async () => {
    const begun: number[] = [];
    const done: number[] = [];
    const work = eachOf(numbers, async (item) => {
      begun.push(item);
      await Promise.resolve();
      if (item === 3) throw new Error('no room');
      await turns();
      done.push(item);
    });
    await expect(work).rejects.toThrow('no room');
    expect(begun.length).toBeLessThanOrEqual(2 * AT_ONCE);
    expect(done).toEqual(begun.filter((item) => item !== 3));
    await turns();
    expect(done.length).toBe(begun.length - 1);
  });
});
