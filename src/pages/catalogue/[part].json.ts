import type { APIRoute } from 'astro';
import { loadCatalogue } from '../../catalogue/index.ts';
import { slicePosition, sliceReading } from '../../catalogue/slice.ts';

/** The part of the catalogue that reads markings; no position may be called so. */
const READING = 'reading';

export const getStaticPaths = () =>
  [READING, ...Object.keys(loadCatalogue().positions)].map((part) => ({ params: { part } }));

/** A part of the catalogue in the compact form that browsers reckon from. */
export const GET: APIRoute = ({ params }) => {
  const { part = READING } = params;
  const catalogue = loadCatalogue();
  const slice = part === READING ? sliceReading(catalogue) : slicePosition(catalogue, part);
  return new Response(JSON.stringify(slice));
};
