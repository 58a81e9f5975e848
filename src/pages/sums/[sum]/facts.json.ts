import type { APIRoute, GetStaticPaths } from 'astro';
import { loadCatalogue } from '../../../catalogue/index.ts';
import { allSums } from '../../../engine/sums/index.ts';

export const getStaticPaths = (() =>
  allSums
    .filter(({ facts }) => facts !== undefined)
    .map(({ id }) => ({ params: { sum: id } }))) satisfies GetStaticPaths;

/** What a sum needs of the catalogue, as plain data. */
export const GET: APIRoute = ({ params }) => {
  const sum = allSums.find(({ id }) => id === params['sum']);
  return new Response(JSON.stringify(sum?.facts?.(loadCatalogue())));
};
