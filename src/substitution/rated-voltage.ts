import {
  exactly,
  formatValue,
  voltageKindOf,
  writeQuantity,
  type Catalogue,
  type Habit,
  type Part,
  type Range,
} from '../engine/index.ts';
import { PART_LIMITS, readRange, type Read } from './typed-numbers.ts';

/** A voltage marked as alternating: `250~`, `250 V~`, `275 VAC`. */
const MARKED = /^(.*?\d)\s*(k?V)?\s*(?:~|a\.?c\.?)\s*(V)?$/iu;

/** A voltage without the sign that says it alternates; nothing where it has none. */
export const alternating = (text: string): string | undefined => {
  const [, number, before, after] = MARKED.exec(text.trim()) ?? [];
  return number === undefined ? undefined : `${number} ${before ?? after ?? 'V'}`;
};

/** A rating with the kind of volts that it is in, where it says so. */
export interface Rated {
  /** V */
  volts: Range;
  /** Only where the rating is marked as one for AC; else the type says. */
  kind?: 'ac' | undefined;
}

/** A rating as people write it: `63 V`, `250 V~`, `275 VAC`. */
export const readRated = (text: string): Read<Rated> => {
  const plain = alternating(text);
  const read = readRange(plain ?? text, PART_LIMITS.ratedVoltage);
  if ('message' in read) return read;
  return { value: { volts: read.value, ...(plain === undefined ? {} : { kind: 'ac' }) } };
};

/** The same as an address or a parts list carries it, to be read back as it is. */
export const writeRated = ({ volts, kind }: Rated): string =>
  kind === 'ac' ? `${String(volts.typ)} VAC` : writeQuantity(exactly(volts.typ), 'V');

/** What follows the volts of a part that is rated for AC though others of its type are for DC. */
const alternatingSign = (
  { types }: Pick<Catalogue, 'types'>,
  { type, voltageKind }: Pick<Part, 'type' | 'voltageKind'>,
): string => {
  const row = Object.hasOwn(types, type) ? types[type] : undefined;
  return voltageKind === 'ac' && row !== undefined && voltageKindOf(row) === 'dc' ? ' AC' : '';
};

/** The rating of an old part as its field shows it, to be read back as the same. */
export const printRated = (
  catalogue: Pick<Catalogue, 'types'>,
  part: Pick<Part, 'type' | 'voltageKind' | 'ratedVoltage'>,
  habit?: Habit,
): string => formatValue(part.ratedVoltage, 'V', habit) + alternatingSign(catalogue, part);
