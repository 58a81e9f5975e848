import '../browser/older-browsers.ts';
import type { Progress } from '../offline/progress.ts';
import { carryOverPages, carryOverShell } from './carry-over.ts';
import { answerEarlier, dropEarlier, noteEarlierPages } from './earlier-pages.ts';
import { forgetPages, keepAll } from './save-all.ts';
import { pathOf, worker } from './scope.ts';
import { serwist } from './shell.ts';

/**
 * Keeps pages on the device. Each edition has caches of its own, filled before it is used, so that
 * a half-finished update leaves the edition before it whole. It waits until a page asks for it.
 */

worker.addEventListener('install', (event) => {
  const install = async (): Promise<void> => {
    await carryOverShell(serwist.getUrlsToPrecacheKeys().values());
    await serwist.handleInstall(event);
    await carryOverPages();
  };
  event.waitUntil(install());
});

worker.addEventListener('activate', (event) => {
  const takeOver = async (): Promise<void> => {
    await noteEarlierPages();
    await worker.clients.claim();
    await dropEarlier();
  };
  event.waitUntil(takeOver());
  void serwist.handleActivate(event);
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || pathOf(request.url) === undefined) return;
  const answer = async (): Promise<Response> =>
    (request.mode === 'navigate' ? undefined : await answerEarlier(request, event.clientId)) ??
    (await serwist.handleRequest({ request, event })) ??
    Response.error();
  event.respondWith(answer());
});

/** What pages ask besides what the library has messages for. */
interface Asked {
  ask?: 'keep all' | 'forget' | 'tidy';
}

worker.addEventListener('message', (event) => {
  serwist.handleCache(event);
  const { ask } = (event.data ?? {}) as Asked;
  const tell = (progress: Progress): void => {
    event.ports[0]?.postMessage(progress);
  };
  if (ask === 'tidy') event.waitUntil(dropEarlier());
  if (ask === 'forget') event.waitUntil(forgetPages(tell));
  if (ask === 'keep all') {
    event.waitUntil(
      keepAll(tell).catch((fault: unknown) => {
        tell({ fault: String(fault) });
      }),
    );
  }
});
