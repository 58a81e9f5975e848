import type { PlacedCaution } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { assumedShort, assumedWords } from './assumed-words.ts';

/**
 * Cautions where the work is. Where one stands for the first time it is open; further on its title
 * does, and opens to the same words. One that rests on a number that nobody typed says so.
 */
export const cautionList = (cautions: readonly PlacedCaution[]): Element[] =>
  cautions.map(({ row: { severity, title, text }, isFirst, assumed }) =>
    h(
      'details',
      { class: `caution caution-${severity}`, open: isFirst },
      h(
        'summary',
        {},
        h('strong', {}, h('span', { class: 'caution-word' }, capital(severity)), ' ', title),
        assumed !== undefined && ` (${assumedShort(assumed)})`,
      ),
      h('p', {}, sentence(text)),
      assumed !== undefined && h('p', { class: 'small' }, assumedWords(assumed)),
    ),
  );
