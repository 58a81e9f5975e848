import { href } from '../components/links.ts';
import { icons, type MarkPicture } from '../pictures/marks.ts';
import { edition } from '../text/edition.ts';

const icon = ({ name, width, height }: MarkPicture, purpose: 'any' | 'maskable') => ({
  src: href(`/icons/${name}.png`),
  sizes: `${width}x${height}`,
  type: 'image/png',
  purpose,
});

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
      icons: [
        { src: href('/icon.svg'), sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
        icon(icons.small, 'any'),
        icon(icons.large, 'any'),
        icon(icons.masked, 'maskable'),
      ],
      shortcuts: [
        { name: 'Read a marking', url: href('/read/') },
        { name: 'Name a part by its look', url: href('/look/') },
        { name: 'Find a stand-in', url: href('/replace/') },
        { name: 'Job', url: href('/job/') },
      ],
    }),
    { headers: { 'Content-Type': 'application/manifest+json' } },
  );
