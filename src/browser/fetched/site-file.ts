import { href } from '../../components/links.ts';
import { unpackRows } from '../../packed/rows.ts';

/**
 * A file of this site, read as JSON, with the tables in it as rows again. Built from the same schemas as the scripts, its shape is trusted.
 * @throws where it cannot be fetched
 */
export const siteFile = async (path: `/${string}`): Promise<unknown> => {
  const response = await fetch(href(path));
  if (!response.ok) throw new Error(`${path} came back with ${response.status}`);
  return unpackRows(await response.json());
};
