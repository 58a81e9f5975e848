import type { APIRoute } from 'astro';
import { href } from '../../components/links.ts';
import { atomFeed, changes } from '../../text/changes.ts';

/** The changes of the data for feed readers. */
export const GET: APIRoute = ({ site }) => {
  const address = (path: `/${string}`): string => new URL(href(path), site).href;
  return new Response(atomFeed(changes, address('/changes/'), address('/changes/feed.xml')));
};
