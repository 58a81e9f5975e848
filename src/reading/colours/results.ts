import { formatValue, type Catalogue, type Habit, type Reading } from '../../engine/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { listed } from '../../text/words.ts';
import { readingMarkup } from '../view.ts';
import type { ColourState } from './state.ts';
import { colourName } from './swatch.ts';

/** Readings that are shown with all of their working; the others go into a table. */
const IN_FULL = 3;
/** Rows of that table; nobody reads a hundred. */
const IN_SHORT = 24;

/** The value of a reading, in short. */
export const valueText = ({ resistance, capacitance }: Reading, habit?: Habit): string => {
  if (resistance !== undefined) return formatValue(resistance.typ, 'ohm', habit);
  return capacitance === undefined ? 'no value' : formatValue(capacitance.typ, 'F', habit);
};

/** What a reading filled in, or whether it began at the other end. */
const differenceOf = (
  catalogue: Catalogue,
  { layout }: ColourState,
  { colours }: Reading,
): Markup[] => {
  if (colours === undefined) return [];
  const guesses = colours.guessed.flatMap((at): Markup[] => {
    const colour = catalogue.markings.colours.find(({ id }) => id === colours.marks[at]);
    return [h('span', { class: 'guess' }, `${layout.labels[at] ?? ''} `, colourName(colour))];
  });
  return colours.turned ? ['from the other end ', ...guesses] : guesses;
};

const inShort = (
  catalogue: Catalogue,
  state: ColourState,
  readings: readonly Reading[],
  habit?: Habit,
): Markup[] => {
  if (readings.length === 0) return [];
  const shown = readings.slice(0, IN_SHORT);
  const more = readings.length - shown.length;
  return [
    h('h3', {}, 'Less likely'),
    h(
      'table',
      { class: 'evidence-table' },
      h('caption', { class: 'hidden-text' }, 'Less likely readings'),
      h(
        'tbody',
        {},
        shown.map((reading) =>
          h(
            'tr',
            {},
            h('th', { scope: 'row' }, valueText(reading, habit)),
            h('td', {}, reading.colours?.name ?? ''),
            h('td', {}, differenceOf(catalogue, state, reading)),
          ),
        ),
      ),
    ),
    more > 0 && h('p', { class: 'small' }, `And ${more} more that are less likely still.`),
  ].filter((piece) => piece !== false);
};

/** Why nothing was read. */
const nothing = ({ layout, form, marks }: ColourState): Markup => {
  const open = layout.labels.filter((_, at) => marks[at] === undefined);
  if (open.length === layout.labels.length)
    return h('p', {}, `Set the colour of each ${form.mark}; what they say appears here.`);
  return h(
    'p',
    {},
    open.length > 0
      ? `Nothing can be read yet; still open: ${listed(open)}.`
      : `No scheme for a ${form.name} has these colours in this order. Look at them again in good light, or choose another body.`,
  );
};

/** All readings of colours: the likeliest in full, the others in a table. */
export const colourResults = (
  catalogue: Catalogue,
  state: ColourState,
  readings: readonly Reading[],
  habit?: Habit,
): Markup[] =>
  readings.length === 0
    ? [nothing(state)]
    : [
        h(
          'h2',
          {},
          readings.length === 1 ? 'One reading' : `${readings.length} readings, likeliest first`,
        ),
        ...readings.slice(0, IN_FULL).map((reading) => readingMarkup(catalogue, reading, habit)),
        ...inShort(catalogue, state, readings.slice(IN_FULL), habit),
      ];
