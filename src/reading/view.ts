import { link } from '../components/link.ts';
import {
  formatQuantity,
  formatValue,
  type Catalogue,
  type Habit,
  type Reading,
  type TypeId,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { capital, typeset } from '../text/words.ts';
import { evidenceTable, stretchTable } from './evidence-table.ts';
import { characteristicText, readingHeadline } from './headline.ts';
import { meterText } from './meter.ts';
import { replaceLinks } from './onward.ts';
import { stretchesOf } from './stretches.ts';
import { stripMarkup } from './strip.ts';

/** Words for how far a reading may be trusted. */
const SURE_WORDS = { sure: 'sure', likely: 'likely', possible: 'possible' } as const;

const facts = (pairs: readonly [string, string][]): Markup =>
  h(
    'dl',
    { class: 'facts' },
    ...pairs
      .filter(([, text]) => text !== '')
      .flatMap(([term, text]) => [h('dt', {}, term), h('dd', {}, text)]),
  );

const typeNames = (catalogue: Catalogue, types: readonly TypeId[]): Markup[] =>
  types.flatMap((id, index) => {
    const row = catalogue.types[id];
    if (row === undefined) return [];
    const page = link(`/types/${id}/`, row.short_name);
    return index === 0 ? [page] : [', ', page];
  });

/** Sections with their voltages and signs, one after another. */
const sectionsText = ({ sections }: Reading, habit?: Habit): string =>
  (sections ?? [])
    .map(({ capacitance, ratedVoltage, symbol }) =>
      [
        symbol === undefined ? '' : `${symbol}:`,
        formatValue(capacitance.typ, 'F', habit),
        ratedVoltage === undefined ? '' : formatQuantity(ratedVoltage, 'V', habit),
      ]
        .filter((part) => part !== '')
        .join(' '),
    )
    .join('; ');

const title = (reading: Reading, habit?: Habit): Markup[] => [
  readingHeadline(reading, habit) || 'No value',
  ' ',
  h('small', { class: `sure sure-${reading.sure}` }, SURE_WORDS[reading.sure]),
];

/** What a reading says beside its headline, how each stretch was understood, and where to go. */
const body = (
  catalogue: Catalogue,
  reading: Reading,
  marking: string | undefined,
  habit?: Habit,
): Markup[] => {
  const { capacitanceOverTemperature: span, colours, notUnderstood, settleBy, types } = reading;
  const { power, temperatureCoefficient, acVoltage } = reading;
  const stretches = marking === undefined ? undefined : stretchesOf(marking, reading);
  const pieces: (Markup | false | undefined)[] = [
    stretches && stripMarkup(stretches),
    facts([
      ['Read as', colours === undefined ? '' : capital(colours.name)],
      ['Sections', sectionsText(reading, habit)],
      ['For ac', acVoltage ? formatQuantity(acVoltage, 'V', habit) : ''],
      ['Power', power ? formatQuantity(power, 'W', habit) : ''],
      [
        'Temperature',
        characteristicText(reading, habit) ||
          (temperatureCoefficient ? formatQuantity(temperatureCoefficient, '1/K', habit) : ''),
      ],
      [
        'Really between',
        span ? `${formatQuantity(span, 'F', habit)}, with tolerance and temperature` : '',
      ],
      ['Polarity', reading.polarity ?? ''],
      ['Date', reading.date ?? ''],
      [
        'Not understood',
        stretches ? '' : notUnderstood.map((text) => `“${text.trim()}”`).join(', '),
      ],
      ['On a meter', capital(meterText(reading, habit))],
      ['To settle it', typeset(settleBy.join('; '))],
    ]),
    types.length > 0 && h('p', { class: 'small' }, 'Type: ', ...typeNames(catalogue, types)),
    stretches ? stretchTable(stretches) : evidenceTable(reading),
    replaceLinks(catalogue, reading),
  ];
  return pieces.filter((piece) => piece !== undefined && piece !== false);
};

/**
 * One reading: what it says, how each stretch was understood, what would settle it, where to go.
 * With the marking itself, that is drawn with a mark under each stretch.
 */
export const readingMarkup = (
  catalogue: Catalogue,
  reading: Reading,
  habit?: Habit,
  marking?: string,
): Markup =>
  h(
    'article',
    { class: 'reading' },
    h('h3', {}, ...title(reading, habit)),
    ...body(catalogue, reading, marking, habit),
  );

/** A rival of the best reading: folded, with what a meter reads if it is the right one. */
const rivalMarkup = (
  catalogue: Catalogue,
  reading: Reading,
  marking: string,
  habit?: Habit,
): Markup =>
  h(
    'details',
    { class: 'rival' },
    h(
      'summary',
      {},
      h('b', {}, readingHeadline(reading, habit) || 'No value'),
      h(
        'span',
        { class: 'quiet' },
        [
          reading.kind === 'resistor' ? 'a resistor' : '',
          meterText(reading, habit),
          reading.measured?.overlaps ? 'a rival may read the same' : '',
        ]
          .filter((part) => part !== '')
          .join('; '),
      ),
    ),
    ...body(catalogue, reading, marking, habit),
  );

/** Readings of a mark that is the type number of a device, folded since they are unlikely. */
export const unlikelyMarkup = (
  catalogue: Catalogue,
  readings: readonly Reading[],
  habit?: Habit,
): Markup | false =>
  readings.length > 0 &&
  h(
    'details',
    { class: 'rival' },
    h(
      'summary',
      {},
      h('b', {}, 'As the marking of a capacitor or resistor'),
      h('span', { class: 'quiet' }, 'unlikely'),
    ),
    ...readings.map((reading) => readingMarkup(catalogue, reading, habit)),
  );

/** All readings of a marking: the best in full, its rivals folded, or a sentence where there is none. */
export const readingsMarkup = (
  catalogue: Catalogue,
  text: string,
  readings: readonly Reading[],
  habit?: Habit,
): Markup[] => {
  const [best, ...rivals] = readings;
  if (best === undefined)
    return [
      h(
        'p',
        {},
        `“${text}” does not read as a marking of a capacitor or a resistor. Write what is printed, line by line: value, tolerance letter, volts, other letters.`,
      ),
    ];
  return [
    h('h2', {}, rivals.length === 0 ? 'One reading' : 'The likeliest reading'),
    readingMarkup(catalogue, best, habit, text),
    ...(rivals.length === 0
      ? []
      : [
          h('h2', {}, rivals.length === 1 ? 'Or else' : `Or else, ${rivals.length} more`),
          ...rivals.map((reading) => rivalMarkup(catalogue, reading, text, habit)),
        ]),
  ];
};
