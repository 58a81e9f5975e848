import { h, type Attributes, type Markup } from '../markup/node.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import { capital, sentence } from '../text/words.ts';
import { basisMark } from './basis-mark.ts';

/** How a caution is shown. */
export interface CautionOptions {
  /** Level of its heading on this page. */
  level?: 2 | 3 | undefined;
  /** Without what is to be known of its sources: the page of all cautions has that. */
  brief?: boolean | undefined;
  /** By what a script knows when it is due. */
  due?: Attributes | undefined;
}

/** A caution with its heading, its words and how they are known. */
export const cautionMarkup = (
  caution: CautionRow,
  { level = 3, brief = false, due = {} }: CautionOptions = {},
): Markup =>
  h(
    'section',
    { class: `caution caution-${caution.severity}`, id: caution.id, ...due },
    h(
      `h${level}`,
      {},
      h('span', { class: 'caution-word' }, capital(caution.severity)),
      ' ',
      caution.title,
    ),
    h('p', {}, sentence(caution.text), ' ', basisMark(caution)),
    !brief && caution.note !== '' && h('p', { class: 'quiet small' }, sentence(caution.note)),
  );
