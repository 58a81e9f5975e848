/**
 * The index of words keeps the point of 4.7, so that a full stop would stay on the last word of a
 * sentence and make another word of it. In what is indexed a full stop is a character of its own,
 * which counts as no part of a word.
 */

const STAND_IN = '\u2024';
const FULL_STOP = /\.(?=[\s<,;:)”’]|$)/g;

/** A text to be indexed, its full stops set apart from the points in numbers. */
export const apart = (text: string): string => text.replaceAll(FULL_STOP, STAND_IN);

/** The same text as people read it. */
export const readable = (text: string): string => text.replaceAll(STAND_IN, '.');
