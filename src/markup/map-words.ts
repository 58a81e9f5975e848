import type { Markup } from './node.ts';

/** The same piece of a page with every stretch of its words changed; attributes stay as they are. */
export const mapWords = (piece: Markup, change: (words: string) => string): Markup =>
  typeof piece === 'string'
    ? change(piece)
    : { ...piece, children: piece.children.map((child) => mapWords(child, change)) };
