import { capital } from '../engine/quantities/text.ts';

export { capital };

/** A number of things: `1 row`, `3 rows`. */
export const countOf = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** Words joined as in a sentence: `a, b and c`. */
export const listed = (words: readonly string[], last = 'and'): string =>
  words.length < 2
    ? words.join('')
    : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1) ?? ''}`;

/** Words as addresses and anchors have them: `hold and integrate` as `hold-and-integrate`. */
export const hyphenated = (words: string): string => words.replaceAll(' ', '-');

/**
 * A text of the tables, which are plain ASCII, with the signs of its units: `100 uF at 85 degC` is
 * set as 100 µF at 85 °C, and no unit parts from its number.
 */
export const typeset = (text: string): string =>
  text
    .replace(/\bdegC\b/g, '°C')
    .replace(/\+-(?=\d)/g, '±')
    .replace(/\bu(?=[FAVHs]\b)/g, 'µ')
    .replace(/\b(\d[\d.]*) ([kMG]?)ohm\b/g, '$1 $2Ω')
    .replace(/\b([kMG])ohm\b/g, '$1Ω')
    .replace(/Ω\*µF/g, 'Ω·µF')
    .replace(
      /(?<=\d) (?=(?:[pnµmkMG]?[FAVHΩWs]|[mk]?Hz|MHz|GHz|°C|K|%|mm|min|h|dB|kV)(?![\w]))/g,
      '\u00a0',
    );

/** A text with a capital at its start and a full stop at its end. */
export const sentence = (text: string): string =>
  typeset(capital(/[.!?]$/.test(text) ? text : `${text}.`));

/** A text cut at a word to fit a page's description. */
export const cutTo = (text: string, length: number): string =>
  text.length <= length ? text : `${text.slice(0, text.lastIndexOf(' ', length - 1))} …`;

/** What the cells with fixed words mean to a reader. */
export const marketWords: Record<string, string> = {
  common: 'made today and stocked everywhere',
  current: 'made and stocked today',
  niche: 'few make or stock it today',
  'old-stock': 'no longer made; old stock only',
  none: 'not a thing one can order',
};

export const polarityWords: Record<string, string> = {
  'non-polar': 'non-polar, fits either way round',
  polar: 'polar',
  unknown: 'not known; settle it before fitting',
};

export const basisWords: Record<string, { mark: string; meaning: string }> = {
  published: { mark: 'pub.', meaning: 'published' },
  'common-practice': { mark: 'prac.', meaning: 'common practice' },
  memory: { mark: 'mem.', meaning: 'from memory, source not seen' },
};

export const sourceKindWords: Record<string, string> = {
  standard: 'Standards',
  'data-sheet': 'Data sheets',
  handbook: 'Handbooks',
  'application-note': 'Application notes',
  textbook: 'Textbooks',
  paper: 'Papers',
  encyclopedia: 'Encyclopedias',
  'web-page': 'Web pages',
  trade: 'Practice of the trade',
  identity: 'Arithmetic',
};

export const seenWords: Record<string, string> = {
  'full-text': 'The document itself was read.',
  excerpt: 'An excerpt was read.',
  'not-seen': 'The document was not seen; what is said of it is from memory or from others.',
};
