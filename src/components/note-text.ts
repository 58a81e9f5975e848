import { h, type Markup } from '../markup/node.ts';
import { sentence } from '../text/words.ts';

const SYMBOL = /\b([A-Za-z])_([A-Za-z\d]+)\b/;

/** A text as a sentence, in which `V_oct` is set as in an equation. */
export const noteText = (text: string): Markup[] =>
  sentence(text)
    .split(new RegExp(SYMBOL.source, 'g'))
    // Splitting leaves plain words, a letter and what stands lower, in turn.
    .flatMap((part, index): Markup[] => {
      if (part === '') return [];
      return index % 3 === 2 ? [h('sub', {}, part)] : [part];
    });
