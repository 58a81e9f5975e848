import { href } from '../components/links.ts';
import { formatValue, type Habit, type SeriesName } from '../engine/index.ts';
import { nearestEach } from '../engine/values/nearest-each.ts';
import { decadeOf } from '../engine/values/series.ts';
import { h, type Markup } from '../markup/node.ts';

/** What a value is one of. */
export type ValueUnit = 'F' | 'ohm' | 'H';

/** Sums that make a value of several parts. */
const COMBINED: Partial<Record<ValueUnit, string>> = {
  F: 'combine-capacitors',
  ohm: 'combine-resistors',
};

/** The nearest value of every series at or below a wanted one, and at or above it. */
export const nearestMarkup = (value: number, unit: ValueUnit, habit?: Habit): Markup[] => {
  const off = (ratio: number): string =>
    Math.abs(ratio - 1) < 1e-9 ? 'exact' : formatValue(ratio - 1, 'fraction', habit);
  const combined = COMBINED[unit];
  return [
    h(
      'div',
      { class: 'table-scroll', tabindex: 0, role: 'region', 'aria-label': 'Nearest values' },
      h(
        'table',
        {},
        h('caption', {}, `Beside ${formatValue(value, unit, habit)}`),
        h(
          'thead',
          {},
          h(
            'tr',
            {},
            ...['Series', 'At or below', 'Off by', 'At or above', 'Off by'].map((word) =>
              h('th', { scope: 'col' }, word),
            ),
          ),
        ),
        h(
          'tbody',
          {},
          ...nearestEach(value).map(({ series, below, above }) =>
            h(
              'tr',
              {},
              h('th', { scope: 'row' }, series),
              h('td', {}, formatValue(below, unit, { digits: 4, ...habit })),
              h('td', {}, off(below / value)),
              h('td', {}, formatValue(above, unit, { digits: 4, ...habit })),
              h('td', {}, off(above / value)),
            ),
          ),
        ),
      ),
    ),
    ...(combined === undefined
      ? []
      : [
          h(
            'p',
            {},
            h(
              'a',
              {
                href: `${href(`/sums/${combined}/`)}?${new URLSearchParams({ value: formatValue(value, unit, { digits: 6 }).replaceAll('\u00a0', ' ') }).toString()}`,
              },
              'Two or three parts that make it',
            ),
          ),
        ]),
  ];
};

/** Decimals that a series has between 1 and 10. */
const decimalsOf = (series: SeriesName): number => (Number(series.slice(1)) >= 48 ? 2 : 1);

/** Every value of one decade of a series, as a list in one line. */
export const decadeMarkup = (series: SeriesName): Markup =>
  h(
    'ul',
    { class: 'decade' },
    ...decadeOf(series).map((value) => h('li', {}, value.toFixed(decimalsOf(series)))),
  );
