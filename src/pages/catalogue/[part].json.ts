import type { APIRoute } from 'astro';
import { loadCatalogue } from '../../catalogue/index.ts';
import type { Catalogue } from '../../engine/index.ts';
import { sliceDevices } from '../../catalogue/slices/slice-devices.ts';
import { sliceDrawings, sliceJob } from '../../catalogue/slices/slice-job.ts';
import { sliceLook } from '../../catalogue/slices/slice-look.ts';
import { slicePosition } from '../../catalogue/slices/slice-position.ts';
import { sliceColours, sliceReading } from '../../catalogue/slices/slice-reading.ts';
import { sliceKindPosition } from '../../catalogue/slices/slice-kind.ts';
import { packRows } from '../../packed/rows.ts';

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

/** Before the id of a family of devices; no position is called so either. */
const DEVICES = 'devices-';

export const getStaticPaths = () => {
  const { devices, positions, kindPositions } = loadCatalogue();
  const families = devices.families.map(({ id }) => DEVICES + id);
  const places = [...Object.keys(positions), ...Object.keys(kindPositions)];
  return [...Object.keys(readers), ...families, ...places].map((part) => ({ params: { part } }));
};

const sliceOf = (catalogue: Catalogue, part: string): Catalogue => {
  const reader = readers[part];
  if (reader !== undefined) return reader(catalogue);
  if (part.startsWith(DEVICES)) return sliceDevices(catalogue, part.slice(DEVICES.length));
  const slice = part in catalogue.kindPositions ? sliceKindPosition : slicePosition;
  return slice(catalogue, part);
};

/** A part of the catalogue in the compact form that browsers reckon from. */
export const GET: APIRoute = ({ params }) => {
  const { part = '' } = params;
  return new Response(JSON.stringify(packRows(sliceOf(loadCatalogue(), part))));
};
