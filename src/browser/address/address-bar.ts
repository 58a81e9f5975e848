import { painted } from '../page/turns.ts';
import { asked, keepAsked } from './address.ts';

/** What the visitor has written, by key; what is not here takes the usual number. */
export const given = new Map(new URLSearchParams(asked()));

let waiting = false;

const write = (): void => {
  if (!waiting) return;
  waiting = false;
  keepAsked(new URLSearchParams([...given]));
};

/**
 * Puts all that the visitor has written into the address, so that a copied address is the state.
 * Browsers take their time over it, so it waits until the answer to what was written is shown; what
 * else follows from it comes later.
 */
const writeAddressBar = (): void => {
  if (waiting) return;
  waiting = true;
  void painted().then(write);
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
