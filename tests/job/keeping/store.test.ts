import * as storage from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { openJob, writeJob } from '../../../src/job/keeping/file.ts';
import { NEWEST_VERSION } from '../../../src/job/keeping/migrate.ts';
import type { Upgrade } from '../../../src/job/keeping/database.ts';
import { openStore, type JobStore } from '../../../src/job/keeping/store.ts';
import { emptyJob, type Job } from '../../../src/job/model/job.ts';

// Set by hand: what the package would choose for itself depends on what other tests left behind.
Object.assign(globalThis, storage);

const job: Job = { ...emptyJob('a', new Date(0)), title: 'Board' };
const open: JobStore[] = [];
let count = 0;

const storeOf = async (name: string): Promise<JobStore> => {
  const store = await openStore(name);
  if ('message' in store) throw new Error(store.message);
  open.push(store);
  return store;
};
const fresh = (): string => `jobs-${String(count++)}`;

afterEach(() => {
  for (const store of open.splice(0)) store.close();
  vi.restoreAllMocks();
});

test('keeps several jobs and their revisions', async () => {
  const store = await storeOf(fresh());
  expect(await store.save(job, 0)).toEqual({ state: 'saved', revision: 1 });
  expect(await store.save({ ...job, title: 'Again' }, 1)).toEqual({ state: 'saved', revision: 2 });
  await store.save({ ...job, id: 'b' }, 0);
  const list = await store.list();
  expect(list).toMatchObject([
    { ok: true, revision: 2, job: { title: 'Again' } },
    { ok: true, revision: 1, job: { id: 'b' } },
  ]);
  await store.remove('a');
  expect(await store.list()).toHaveLength(1);
});

test('of two pages, the later save loses nothing of either', async () => {
  const name = fresh();
  const [one, two] = [await storeOf(name), await storeOf(name)];
  await one.save(job, 0);
  await two.save({ ...job, title: 'Theirs' }, 1);
  const saved = await one.save({ ...job, title: 'Mine' }, 1);
  expect(saved).toMatchObject({ state: 'stale', revision: 1 });
  const titles = (await one.list()).map((each) => (each.ok ? each.job.title : ''));
  expect(titles.sort()).toEqual(['Mine (copy from another page)', 'Theirs']);
});

test('what was written already, but never answered, is no copy', async () => {
  const name = fresh();
  const [one, two] = [await storeOf(name), await storeOf(name)];
  await one.save(job, 0);
  await one.save({ ...job, title: 'Typed last' }, 1);
  const again = await two.save({ ...job, title: 'Typed last' }, 1);
  expect(again).toEqual({ state: 'saved', revision: 2 });
  expect(await two.list()).toMatchObject([{ ok: true, revision: 2, job: { title: 'Typed last' } }]);
});

test('one page hears of what another saved', async () => {
  const name = fresh();
  const [one, two] = [await storeOf(name), await storeOf(name)];
  const heard = new Promise((resolve) => two.watch(resolve));
  await one.save(job, 0);
  expect(await heard).toBe('a');
});

test('a damaged job is set aside, can be handed out, and stops no other', async () => {
  const name = fresh();
  const store = await storeOf(name);
  await store.save(job, 0);
  await store.save({ ...job, id: 'b' }, 0);
  const database = await openDB(name, 1);
  const kept = (await database.get('jobs', 'a')) as { text: string };
  await database.put('jobs', { ...kept, text: kept.text.replace('Board', 'Bored') });
  database.close();
  const [damaged, sound] = await store.list();
  expect(sound?.ok).toBe(true);
  if (damaged === undefined || damaged.ok) throw new Error('not set aside');
  expect(openJob(damaged.text).ok).toBe(true);
});

