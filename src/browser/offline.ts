import './older-browsers.ts';
import { href } from '../components/links.ts';
import './trusted.ts';
import { isBusy, whenDone } from './page/busy.ts';

/** Brings the worker that keeps pages, and offers an update; small, because every page has it. */

const offer = (waiting: ServiceWorker): void => {
  const bar = document.querySelector<HTMLElement>('#update');
  if (bar === null) return;
  if (isBusy()) {
    whenDone(() => {
      offer(waiting);
    });
    return;
  }
  bar.hidden = false;
  bar.querySelector('button')?.addEventListener('click', () => {
    // Another page may have taken it meanwhile.
    if (waiting.state === 'activating' || waiting.state === 'activated') {
      location.reload();
      return;
    }
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      location.reload();
    });
    waiting.postMessage({ type: 'SKIP_WAITING' });
  });
};

/** Has the worker keep a page that came before it did. */
const keepThisPage = (worker: ServiceWorker | null): void => {
  const fetched = performance.getEntriesByType('resource').map(({ name }) => name);
  worker?.postMessage({
    type: 'CACHE_URLS',
    payload: { urlsToCache: [location.href, ...fetched] },
  });
};

/** Registers the worker; where it is forbidden the site works without. */
export const startOffline = async (): Promise<void> => {
  // The worker's lists are made by the build.
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const hadOne = navigator.serviceWorker.controller !== null;
  const registration = await navigator.serviceWorker.register(href('/sw.js'), {
    updateViaCache: 'none',
  });
  if (registration.waiting && hadOne) offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && navigator.serviceWorker.controller) offer(coming);
    });
  });
  const { active } = await navigator.serviceWorker.ready;
  if (!hadOne) keepThisPage(active);
  active?.postMessage({ ask: 'tidy' });
};
