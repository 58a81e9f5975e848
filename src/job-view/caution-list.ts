import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import { capital, sentence } from '../text/words.ts';

/** Cautions where the work is, each with its words in full. */
export const cautionList = (cautions: readonly CautionRow[]): Element[] =>
  cautions.map(({ severity, title, text }) =>
    h(
      'div',
      { class: `caution caution-${severity}` },
      h(
        'p',
        {},
        h('strong', {}, h('span', { class: 'caution-word' }, capital(severity)), ' ', title),
      ),
      h('p', {}, sentence(text)),
    ),
  );
