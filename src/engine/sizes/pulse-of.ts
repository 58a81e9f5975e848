import type { PulseRatingRow } from '../../schemas/sizes.ts';
import type { Basis, Catalogue, SourceId, TypeId } from '../catalogue.ts';
import { hull, type Range } from '../quantities/range.ts';
import type { Sized } from './body-of.ts';
import { TABLE_ROUNDING } from './interpolate.ts';

/** Steepest repeated edge (V/s) that a part withstands. */
export interface PulseRating {
  range: Range;
  by: 'value' | 'type';
  sources: readonly SourceId[];
  bases: readonly Basis[];
}

/** What is known of a whole type. */
export const EDGE = 'dvdt';

const VOLTS_PER_SECOND = 1e6;

/** Rows by type, sorted once for each table. */
const sorted = new WeakMap<readonly PulseRatingRow[], Map<TypeId, PulseRatingRow[]>>();

const rowsFor = (rows: readonly PulseRatingRow[], type: TypeId): readonly PulseRatingRow[] => {
  const known = sorted.get(rows) ?? new Map<TypeId, PulseRatingRow[]>();
  if (!sorted.has(rows)) {
    for (const row of rows) known.set(row.type, [...(known.get(row.type) ?? []), row]);
    sorted.set(rows, known);
  }
  return known.get(type) ?? [];
};

/**
 * The row of one style for a value and voltage: the highest voltage that is not above the part's,
 * and the smallest span that reaches up to its value, for a part withstands no less than a larger
 * one or one of a lower voltage. Nothing for values beyond the rows.
 */
const rowOfStyle = (
  rows: readonly PulseRatingRow[],
  { capacitance, ratedVoltage }: Sized,
): PulseRatingRow | undefined => {
  const covering = rows.filter(
    (row) =>
      row.voltage <= ratedVoltage * (1 + TABLE_ROUNDING) &&
      row.c_max >= capacitance * (1 - TABLE_ROUNDING),
  );
  const volts = Math.max(...covering.map(({ voltage }) => voltage));
  const own = rows.filter(({ voltage }) => voltage === volts);
  const least = Math.min(...own.map(({ c_min: farads }) => farads));
  if (!(capacitance >= least * (1 - TABLE_ROUNDING))) return undefined;
  return covering
    .filter(({ voltage }) => voltage === volts)
    .toSorted((a, b) => a.c_max - b.c_max)[0];
};

const byValue = ({ pulseRatings }: Catalogue, part: Sized): PulseRating | undefined => {
  const rows = rowsFor(pulseRatings, part.type);
  const styles = new Set(
    rows.map(({ style }) => style).filter((style) => (part.style ?? style) === style),
  );
  const found = [...styles].flatMap(
    (style) =>
      rowOfStyle(
        rows.filter((row) => row.style === style),
        part,
      ) ?? [],
  );
  const edges = found.map(({ dvdt }): Range => {
    const slope = dvdt * VOLTS_PER_SECOND;
    return { min: slope, typ: slope, max: slope };
  });
  const [first, ...rest] = edges;
  if (first === undefined) return undefined;
  return {
    range: hull([first, ...rest]),
    by: 'value',
    sources: [...new Set(found.map(({ source }) => source))],
    bases: found.map(({ basis }) => basis),
  };
};

/**
 * Steepest repeated edge that a part withstands: as its sheet gives it for its value, voltage and
 * style, or for all styles where that is open; else the span of its type. Nothing where nothing is
 * known.
 */
const ratingOfSingle = (catalogue: Catalogue, part: Sized): PulseRating | undefined => {
  const tabulated = byValue(catalogue, part);
  if (tabulated !== undefined) return tabulated;
  const whole = catalogue.knowledge[part.type]?.[EDGE];
  return whole?.status === 'known'
    ? { range: whole.range, by: 'type', sources: whole.sources, bases: [whole.basis] }
    : undefined;
};

/**
 * The same of a part that may be made of two: what the weaker one withstands, with nothing added.
 * Nothing where it is not known of both.
 */
export const pulseRatingOf = (catalogue: Catalogue, part: Sized): PulseRating | undefined => {
  const parts = part.made?.parts ?? [part];
  const [first, ...others] = parts.flatMap((single) => ratingOfSingle(catalogue, single) ?? []);
  if (first === undefined || others.length + 1 < parts.length) return undefined;
  return others.reduce(
    (weaker, next) => (next.range.min < weaker.range.min ? next : weaker),
    first,
  );
};
