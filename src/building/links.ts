import { workerData } from 'node:worker_threads';
import { z } from 'zod';

const { base } = z.object({ base: z.string() }).parse(workerData);

/** In a thread that makes pages, what `components/links.ts` is where a bundler has been at work. */
export const href = (path: `/${string}`): string => `${base.replace(/\/$/, '')}${path}`;
