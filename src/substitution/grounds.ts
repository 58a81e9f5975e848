import { equationMarkup } from '../components/math.ts';
import type { Catalogue, SourceId } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { printLimit, type AnyPart } from './phrases.ts';
import { citedSources, link, type Shown } from './shown.ts';

/** Every demand of the position: the limit, what the old part comes to, why it is asked. */
const askedTable = <P extends AnyPart>({ catalogue, assessments, habit }: Shown<P>): Markup => {
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
          h('th', { scope: 'row' }, finding.name),
          h('td', {}, weights[weight]),
          h('td', {}, printLimit(finding, habit) || 'yes or no'),
          h(
            'td',
            {},
            finding.why,
            ` ${catalogue.findings[finding.finding]?.meaning ?? ''}.`,
            finding.equation !== '' && h('div', {}, equationMarkup(finding.equation)),
          ),
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
          ...['Asked', 'Weight', 'Limit', 'Why, and how it is reckoned'].map((word) =>
            h('th', { scope: 'col' }, word),
          ),
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
      h('li', {}, link(`/sources/${source}/`, catalogue.sources[source]?.title ?? source)),
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
