import { link } from '../components/link.ts';
import { h, type Markup } from '../markup/node.ts';
import { countOf, typeset } from '../text/words.ts';
import type { AnyPart } from './phrases.ts';
import { citedSources, type Shown } from './shown.ts';

/** The documents behind the figures. */
export const groundsMarkup = <P extends AnyPart>(shown: Shown<P>): Markup[] => {
  const cited = citedSources(shown);
  const titles = cited.map((source) => shown.catalogue.sources[source]?.title ?? source);
  return [
    h('h2', { id: 'sources' }, 'Sources of these figures'),
    h(
      'details',
      { id: 'source-list' },
      h('summary', {}, countOf(cited.length, 'document')),
      h(
        'ol',
        { class: 'small' },
        ...cited.map((source, at) =>
          h('li', {}, link(`/sources/${source}/`, typeset(titles[at] ?? source))),
        ),
      ),
    ),
  ];
};
