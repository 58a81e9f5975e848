import { href } from '../components/links.ts';
import { edition } from '../text/edition.ts';

/** What a device needs to install the site as a program of its own. */
export const GET = (): Response =>
  new Response(
    JSON.stringify({
      id: href('/'),
      name: edition.name,
      short_name: edition.name,
      description: edition.purpose,
      lang: 'en',
      start_url: href('/'),
      scope: href('/'),
      display: 'standalone',
      background_color: '#faf7ef',
      theme_color: '#faf7ef',
      icons: [{ src: href('/icon.svg'), sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      shortcuts: [
        { name: 'Read a marking', url: href('/read/') },
        { name: 'Name a part by its look', url: href('/look/') },
        { name: 'Find a stand-in', url: href('/replace/') },
      ],
    }),
    { headers: { 'Content-Type': 'application/manifest+json' } },
  );
