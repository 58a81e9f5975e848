import { apart } from './full-stops.ts';

/**
 * The HTML of a page as it is indexed. The library parts the text of paragraphs, items and cells, but
 * runs that of heads of rows, captions and terms into what follows: `Ages` and `It dries` would be
 * found as the one word `AgesIt`.
 */

/** A drawing or a formula that holds no other: their letters find nothing and read badly. */
const INNERMOST = /<(svg|math)\b(?:(?!<\1\b).)*?<\/\1>/gs;
/** A mark of how a figure is known stands in its thousands. */
const BASIS =
  /<(a|span) class="basis".*?<\/span>\s*<span class="hidden-text">.*?<\/span>\s*<\/\1>/gs;

/** What is written behind the words of an element whose end the library does not heed. */
const BEHIND: readonly (readonly [tags: string, end: string])[] = [
  ['dt', ':'],
  ['caption|dd|figcaption|legend|option|summary', '.'],
  ['th', ' ·'],
];
const ENDS = BEHIND.map(
  ([tags, end]) => [new RegExp(`(?<![:.?])</(${tags})>`, 'g'), `${end}</$1>`] as const,
);
const PARTED_TAGS = BEHIND.map(([tags]) => tags).join('|');
const PARTED = new RegExp(`</(${PARTED_TAGS})>`, 'g');
/** Room that a mark leaves behind when it is taken away: the end belongs to the word before. */
const ROOM = new RegExp(` +(?=</(?:${PARTED_TAGS})>)`, 'g');

const withoutFormulas = (html: string): string => {
  const fewer = html.replaceAll(INNERMOST, '');
  return fewer === html ? html : withoutFormulas(fewer);
};

/** A page, or a part of one, whose words are parted as they are on the screen. */
export const indexedHtml = (html: string): string => {
  const words = withoutFormulas(html).replaceAll(BASIS, '').replaceAll(ROOM, '');
  const ended = ENDS.reduce((text, [at, end]) => text.replaceAll(at, end), words);
  return apart(ended.replaceAll(PARTED, ' </$1>'));
};
