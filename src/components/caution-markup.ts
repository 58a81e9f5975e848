import { h, type Markup } from '../markup/node.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import { capital, sentence } from '../text/words.ts';
import { basisMark } from './basis-mark.ts';

/** A caution with its heading, its words and how they are known. */
export const cautionMarkup = (caution: CautionRow, level: 2 | 3 = 3): Markup =>
  h(
    'section',
    { class: `caution caution-${caution.severity}`, id: caution.id },
    h(
      `h${level}`,
      {},
      h('span', { class: 'caution-word' }, capital(caution.severity)),
      ' ',
      caution.title,
    ),
    h('p', {}, sentence(caution.text), ' ', basisMark(caution)),
    caution.note !== '' && h('p', { class: 'quiet small' }, sentence(caution.note)),
  );
