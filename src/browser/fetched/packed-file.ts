import { unpackRows } from '../../packed/rows.ts';
import { siteFile } from './site-file.ts';

/**
 * A file of this site with the tables in it as rows again.
 * @throws where it cannot be fetched
 */
export const packedFile = async (path: `/${string}`): Promise<unknown> =>
  unpackRows(await siteFile(path));
