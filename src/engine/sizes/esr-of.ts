import type { SeriesResistanceRow } from '../../schemas/sizes.ts';
import type { Part } from '../assessment/parts.ts';
import type { Basis, Catalogue, SourceId, TypeId } from '../catalogue.ts';
import { besideEachOther, sumOf } from '../equations/combinations.ts';
import { add, exactly, hull, type Range } from '../quantities/range.ts';
import { logBetweenRanges, logShare, ROUNDING } from './interpolate.ts';

/** A part as far as its series resistance is concerned. */
export type Resisting = Pick<Part, 'type' | 'capacitance' | 'ratedVoltage' | 'made'>;

/** Series resistance (ohm) of a part. */
export interface SeriesResistance {
  range: Range;
  /** By its value and voltage, or the span of its whole type. */
  by: 'value' | 'type';
  sources: readonly SourceId[];
  bases: readonly Basis[];
}

/** Frequency (Hz) at which series resistance is tabulated for switching and regulating. */
export const TABLE_FREQUENCY = 1e5;

/** What is known of a whole type near 100 kHz. */
export const RESISTANCE = 'esr-100khz';

/** Rows of one type, frequency and voltage band, by rising capacitance. */
interface Band {
  frequency: number;
  low: number;
  high: number;
  rows: SeriesResistanceRow[];
}

const bandsOf = (rows: readonly SeriesResistanceRow[]): Map<TypeId, Band[]> => {
  const byType = new Map<TypeId, Band[]>();
  for (const row of rows) {
    const bands = byType.get(row.type) ?? [];
    byType.set(row.type, bands);
    const own = bands.find(
      ({ frequency, low }) => frequency === row.frequency_hz && low === row.v_min,
    );
    if (own !== undefined) own.rows.push(row);
    else {
      const { frequency_hz: frequency, v_min: low, v_max: high } = row;
      bands.push({ frequency, low, high, rows: [row] });
    }
  }
  for (const bands of byType.values()) {
    for (const band of bands) band.rows.sort((a, b) => a.capacitance - b.capacitance);
  }
  return byType;
};

/** Sorted once for each table. */
const sorted = new WeakMap<readonly SeriesResistanceRow[], Map<TypeId, Band[]>>();

const bandsFor = (rows: readonly SeriesResistanceRow[], type: TypeId): readonly Band[] => {
  const known = sorted.get(rows) ?? bandsOf(rows);
  sorted.set(rows, known);
  return known.get(type) ?? [];
};

const rangeOfRow = ({ esr_min: min, esr_typ: typ, esr_max: max }: SeriesResistanceRow): Range => ({
  min: min ?? typ,
  typ,
  max,
});

/** Read between the two rows beside the value, both scales logarithmic; never beyond the rows. */
const readBand = ({ rows }: Band, farads: number): SeriesResistance | undefined => {
  const after = rows.findIndex((row) => row.capacitance >= farads * (1 - ROUNDING));
  const upper = rows[after];
  if (upper === undefined) return undefined;
  const lower = upper.capacitance <= farads * (1 + ROUNDING) ? upper : rows[after - 1];
  if (lower === undefined) return undefined;
  const share = logShare(farads, lower.capacitance, upper.capacitance);
  return {
    range: logBetweenRanges(rangeOfRow(lower), rangeOfRow(upper), share),
    by: 'value',
    sources: [...new Set([lower.source, upper.source])],
    bases: [lower.basis, upper.basis],
  };
};

/** Series resistance by value and voltage at a tabulated frequency (Hz). */
const byValue = (
  { seriesResistance }: Catalogue,
  { type, capacitance, ratedVoltage }: Resisting,
  frequency: number,
): SeriesResistance | undefined => {
  const band = bandsFor(seriesResistance, type).find(
    (one) =>
      one.frequency === frequency &&
      one.low <= ratedVoltage * (1 + ROUNDING) &&
      one.high >= ratedVoltage * (1 - ROUNDING),
  );
  return band && readBand(band, capacitance);
};

const ofOneType = (
  catalogue: Catalogue,
  part: Resisting,
  frequency: number,
): SeriesResistance | undefined => {
  const tabulated = byValue(catalogue, part, frequency);
  if (tabulated !== undefined || frequency !== TABLE_FREQUENCY) return tabulated;
  const whole = catalogue.knowledge[part.type]?.[RESISTANCE];
  return whole?.status === 'known'
    ? { range: whole.range, by: 'type', sources: whole.sources, bases: [whole.basis] }
    : undefined;
};

/**
 * Series resistance of a single part at 100 kHz, or at another tabulated frequency (Hz): read between the
 * rows of its type for its voltage where they cover its value, else, at 100 kHz, the span of its
 * type. For a part of unknown class the span of what it can be. Nothing where nothing is known.
 */
const esrOfSingle = (
  catalogue: Catalogue,
  part: Resisting,
  frequency = TABLE_FREQUENCY,
): SeriesResistance | undefined => {
  const members = catalogue.types[part.type]?.union_of ?? [];
  if (members.length === 0) return ofOneType(catalogue, part, frequency);
  const found = members.flatMap((type) => ofOneType(catalogue, { ...part, type }, frequency) ?? []);
  const [first, ...rest] = found;
  if (first === undefined || found.length < members.length) return undefined;
  return {
    range: hull([first.range, ...rest.map(({ range }) => range)]),
    by: found.every(({ by }) => by === 'value') ? 'value' : 'type',
    sources: [...new Set(found.flatMap(({ sources }) => sources))],
    bases: found.flatMap(({ bases }) => bases),
  };
};

/**
 * The same of a part that may be made of two, or of one and a resistor: that of each put together.
 */
export const esrOf = (
  catalogue: Catalogue,
  part: Resisting,
  frequency = TABLE_FREQUENCY,
): SeriesResistance | undefined => {
  if (part.made === undefined) return esrOfSingle(catalogue, part, frequency);
  const { kind, parts, resistor = 0 } = part.made;
  const each = parts.flatMap((single) => esrOfSingle(catalogue, single, frequency) ?? []);
  const [first, ...rest] = each.map(({ range }) => range);
  if (first === undefined || each.length < parts.length) return undefined;
  const range = kind === 'parallel' ? besideEachOther([first, ...rest]) : sumOf([first, ...rest]);
  return {
    range: add(range, exactly(resistor)),
    by: each.every(({ by }) => by === 'value') ? 'value' : 'type',
    sources: [...new Set(each.flatMap(({ sources }) => sources))],
    bases: each.flatMap(({ bases }) => bases),
  };
};
