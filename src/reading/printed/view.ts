import {
  formatValue,
  waysPrinted,
  type Catalogue,
  type PartToPrint,
  type Way,
} from '../../engine/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { capital, countOf, listed, sentence, typeset } from '../../text/words.ts';

type BodyKind = Catalogue['markings']['bodies'][number]['kind'];

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

/** The bodies that carry a mark, in a word each; all of a kind are told as such. */
const bodyWords = (catalogue: Catalogue, { bodies }: Way, kind: BodyKind): string => {
  const ofKind = catalogue.markings.bodies.filter((row) => row.kind === kind);
  const names = ofKind
    .filter(({ id }) => bodies.includes(id))
    .map(({ id }) => id.replaceAll('-', ' '));
  return names.length === ofKind.length ? `on any ${kind}` : `on ${listed(names, 'or')}`;
};

/** The marks of one value with the rest of what is known, and the bodies where those are fewer. */
const withTheRest = (own: readonly Way[], bodiesOf: (way: Way) => string): Markup[] => {
  const [first] = own;
  const others = own.filter(({ text, value }) => text !== value);
  return [...Map.groupBy(others, bodiesOf).entries()].map(([bodies, ways]) =>
    h(
      'div',
      {},
      ...marks(ways),
      first === undefined || bodies === bodiesOf(first) ? '' : h('small', {}, ` ${bodies}`),
    ),
  );
};

const valueRow = (own: readonly Way[], bodiesOf: (way: Way) => string): Markup => {
  const [first] = own;
  return h(
    'tr',
    {},
    h('th', { scope: 'row' }, h('code', {}, first?.value ?? '')),
    h('td', {}, ...withTheRest(own, bodiesOf)),
    h(
      'td',
      {},
      h('small', {}, first === undefined ? '' : `${capital(bodiesOf(first))}. ${about(first)}`),
    ),
  );
};

/** Marks, a row for each way of writing the value; the plain value says the bodies. */
const marksTable = (
  caption: string,
  ways: readonly Way[],
  bodiesOf: (way: Way) => string,
): Markup => {
  const plainFirst = ways.toSorted((a, b) => a.text.length - b.text.length);
  const rows = Map.groupBy(ways, ({ value }) => value).keys();
  return h(
    'div',
    { class: 'table-scroll', role: 'region', 'aria-label': caption, tabindex: '0' },
    h(
      'table',
      { class: 'printed-table' },
      h('caption', { class: 'hidden-text' }, caption),
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
        ...[...rows].map((value) =>
          valueRow(
            plainFirst.filter((way) => way.value === value),
            bodiesOf,
          ),
        ),
      ),
    ),
  );
};

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
  const kind = part.capacitance === undefined ? 'resistor' : 'capacitor';
  const bodiesOf = (way: Way): string => bodyWords(catalogue, way, kind);
  const short = ways.filter(isShort);
  const rest = ways.filter((way) => !isShort(way));
  const value =
    part.capacitance === undefined
      ? formatValue(part.resistance ?? NaN, 'ohm', { digits: 4 })
      : formatValue(part.capacitance, 'F', { digits: 4 });
  return [
    h('h2', {}, `${value}: ${countOf(short.length, 'usual mark')}`),
    ...(short.length === 0 ? [] : [marksTable('Usual marks', short, bodiesOf)]),
    ...(rest.length === 0
      ? []
      : [
          h(
            'details',
            { class: 'printed-rest' },
            h('summary', {}, `${countOf(rest.length, 'less usual mark')}`),
            marksTable('Less usual marks', rest, bodiesOf),
          ),
        ]),
  ];
};
