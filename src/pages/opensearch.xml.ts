import type { APIRoute } from 'astro';
import { href } from '../components/links.ts';
import { edition } from '../text/edition.ts';

/** Lets a browser's address bar ask the box on the first page. */
export const GET: APIRoute = ({ site }) => {
  const at = (path: `/${string}`): string => new URL(href(path), site).href;
  return new Response(
    `<?xml version="1.0" encoding="UTF-8"?>
<OpenSearchDescription xmlns="http://a9.com/-/spec/opensearch/1.1/">
  <ShortName>${edition.name}</ShortName>
  <Description>${edition.purpose}</Description>
  <InputEncoding>UTF-8</InputEncoding>
  <Image width="32" height="32" type="image/svg+xml">${at('/icon.svg')}</Image>
  <Url type="text/html" method="get" template="${at('/')}?q={searchTerms}"/>
</OpenSearchDescription>
`,
    { headers: { 'Content-Type': 'application/opensearchdescription+xml' } },
  );
};
