/** In the one file, what `browser/packed-file.ts` is on the site: the catalogue is unpacked as a whole. */
export { siteFile as packedFile } from './site-file.ts';
