import './older-browsers.ts';
import { wordsOfAddress } from '../search/words-of-address.ts';
import { pagePath } from './address/address.ts';
import { byId } from './page/by-id.ts';

/** Puts what an address that leads nowhere asks for into the box. */

const inWords = (path: string): string => {
  try {
    return wordsOfAddress(decodeURIComponent(path));
  } catch {
    // A sign of per cent that stands for nothing.
    return wordsOfAddress(path);
  }
};

byId('box', HTMLInputElement).value = inWords(pagePath());
