import type { APIRoute } from 'astro';
import { loadCatalogue } from '../../../catalogue/index.ts';
import { demoIds, demoJob } from '../../../job/index.ts';

export const getStaticPaths = () =>
  demoIds(loadCatalogue().job).map((demo) => ({ params: { demo } }));

/** Every build makes the same file; whoever opens it as a job of their own sets its dates. */
const BEGUN = new Date(0);

/** An invented job, to be opened like a file that was saved. */
export const GET: APIRoute = ({ params }) =>
  new Response(JSON.stringify(demoJob(loadCatalogue().job, params.demo ?? '', BEGUN)));
