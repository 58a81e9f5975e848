import type { APIRoute } from 'astro';
import { orderPage } from '../../../../building/workshop.ts';
import { kindPairPaths } from '../../../../substitution/kind-reference.ts';

export const getStaticPaths = kindPairPaths;

/** The assessments of one page about a kind of part at reference conditions, SI units. */
export const GET: APIRoute = async ({ params: { type = '', position = '' } }) =>
  new Response((await orderPage('kind', type, position)).figures);
