import { HASH_DIGITS } from '../offline/lists.ts';

/** The hash of an answer's body as the build lists it: the first digits of its SHA-256. */
export const hashOf = async (response: Response): Promise<string> => {
  const digest = await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer());
  return [...new Uint8Array(digest, 0, HASH_DIGITS / 2)]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
};
