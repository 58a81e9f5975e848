import { addressWith, here, keepPlace, listenForPlace, readPlace, writePlace } from './place.ts';

/** In the one file, what `browser/address.ts` is on the site: the address proper is that of the file. */

export const asked = (): string => here().query;

export const keepAsked = (query: URLSearchParams | string): void => {
  const text = query.toString();
  keepPlace({ query: text && `?${text}` });
};

export const pagePath = (): `/${string}` => here().path;

export const fragment = (): string => here().fragment;

export const keepFragment = (place: string): void => {
  keepPlace({ fragment: place });
};

export const addressOf = (place: string): string =>
  new URL(addressWith({ fragment: place }), location.href).href;

export const listenForFragment = listenForPlace;

export const withAsked = (address: string): string => {
  const url = new URL(address);
  url.hash = writePlace({ ...readPlace(url.hash), query: asked() });
  return url.href;
};

export const thisAddress = (): string => new URL(addressWith({ fragment: '' }), location.href).href;

export const isHere = (address: string): boolean => readPlace(address).path === here().path;
