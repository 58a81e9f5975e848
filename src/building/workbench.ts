import { registerHooks } from 'node:module';
import { parentPort } from 'node:worker_threads';
import type { Order } from './made-page.ts';

/** A thread that makes pages: each order that comes is answered with its page, or with what went wrong. */

const [links, own] = ['../components/links.ts', './links.ts'].map(
  (path) => new URL(path, import.meta.url).href,
);

registerHooks({
  resolve: (specifier, context, next) => {
    const found = next(specifier, context);
    return found.url === links && own !== undefined ? { ...found, url: own } : found;
  },
});

const { makePage } = await import('./made-page.ts');

parentPort?.on('message', ({ id, order }: { id: number; order: Order }) => {
  try {
    parentPort?.postMessage({ id, page: makePage(order) });
  } catch (error) {
    parentPort?.postMessage({ id, error });
  }
});
