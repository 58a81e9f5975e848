import { href } from '../../components/links.ts';
import {
  coloursPainted,
  type Catalogue,
  type Painted,
  type PartToPrint,
} from '../../engine/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { capital, countOf, sentence } from '../../text/words.ts';
import { searchOf } from '../colours/state.ts';
import { colourName } from '../colours/swatch.ts';

/** Parts whose colours are shown at once; the others are folded. */
const isUsual = ({ use }: Painted): boolean => use === 'usual';

const paintedRow = (catalogue: Catalogue, painted: Painted): Markup => {
  const { scheme, layout, form, colours } = painted;
  const rowOf = (id: string | undefined) => catalogue.markings.colours.find((row) => row.id === id);
  return h(
    'tr',
    {},
    h(
      'th',
      { scope: 'row' },
      h(
        'a',
        { href: href(`/read/colours/${searchOf({ layout, form, marks: colours })}`) },
        capital(scheme.name),
      ),
    ),
    h(
      'td',
      { class: 'painted' },
      ...colours.map((id) => h('span', {}, colourName(rowOf(id), 'any'), ' ')),
    ),
    h('td', {}, h('small', {}, sentence(scheme.about))),
  );
};

const paintedTable = (catalogue: Catalogue, caption: string, all: readonly Painted[]): Markup[] =>
  all.length === 0
    ? []
    : [
        h(
          'div',
          { class: 'table-scroll', role: 'region', 'aria-label': caption, tabindex: '0' },
          h(
            'table',
            { class: 'printed-table' },
            h('caption', {}, caption),
            h(
              'thead',
              {},
              h(
                'tr',
                {},
                ...['Part', 'Colours', 'About it'].map((head) => h('th', { scope: 'col' }, head)),
              ),
            ),
            h('tbody', {}, ...all.map((one) => paintedRow(catalogue, one))),
          ),
        ),
      ];

/** How colours may mark a part; nothing where no scheme has such a value. */
export const paintedMarkup = (catalogue: Catalogue, part: PartToPrint): Markup[] => {
  const all = coloursPainted(catalogue, part);
  const usual = all.filter(isUsual);
  const rest = all.filter((one) => !isUsual(one));
  if (all.length === 0) return [];
  return [
    h('h2', {}, 'In colours'),
    ...paintedTable(catalogue, 'Usual', usual),
    ...(rest.length === 0
      ? []
      : [
          h(
            'details',
            { class: 'printed-rest' },
            h('summary', {}, `${countOf(rest.length, 'less usual scheme')}`),
            ...paintedTable(catalogue, 'Less usual', rest),
          ),
        ]),
  ];
};
