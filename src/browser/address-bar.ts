import { asked, keepAsked } from './address.ts';

/** What the visitor has written, by key; what is not here takes the usual number. */
export const given = new Map(new URLSearchParams(asked()));

/** Longest that the address may lag behind what was written, ms. */
const LONGEST_LAG = 300;

let waiting = false;

const write = (): void => {
  if (!waiting) return;
  waiting = false;
  keepAsked(new URLSearchParams([...given]));
};

/**
 * Puts all that the visitor has written into the address, so that a copied address is the state.
 * Browsers take their time over it, so it waits until the answer to what was written stands there.
 */
const writeAddressBar = (): void => {
  if (waiting) return;
  waiting = true;
  // Some browsers do not say when they have nothing else to do.
  if ('requestIdleCallback' in globalThis) requestIdleCallback(write, { timeout: LONGEST_LAG });
  else setTimeout(write);
};

addEventListener('pagehide', write);
// Whatever is clicked, such as what copies the address, finds it as it should be.
addEventListener('click', write, { capture: true });

/** Forgets what the visitor has written under some keys. */
export const dropGiven = (keys: Iterable<string>): void => {
  for (const key of keys) given.delete(key);
  writeAddressBar();
};

/** Keeps what the visitor has written under a key; nothing written is not kept. */
export const keepGiven = (key: string, written: string): void => {
  const text = written.trim();
  if (text === '') given.delete(key);
  else given.set(key, text);
  writeAddressBar();
};
