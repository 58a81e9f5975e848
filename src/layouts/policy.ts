import { createHash } from 'node:crypto';

/**
 * What a page may fetch and run: nothing but what is beside it, and of scripts within it those that
 * are named here by what they say. Written out, since the policy that the builder could add would
 * name half a dozen scripts of its own on every page, none of which is used.
 * @param inline the text of each script within the page
 */
export const policyFor = (inline: readonly string[]): string => {
  const hashes = inline.map(
    (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`,
  );
  return [
    "default-src 'none'",
    // The word search is WebAssembly.
    ["script-src 'self' 'wasm-unsafe-eval'", ...hashes].join(' '),
    "style-src 'self'",
    "connect-src 'self'",
    "img-src 'self' data:",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'self'",
    "worker-src 'self'",
    "require-trusted-types-for 'script'",
    // The one policy there is: see src/browser/trusted.ts.
    'trusted-types default',
  ].join('; ');
};
