import { href } from '../components/links.ts';
import {
  formatQuantity,
  formatValue,
  pairing,
  writeQuantity,
  type Catalogue,
  type Habit,
  type PositionId,
  type Range,
  type Reading,
  type TypeId,
} from '../engine/index.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { h, type Markup } from '../markup/node.ts';
import { byUse } from '../search/position-order.ts';
import { capital, typeset } from '../text/words.ts';
import { partKeys } from '../substitution/address.ts';
import { writeTolerance } from '../substitution/typed-numbers.ts';

/** Words for how far a reading may be trusted. */
const SURE_WORDS = { sure: 'sure', likely: 'likely', possible: 'possible' } as const;

const percent = (fraction: number, habit?: Habit): string =>
  formatValue(fraction, 'fraction', habit);

const toleranceText = ({ tolerance }: Reading, habit?: Habit): string => {
  if (tolerance === undefined) return '';
  const { minus, plus, unit } = tolerance;
  const print = (size: number): string =>
    unit === 'fraction' ? percent(size, habit) : formatValue(size, unit, habit);
  return minus === plus ? `±${print(plus)}` : `+${print(plus)}/−${print(minus)}`;
};

const voltageText = ({ ratedVoltage, voltageKind }: Reading, habit?: Habit): string =>
  ratedVoltage === undefined
    ? ''
    : formatQuantity(ratedVoltage, 'V', habit) + (voltageKind === 'ac' ? ' AC' : '');

const characteristicText = (
  { temperatureCharacteristic: own, temperatureCoefficient: drift }: Reading,
  habit?: Habit,
): string => {
  if (drift !== undefined) return formatQuantity(drift, '1/K', habit);
  if (own === undefined) return '';
  const { code, capacitanceChange: change, coefficient, tMin, tMax } = own;
  const span = `${formatValue(tMin, 'degC', habit)} to ${formatValue(tMax, 'degC', habit)}`;
  if (change !== undefined) {
    return `${code}, class ${own.class}: ${percent(change.min, habit)} to +${percent(change.max, habit)} over ${span}`;
  }
  return coefficient === undefined
    ? `${code}, class ${own.class}`
    : `${code}, class ${own.class}: ${formatQuantity(coefficient, '1/K', habit)} over ${span}`;
};

/** The value of a reading with what was marked beside it: `10 nF ±20 % 1 kV Z5U`. */
export const readingHeadline = (reading: Reading, habit?: Habit): string => {
  const { capacitance, resistance, sections, temperatureCharacteristic, safetyClass, date } =
    reading;
  const parts = [
    capacitance && formatValue(capacitance.typ, 'F', habit),
    sections?.map((section) => formatValue(section.capacitance.typ, 'F', habit)).join(' + '),
    resistance && formatValue(resistance.typ, 'ohm', habit),
    toleranceText(reading, habit),
    voltageText(reading, habit),
    temperatureCharacteristic?.code,
    safetyClass,
    capacitance || resistance || sections ? undefined : date,
  ].filter((part) => part !== undefined && part !== '');
  return parts.join(' ');
};

const point = (value: number): Range => ({ min: value, typ: value, max: value });

/** The query that carries a reading to a substitution page. */
export const readingQuery = ({ capacitance, tolerance, ratedVoltage }: Reading): string => {
  const query = new URLSearchParams();
  if (capacitance) query.set(partKeys.capacitance, writeQuantity(point(capacitance.typ), 'F'));
  if (tolerance?.unit === 'fraction') query.set(partKeys.tolerance, writeTolerance(tolerance));
  if (ratedVoltage) query.set(partKeys.ratedVoltage, writeQuantity(point(ratedVoltage.typ), 'V'));
  const text = query.toString();
  return text === '' ? '' : `?${text}`;
};

/** A type as the old part, with the unions that say as much where several types are left. */
const likeliestType = (catalogue: Catalogue, types: readonly TypeId[]): TypeId | undefined => {
  const whole = Object.values(catalogue.types).find(
    (type) =>
      type.union_of.length > 0 &&
      types.length > 1 &&
      types.every((id) => id === type.id || type.union_of.includes(id)) &&
      type.union_of.every((id) => types.includes(id)),
  );
  return whole?.id ?? types.find((id) => Object.hasOwn(catalogue.types, id));
};

/** How far outside the usual values of a position a part may lie and still be offered it. */
const LEEWAY = 3;

/** Positions in which a part of this type and value is met, the commonest first. */
export const positionsFor = (
  catalogue: Catalogue,
  type: TypeId,
  capacitance: number | undefined,
): PositionId[] => {
  const row = catalogue.types[type];
  if (row === undefined) return [];
  return Object.values(catalogue.positions)
    .filter((position) => pairing(catalogue, row, position).met)
    .filter(
      ({ usual_c_min: low, usual_c_max: high }) =>
        capacitance === undefined || (capacitance >= low / LEEWAY && capacitance <= high * LEEWAY),
    )
    .toSorted(byUse)
    .map((position) => position.id);
};

