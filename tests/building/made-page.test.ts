import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { afterAll, expect, test } from 'vitest';
import { makePage, type MadePage, type Order } from '../../src/building/made-page.ts';

const MODULE = join(import.meta.dirname, '..', '..', 'src', 'building', 'workbench.ts');
const worker = new Worker(MODULE, { workerData: { base: import.meta.env.BASE_URL } });

afterAll(() => worker.terminate());

const answerTo = (order: Order): Promise<{ id: number; page?: MadePage; error?: unknown }> =>
  new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.postMessage({ id: 1, order });
  });

const ORDERS: readonly Order[] = [
  { of: 'pair', old: 'paper-oil', place: 'interstage-coupling' },
  { of: 'kind', old: 'carbon-composition', place: 'gain-resistor' },
  { of: 'device', old: '741', place: 'amp-line' },
];

test.each(ORDERS)('$of: a page is the same from either thread', async (order) => {
  const { page } = await answerTo(order);
  expect(page).toEqual(makePage(order));
  expect(page?.html).toContain('Stand-ins, best first');
  expect(JSON.parse(page?.figures ?? '')).toHaveProperty('standIns');
});

test('an order for what is not there fails, and the next one is made', async () => {
  const { error } = await answerTo({ of: 'device', old: 'no-such', place: 'amp-line' });
  expect(error).toBeInstanceOf(RangeError);
  const { page } = await answerTo({ of: 'device', old: '741', place: 'amp-line' });
  expect(page?.title).not.toBe('');
});
