import type { APIRoute } from 'astro';
import { orderPage } from '../../../../building/workshop.ts';
import { pairPaths } from '../../../../substitution/reference.ts';

export const getStaticPaths = () => pairPaths().filter(({ props }) => props.pairing.met);

/** The assessments of one substitution page at reference conditions, SI units. */
export const GET: APIRoute = async ({ params: { type = '', position = '' } }) =>
  new Response((await orderPage('pair', type, position)).figures);
