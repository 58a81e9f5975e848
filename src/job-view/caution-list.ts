import type { PlacedCaution } from '../job/index.ts';
import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';

/**
 * Cautions where the work is. Where one stands for the first time it is open; further on its title
 * does, and opens to the same words.
 */
export const cautionList = (cautions: readonly PlacedCaution[]): Element[] =>
  cautions.map(({ row: { severity, title, text }, isFirst }) =>
    h(
      'details',
      { class: `caution caution-${severity}`, open: isFirst },
      h(
        'summary',
        {},
        h('strong', {}, h('span', { class: 'caution-word' }, capital(severity)), ' ', title),
      ),
      h('p', {}, sentence(text)),
    ),
  );
