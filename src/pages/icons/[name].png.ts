import type { APIRoute } from 'astro';
import { drawMark } from '../../pictures/mark.ts';
import { pictures } from '../../pictures/marks.ts';
import { encodePng } from '../../pictures/png.ts';

export const getStaticPaths = () => pictures.map(({ name }) => ({ params: { name } }));

/** The mark of the site, for devices and places that take no SVG. */
export const GET: APIRoute = ({ params }) => {
  const picture = pictures.find(({ name }) => name === params['name']);
  if (picture === undefined) throw new Error(`there is no picture ${params['name'] ?? ''}`);
  const { width, height, share } = picture;
  return new Response(encodePng(drawMark(width, height, share)), {
    headers: { 'Content-Type': 'image/png' },
  });
};
