import type { SeriesResistanceRow } from '../../schemas/sizes.ts';
import type { Basis, Catalogue, SourceId } from '../catalogue.ts';
import type { Resisting } from './esr-of.ts';
import { logBetween, logShare, TABLE_ROUNDING } from './interpolate.ts';

/** Ripple current of a part as its sheet gives it. */
export interface ListedRipple {
  /** A */
  current: number;
  /** Hz */
  frequency: number;
  /** Of what surrounds the part, degC. */
  temperature: number;
  sources: readonly SourceId[];
  bases: readonly Basis[];
}

interface RatedRow extends SeriesResistanceRow {
  ripple_a: number;
  ripple_c: number;
}

const isRated = (row: SeriesResistanceRow): row is RatedRow =>
  row.ripple_a !== undefined && row.ripple_c !== undefined;

const distance = (a: number, b: number): number => Math.abs(Math.log(a / b));

/** Rows with a ripple current, each type's by rising value, sorted once for each table. */
const sorted = new WeakMap<readonly SeriesResistanceRow[], Map<string, RatedRow[]>>();

const ratedRows = (rows: readonly SeriesResistanceRow[], type: string): readonly RatedRow[] => {
  const known = sorted.get(rows) ?? new Map<string, RatedRow[]>();
  if (!sorted.has(rows)) {
    for (const row of rows.filter(isRated).toSorted((a, b) => a.capacitance - b.capacitance)) {
      const own = known.get(row.type);
      if (own === undefined) known.set(row.type, [row]);
      else own.push(row);
    }
    sorted.set(rows, known);
  }
  return known.get(type) ?? [];
};

/** Read between the rows beside the value, both scales logarithmic; never beyond the rows. */
const readAt = (rows: readonly RatedRow[], farads: number): ListedRipple | undefined => {
  const upper = rows.find((row) => row.capacitance >= farads * (1 - TABLE_ROUNDING));
  const lower = rows.findLast((row) => row.capacitance <= farads * (1 + TABLE_ROUNDING));
  if (upper === undefined || lower === undefined) return undefined;
  const share = logShare(farads, lower.capacitance, upper.capacitance);
  return {
    current: logBetween(lower.ripple_a, upper.ripple_a, share),
    frequency: upper.frequency_hz,
    temperature: upper.ripple_c,
    sources: [...new Set([lower.source, upper.source])],
    bases: [lower.basis, upper.basis],
  };
};

/**
 * Ripple current of a single part by its value and voltage, of several frequencies at which it is
 * listed the one nearest to a frequency (Hz). Nothing where no row covers it.
 */
export const listedRipple = (
  { seriesResistance }: Catalogue,
  { type, capacitance, ratedVoltage }: Resisting,
  frequency: number,
): ListedRipple | undefined => {
  const own = ratedRows(seriesResistance, type).filter(
    ({ v_min: low, v_max: high }) =>
      low <= ratedVoltage * (1 + TABLE_ROUNDING) && high >= ratedVoltage * (1 - TABLE_ROUNDING),
  );
  return [...new Set(own.map((row) => row.frequency_hz))]
    .toSorted((a, b) => distance(a, frequency) - distance(b, frequency))
    .map((hertz) =>
      readAt(
        own.filter((row) => row.frequency_hz === hertz),
        capacitance,
      ),
    )
    .find((found) => found !== undefined);
};
