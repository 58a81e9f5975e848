import type { Catalogue, SourceId } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { findingPath } from '../text/finding-path.ts';
import { typeset } from '../text/words.ts';
import { printLimit, type AnyPart } from './phrases.ts';
import { citedSources, link, type Shown } from './shown.ts';

/** Every demand of the position: its weight, the limit, why it is asked. How each is reckoned stands on one page for all. */
const askedTable = <P extends AnyPart>({ assessments, habit }: Shown<P>): Markup => {
  const findings = (assessments[0]?.findings ?? []).toSorted((a, b) =>
    a.demand < b.demand ? -1 : 1,
  );
  const weights = { hard: 'must', strong: 'should', mild: 'better if' } as const;
  const rows = (['hard', 'strong', 'mild'] as const).flatMap((weight) =>
    findings
      .filter((finding) => finding.weight === weight)
      .map((finding) =>
        h(
          'tr',
          { id: `ask-${finding.demand}` },
          h('th', { scope: 'row' }, link(findingPath(finding.finding), finding.name)),
          h('td', {}, weights[weight]),
          h('td', {}, printLimit(finding, habit) || 'yes or no'),
          h('td', {}, typeset(finding.why)),
        ),
      ),
  );
  return h(
    'div',
    { class: 'table-scroll', tabindex: 0, role: 'region', 'aria-label': 'What is asked here' },
    h(
      'table',
      { class: 'asked' },
      h(
        'thead',
        {},
        h(
          'tr',
          {},
          ...['Asked', 'Weight', 'Limit', 'Why'].map((word) => h('th', { scope: 'col' }, word)),
        ),
      ),
      h('tbody', {}, ...rows),
    ),
  );
};

const sourceList = (catalogue: Catalogue, cited: readonly SourceId[]): Markup =>
  h(
    'ol',
    { class: 'small' },
    ...cited.map((source) =>
      h('li', {}, link(`/sources/${source}/`, typeset(catalogue.sources[source]?.title ?? source))),
    ),
  );

/** What is asked of any part here, and the documents behind the figures. */
export const groundsMarkup = <P extends AnyPart>(shown: Shown<P>): Markup[] => {
  const cited = citedSources(shown);
  return [
    h('h2', { id: 'asked' }, 'What is asked here'),
    askedTable(shown),
    h('h2', { id: 'sources' }, 'Sources of these figures'),
    h(
      'details',
      { id: 'source-list' },
      h('summary', {}, `${cited.length} documents`),
      sourceList(shown.catalogue, cited),
    ),
  ];
};
