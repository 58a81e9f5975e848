import { link } from '../components/link.ts';
import { href } from '../components/links.ts';
import type { Catalogue, KindId, StyleId } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { capital } from '../text/words.ts';

/** What a style is called. */
export const styleName = ({ look }: Catalogue, id: StyleId): string =>
  look.styles.find((style) => style.id === id)?.name ?? id;

const kindOf = ({ look }: Catalogue, id: KindId) => look.kinds.find((kind) => kind.id === id);

/** What a kind is called in a sentence. */
export const kindName = (catalogue: Catalogue, id: KindId): string =>
  kindOf(catalogue, id)?.name ?? id;

/** What may be inside, each with its page and the way to its stand-ins. */
export const kindLinks = (catalogue: Catalogue, ids: readonly KindId[], query = ''): Markup[] =>
  ids.map((id) => {
    const kind = kindOf(catalogue, id);
    const name = capital(kind?.name ?? id);
    if (kind === undefined || kind.type === '') return h('li', {}, name);
    return h(
      'li',
      {},
      link(`/types/${kind.type}/`, name),
      ': ',
      h(
        'a',
        {
          href: href(
            kind.is === 'capacitor'
              ? `/replace/${kind.type}/${query}`
              : `/types/${kind.type}/#positions`,
          ),
        },
        'what replaces it',
      ),
    );
  });
