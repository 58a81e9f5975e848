import {
  formatValue,
  waysPrinted,
  type Catalogue,
  type PartToPrint,
  type Way,
} from '../../engine/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { capital, countOf, listed, sentence, typeset } from '../../text/words.ts';

/** Where a mark was printed so, in words; nothing for everywhere. */
const originWords = ({ origins }: Way): string =>
  origins.length === 0 || origins.includes('international')
    ? ''
    : `${listed(origins.map(capital), 'or')} parts`;

/** What is to be said of a mark; a unit or letter at the start keeps its case. */
const about = (way: Way): string =>
  [
    way.writing === 'unit' ? '' : `${typeset(way.means)}.`,
    ...[originWords(way), ...way.notes].filter((text) => text !== '').map(sentence),
  ]
    .filter((text) => text !== '')
    .join(' ');

const marks = (ways: readonly Way[]): Markup[] =>
  ways.flatMap((way, index) => [...(index === 0 ? [] : [' · ']), h('code', {}, way.text)]);

/** Marks of one body, a row for each way of writing the value. */
const bodyTable = (name: string, ways: readonly Way[]): Markup =>
  h(
    'div',
    { class: 'table-scroll', role: 'region', 'aria-label': name, tabindex: '0' },
    h(
      'table',
      { class: 'printed-table' },
      h('caption', {}, capital(name)),
      h(
        'thead',
        {},
        h(
          'tr',
          {},
          ...['Value', 'With the rest', 'About it'].map((head) => h('th', { scope: 'col' }, head)),
        ),
      ),
      h(
        'tbody',
        {},
        ...[...Map.groupBy(ways, ({ value }) => value).entries()].map(([value, own]) =>
          h(
            'tr',
            {},
            h('th', { scope: 'row' }, h('code', {}, value)),
            h('td', {}, ...marks(own.filter(({ text }) => text !== value))),
            h('td', {}, h('small', {}, own[0] === undefined ? '' : about(own[0]))),
          ),
        ),
      ),
    ),
  );

const byBody = (catalogue: Catalogue, ways: readonly Way[]): Markup[] =>
  catalogue.markings.bodies.flatMap(({ id, name }) => {
    const own = ways.filter(({ bodies }) => bodies.includes(id));
    return own.length === 0 ? [] : [bodyTable(name, own)];
  });

/** Whether a mark is of the short list; the long one has what is seldom met, or met in few places. */
export const isShort = (way: Way): boolean =>
  way.use === 'usual' && (originWords(way) === '' || way.origins.includes('american'));

/** How a part may be marked, usual ways first and the others folded; a sentence where there are none. */
export const printedMarkup = (catalogue: Catalogue, part: PartToPrint): Markup[] => {
  const ways = waysPrinted(catalogue, part);
  if (ways.length === 0)
    return [
      h(
        'p',
        {},
        'Nothing is printed so: no part of this kind comes in such a value, voltage and type. Leave the type or the voltage out, or round the value.',
      ),
    ];
  const short = ways.filter(isShort);
  const rest = ways.filter((way) => !isShort(way));
  const value =
    part.capacitance === undefined
      ? formatValue(part.resistance ?? NaN, 'ohm', { digits: 4 })
      : formatValue(part.capacitance, 'F', { digits: 4 });
  return [
    h('h2', {}, `${value}: ${countOf(short.length, 'usual mark')}`),
    ...byBody(catalogue, short),
    ...(rest.length === 0
      ? []
      : [
          h(
            'details',
            { class: 'printed-rest' },
            h('summary', {}, `${countOf(rest.length, 'less usual mark')}`),
            ...byBody(catalogue, rest),
          ),
        ]),
  ];
};
