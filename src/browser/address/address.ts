import { href } from '../../components/links.ts';

/**
 * The state of a page lives in its address, so that a copied address is the state. Everything that
 * reads or writes it goes through here: the one file for use without a site keeps it elsewhere.
 */

/** What the page is asked, with its `?`; nothing where it is asked nothing. */
export const asked = (): string => location.search;

/** Puts what the page is asked into the address. */
export const keepAsked = (query: URLSearchParams | string): void => {
  const text = query.toString();
  history.replaceState(null, '', `${location.pathname}${text && `?${text}`}${location.hash}`);
};

/** The path of this page below the base. */
export const pagePath = (): `/${string}` => `/${location.pathname.slice(href('/').length)}`;

/** The place in the page that the address leads to, without its `#`. */
export const fragment = (): string => location.hash.slice(1);

/** Puts a place in the page into the address. */
export const keepFragment = (place: string): void => {
  history.replaceState(null, '', `#${place}`);
};

/** The address of this page with another place in it. */
export const addressOf = (place: string): string => new URL(`#${place}`, location.href).href;

/** Calls back when a link leads to another place in the page. */
export const listenForFragment = (listener: () => void): void => {
  addEventListener('hashchange', listener);
};

/** The address of a page with what this one is asked. */
export const withAsked = (address: string): string => {
  const url = new URL(address);
  url.search = asked();
  return url.href;
};

/** The address of this page with what it is asked, as it may be printed. */
export const thisAddress = (): string => location.href.replace(/#.*/, '');

/** Whether an address is that of this page. */
export const isHere = (address: string): boolean => address === location.pathname;
