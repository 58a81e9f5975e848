import type { APIRoute } from 'astro';
import { href } from '../components/links.ts';

/** Every page may be read by anybody; the map lists those that are worth finding. */
export const GET: APIRoute = ({ site }) =>
  new Response(`User-agent: *\nAllow: /\nSitemap: ${new URL(href('/sitemap.xml'), site).href}\n`);
