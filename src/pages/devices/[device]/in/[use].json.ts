import type { APIRoute } from 'astro';
import { orderPage } from '../../../../building/workshop.ts';
import { devicePaths } from '../../../../device-view/reference.ts';

export const getStaticPaths = devicePaths;

/** The assessments of one page about a device at the usual numbers, SI units. */
export const GET: APIRoute = async ({ params: { device = '', use = '' } }) =>
  new Response((await orderPage('device', device, use)).figures);
