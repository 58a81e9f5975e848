import { href } from '../../components/links.ts';

/**
 * A file of this site, read as JSON. Built from the same schemas as the scripts, its shape is trusted.
 * @throws where it cannot be fetched
 */
export const siteFile = async (path: `/${string}`): Promise<unknown> => {
  const response = await fetch(href(path));
  if (!response.ok) throw new Error(`${path} came back with ${response.status}`);
  return response.json();
};
