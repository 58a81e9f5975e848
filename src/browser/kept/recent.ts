import { keepText, keptText } from './kept-text.ts';

/** What was looked up last, kept on this device alone. */

export interface LookUp {
  /** Path of the page below the base. */
  path: `/${string}`;
  /** What the page was asked, with its `?`. */
  query: string;
  title: string;
}

const KEY = 'recent';
const MOST = 8;
const LONGEST = 300;

const isText = (value: unknown): value is string =>
  typeof value === 'string' && value.length <= LONGEST;

/** Anybody may have written what is kept: no address may lead off the site. */
const isLookUp = (value: unknown): value is LookUp =>
  typeof value === 'object' &&
  value !== null &&
  'path' in value &&
  'query' in value &&
  'title' in value &&
  isText(value.title) &&
  isText(value.path) &&
  /^\/(?:[\w-]+\/)*$/.test(value.path) &&
  isText(value.query) &&
  /^(?:\?[^#]*)?$/.test(value.query);

/** Look-ups in a text that was kept, as far as they are sound. */
const readLookUps = (kept: string): LookUp[] => {
  try {
    const all: unknown = JSON.parse(kept);
    return Array.isArray(all) ? all.filter(isLookUp).slice(0, MOST) : [];
  } catch {
    return [];
  }
};

/** The same with one more in front; the same page is listed once for each thing it was asked. */
const withLookUp = (all: readonly LookUp[], one: LookUp): LookUp[] =>
  isLookUp(one)
    ? [one, ...all.filter(({ title }) => title !== one.title)].slice(0, MOST)
    : [...all];

/** What was looked up last, the latest first. */
export const lookUps = (): LookUp[] => readLookUps(keptText(KEY));

/** Keeps one more. */
export const noteLookUp = (one: LookUp): void => {
  keepText(KEY, JSON.stringify(withLookUp(lookUps(), one)));
};

/** Forgets them all. */
export const forgetLookUps = (): void => {
  keepText(KEY, '');
};
