import type { Basis, Catalogue, SourceId } from '../catalogue.ts';
import { ruleOf, type WithRules } from '../rule-of-thumb.ts';
import type { Resisting } from './esr-of.ts';
import { logShare, TABLE_ROUNDING } from './interpolate.ts';

/** A factor on ripple current, and where it is from. */
export interface RippleFactor {
  factor: number;
  sources: readonly SourceId[];
  bases: readonly Basis[];
}

/** What a factor at one place comes to against that at another; nothing where either is not known. */
const factorBy = (
  rows: readonly { source: SourceId; basis: Basis }[],
  here: number | undefined,
  there: number | undefined,
): RippleFactor | undefined =>
  here === undefined || there === undefined
    ? undefined
    : {
        factor: there / here,
        sources: [...new Set(rows.map(({ source }) => source))],
        bases: rows.map(({ basis }) => basis),
      };

/**
 * How much more ripple current a part takes at one frequency (Hz) than at another, by the rows for
 * its type, value and voltage: between two of them on a logarithmic scale of frequency, above the
 * highest no more, a little below the lowest by equal heat in a steady loss. Nothing where no row
 * covers it.
 */
export const frequencyFactor = (
  catalogue: Pick<Catalogue, 'rippleByFrequency'> & WithRules,
  { type, capacitance, ratedVoltage }: Resisting,
  from: number,
  to: number,
): RippleFactor | undefined => {
  const rows = catalogue.rippleByFrequency
    .filter(
      (row) =>
        row.type === type &&
        row.v_min <= ratedVoltage * (1 + TABLE_ROUNDING) &&
        row.v_max >= ratedVoltage * (1 - TABLE_ROUNDING) &&
        row.c_min <= capacitance * (1 + TABLE_ROUNDING) &&
        row.c_max > capacitance * (1 + TABLE_ROUNDING),
    )
    .toSorted((a, b) => a.frequency_hz - b.frequency_hz);
  const at = (hertz: number): number | undefined => {
    const upper = rows.find((row) => row.frequency_hz >= hertz * (1 - TABLE_ROUNDING));
    const lower = rows.findLast((row) => row.frequency_hz <= hertz * (1 + TABLE_ROUNDING));
    if (lower === undefined) {
      return upper === undefined ||
        hertz < upper.frequency_hz * ruleOf(catalogue, 'frequency-reach-down')
        ? undefined
        : upper.factor * Math.sqrt(hertz / upper.frequency_hz);
    }
    if (upper === undefined) return lower.factor;
    const share = logShare(hertz, lower.frequency_hz, upper.frequency_hz);
    return lower.factor + share * (upper.factor - lower.factor);
  };
  return factorBy(rows, at(from), at(to));
};

/**
 * How much more ripple current a part takes at one temperature (degC) round it than at another, by
 * the rows for its type: a straight line between two, below the lowest no more. Where no row speaks
 * of the type, no more in the cool than is listed. Nothing above the highest temperature.
 */
export const temperatureFactor = (
  { rippleByTemperature }: Pick<Catalogue, 'rippleByTemperature'>,
  { type }: Pick<Resisting, 'type'>,
  from: number,
  to: number,
): RippleFactor | undefined => {
  const rows = rippleByTemperature
    .filter((row) => row.type === type)
    .toSorted((a, b) => a.temperature_c - b.temperature_c);
  if (rows.length === 0) return to <= from ? { factor: 1, sources: [], bases: [] } : undefined;
  const at = (celsius: number): number | undefined => {
    const upper = rows.find((row) => row.temperature_c >= celsius);
    const lower = rows.findLast((row) => row.temperature_c <= celsius);
    if (upper === undefined || lower === undefined) return upper?.factor;
    const span = upper.temperature_c - lower.temperature_c;
    const share = span === 0 ? 0 : (celsius - lower.temperature_c) / span;
    return lower.factor + share * (upper.factor - lower.factor);
  };
  return factorBy(rows, at(from), at(to));
};
