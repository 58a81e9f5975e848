import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { canonicalOf } from './page-text.ts';
import { SITE } from './site-folder.ts';

/** Lists the pages that search engines may show (sitemaps.org, protocol 0.9): those that name their own address. */

const addresses = globSync('**/index.html', { cwd: SITE })
  .map((file) => canonicalOf(readFileSync(join(SITE, file), 'utf8')))
  .filter((address) => address !== '')
  .toSorted();
const entries = addresses.map((address) => `<url><loc>${encodeURI(address)}</loc></url>\n`);
writeFileSync(
  join(SITE, 'sitemap.xml'),
  `<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${entries.join('')}</urlset>
`,
);
console.log(`${addresses.length} pages for search engines`);