/** The query that carries a reading to the key that goes by looks. */
const lookQuery = ({ capacitance }: Reading): string =>
  capacitance === undefined
    ? ''
    : `?${new URLSearchParams({ capacitance: writeQuantity(point(capacitance.typ), 'F') }).toString()}`;

/** Types to choose from where the marking does not say what the part is, the commonest first. */
const typeChoice = (catalogue: Catalogue, reading: Reading): Markup => {
  const value = reading.capacitance?.typ ?? 0;
  const possible = Object.values(catalogue.types)
    .filter((type) => value >= type.old_c_min && value <= type.old_c_max)
    .toSorted((a, b) => b.union_of.length - a.union_of.length);
  return h(
    'div',
    { class: 'onward' },
    h(
      'p',
      {},
      'The marking does not say what the part is made of. ',
      h('a', { href: href(`/look/${lookQuery(reading)}`) }, 'Find out by its look'),
      ', or, for what replaces it, choose:',
    ),
    h(
      'ul',
      { class: 'chips' },
      ...possible.map((type) =>
        h(
          'li',
          {},
          h('a', { href: href(`/replace/${type.id}/${readingQuery(reading)}`) }, type.short_name),
        ),
      ),
    ),
  );
};

const replaceLinks = (catalogue: Catalogue, reading: Reading): Markup | undefined => {
  const type = likeliestType(catalogue, reading.types);
  const row = type === undefined ? undefined : catalogue.types[type];
  if (reading.capacitance === undefined) return undefined;
  if (row === undefined) return typeChoice(catalogue, reading);
  const query = readingQuery(reading);
  const positions = positionsFor(catalogue, row.id, reading.capacitance.typ);
  return h(
    'div',
    { class: 'onward' },
    h('p', {}, `What stands in for ${midSentence(row.short_name)} depends on where it sits:`),
    h(
      'ul',
      { class: 'chips' },
      ...positions.map((position) =>
        h(
          'li',
          {},
          h(
            'a',
            { href: href(`/replace/${row.id}/in/${position}/${query}`) },
            catalogue.positions[position]?.name ?? position,
          ),
        ),
      ),
    ),
  );
};

const evidenceTable = (reading: Reading): Markup =>
  h(
    'table',
    { class: 'evidence-table' },
    h('caption', { class: 'hidden-text' }, 'What each part of the marking means'),
    h(
      'tbody',
      {},
      ...reading.evidence.map(({ text, means, source }) =>
        h(
          'tr',
          {},
          h('th', { scope: 'row' }, h('code', {}, text.trim())),
          h('td', {}, typeset(means)),
          h('td', {}, h('a', { class: 'basis', href: href(`/sources/${source}/`) }, 'source')),
        ),
      ),
    ),
  );

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
    const link = h('a', { href: href(`/types/${id}/`) }, row.short_name);
    return index === 0 ? [link] : [', ', link];
  });

/** One reading: what it says, how each stretch was understood, what would settle it, where to go. */
export const readingMarkup = (catalogue: Catalogue, reading: Reading, habit?: Habit): Markup => {
  const { capacitanceOverTemperature: span, colours, notUnderstood, settleBy, types } = reading;
  return h(
    'article',
    { class: 'reading' },
    h(
      'h3',
      {},
      readingHeadline(reading, habit) || 'No value',
      ' ',
      h('small', { class: `sure sure-${reading.sure}` }, SURE_WORDS[reading.sure]),
    ),
    facts([
      ['Read as', colours === undefined ? '' : capital(colours.name)],
      ['Temperature', characteristicText(reading, habit)],
      [
        'Really between',
        span ? `${formatQuantity(span, 'F', habit)}, with tolerance and temperature` : '',
      ],
      ['Polarity', reading.polarity ?? ''],
      ['Date', reading.date ?? ''],
      ['Not understood', notUnderstood.map((text) => `“${text.trim()}”`).join(', ')],
      ['To settle it', typeset(settleBy.join('; '))],
    ]),
    types.length > 0 && h('p', { class: 'small' }, 'Type: ', ...typeNames(catalogue, types)),
    evidenceTable(reading),
    replaceLinks(catalogue, reading),
  );
};

/** All readings, best first, or a sentence where there is none. */
export const readingsMarkup = (
  catalogue: Catalogue,
  text: string,
  readings: readonly Reading[],
  habit?: Habit,
): Markup[] =>
  readings.length === 0
    ? [
        h(
          'p',
          {},
          `“${text}” does not read as a marking of a capacitor. Write what is printed, line by line: value, tolerance letter, volts, other letters.`,
        ),
      ]
    : [
        h(
          'h2',
          {},
          readings.length === 1 ? 'One reading' : `${readings.length} readings, likeliest first`,
        ),
        ...readings.map((reading) => readingMarkup(catalogue, reading, habit)),
      ];