test('says what was not saved as a file since it changed', async () => {
  const store = await storeOf(fresh());
  const needs = async () => (await store.list()).map((each) => each.ok && each.needsExport);
  await store.save(job, 0);
  expect(await needs()).toEqual([true]);
  await store.exported('a');
  expect(await needs()).toEqual([false]);
  await new Promise((resolve) => setTimeout(resolve, 5));
  await store.save(job, 1);
  expect(await needs()).toEqual([true]);
});

test.each([
  ['QuotaExceededError', /no room/],
  ['InvalidStateError', /does not keep/],
])('%s while saving is said', async (name, message) => {
  const store = await storeOf(fresh());
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('', name);
  });
  const saved = await store.save(job, 0);
  expect(saved.state === 'refused' ? saved.message : '').toMatch(message);
});

test('a browser that refuses the store is said to', async () => {
  vi.spyOn(indexedDB, 'open').mockImplementation(() => {
    throw new DOMException('', 'SecurityError');
  });
  expect(await openStore(fresh())).toEqual({ message: expect.stringMatching(/does not keep/) });
});

/** A database as the first edition left it, with one job in it. */
const firstEdition = async (name: string): Promise<void> => {
  const database = await openDB(name, 1, {
    upgrade: (old) => {
      old.createObjectStore('jobs', { keyPath: 'id' });
    },
  });
  const text = writeJob({ ...job, id: 'old', title: 'Of the first edition' });
  const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  const sum = Buffer.from(bytes).toString('hex');
  await database.put('jobs', { id: 'old', text, sum, revision: 3, saved: '2026', exported: '' });
  database.close();
};

/** A second version, as a later edition might bring. */
const LATER: readonly Upgrade[] = [
  (old) => {
    old.createObjectStore('jobs', { keyPath: 'id' });
  },
  (_old, change) => {
    change.objectStore('jobs').createIndex('saved' as never, 'saved');
  },
];

describe('editions of the database', () => {
  test.each([
    ['this one', undefined],
    ['a later one', LATER],
  ])('%s finds the jobs of the first, and goes on saving them', async (_edition, upgrades) => {
    const name = fresh();
    await firstEdition(name);
    const store = await openStore(name, upgrades);
    if ('message' in store) throw new Error(store.message);
    open.push(store);
    const [one] = await store.list();
    expect(one).toMatchObject({ ok: true, revision: 3, job: { title: 'Of the first edition' } });
    if (one?.ok !== true) throw new Error('not read');
    expect(await store.save(one.job, 3)).toEqual({ state: 'saved', revision: 4 });
  });

  test('an older page lets go, and says why it keeps nothing more', async () => {
    const name = fresh();
    const older = await storeOf(name);
    await older.save(job, 0);
    const newer = await openStore(name, LATER);
    if ('message' in newer) throw new Error(newer.message);
    open.push(newer);
    expect(await newer.list()).toHaveLength(1);
    const saved = await older.save({ ...job, title: 'Late' }, 1);
    expect(saved.state === 'refused' ? saved.message : '').toMatch(/newer edition/u);
  });

  test('an older page that is opened later says so and changes nothing', async () => {
    const name = fresh();
    const newer = await openStore(name, LATER);
    if ('message' in newer) throw new Error(newer.message);
    open.push(newer);
    await newer.save(job, 0);
    expect(await openStore(name)).toEqual({ message: expect.stringMatching(/newer edition/u) });
    expect(await newer.list()).toHaveLength(1);
  });

  test('a page that holds on to an older database is not waited for', async () => {
    const name = fresh();
    await firstEdition(name);
    const holds = await openDB(name, 1);
    expect(await openStore(name, LATER)).toEqual({
      message: expect.stringMatching(/Close the other tabs/u),
    });
    holds.close();
  });

  test('a job of a newer edition is kept as it is', async () => {
    const name = fresh();
    const store = await storeOf(name);
    await store.save({ ...job, version: NEWEST_VERSION + 1 } as unknown as Job, 0);
    const [one] = await store.list();
    expect(one).toMatchObject({ ok: false, message: expect.stringMatching(/newer edition/u) });
  });
});
