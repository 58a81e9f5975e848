import './older-browsers.ts';
import { asked, withAsked } from './address/address.ts';

/** Hands the numbers in this page's address on to the substitution pages that it leads to. */

if (asked() !== '') {
  for (const anchor of document.querySelectorAll<HTMLAnchorElement>('main a[href*="/in/"]')) {
    anchor.href = withAsked(anchor.href);
  }
}
