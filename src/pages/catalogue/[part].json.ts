import type { APIRoute } from 'astro';
import { loadCatalogue } from '../../catalogue/index.ts';
import type { Catalogue } from '../../engine/index.ts';
import {
  sliceColours,
  sliceDrawings,
  sliceJob,
  sliceLook,
  slicePosition,
  sliceReading,
} from '../../catalogue/slice.ts';

/**
 * Parts of the catalogue that read markings and colours, name a look, draw or plan a job; no position is called
 * so.
 */
const readers: Readonly<Record<string, (catalogue: Catalogue) => Catalogue>> = {
  reading: sliceReading,
  colours: sliceColours,
  look: sliceLook,
  drawings: sliceDrawings,
  job: sliceJob,
};

export const getStaticPaths = () =>
  [...Object.keys(readers), ...Object.keys(loadCatalogue().positions)].map((part) => ({
    params: { part },
  }));

/** A part of the catalogue in the compact form that browsers reckon from. */
export const GET: APIRoute = ({ params }) => {
  const { part = '' } = params;
  const catalogue = loadCatalogue();
  const slice = readers[part]?.(catalogue) ?? slicePosition(catalogue, part);
  return new Response(JSON.stringify(slice));
};
